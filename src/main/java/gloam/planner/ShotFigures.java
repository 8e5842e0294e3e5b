package gloam.planner;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.exposure.Exposure;
import gloam.exposure.ExposureEngine;
import gloam.exposure.ExposureTable.PassingStars;
import gloam.exposure.LightCurve;
import gloam.exposure.TrailLimit;
import gloam.gear.Lens;
import gloam.light.Atmosphere;
import gloam.trail.Framing;
import gloam.trail.Trail;
import gloam.units.Interval;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Works out to the full what a chosen shot will be: light without sampling, its trail, its stars. */
final class ShotFigures {

    private static final Duration TRAIL_STEP = Duration.ofMinutes(5);

    private final Trip trip;
    private final Wish wish;
    private final Kit kit;
    private final NightSky sky;
    private final StarField stars;

    /** Figures of a wish's shots on a night. */
    ShotFigures(Trip trip, Wish wish, NightSky sky, StarField stars) {
        this.trip = trip;
        this.wish = wish;
        this.kit = Kit.of(trip, wish);
        this.sky = sky;
        this.stars = stars;
    }

    /** The window of a shot that was chosen. */
    Plan.Window window(int sheet, Candidate<Shot> chosen) {
        Shot shot = chosen.shot();
        Framing framing = shot.framing();
        Interval open = sky.clock().span(shot.openMin(), shot.closeMin());
        LightCurve light = FramedLight.of(sky, framing, shot.fNumber());
        double progress = ExposureEngine.progress(kit.film(), light, open);
        Exposure exposure = ExposureEngine.exposure(kit.film(), light, open, ExposureEngine.toneStops(progress));
        Trail trail = trail(framing, open);
        Lens lens = kit.camera().lens();
        PassingStars passing = PassingStars.of(lens, PassingStars.told(lens, Optional.of(kit.camera().frame()),
                framing.aim().declination(sky.site().latitude())).degrees(),
                sky.site().extinctionMag() * Atmosphere.airmass(framing.aim().altitude()));
        TrailLimit.Circumstances on = new TrailLimit.Circumstances(kit.film(), lens, shot.fNumber(), open.seconds(),
                progress, light.illuminanceLx(open.middle()), passing.imageSpeedMmS(), passing.lossMag());
        LimitBySpeed limit = LimitBySpeed.of(on, FrameStars.equatorMmS(lens));
        FrameStars inFrame = FrameStars.of(sky, framing, open, stars);
        int recorded = inFrame.recorded(limit);
        return new Plan.Window(sheet, wish, open, framing.aim(), shot.fNumber(), exposure.meteredS(),
                open.seconds(), exposure.toneStops(), exposure.spreadStops(), TrailLimit.magnitude(on),
                inFrame.count(), recorded, trail.lengthMm(), trail.direction(), moon(framing, open), clearChance(open),
                Math.min(wish.worth(), chosen.value()),
                Miss.of(wish, exposure.toneStops(), trail.lengthMm(), recorded, shot.shortfallMag()),
                Setting.of(wish, open, sky.light(framing.aim(), open.middle()).total(), sky));
    }

    private OptionalDouble clearChance(Interval open) {
        return trip.forecast().map(weather -> weather.clearChance(open)).orElse(OptionalDouble.empty());
    }

    private Trail trail(Framing framing, Interval open) {
        return sky.trails().trail(framing, new Aiming(wish.aim(), sky, kit.camera()).centre(framing, open), open,
                TRAIL_STEP).orElseThrow();
    }

    private Plan.MoonView moon(Framing framing, Interval open) {
        Appearance moon = sky.ephemeris().appearance(Body.MOON, sky.site(), open.middle());
        return new Plan.MoonView(moon.position(), moon.illuminatedFraction(),
                moon.position().apparentDirection().to(framing.aim()));
    }
}
