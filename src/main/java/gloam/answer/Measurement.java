package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.frame.Calibration;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.units.BadInput;
import java.util.List;
import java.util.function.Supplier;

/**
 * What digital frames measure of the sky over a site.
 *
 * @param site     where
 * @param frames   the frames, in the order given
 * @param readings what they measure, for a trip file
 */
public record Measurement(Site site, List<MeasuredFrame> frames, List<SkyReading> readings) {

    /** Copies the lists. */
    public Measurement {
        frames = List.copyOf(frames);
        readings = List.copyOf(readings);
    }

    /** Measures frames taken at a site, each read when its turn comes. */
    public static Measurement of(Ephemeris ephemeris, Site site, List<Star> stars,
            List<Supplier<MeasuredFrame.Question>> questions) {
        List<MeasuredFrame> frames = questions.stream()
                .map(frame -> MeasuredFrame.of(ephemeris, site, stars, frame.get())).toList();
        int all = frames.stream().mapToInt(MeasuredFrame::readings).sum();
        return new Measurement(site, frames, frames.stream().flatMap(frame ->
                frame.readings(all).stream()).toList());
    }

    /**
     * What the first frame says of its camera, the sky in its middle being known.
     *
     * @param knownMagArcsec2 that sky, V mag/arcsec²
     * @param errorMag        one standard deviation of it
     */
    public Calibration calibration(double knownMagArcsec2, double errorMag) {
        MeasuredFrame frame = frames.get(0);
        double found = frame.middle().orElseThrow(() -> new BadInput("the middle of the frame shows no "
                + "sky; take one that does")).magArcsec2();
        return new Calibration(frame.camera().orElse(""), knownMagArcsec2 - found
                + frame.taken().calibration().offsetMag(), errorMag, true);
    }
}
