package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.film.FilmStock;
import gloam.frame.LightImage;
import gloam.frame.OpeningEnds;
import gloam.frame.PictureEdges;
import gloam.frame.PredictedTrail;
import gloam.frame.SheetScan;
import gloam.frame.TrailRise;
import gloam.gear.Camera;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.journal.Entry;
import gloam.journal.Opening;
import gloam.proof.Picture;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a scan of a spent sheet shows, laid under what is predicted for its entry in the journal.
 *
 * @param question   what was asked
 * @param noted      where the camera is said to have pointed
 * @param found      where it pointed, its focal length as found
 * @param mirrored   whether the scan shows the sheet mirrored
 * @param residualMm how far the lines lie from the trails, in the mean
 * @param onLines    share of the trails laid over the scan that lies on bright lines, 0 to 1
 * @param openings   how each opening differs from what was noted
 * @param trails     each trail that should mark the sheet, those first that should stand out most
 * @param picture    the sheet, straightened
 */
public record SheetReading(Question question, Framing noted, Framing found, boolean mirrored,
        double residualMm, double onLines, List<OpeningEnds> openings, List<ReadTrail> trails,
        Picture picture) {

    private static final Duration POINTS_EVERY = Duration.ofMinutes(5);
    /** A camera is looked for within three degrees; so much more is predicted on each side. */
    private static final double BESIDE_DEG = 3.5;
    private static final int MOST_TRAILS = 60;
    private static final int LEAST_TRAILS = 4;
    private static final int FEW_TRAILS = 12;

    /** Copies the lists. */
    public SheetReading {
        openings = List.copyOf(openings);
        trails = List.copyOf(trails);
    }

    /**
     * A scan to be read.
     *
     * @param entry    the sheet's entry
     * @param site     where it was exposed
     * @param frame    the exposed area
     * @param roll     the camera's turn about its axis
     * @param film     its film
     * @param image    the scan
     * @param crop     the picture's left and upper edge, width and height as shares of the scan; empty where
     *                 its edges are to be found
     * @param negative whether the scan shows a negative
     */
    public record Question(Entry entry, Site site, Frame frame, Angle roll, FilmStock film, LightImage image,
            Optional<Crop> crop, boolean negative) {

        private List<Interval> openings() {
            return entry.exposed().openings().stream().map(Opening::open).toList();
        }

        private Framing noted() {
            return new Framing(entry.exposed().aim().orElseThrow(() -> new BadInput("the entry does not say "
                    + "where the camera pointed; add it by gloam journal add --corrects " + entry.id()
                    + " --azimuth DEG --altitude DEG")), roll,
                    new Camera("camera", entry.exposed().lens(), frame, Duration.ZERO));
        }

        private double[][] corners() {
            return crop.map(part -> part.corners(image)).or(() -> PictureEdges.of(image)).orElseThrow(() ->
                    new BadInput("no picture with four straight edges is found on it; give its place with "
                    + "--crop X,Y,W,H"));
        }
    }

    /**
     * The part of a scan that is the picture, in shares of the scan's width and height.
     *
     * @param left   its left edge
     * @param top    its upper edge
     * @param width  its width
     * @param height its height
     */
    public record Crop(double left, double top, double width, double height) {

        private static final int NUMBERS = 4;
        private static final double PERCENT = 100;

        /** The part that a text such as {@code 10,8,80,76} means, in percent. */
        public static Crop of(String text) {
            double[] percent;
            try {
                percent = Arrays.stream(text.split(",", -1)).map(String::strip)
                        .mapToDouble(Double::parseDouble).toArray();
            } catch (NumberFormatException noNumber) {
                percent = new double[0];
            }
            if (percent.length != NUMBERS || !(percent[0] >= 0 && percent[1] >= 0 && percent[2] > 0
                    && percent[3] > 0 && percent[0] + percent[2] <= PERCENT
                    && percent[1] + percent[3] <= PERCENT)) {
                throw new BadInput("\"" + text + "\" is no part of a scan; give left edge, upper edge, width "
                        + "and height in percent, such as 10,8,80,76");
            }
            return new Crop(percent[0] / PERCENT, percent[1] / PERCENT, percent[2] / PERCENT,
                    percent[3] / PERCENT);
        }

        private double[][] corners(LightImage image) {
            double x = left * image.width();
            double y = top * image.height();
            double right = x + width * image.width();
            double lower = y + height * image.height();
            return new double[][] {{x, y}, {right, y}, {right, lower}, {x, lower}};
        }
    }

    /**
     * A trail that is predicted for where the camera pointed.
     *
     * @param track as it is predicted
     * @param seen  whether it is on the scan
     * @param level by which share of white its level lies over that beside it, coded as sRGB
     * @param error one standard deviation of that
     */
    public record ReadTrail(Trails.Track track, boolean seen, double level, double error) {

        private static ReadTrail of(Trails.Track track, SheetScan scan) {
            TrailRise rise = scan.rise(track.trail());
            return new ReadTrail(track, rise.seen(), rise.level(), rise.error());
        }
    }

    /**
     * Reads a scan.
     *
     * @throws BadInput when it shows no picture, too little is predicted for the entry, or its trails are not
     *                  those of the entry
     */
    public static SheetReading of(Ephemeris ephemeris, List<Star> stars, Question question) {
        Framing noted = question.noted();
        double[][] corners = question.corners();
        List<Trails.Track> predicted = marking(trails(ephemeris, stars, question, wider(noted)));
        if (predicted.size() < LEAST_TRAILS) {
            throw new BadInput("only " + predicted.size() + " trails are predicted for this entry, too few "
                    + "to find where the camera pointed");
        }
        SheetScan scan = SheetScan.of(question.image, corners, question.negative, noted,
                Stream.of(MOST_TRAILS, FEW_TRAILS).map(most -> predicted.stream().limit(most)
                .flatMap(track -> PredictedTrail.of(ephemeris, question.site, track.trail().target(),
                question.openings()).stream()).toList()).toList(), question.site)
                .orElseThrow(() -> new BadInput("these trails are not of this entry; name its own entry, or "
                        + "check site, --roll, --frame and --negative"));
        Framing found = scan.framing();
        LightImage picture = scan.picture();
        return new SheetReading(question, noted, found, scan.mirrored(), scan.aim().rmsPx() * scan.pixelMm(),
                scan.aim().onRidges(), scan.openings(), marking(trails(ephemeris, stars, question, found))
                .stream().map(track -> ReadTrail.of(track, scan)).toList(),
                Picture.ofGrey(picture.width(), picture.height(),
                (x, y) -> picture.level((int) x, (int) y)));
    }

    /**
     * The trails that mark the sheet, those first that stand out most; the Moon's is as broad as its disc.
     */
    private static List<Trails.Track> marking(Trails trails) {
        return trails.tracks().stream().filter(track -> track.kind() != Trails.Kind.MOON
                && track.mark().filter(Trails.Mark::records).isPresent())
                .sorted(Comparator.comparingDouble(track -> -track.mark().orElseThrow().stopsOverSky()))
                .toList();
    }

    private static Trails trails(Ephemeris ephemeris, List<Star> stars, Question question, Framing framing) {
        Setting setting = new Setting(framing, question.entry.exposed().fNumber(), question.openings());
        return Trails.ofAll(ephemeris, new FrameQuestion(question.site, setting, POINTS_EVERY, false),
                Optional.of(new Sheet(question.site, question.film, List.of(setting))), stars);
    }

    /** The same aim with a sheet that catches also what a camera a little beside it would. */
    private static Framing wider(Framing noted) {
        Camera camera = noted.camera();
        Lens lens = camera.lens();
        double besideMm = 2 * lens.imageDistanceMm() * Math.tan(Math.toRadians(BESIDE_DEG));
        Frame frame = new Frame(Math.min(Frame.SIDE.most(), camera.frame().widthMm() + besideMm),
                Math.min(Frame.SIDE.most(), camera.frame().heightMm() + besideMm));
        return new Framing(noted.aim(), noted.roll(), new Camera(camera.name(), lens, frame,
                camera.changeover()));
    }

    /** V magnitude of the faintest star on the scan; empty where there is none. */
    public OptionalDouble faintestSeenMag() {
        return trails.stream().filter(trail -> trail.seen() && trail.track().kind() == Trails.Kind.STAR)
                .mapToDouble(trail -> trail.track().magnitude()).max();
    }

    /** How many of the trails are on the scan. */
    public long seen() {
        return trails.stream().filter(ReadTrail::seen).count();
    }
}
