package gloam.view;

import gloam.answer.Approaches;
import gloam.ephemeris.Approach;
import gloam.ephemeris.Body;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * The closest approaches of the Moon and the planets to one another.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param approaches  in order of time
 */
public record ApproachesReport(OffsetDateTime generatedAt, Site site, List<ApproachRow> approaches)
        implements Report {

    /** Reports approaches found. */
    public static ApproachesReport of(Approaches found, Instant now) {
        SiteClock clock = new SiteClock(found.site().zone());
        return new ApproachesReport(clock.at(now), found.site(),
                found.meetings().stream().map(meeting -> ApproachRow.of(meeting, clock)).toList());
    }

    @Override
    public boolean empty() {
        return approaches.isEmpty();
    }

    @Override
    public Document document() {
        Document document = Document.headed("Closest approaches");
        document.text("at " + SiteText.of(site()));
        document.gap();
        if (approaches().isEmpty()) {
            document.under("none as close as that");
            return document;
        }
        Table table = new Table(Table.words("date"), Table.words("time"), Table.words("bodies"),
                Table.numbers("apart", "\u00b0"), Table.numbers("altitude", "\u00b0").leaving(3),
                Table.words("towards").leaving(2), Table.numbers("Sun", "\u00b0").leaving(1));
        for (ApproachRow row : approaches()) {
            table.row(Wording.date(row.at().plusSeconds(30).toLocalDate()), Wording.minute(row.at()),
                    Wording.title(row.body()) + " and " + Wording.title(row.other()),
                    Wording.number(row.separationDeg(), 2), Wording.number(row.apparentAltitudeDeg(), 0),
                    Wording.bearing(row.azimuthDeg()), Wording.number(row.sunAltitudeDeg(), 0));
        }
        document.add(table);
        return document;
    }

    /**
     * Two bodies at their closest.
     *
     * @param at             when
     * @param body           one of the two
     * @param other          the other one
     * @param separationDeg  angle between their centres, in degrees
     * @param azimuthDeg     azimuth of the first body, in degrees from north through east
     * @param apparentAltitudeDeg its altitude in degrees, with refraction
     * @param sunAltitudeDeg altitude of the Sun in degrees, with refraction
     */
    public record ApproachRow(OffsetDateTime at, String body, String other, double separationDeg,
            double azimuthDeg,
                              double apparentAltitudeDeg, double sunAltitudeDeg) {

        static ApproachRow of(Approaches.Meeting meeting, SiteClock clock) {
            Approach approach = meeting.approach();
            return new ApproachRow(clock.at(approach.at()), name(approach.one()), name(approach.other()),
                    approach.separation().degrees(), meeting.one().azimuth().positive().degrees(),
                    meeting.one().apparentAltitude().degrees(), meeting.sun().apparentAltitude().degrees());
        }

        private static String name(Target target) {
            return ((Body) target).label();
        }
    }
}
