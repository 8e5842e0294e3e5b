package gloam.answer;

import gloam.exposure.ExposureTable;
import gloam.exposure.Shutter;
import gloam.gear.FNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How the tone of what is exposed for grows at one f-number until the shutter must be closed.
 *
 * @param fNumber the f-number
 * @param points  the tone by when the shutter is closed
 */
public record ToneCourse(FNumber fNumber, List<ClosedTone> points) {

    private static final int POINTS = 48;
    private static final Duration LEAST_STEP = Duration.ofSeconds(10);

    /** Copies the list. */
    public ToneCourse {
        points = List.copyOf(points);
    }

    /**
     * The tone of a sheet closed at an instant.
     *
     * @param toneStops   in stops from the mid-tone
     * @param spreadStops its standard deviation
     */
    public record ClosedTone(Instant closeAt, double toneStops, double spreadStops) {
    }

    /** The course of a sheet; without points where it is shorter than some seconds. */
    static ToneCourse of(ExposureTable table, FNumber fNumber, Shutter shutter) {
        Duration whole = shutter.available().lasts();
        return new ToneCourse(fNumber, IntStream.rangeClosed(1, POINTS)
                .mapToObj(i -> whole.multipliedBy(i).dividedBy(POINTS))
                .filter(lasts -> lasts.compareTo(LEAST_STEP) >= 0).map(lasts -> {
                    ExposureTable.Row row = table.after(fNumber, lasts);
                    return new ClosedTone(shutter.opensAt().plus(lasts), row.exposure().toneStops(),
                            row.exposure().spreadStops());
                }).filter(point -> Double.isFinite(point.toneStops())).toList());
    }
}
