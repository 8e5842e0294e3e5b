package gloam.frame;

import gloam.gear.Frame;
import gloam.gear.Site;
import gloam.trail.Framing;
import gloam.trail.Trail;
import gloam.units.Interval;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A scanned sheet that was laid under the trails predicted for it.
 *
 * <p><b>Model.</b> The picture is straightened by its corners in each way in which the sheet may lie on the
 * scan; the way in which most of the predicted trails lies on bright lines is the right one
 * ({@link TrailAim}). <b>Valid.</b> Sheets with some trails that begin or end on them, aims and rolls noted
 * to 3°. <b>Error.</b> A tenth of a degree. <b>Departures.</b> Paper that is not flat.
 *
 * @param picture  the picture, straightened
 * @param mirrored whether the scan shows it mirrored
 * @param aim      where the camera pointed, until it was bumped
 * @param bump     that it was moved meanwhile
 * @param openings how each opening differs from what was noted; nothing is known of a camera that was bumped
 * @param ridges   the bright lines on it
 */
public record SheetScan(LightImage picture, boolean mirrored, TrailAim aim, Optional<Bump> bump,
        List<OpeningEnds> openings, Ridges ridges) {

    /** Pixels along the longer side of a straightened picture. */
    private static final int SIDE_PX = 900;
    /** Sides that differ by less are taken for a square, which may lie on any of its sides. */
    private static final double SQUARE = 0.05;
    /** So many ways to lie are looked at closely. */
    private static final int PROMISING = 3;

    /** Copies the list. */
    public SheetScan {
        openings = List.copyOf(openings);
    }

    /**
     * Finds how a sheet lies on a scan and where its camera pointed.
     *
     * @param corners  the picture's corners on the scan, clockwise
     * @param negative whether the scan shows a negative
     * @param noted    where the camera is said to have pointed
     * @param trails   what is predicted, by as many as are thought to show; of several the first that is
     *                 found
     * @return empty where the trails are not those of the picture
     */
    public static Optional<SheetScan> of(LightImage scan, double[][] corners, boolean negative, Framing noted,
            List<List<PredictedTrail>> trails, Site site) {
        Frame frame = noted.camera().frame();
        double shape = frame.widthMm() / frame.heightMm();
        Vector3D pole = new Vector3D(0, site.latitude().cos(), site.latitude().sin());
        List<Lying> ways = IntStream.range(0, Straightened.WAYS).parallel().boxed()
                .filter(way -> suits(shape, Straightened.shape(Straightened.corners(corners, way))))
                .map(way -> {
                    LightImage picture = straightened(scan, Straightened.corners(corners, way), frame,
                            negative);
                    return new Lying(picture, way >= Straightened.WAYS / 2, new Ridges(picture));
                }).toList();
        return trails.stream().flatMap(all -> found(ways, noted, all, pole).map(laid -> read(laid, all, pole))
                .or(() -> halves(all).flatMap(half -> found(ways, noted, half, pole).stream())
                        .map(laid -> read(laid, all, pole)).filter(sheet -> sheet.bump.isPresent())
                        .findFirst()).stream()).findFirst();
    }

    /** A sheet as it may lie on a scan. */
    private record Lying(LightImage picture, boolean mirrored, Ridges ridges) {
    }

    /** What was drawn first of trails, and what was drawn last: a bump leaves one of these halves whole. */
    private static Stream<List<PredictedTrail>> halves(List<PredictedTrail> trails) {
        Instant middle = Bump.middle(trails);
        return Stream.of(trails.stream().map(trail -> trail.before(middle)).toList(),
                trails.stream().map(trail -> trail.from(middle)).toList());
    }

    private static Optional<Laid> found(List<Lying> ways, Framing noted, List<PredictedTrail> trails,
            Vector3D pole) {
        Map<Lying, TrailAim.Search> searches = new ConcurrentHashMap<>();
        ways.parallelStream().forEach(way -> searches.put(way, new TrailAim.Search(way.ridges,
                ImageMap.of(noted, way.picture), trails, pole,
                TrailAim.WITHIN_DEG)));
        return ways.stream().sorted(Comparator.comparingDouble(way -> -searches.get(way).promise()))
                .limit(PROMISING).toList().parallelStream()
                .flatMap(way -> searches.get(way).found().map(aim -> new Laid(way, aim)).stream())
                .max(Comparator.comparingDouble(laid -> laid.aim.onRidges() * laid.aim.endsSeen()));
    }

    /** A sheet with trails laid over it. */
    private record Laid(Lying way, TrailAim aim) {
    }

    private static SheetScan read(Laid laid, List<PredictedTrail> trails, Vector3D pole) {
        Ridges ridges = laid.way.ridges;
        Optional<Bump> bump = Bump.of(ridges, laid.aim, trails, pole);
        return new SheetScan(laid.way.picture, laid.way.mirrored, bump.map(Bump::before).orElse(laid.aim),
                bump, openings(ridges, laid.aim.map(), trails, bump.isPresent()), ridges);
    }

    private static boolean suits(double frame, double picture) {
        return Math.abs(Math.log(frame)) < SQUARE || frame > 1 == picture > 1;
    }

    private static List<OpeningEnds> openings(Ridges ridges, ImageMap map, List<PredictedTrail> trails,
            boolean bumped) {
        int count = trails.stream().mapToInt(PredictedTrail::opening).max().orElse(0) + 1;
        return IntStream.range(0, count).mapToObj(number -> {
            List<PredictedTrail> its = trails.stream().filter(trail -> trail.opening() == number).toList();
            return OpeningEnds.of(TrailEnds.of(ridges, map, bumped ? List.of() : its),
                    its.get(0).everyDeg());
        }).toList();
    }

    /** Where the camera pointed, until it was bumped, its focal length as found. */
    public Framing framing() {
        return aim.map().axes().framing();
    }

    /** Millimetres of the sheet to a pixel of the straightened picture. */
    public double pixelMm() {
        return framing().camera().frame().widthMm() / picture.width();
    }

    /** How far a trail stands over what is beside it on the picture. */
    public TrailRise rise(Trail trail) {
        return TrailRise.of(ridges, trail.stretches().stream().map(this::places).toList());
    }

    private List<double[]> places(Trail.Stretch stretch) {
        return stretch.points().stream().map(this::place).toList();
    }

    /** The place of a point of the sheet on the straightened picture, in pixels. */
    double[] place(Trail.Point point) {
        return new double[] {picture.width() / 2.0 + point.xMm() / pixelMm(),
            picture.height() / 2.0 - point.yMm() / pixelMm()};
    }

    /** What happened while the shutter was open, by trails that are on the scan. */
    public SheetCourse course(List<Trail> seen, List<Interval> openings) {
        return SheetCourse.of(this, seen, openings);
    }

    /** How light the sky of a picture is, be its trails known or not. */
    public static PictureTone tone(LightImage scan, double[][] corners, Frame frame, boolean negative) {
        LightImage picture = straightened(scan, corners, frame, negative);
        return PictureTone.of(scan, corners, picture, new Ridges(picture), negative);
    }

    private static LightImage straightened(LightImage scan, double[][] corners, Frame frame,
            boolean negative) {
        double pxAMm = SIDE_PX / Math.max(frame.widthMm(), frame.heightMm());
        return Straightened.of(scan, corners, (int) Math.round(pxAMm * frame.widthMm()),
                (int) Math.round(pxAMm * frame.heightMm()), negative);
    }
}
