package gloam.proof;

import gloam.ephemeris.Direction;
import gloam.exposure.ExposureEngine;
import gloam.exposure.StarSpot;
import gloam.gear.Site;
import gloam.sheet.Setting;
import gloam.trail.Framing;
import gloam.trail.Track;
import gloam.units.Interval;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Draws the trails of one setting of a sheet.
 *
 * <p>Each short piece of a trail brings the progress that sky and spot make together over what the sky makes
 * alone, on the area of the spot for the time of the piece; the air and the lens's fall-off dim it by where
 * it stands.
 */
final class TrailPainter {

    private static final double PIECE_PX = 6;
    private static final double LONGEST_PIECE_S = 300;

    private final Site site;
    private final Setting setting;
    private final List<Layer> layers;
    private final SkyMoments sky;
    private final Raster raster;
    private final TrailBrush brush;

    TrailPainter(Site site, Setting setting, List<Layer> layers, SkyMoments sky, Raster raster,
                 double[][] progress) {
        this.site = site;
        this.setting = setting;
        this.layers = layers;
        this.sky = sky;
        this.raster = raster;
        this.brush = new TrailBrush(raster, progress);
    }

    /** Draws all of a trail whose track covers the openings. */
    void paint(TrailLight light, Track track) {
        double discMm = StarSpot.discMm(setting.lens(), light.semidiameter());
        Spot spot = Spot.of(setting.lens(), setting.fNumber(), discMm, raster.pixelMm());
        for (Interval opening : setting.openings()) {
            int pieces = pieces(track, opening);
            Optional<Framing.Point> from = track.at(opening.start());
            for (int piece = 1; piece <= pieces; piece++) {
                double pieceS = opening.seconds() / pieces;
                Instant end = instant(opening, piece * pieceS);
                Optional<Framing.Point> to = track.at(end);
                if (from.isPresent() && to.isPresent() && near(from.get(), to.get(), spot.reachMm())) {
                    Instant middle = instant(opening, (piece - 0.5) * pieceS);
                    brush.stroke(spot, from.get(), to.get(),
                            amountsMm2(light, between(from.get(), to.get()), middle, pieceS));
                }
                from = to;
            }
        }
    }

    /** So many that on the frame they are about as long as wanted. */
    private int pieces(Track track, Interval opening) {
        double onFrameS = Interval.seconds(track.visits(opening));
        double speedMmS = onFrameS == 0 ? 0 : track.lengthMm(opening) / onFrameS;
        double pieceS = Math.min(LONGEST_PIECE_S, PIECE_PX * raster.pixelMm() / speedMmS);
        return (int) Math.ceil(opening.seconds() / pieceS);
    }

    private static Instant instant(Interval opening, double sinceS) {
        return opening.start().plusNanos(Math.round(sinceS * 1e9));
    }

    private static Framing.Point between(Framing.Point from, Framing.Point to) {
        return new Framing.Point((from.xMm() + to.xMm()) / 2, (from.yMm() + to.yMm()) / 2);
    }

    private boolean near(Framing.Point from, Framing.Point to, double reachMm) {
        double wideMm = raster.frame().widthMm() / 2 + reachMm;
        double highMm = raster.frame().heightMm() / 2 + reachMm;
        return Math.min(Math.abs(from.xMm()), Math.abs(to.xMm())) <= wideMm
                && Math.min(Math.abs(from.yMm()), Math.abs(to.yMm())) <= highMm;
    }

    /** What a piece brings to each layer: progress over the sky's own, times the area that gets it. */
    private double[] amountsMm2(TrailLight light, Framing.Point point, Instant at, double lastsS) {
        Direction direction = setting.framing().toSky(point.xMm(), point.yMm());
        StarSpot spot = StarSpot.of(setting.lens(), setting.fNumber(),
                light.magnitude() + ExposedFrame.lossMag(site, setting, direction), light.semidiameter());
        WideLight.Glow glow = sky.near(direction, at);
        double fallOff = setting.fallOff(direction);
        double areaMm2 = spot.widthMm() * spot.widthMm();
        return layers.stream().mapToDouble(layer -> {
            double skyLx = fallOff * PointProgress.illuminanceLx(setting, layer, glow);
            double spotLx = spot.illuminanceLx() * layer.band().share(light.colourBv());
            return lastsS * areaMm2 * (ExposureEngine.ratePerS(layer.film(), skyLx + spotLx)
                    - ExposureEngine.ratePerS(layer.film(), skyLx));
        }).toArray();
    }
}
