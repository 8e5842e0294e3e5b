package gloam.proof;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.exposure.ExposedSheet;
import gloam.exposure.SkyOnFilm;
import gloam.gear.Site;
import gloam.light.Atmosphere;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.trail.Framing;
import gloam.trail.Trail;
import gloam.units.Angle;
import java.time.Instant;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** What the sky makes of an exposed sheet wherever a trail runs over it. */
public final class ExposedFrame {

    /** A stop seen from 90° and more lets nothing through; what little is kept saves the logarithm. */
    private static final double LEAST_SHARE = 1e-9;

    private final Sheet sheet;
    private final Setting setting;
    private final SkyMoments sky;

    /** The frame of a sheet under the sky of its site, trails drawn at its first setting. */
    public ExposedFrame(Ephemeris ephemeris, Sheet sheet) {
        this(ephemeris, sheet, sheet.first());
    }

    /** The same, trails drawn at one of its settings over what all of them make of the sky. */
    public ExposedFrame(Ephemeris ephemeris, Sheet sheet, Setting setting) {
        this.sheet = sheet;
        this.setting = setting;
        this.sky = new SkyMoments(new SkyLight(ephemeris, sheet.site()));
    }

    /** The sheet at the frame's centre. */
    public ExposedSheet centre() {
        return at(setting.framing().aim());
    }

    /** The sheet where a direction falls on it, the lens's fall-off included. */
    public ExposedSheet at(Direction direction) {
        return under(direction, allOf(direction));
    }

    /** The same without the light of the Moon, which marks the sheet as glow and trail in one. */
    public ExposedSheet withoutMoonlight(Direction direction) {
        return under(direction, sky.moonless(direction));
    }

    private ExposedSheet under(Direction direction, ToDoubleFunction<Instant> luminanceCdM2) {
        ExposedSheet exposed = at(setting, direction, luminanceCdM2);
        return sheet.settings().size() == 1 ? exposed
                : exposed.over(setting.framing().toFrame(direction).map(this::progressElsewhere).orElse(0.0));
    }

    /** What the other settings make of the sky at a point of the sheet; nothing where land stands before it. */
    private double progressElsewhere(Framing.Point point) {
        return sheet.settings().stream().filter(other -> !other.equals(setting)).mapToDouble(other -> {
            Direction seen = other.framing().toSky(point.xMm(), point.yMm());
            boolean land = seen.altitude().compareTo(sheet.site().skyline().altitudeAt(seen.azimuth())) < 0;
            return land ? 0 : at(other, seen, allOf(seen)).skyProgress();
        }).sum();
    }

    private ToDoubleFunction<Instant> allOf(Direction direction) {
        Function<Instant, WideLight.Glow> seen = sky.from(direction);
        return at -> seen.apply(at).luminanceCdM2();
    }

    private ExposedSheet at(Setting set, Direction direction, ToDoubleFunction<Instant> luminanceCdM2) {
        double fallOff = set.fallOff(direction);
        SkyOnFilm light = SkyOnFilm.changing(set.lens(),
                at -> new SkyBrightness(fallOff * luminanceCdM2.applyAsDouble(at)), set.whole());
        return ExposedSheet.of(sheet.film(), set.lens(), set.fNumber(), light, set.openings());
    }

    /**
     * What something leaves on the sheet.
     *
     * @param records      whether its trail shows
     * @param stopsOverSky how many stops it stands over the sky around it, 0 or more
     */
    public record Mark(boolean records, double stopsOverSky) {
    }

    /**
     * The mark of something, by the light and the losses half-way along its trail: the Moon's against a sky without
     * its own light.
     */
    public Mark mark(Trail trail, double magnitude, Angle semidiameter) {
        Direction there = setting.framing().toSky(trail.middle().xMm(), trail.middle().yMm());
        ExposedSheet under = trail.target() == Body.MOON ? withoutMoonlight(there) : at(there);
        double lossMag = lossMag(there);
        return new Mark(under.records(magnitude, semidiameter, trail.middleSpeedMmS(), lossMag),
                under.stopsOverSky(magnitude, semidiameter, trail.middleSpeedMmS(), lossMag));
    }

    /** Light that something in a direction loses to the air and to the lens's fall-off, in magnitudes. */
    public double lossMag(Direction direction) {
        return lossMag(sheet.site(), setting, direction);
    }

    static double lossMag(Site site, Setting setting, Direction direction) {
        Angle offAxis = direction.to(setting.framing().aim());
        return Atmosphere.lossMag(site.extinctionMag(), direction.altitude())
                - 2.5 * Math.log10(Math.max(LEAST_SHARE,
                        offAxis.cos() * setting.lens().mountShare(offAxis, setting.fNumber())));
    }
}
