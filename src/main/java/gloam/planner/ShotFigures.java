package gloam.planner;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.exposure.Exposure;
import gloam.exposure.ExposureEngine;
import gloam.exposure.ExposureTable.PassingStars;
import gloam.exposure.FilmPlane;
import gloam.exposure.LightCurve;
import gloam.exposure.Shutter;
import gloam.exposure.SkyDoubt;
import gloam.exposure.TrailLimit;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.Atmosphere;
import gloam.light.SkyLight;
import gloam.proof.ExposedFrame;
import gloam.sheet.Sheet;
import gloam.proof.StarCount;
import gloam.trail.FramedTrails;
import gloam.trail.Framing;
import gloam.trail.Trail;
import gloam.trail.TrailEstimator;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Works out to the full what a chosen shot will be: light without sampling, its trail, its stars. */
final class ShotFigures {

    private static final Duration TRAIL_STEP = Duration.ofMinutes(5);
    private static final Duration DOUBT_STEP = Duration.ofMinutes(10);

    private final Wish wish;
    private final Equipment kit;
    private final NightSky sky;
    private final Ephemeris ephemeris;
    private final StarField stars;

    /**
     * Figures of a wish's shots on a night, stars placed by an ephemeris that several threads may ask at
     * once.
     */
    ShotFigures(Wish wish, Equipment with, NightSky sky, Ephemeris ephemeris, StarField stars) {
        this.wish = wish;
        this.kit = with;
        this.sky = sky;
        this.ephemeris = ephemeris;
        this.stars = stars;
    }

    /** The window of a shot that was chosen, of some worth times its chance. */
    Plan.Window window(int sheet, SiteNight.Made made, Optional<CloudCover> cloud, double worth) {
        ExposureChoice shot = made.exposure();
        Framing framing = shot.framing();
        Interval open = sky.clock().span(shot.openMin(), shot.closeMin());
        Function<Instant, SkyLight.Sample> seen = seen(framing);
        LightCurve light = at -> FilmPlane.illuminanceLx(kit.camera().lens(), shot.fNumber(),
                seen.apply(at).total());
        double progress = ExposureEngine.progress(kit.film(), light, open);
        Exposure exposure = ExposureEngine.exposure(kit.film(), light, Shutter.on(open),
                ExposureEngine.toneStops(progress), SkyDoubt.of(seen, DOUBT_STEP));
        Trail trail = trail(framing, open);
        Lens lens = kit.camera().lens();
        PassingStars passing = PassingStars.of(lens,
                PassingStars.told(lens, Optional.of(kit.camera().frame()),
                framing.aim().declination(sky.site().latitude())).degrees(),
                Atmosphere.lossMag(sky.site().extinctionMag(), framing.aim().altitude()));
        TrailLimit.Circumstances on = new TrailLimit.Circumstances(kit.film(), lens, shot.fNumber(),
                open.seconds(),
                progress, light.illuminanceLx(open.middle()), passing.imageSpeedMmS(), passing.lossMag());
        StarCount count = count(framing, shot.fNumber(), open);
        return new Plan.Window(sheet, wish, open, framing.aim(), shot.fNumber(), exposure.meteredS(),
                open.seconds(), exposure.toneStops(), exposure.spreadStops(), TrailLimit.magnitude(on),
                count, trail.lengthMm(), trail.direction(), moon(framing, open),
                cloud, worth,
                Miss.of(wish, exposure.toneStops(), trail.lengthMm(), count.recorded(), -shot.marginMag(),
                        shot.faintest()),
                WindowSky.of(wish, open, seen.apply(open.middle()).total(), sky), made.slack());
    }

    /** The stars on a sheet. */
    StarCount count(Framing framing, FNumber fNumber, Interval open) {
        Sheet sheet = Sheet.of(sky.site(), kit.film(), framing, fNumber, List.of(open));
        FramedTrails trails = new FramedTrails(new TrailEstimator(ephemeris, sky.site()),
                sky.site().skyline(), framing, sheet.openings());
        return StarCount.of(stars.catalogue(), trails, new ExposedFrame(ephemeris, sheet));
    }

    /**
     * The light at the frame's centre, exact at every instant; that of a picture with the Moon away from it.
     */
    private Function<Instant, SkyLight.Sample> seen(Framing framing) {
        if (!wish.letsMoonIn()) {
            return at -> sky.light(framing.aim(), at);
        }
        SkyLight light = new SkyLight(sky.ephemeris(), sky.site());
        AwayFromMoon frame = new AwayFromMoon(framing, light::patch);
        return at -> frame.light(sky.ephemeris().position(Body.MOON, sky.site(), at).apparentDirection(),
                light.moment(at)::at);
    }

    private Trail trail(Framing framing, Interval open) {
        return sky.trails().trail(framing, new Aiming(wish.aim(), sky, kit.camera()).centre(framing, open),
                open, TRAIL_STEP).orElseThrow();
    }

    private Plan.MoonView moon(Framing framing, Interval open) {
        Appearance moon = sky.ephemeris().appearance(Body.MOON, sky.site(), open.middle());
        return new Plan.MoonView(moon.position(), moon.illuminatedFraction(),
                moon.position().apparentDirection().to(framing.aim()));
    }
}
