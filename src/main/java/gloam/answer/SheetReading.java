package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.frame.Bump;
import gloam.frame.LightImage;
import gloam.frame.OpeningEnds;
import gloam.frame.PictureTone;
import gloam.frame.PredictedTrail;
import gloam.frame.SheetCourse;
import gloam.frame.SheetScan;
import gloam.frame.TrailRise;
import gloam.gear.Camera;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.journal.Estimate;
import gloam.journal.ScanReading;
import gloam.proof.Picture;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.trail.Framing;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a scan of a spent sheet shows, laid under what is predicted for its entry in the journal.
 *
 * @param question what was asked
 * @param noted    where the camera is said to have pointed
 * @param tone     the tone of the sky in the middle of the sheet
 * @param drawn    what its trails show; empty on a blank sheet
 */
public record SheetReading(ReadQuestion question, Framing noted, ScanReading.Tone tone,
        Optional<Drawn> drawn) {

    private static final Duration POINTS_EVERY = Duration.ofMinutes(5);
    /** A camera is looked for within three degrees; so much more is predicted on each side. */
    private static final double BESIDE_DEG = 3.5;
    private static final int MOST_TRAILS = 60;
    private static final int LEAST_TRAILS = 4;
    private static final int FEW_TRAILS = 12;

    /** A picture with less on lines, as a share of it, is blank. */
    private static final double BLANK = 0.01;

    /**
     * What the trails on a sheet show.
     *
     * @param found      where the camera pointed, until it was bumped, its focal length as found
     * @param mirrored   whether the scan shows the sheet mirrored
     * @param residualMm how far the lines lie from the trails, in the mean
     * @param onLines    share of the trails laid over the scan that lies on bright lines, 0 to 1
     * @param openings   how each opening differs from what was noted
     * @param bumped     that it was moved meanwhile
     * @param course     when no trail was drawn
     * @param trails     each trail that should mark the sheet, those first that should stand out most; before
     *                   and after a bump for itself
     * @param contrast   how much more contrast the scan has than the sheet
     * @param limit      the faintest star that leaves a visible trail, by all of them
     * @param picture    the sheet, straightened
     */
    public record Drawn(Framing found, boolean mirrored, double residualMm, double onLines,
            List<OpeningEnds> openings, Optional<Bumped> bumped, SheetCourse course, List<ReadTrail> trails,
            ScanContrast contrast, Optional<ReadLimit> limit, Picture picture) {

        /** Copies the lists. */
        public Drawn {
            openings = List.copyOf(openings);
            trails = List.copyOf(trails);
        }

        /** V magnitude of the faintest star on the scan; empty where there is none. */
        public OptionalDouble faintestSeenMag() {
            return trails.stream().filter(trail -> trail.seen() && trail.track().kind() == Trails.Kind.STAR)
                    .mapToDouble(trail -> trail.track().magnitude()).max();
        }

        /** How many of the trails are on the scan. */
        public int seen() {
            return (int) trails.stream().filter(ReadTrail::seen).count();
        }
    }

    /**
     * That the camera was moved while the sheet was exposed.
     *
     * @param at    when
     * @param after where it pointed from then on
     */
    public record Bumped(Instant at, Framing after) {
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
    }

    /**
     * Reads a scan.
     *
     * @throws BadInput when it shows no picture, too little is predicted for the entry, or its trails are not
     *                  those of the entry
     */
    public static SheetReading of(Ephemeris ephemeris, List<Star> stars, ReadQuestion question) {
        Framing noted = question.noted();
        LightImage image = question.light();
        double[][] corners = question.corners(image);
        PictureTone light = SheetScan.tone(image, corners, question.frame(), question.negative());
        List<Trails.Track> predicted = marking(trails(ephemeris, stars, question,
                List.of(question.setting(wider(noted), question.openings()))));
        Optional<SheetScan> scan = predicted.size() < LEAST_TRAILS ? Optional.empty() : SheetScan.of(
                image, corners, question.negative(), noted, Stream.of(MOST_TRAILS, FEW_TRAILS)
                .map(most -> predicted.stream().limit(most).flatMap(track -> PredictedTrail.of(ephemeris,
                question.site(), track.trail().target(), question.openings()).stream()).toList()).toList(),
                question.site());
        if (scan.isEmpty() && light.lines() > BLANK) {
            throw new BadInput(predicted.size() < LEAST_TRAILS ? "only " + predicted.size() + " trails are "
                    + "predicted for this entry, too few to find where the camera pointed; check --film"
                    : "these trails are not of this entry; name its own entry, or check site, --roll, "
                    + "--frame " + "and --negative");
        }
        Optional<Drawn> drawn = scan.map(on -> drawn(question, on, light,
                trails(ephemeris, stars, question, settings(question, on))));
        return new SheetReading(question, noted, ReadTone.of(light, question.film().tone(),
                drawn.map(Drawn::contrast).orElse(ScanContrast.before(question.wedge()))), drawn);
    }

    /** What of it the journal keeps, of the scan in a file. */
    public ScanReading kept(String file, String sha256) {
        return new ScanReading(file, sha256, tone, drawn.map(on -> new ScanReading.Trails(on.found.aim(),
                on.found.roll(), on.found.camera().lens().focalLengthMm(), on.openings.stream().map(ends ->
                new ScanReading.Ends(ends.opensLaterS(), ends.opensErrorS(), ends.closesLaterS(),
                ends.closesErrorS())).toList(), on.trails.size(), on.seen(), on.limit.map(limit ->
                new Estimate(limit.magnitude(), limit.errorMag())), on.course.clouds(), on.bumped.map(bump ->
                new ScanReading.Bump(bump.at, bump.after.aim())))));
    }

    /** How the camera was set, before and after it was bumped. */
    private static List<Setting> settings(ReadQuestion question, SheetScan scan) {
        List<Interval> openings = question.openings();
        if (scan.bump().isEmpty()) {
            return List.of(question.setting(scan.framing(), openings));
        }
        Bump bump = scan.bump().get();
        List<Interval> late = List.of(new Interval(bump.at(), Interval.span(openings).endExclusive()));
        return List.of(question.setting(scan.framing(), openings.stream().flatMap(open ->
                open.without(late).stream()).toList()),
                question.setting(bump.framing(), Interval.intersect(openings, late)));
    }

    private static Drawn drawn(ReadQuestion question, SheetScan scan, PictureTone light,
            List<Trails> trails) {
        List<Trails.Track> tracks = marking(trails);
        List<TrailRise> rises = tracks.stream().map(track -> scan.rise(track.trail())).toList();
        double spotMm = question.entry().exposed().lens().spotMm(question.entry().exposed().fNumber());
        double spots = TrailRise.widthPx(rises).orElse(0) * scan.pixelMm() / spotMm;
        List<Lamp> lamps = IntStream.range(0, tracks.size()).filter(i ->
                tracks.get(i).kind() == Trails.Kind.STAR).mapToObj(i -> Lamp.of(tracks.get(i), rises.get(i),
                light.border().orElse(1), question.negative())).toList();
        ScanContrast contrast = ScanContrast.of(question.film().tone(), lamps,
                ScanContrast.before(question.wedge()));
        LightImage picture = scan.picture();
        return new Drawn(scan.framing(), scan.mirrored(), scan.aim().rmsPx() * scan.pixelMm(),
                scan.aim().onRidges(), scan.openings(), scan.bump().map(bump ->
                new Bumped(bump.at(), bump.framing())), scan.course(IntStream.range(0, tracks.size())
                .filter(i -> rises.get(i).seen()).mapToObj(i -> tracks.get(i).trail()).toList(),
                question.openings()), IntStream.range(0, tracks.size()).mapToObj(i ->
                new ReadTrail(tracks.get(i), rises.get(i).seen(), rises.get(i).level(), rises.get(i).error()))
                .toList(), contrast, ReadLimit.of(trails.get(0).sheet().orElseThrow().trailLimitMag(), lamps,
                spots / contrast.factor()),
                Picture.ofGrey(picture.width(), picture.height(),
                (x, y) -> picture.level((int) x, (int) y)));
    }

    /**
     * The trails that mark the sheet, those first that stand out most; the Moon's is as broad as its disc.
     */
    private static List<Trails.Track> marking(List<Trails> trails) {
        return trails.stream().flatMap(some -> some.tracks().stream())
                .filter(track -> track.kind() != Trails.Kind.MOON
                && track.mark().filter(Trails.Mark::records).isPresent())
                .sorted(Comparator.comparingDouble(track -> -track.mark().orElseThrow().stopsOverSky()))
                .toList();
    }

    private static List<Trails> trails(Ephemeris ephemeris, List<Star> stars, ReadQuestion question,
            List<Setting> settings) {
        return settings.stream().map(setting -> Trails.ofAll(ephemeris, new FrameQuestion(question.site(),
                setting, POINTS_EVERY, false), Optional.of(new Sheet(question.site(), question.film(),
                settings)), stars)).toList();
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
}
