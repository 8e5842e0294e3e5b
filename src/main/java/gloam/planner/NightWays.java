package gloam.planner;

import gloam.planner.WishCounts.Served;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What one night of a timetable can serve.
 *
 * @param ways     each at the site at which it is best, what loses least first
 * @param complete whether that is all that may be of use
 */
record NightWays(List<Way> ways, boolean complete) {

    /** Of what a night can serve no more is looked at: what loses most is left out. */
    private static final int MOST_WAYS = 16_384;
    private static final int MOST_SITES = 64;

    /** What is served, what that gains and gains over its prices, how late it gets, and where. */
    record Way(Served served, long gain, long over, long late, int site) {

        private static Way better(Way one, Way other) {
            return other.gain > one.gain || other.gain == one.gain && other.late < one.late ? other : one;
        }
    }

    /** What a night can serve at some sites, each with its offers, that loses no more than some loss. */
    static NightWays of(Timetable timetable, WishCounts counts, Prices prices, List<List<Offer>> sites,
            int ofNight, long mayLose) {
        Map<Served, Way> best = new HashMap<>();
        boolean complete = true;
        for (int number = 0; number < sites.size(); number++) {
            int site = number;
            CameraSchedules night = new CameraSchedules(counts.ofNight(timetable.sheetsPerNight()),
                    sites.get(number), timetable.changeoverMin(), prices, mayLose);
            int last = timetable.moves().isEmpty() ? 0 : ofNight * MOST_SITES + site + 1;
            night.gains().forEach((served, gain) -> best.merge(served.lastAt(last),
                    new Way(served.lastAt(last), gain - Gain.NIGHT_OUT,
                    prices.over(counts, served, gain - Gain.NIGHT_OUT),
                    Gain.late(night.endMin(served), ofNight, served.sheets()), site), Way::better));
            complete &= night.complete();
        }
        return new NightWays(best.values().stream().sorted(Comparator.comparingLong(way -> -way.over))
                .limit(MOST_WAYS).toList(), complete && best.size() <= MOST_WAYS);
    }
}
