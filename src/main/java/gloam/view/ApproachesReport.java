package gloam.view;

import gloam.ephemeris.Approach;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * When Moon and planets come close to one another.
 *
 * @param generatedAt when the report was made
 * @param place       where
 * @param approaches  in order of time
 */
public record ApproachesReport(OffsetDateTime generatedAt, Place place, List<ApproachRow> approaches)
        implements Report {

    /** The report of approaches. */
    public static ApproachesReport of(Ephemeris ephemeris, Site site, List<Approach> approaches, Instant now) {
        return new ApproachesReport(new SiteClock(site.zone()).asked(now), Place.of(site),
                approaches.stream().map(approach -> ApproachRow.of(ephemeris, site, approach)).toList());
    }

    @Override
    public boolean empty() {
        return approaches.isEmpty();
    }

    /**
     * Two bodies at their closest.
     *
     * @param at             when
     * @param body           the one
     * @param other          the other
     * @param separationDeg  angle between their centres
     * @param azimuthDeg     where the one stands
     * @param apparentAltitudeDeg how high
     * @param sunAltitudeDeg how high the Sun stands, apparent
     */
    public record ApproachRow(OffsetDateTime at, String body, String other, double separationDeg, double azimuthDeg,
                              double apparentAltitudeDeg, double sunAltitudeDeg) {

        static ApproachRow of(Ephemeris ephemeris, Site site, Approach approach) {
            SkyPosition one = ephemeris.position(approach.one(), site, approach.at());
            return new ApproachRow(new SiteClock(site.zone()).event(approach.at()), name(approach.one()),
                    name(approach.other()), approach.separation().degrees(),
                    one.azimuth().positive().degrees(), one.apparentAltitude().degrees(),
                    ephemeris.position(Body.SUN, site, approach.at()).apparentAltitude().degrees());
        }

        private static String name(Target target) {
            return ((Body) target).label();
        }
    }
}
