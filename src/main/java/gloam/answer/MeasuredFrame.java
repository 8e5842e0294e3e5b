package gloam.answer;

import gloam.ephemeris.Daylight;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.frame.Comparison;
import gloam.frame.FrameData;
import gloam.frame.FrameSettings;
import gloam.frame.FrameSky;
import gloam.frame.LightImage;
import gloam.frame.Patch;
import gloam.frame.Taken;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Median;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What a digital frame measures of the sky over a site.
 *
 * @param name       what the frame is called
 * @param camera     the camera's name for itself
 * @param taken      how it was taken
 * @param sky        what it shows
 * @param model      what the model has for each piece of it
 * @param comparison the two beside each other
 * @param clockAheadS by how much the camera's clock is ahead, if it was said where the camera pointed and the
 *                   stars show another aim
 */
public record MeasuredFrame(String name, Optional<String> camera, Taken taken, FrameSky sky,
        List<SkyLight.Sample> model,
                            Comparison comparison, OptionalDouble clockAheadS) {

    private static final double MIDDLE = 0.25;
    private static final int THIRDS = 3;
    /** A clock is known to half a degree of the sky's turn at best, since an aim is said to that. */
    private static final double LEAST_CLOCK_S = 150;

    /** Copies the list. */
    public MeasuredFrame {
        model = List.copyOf(model);
    }

    /**
     * A frame to be measured.
     *
     * @param name  what it is called
     * @param image its light
     * @param taken how it was taken
     * @param said  where the camera pointed, where that was said
     * @param camera the camera's name for itself
     */
    public record Question(String name, LightImage image, Taken taken, Optional<FrameSky.Said> said,
                           Optional<String> camera) {

        /**
         * The question of a frame that says this and of which that is said; its clock shows the time of a
         * zone.
         *
         * @throws BadInput when something is missing
         */
        public static Question of(String name, LightImage image, FrameData data, FrameSettings said,
                ZoneId zone) {
            try {
                return new Question(name, image, said.of(image, data, zone), said.said(), data.camera());
            } catch (BadInput bad) {
                throw bad.from(name);
            }
        }
    }

    /**
     * A star that was found.
     *
     * @param name      its name
     * @param magnitude how bright it is seen, what the air takes included
     * @param xShare    its place from the left edge, as a share of the frame's width
     * @param yShare    its place from the upper edge, as a share of its height
     */
    public record StarFound(String name, double magnitude, double xShare, double yShare) {
    }

    /** Measures a frame taken at a site. */
    public static MeasuredFrame of(Ephemeris ephemeris, Site site, List<Star> stars, Question frame) {
        try {
            Daylight.refuse(ephemeris, site, List.of(Interval.lasting(frame.taken().openedAt(),
                    frame.taken().exposure())), "check the camera's clock, --at and the place");
            FrameSky sky = FrameSky.of(ephemeris, site, stars, frame.image(), frame.taken(), frame.said());
            SkyLight.Moment moment = new SkyLight(ephemeris, site).moment(frame.taken().middle());
            List<SkyLight.Sample> model = sky.patches().stream().map(patch -> moment.at(patch.direction()))
                    .toList();
            return new MeasuredFrame(frame.name(), frame.camera(), frame.taken(), sky, model,
                    Comparison.of(sky.framing(), sky.patches(), model), clock(site, frame, sky));
        } catch (BadInput bad) {
            throw bad.from(frame.name());
        }
    }

    private static OptionalDouble clock(Site site, Question frame, FrameSky sky) {
        OptionalDouble ahead = frame.said().isEmpty() || sky.byStars().isEmpty() ? OptionalDouble.empty()
                : frame.said().get().clockAheadS(site, sky.framing().aim());
        return ahead.isPresent() && Math.abs(ahead.getAsDouble()) < LEAST_CLOCK_S ? OptionalDouble.empty()
                : ahead;
    }

    /** By how much a piece is brighter than the model, in mag. */
    public double brighterMag(int piece) {
        return Comparison.brighterMag(sky.patches().get(piece), model.get(piece));
    }

    /** The sky in the middle of the frame, the median of the pieces there; empty where none was measured. */
    public Optional<SkyBrightness> middle() {
        double[] mags = sky.patches().stream().filter(patch -> Math.abs(patch.xShare() - 0.5) < MIDDLE
                && Math.abs(patch.yShare() - 0.5) < MIDDLE)
                .mapToDouble(patch -> patch.brightness().magArcsec2()).toArray();
        return mags.length == 0 ? Optional.empty()
                : Optional.of(SkyBrightness.ofMagArcsec2(Median.of(mags)));
    }

    /** One standard deviation of the sky in the middle, in mag. */
    public double middleErrorMag() {
        return Median.of(sky.patches().stream().mapToDouble(MeasuredFrame::errorMag).toArray());
    }

    /** The stars that were found, brightest first. */
    public List<StarFound> stars() {
        return sky.byStars().stream().flatMap(aim -> aim.matched().stream().map(pair -> new StarFound(
                pair.star().name(), pair.star().magnitude(), pair.detection().x() / aim.map().width(),
                pair.detection().y() / aim.map().height()))).toList();
    }

    /** One standard deviation, in mag, of a piece's sky. */
    public static double errorMag(Patch patch) {
        return Math.hypot(patch.sharedErrorMag(), patch.scatterMag());
    }

    /**
     * Measurements for a trip file: of each third of the frame, from left to right, the piece whose
     * difference from the model is the third's median.
     *
     * @param beside how many measurements share what all pieces are off by alike; each bears the more of it,
     *               so that all together they count as one
     */
    List<SkyReading> readings(int beside) {
        List<SkyReading> readings = new ArrayList<>();
        for (List<Integer> third : thirds()) {
            Patch patch = sky.patches().get(third.get(third.size() / 2));
            readings.add(new SkyReading(taken.middle(), patch.direction().azimuth(),
                    patch.direction().altitude(), patch.brightness().magArcsec2(),
                    within(Math.hypot(patch.sharedErrorMag() * Math.sqrt(beside), patch.scatterMag()))));
        }
        return readings;
    }

    /** How many measurements it gives. */
    int readings() {
        return thirds().size();
    }

    private static double within(double errorMag) {
        return Math.max(SkyReading.SPREAD.least(), Math.min(SkyReading.SPREAD.most(), errorMag));
    }

    /** The pieces of each third that a trip file may have, by how they differ from the model. */
    private List<List<Integer>> thirds() {
        List<Integer> usable = IntStream.range(0, sky.patches().size())
                .filter(i -> usable(sky.patches().get(i)))
                .boxed().sorted(Comparator.comparingDouble(i -> sky.patches().get(i).xShare())).toList();
        List<List<Integer>> thirds = new ArrayList<>();
        for (int third = 0; third < THIRDS; third++) {
            List<Integer> its = usable.subList(third * usable.size() / THIRDS,
                    (third + 1) * usable.size() / THIRDS);
            if (!its.isEmpty()) {
                thirds.add(its.stream().sorted(Comparator.comparingDouble(this::brighterMag)).toList());
            }
        }
        return thirds;
    }

    private static boolean usable(Patch patch) {
        double mag = patch.brightness().magArcsec2();
        return patch.direction().altitude().degrees() >= SkyReading.ALTITUDE.least()
                && mag >= SkyReading.BRIGHTNESS.least() && mag <= SkyReading.BRIGHTNESS.most();
    }
}
