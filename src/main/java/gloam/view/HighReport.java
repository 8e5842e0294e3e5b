package gloam.view;

import gloam.answer.HighStands;
import gloam.ephemeris.HighStand;
import gloam.gear.Site;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * The times at which a target is above some altitude in darkness, night by night.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param target      the target's name
 * @param altitudeDeg least altitude in degrees, with refraction
 * @param nights      every night asked for, in order
 */
public record HighReport(OffsetDateTime generatedAt, Site site, String target, double altitudeDeg,
                         List<HighNightRow> nights) implements Report {

    /** Reports when a target is high over one site. */
    public static HighReport of(HighStands found, Instant now) {
        SiteClock clock = new SiteClock(found.site().zone());
        return new HighReport(clock.at(now), found.site(), found.target(), found.least().degrees(),
                found.nights().stream().map(night -> HighNightRow.of(night, clock)).toList());
    }

    @Override
    public boolean empty() {
        return nights.stream().allMatch(night -> night.spans().isEmpty());
    }

    @Override
    public Document document() {
        Document document = Document.headed(Wording.title(target()) + " at "
                + Wording.plain(altitudeDeg()) + "\u00b0 or higher in darkness");
        document.text("at " + SiteText.of(site()));
        document.gap();
        if (empty()) {
            document.under("in none of these nights");
            return document;
        }
        Table table = new Table(Table.words("night"), Table.words("from"), Table.words("to"),
                Table.numbers("highest", "\u00b0").leaving(4), Table.words("at").leaving(3),
                Table.words("towards").leaving(2),
                Table.words("night without the Moon").leaving(1));
        for (HighNightRow night : nights()) {
            NightTimes times = new NightTimes(night.night(), site().zone());
            night.spans().forEach(span -> table.row(Wording.date(night.night()),
                    times.opens(span.from().toInstant()),
                    times.closes(span.to().toInstant()), Wording.number(span.highestAltitudeDeg(), 0),
                    times.about(span.highestAt().toInstant()), Wording.bearing(span.azimuthDeg()),
                    Wording.hours(night.moonlessHours()) + " of " + Wording.hours(night.hours())));
        }
        document.add(table);
        return document;
    }

    /**
     * One night.
     *
     * @param night         date of its evening
     * @param hours         hours of darkness in which the target is high enough
     * @param moonlessHours those of them with the Moon below the horizon
     * @param spans         when it is, in order of time
     */
    public record HighNightRow(LocalDate night, double hours, double moonlessHours, List<StandRow> spans) {

        static HighNightRow of(HighStands.HighNight night, SiteClock clock) {
            return new HighNightRow(night.evening(), hours(night.together()), hours(night.moonless()),
                    night.stands().stream().map(stand -> StandRow.of(stand, clock)).toList());
        }

        private static double hours(Duration time) {
            return time.toMillis() / 3.6e6;
        }
    }

    /**
     * One span of a night.
     *
     * @param from               when it begins
     * @param to                 when it ends
     * @param highestAt          when the target is highest in this span
     * @param highestAltitudeDeg its altitude then in degrees, with refraction
     * @param azimuthDeg         its azimuth then in degrees, from north through east
     */
    public record StandRow(OffsetDateTime from, OffsetDateTime to, OffsetDateTime highestAt,
                          double highestAltitudeDeg, double azimuthDeg) {

        static StandRow of(HighStands.Stand found, SiteClock clock) {
            HighStand stand = found.stand();
            return new StandRow(clock.at(stand.span().start()), clock.at(stand.span().endExclusive()),
                    clock.at(stand.highestAt()), found.highest().apparentAltitude().degrees(),
                    found.highest().azimuth().positive().degrees());
        }
    }
}
