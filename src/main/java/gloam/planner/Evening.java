package gloam.planner;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.gear.Site;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What one night at one site offers to all wishes of a trip.
 *
 * @param night    the night
 * @param findings one for each wish, in the trip's order
 */
record Evening(Night night, List<WindowFinder.Finding> findings) {

    /** Looks at all wishes on a night. */
    static Evening of(Trip trip, Ephemeris ephemeris, StarField stars, LocalDate date, Site site) {
        Night night = Night.of(ephemeris, site, date);
        NightSky sky = new NightSky(ephemeris, night, trip.bodies(), trip.begun().map(Trip.Begun::at));
        return new Evening(night, trip.wishes().stream()
                .map(wish -> new WindowFinder(wish, Kit.of(trip, wish), sky, stars).find()).toList());
    }

    /** Everything that could be exposed, for the timetable. */
    List<Candidate<Shot>> candidates(Trip trip) {
        List<Candidate<Shot>> candidates = new ArrayList<>();
        for (int number = 0; number < findings.size(); number++) {
            WindowFinder.Finding finding = findings.get(number);
            for (Shot shot : finding.shots()) {
                candidates.add(new Candidate<>(shot, number, shot.openMin(), shot.closeMin(),
                        finding.wish().worth() * shot.value()
                                * trip.clearChance(finding.sky().clock().span(shot.openMin(), shot.closeMin()))));
            }
        }
        return Candidate.undominated(candidates);
    }

    /** What the night is worth at most, wishes not standing in each other's way. */
    double promise() {
        return findings.stream().mapToDouble(finding -> finding.wish().worth() * finding.satisfaction()).sum();
    }
}
