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
import gloam.exposure.ExposedSheet;
import gloam.exposure.TrailLimit;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.Atmosphere;
import gloam.light.SkyLight;
import gloam.proof.AwayFromMoon;
import gloam.proof.ExposedFrame;
import gloam.sheet.Setting;
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
import java.util.stream.Stream;

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

    /**
     * The window of a shot that was chosen, of some worth times its chance, and the stars of its first
     * opening.
     */
    Plan.Window window(int sheet, Made made, Optional<CloudCover> cloud, double worth, StarCount count) {
        ExposureChoice shot = made.exposure();
        Framing framing = shot.framing();
        Interval open = sky.clock().span(shot.openMin(), shot.closeMin());
        Function<Instant, SkyLight.Sample> seen = seen(wish, framing);
        LightCurve light = light(seen, shot.fNumber());
        double own = ExposureEngine.progress(kit.film(), light, open);
        List<Setting> all = settings(shot);
        List<Setting> later = all.subList(1, all.size());
        double progress = own + shot.later().stream().mapToDouble(this::progress).sum();
        Exposure exposure = ExposureEngine.exposure(kit.film(), light, Shutter.on(open),
                ExposureEngine.toneStops(own), SkyDoubt.of(seen, DOUBT_STEP));
        double toneStops = ExposureEngine.toneStops(progress);
        double spreadStops = later.isEmpty() ? exposure.spreadStops() : ExposureEngine.spreadStops(kit.film(),
                kit.film().reciprocity().meteredS((open.seconds() + Interval.seconds(later.stream()
                .map(Setting::whole).toList())) / progress),
                SkyDoubt.of(seen, DOUBT_STEP).stops(List.of(open)));
        Trail trail = trail(framing, open);
        Lens lens = kit.camera().lens();
        PassingStars passing = PassingStars.of(lens,
                PassingStars.told(lens, Optional.of(kit.camera().frame()),
                framing.aim().declination(sky.site().latitude())).degrees(),
                Atmosphere.lossMag(sky.site().extinctionMag(), framing.aim().altitude()));
        TrailLimit.Passing on = new TrailLimit.Passing(new ExposedSheet(kit.film(), lens, shot.fNumber(),
                open.seconds(), progress, light.illuminanceLx(open.middle())), passing.imageSpeedMmS(),
                passing.lossMag());
        StarCount stars = later.stream().map(setting -> count(setting, all)).reduce(count, StarCount::plus);
        return new Plan.Window(sheet, wish, kit.camera(), kit.film(), open, framing.aim(), shot.fNumber(),
                later, exposure.meteredS(),
                open.seconds(), toneStops, spreadStops, TrailLimit.magnitude(on), stars, trail.lengthMm(),
                trail.direction(), moon(framing, open), cloud, worth,
                Miss.of(wish, toneStops, trail.lengthMm(), count.recorded(), -shot.marginMag(),
                        shot.faintest()),
                WindowSky.of(wish, open, seen.apply(open.middle()).total(), sky.night()), made.slack());
    }

    /** The stars of the first opening of a shot. */
    StarCount count(ExposureChoice shot) {
        List<Setting> all = settings(shot);
        return count(all.get(0), all);
    }

    private List<Setting> settings(ExposureChoice shot) {
        return Stream.concat(Stream.of(new Setting(shot.framing(), shot.fNumber(),
                List.of(sky.clock().span(shot.openMin(), shot.closeMin())))),
                shot.later().stream().map(this::setting)).toList();
    }

    private Setting setting(ExposureChoice.Later later) {
        return new Setting(later.framing(), later.fNumber(),
                List.of(sky.clock().span(later.openMin(), later.closeMin())));
    }

    private double progress(ExposureChoice.Later later) {
        return ExposureEngine.progress(kit.film(), light(seen(later.wish(), later.framing()),
                later.fNumber()), sky.clock().span(later.openMin(), later.closeMin()));
    }

    private LightCurve light(Function<Instant, SkyLight.Sample> seen, FNumber fNumber) {
        return at -> FilmPlane.illuminanceLx(kit.camera().lens(), fNumber, seen.apply(at).total());
    }

    /** The stars of a setting on a sheet that is exposed at several. */
    StarCount count(Setting setting, List<Setting> all) {
        Sheet sheet = new Sheet(sky.site(), kit.film(), all);
        FramedTrails trails = new FramedTrails(new TrailEstimator(ephemeris, sky.site()),
                sky.site().skyline(), setting.framing(), setting.openings());
        return StarCount.of(stars.catalogue(), trails, new ExposedFrame(ephemeris, sheet, setting));
    }

    /**
     * The light at the frame's centre, exact at every instant; that of a picture with the Moon away from it.
     */
    private Function<Instant, SkyLight.Sample> seen(Wish wanted, Framing framing) {
        if (!wanted.letsMoonIn()) {
            return at -> sky.light(framing.aim(), at);
        }
        return AwayFromMoon.seen(sky.ephemeris(), sky.site(), framing);
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
