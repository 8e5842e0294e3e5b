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
        NightSky sky = new NightSky(ephemeris, night, trip.bodies(), trip.begun().map(Trip.Begun::at),
                NightClock.NODE_MIN);
        return new Evening(night, trip.wishes().stream()
                .map(wish -> new WindowFinder(wish, Kit.of(trip, wish), sky, stars).find()).toList());
    }

    /** Everything that could be exposed, for the timetable. */
    List<Candidate<Shot>> candidates(Trip trip) {
        List<Candidate<Shot>> candidates = new ArrayList<>();
        for (int number = 0; number < findings.size(); number++) {
            for (List<Shot> opening : findings.get(number).openings()) {
                addTo(candidates, number, opening, trip);
            }
        }
        return Candidate.undominated(candidates);
    }

    /**
     * Adds the shots of an opening, each at its expected worth: a shutter closed early when cloud comes leaves what a shot as
     * short would have made, so that only what a longer one adds hangs on the sky staying clear for longer.
     */
    private void addTo(List<Candidate<Shot>> candidates, int wish, List<Shot> opening, Trip trip) {
        WindowFinder.Finding finding = findings.get(wish);
        for (int number = 0; number < opening.size(); number++) {
            Shot shot = opening.get(number);
            double expected = 0;
            double before = 0;
            for (Shot shorter : opening.subList(0, number + 1)) {
                expected += (shorter.value() - before) * trip.clearChance(
                        finding.sky().clock().span(shot.openMin(), shot.openMin() + shorter.durationMin()));
                before = shorter.value();
            }
            candidates.add(new Candidate<>(shot, wish, shot.openMin(), shot.closeMin(), finding.wish().worth() * expected));
        }
    }

    /** What the night is worth at most, wishes not standing in each other's way. */
    double promise() {
        return findings.stream().mapToDouble(finding -> finding.wish().worth() * finding.satisfaction()).sum();
    }
}
