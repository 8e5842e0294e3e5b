package gloam.view;

import java.io.IOException;

/** A timetable as iCalendar. */
final class IcsRenderer implements Renderer {

    @Override
    public boolean suits(Report report) {
        return report instanceof PlanReport;
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        out.append(IcsCalendar.of((PlanReport) report));
    }
}
