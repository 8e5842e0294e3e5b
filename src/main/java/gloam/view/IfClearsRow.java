package gloam.view;

import gloam.planner.Alternatives;
import java.time.OffsetDateTime;
import java.util.List;

/** What is left of an evening if the sky is clear from some time on at the latest. */
public record IfClearsRow(OffsetDateTime clearAt, List<InsteadRow> windows) {

    static IfClearsRow of(Alternatives.IfClears later) {
        SiteClock clock = new SiteClock(later.night().site().zone());
        return new IfClearsRow(clock.at(later.clearAt()), later.instead().stream()
                .map(instead -> new InsteadRow(instead.wish().name(), instead.camera().name(),
                clock.at(instead.open().start()),
                clock.at(instead.open().endExclusive()), instead.fNumber().marked())).toList());
    }

    /** An exposure of what is left. */
    public record InsteadRow(String wish, String camera, OffsetDateTime openAt, OffsetDateTime closeAt,
            double fNumber) {
    }
}
