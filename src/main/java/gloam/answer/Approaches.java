package gloam.answer;

import gloam.ephemeris.Approach;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.ephemeris.SkyPosition;
import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.LocalDate;
import java.util.List;

/**
 * The closest approaches of the Moon and the planets to one another.
 *
 * @param site     where
 * @param meetings in order of time
 */
public record Approaches(Site site, List<Meeting> meetings) {

    /** Allowed limits of the angle between two bodies. */
    public static final Range SEPARATION = new Range("separation", 0, 180, "deg");

    /** Copies the list. */
    public Approaches {
        meetings = List.copyOf(meetings);
    }

    /**
     * Two bodies at their closest.
     *
     * @param approach the two bodies, when and how close
     * @param one      where the first body stands
     * @param sun      where the Sun stands
     */
    public record Meeting(Approach approach, SkyPosition one, SkyPosition sun) {

        private static Meeting of(Ephemeris ephemeris, Site site, Approach approach) {
            return new Meeting(approach, ephemeris.position(approach.one(), site, approach.at()),
                    ephemeris.position(Body.SUN, site, approach.at()));
        }
    }

    /**
     * The approaches to some angle or less, from noon before the first evening to noon after the last.
     *
     * @throws gloam.ephemeris.OutsideCoverage if the ephemeris does not cover one of the nights
     */
    public static Approaches of(Ephemeris ephemeris, Site site, Angle widest, LocalDate first,
            LocalDate last) {
        Interval span = new Interval(Night.coveredSpan(ephemeris, site, first).start(),
                Night.coveredSpan(ephemeris, site, last).endExclusive());
        return new Approaches(site, Approach.among(ephemeris, site, widest, span).stream()
                .map(approach -> Meeting.of(ephemeris, site, approach)).toList());
    }
}
