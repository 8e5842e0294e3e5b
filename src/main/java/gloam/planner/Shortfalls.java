package gloam.planner;

import gloam.ephemeris.Night;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Site;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What was found when the stars of chosen exposures were counted: where fewer record than must, though they
 * were estimated to be enough, nothing that was estimated to be no better is offered again. May be used by
 * several threads at once.
 */
final class Shortfalls {

    private final Map<Through, Double> marginsMag = new ConcurrentHashMap<>();

    private record Through(Site site, LocalDate date, Wish wish, Camera camera, FNumber fNumber) {

        static Through of(Night night, Wish wish, Camera camera, FNumber fNumber) {
            return new Through(night.site(), night.date(), wish, camera, fNumber);
        }
    }

    /**
     * Takes down that an exposure records fewer stars than must; whether that was not known before.
     *
     * @param marginMag by how many magnitudes they were estimated to be brighter than the trail limit
     */
    boolean add(Night night, Wish wish, Camera camera, FNumber fNumber, double marginMag) {
        Double before = marginsMag.get(Through.of(night, wish, camera, fNumber));
        double now = Math.max(0, marginMag);
        if (before != null && before >= now) {
            return false;
        }
        marginsMag.put(Through.of(night, wish, camera, fNumber), now);
        return true;
    }

    /** By f-number, the margin in mag up to which a count finds too few; negative infinity for none. */
    double[] of(Night night, Wish wish, Camera camera, List<FNumber> fNumbers) {
        return fNumbers.stream().mapToDouble(fNumber -> marginsMag.isEmpty() ? Double.NEGATIVE_INFINITY
                : marginsMag.getOrDefault(Through.of(night, wish, camera, fNumber), Double.NEGATIVE_INFINITY))
                .toArray();
    }
}
