package gloam.view;

import gloam.gear.Site;
import gloam.planner.Alternatives;
import java.time.LocalDate;
import java.time.OffsetDateTime;

/** The best window that is left for a wish on a night on which it is not planned. */
public record SecondChoiceRow(String wish, String camera, LocalDate night, String site,
        OffsetDateTime openAt) {

    static SecondChoiceRow of(Alternatives.SecondChoice second) {
        Site site = second.night().site();
        return new SecondChoiceRow(second.wish().name(), second.camera().name(), second.night().date(),
                site.name(), new SiteClock(site.zone()).at(second.openAt()));
    }

    /**
     * Such as "if clouded out: Thu 2027-02-11 21:10 at Loma Callada", or what has to be decided by a
     * forecast, since it comes before.
     */
    String words(PlanReport plan, PlanReport.WindowRow planned) {
        String when = openAt.isBefore(planned.openAt()) ? "if cloud is forecast: " : "if clouded out: ";
        return when + NightTimes.date(openAt.toLocalDate()) + " " + Wording.minute(openAt)
                + " at " + site + plan.camera(camera).map(name -> " with " + name).orElse("");
    }
}
