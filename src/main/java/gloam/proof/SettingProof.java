package gloam.proof;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.sheet.Setting;
import gloam.trail.Framing;
import gloam.trail.Track;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What the openings at one setting make of a sheet. */
final class SettingProof {

    private final Ephemeris ephemeris;
    private final Site site;
    private final Setting setting;
    private final List<Layer> layers;
    private final Raster raster;
    private final TrailEstimator estimator;

    SettingProof(Ephemeris ephemeris, Site site, Setting setting, List<Layer> layers, Raster raster) {
        this.ephemeris = ephemeris;
        this.site = site;
        this.setting = setting;
        this.layers = layers;
        this.raster = raster;
        this.estimator = new TrailEstimator(ephemeris, site);
    }

    /** Progress of each layer, row by row: sky and trails, the land over what stands behind it. */
    double[][] progress(SkyMoments sky, Optional<WideLight> ground, List<Star> stars) {
        double[][] progress = lit(sky, Fineness.of(setting, estimator));
        TrailPainter painter = new TrailPainter(site, setting, layers, sky, raster, progress);
        Interval whole = setting.whole();
        Predicate<Target> mayCross = estimator.mayCross(setting.framing(), whole);
        Stream<TrailLight> bodies = EnumSet.range(Body.MOON, Body.NEPTUNE).stream().map(body ->
                TrailLight.of(body, ephemeris.appearance(body, site, whole.middle())));
        List<Drawn> drawn = Stream.concat(bodies, stars.stream().map(TrailLight::of)).parallel()
                .filter(light -> mayCross.test(light.target()))
                .map(light -> new Drawn(light,
                        estimator.track(setting.framing(), light.target(), whole))).toList();
        drawn.forEach(trail -> painter.paint(trail.light, trail.track));
        cover(ground, progress);
        return progress;
    }

    /** Progress of each layer at a point of the sheet, trails left out. */
    double[] progress(SkyMoments sky, Optional<WideLight> ground, Framing.Point point) {
        Direction seen = setting.framing().toSky(point.xMm(), point.yMm());
        boolean land = seen.altitude().compareTo(site.skyline().altitudeAt(seen.azimuth())) < 0;
        return land && ground.isEmpty() ? new double[layers.size()]
                : new PointProgress(setting, layers, land ? ground.orElseThrow() : sky,
                Fineness.of(setting, estimator).panel()).at(point);
    }

    /**
     * The same at the frame's centre, the sky's light being that away from the Moon where it is in the frame.
     */
    double[] awayFromMoon(SkyMoments sky, Optional<WideLight> ground) {
        return AwayFromMoon.light(ephemeris, site, setting).map(away -> new PointProgress(setting, layers,
                away, Fineness.of(setting, estimator).panel()).at(setting.framing().aim()))
                .orElseGet(() -> progress(sky, ground, new Framing.Point(0, 0)));
    }

    /** Whether the Moon is in the frame. */
    boolean hasMoon() {
        return AwayFromMoon.concerns(ephemeris, site, setting.framing(), setting.openings());
    }

    private record Drawn(TrailLight light, Track track) {
    }

    private double[][] lit(WideLight light, Fineness fineness) {
        return LightMesh.progress(raster, new PointProgress(setting, layers, light, fineness.panel()),
                fineness.cells());
    }

    /** Puts the land, black where it is not lit, over what stands behind it. */
    private void cover(Optional<WideLight> ground, double[][] progress) {
        boolean[] land = Land.of(raster, setting.framing(), site.skyline());
        double[][] shown = ground.map(light -> lit(light, Fineness.SMOOTH))
                .orElseGet(() -> new double[layers.size()][land.length]);
        for (int layer = 0; layer < progress.length; layer++) {
            for (int pixel = 0; pixel < land.length; pixel++) {
                progress[layer][pixel] = land[pixel] ? shown[layer][pixel] : progress[layer][pixel];
            }
        }
    }
}
