package gloam.proof;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.exposure.ExposedSheet;
import gloam.exposure.SkyOnFilm;
import gloam.gear.Lens;
import gloam.light.Atmosphere;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.trail.Trail;
import gloam.units.Angle;
import java.time.Instant;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** What the sky makes of an exposed sheet wherever a trail runs over it. */
public final class ExposedFrame {

    /** A stop seen from 90° and more lets nothing through; what little is kept saves the logarithm. */
    private static final double LEAST_SHARE = 1e-9;

    private final SheetSetup setup;
    private final SkyMoments sky;

    /** The frame of a sheet under the sky of its site. */
    public ExposedFrame(Ephemeris ephemeris, SheetSetup setup) {
        this.setup = setup;
        this.sky = new SkyMoments(new SkyLight(ephemeris, setup.site()));
    }

    /** The sheet at the frame's centre. */
    public ExposedSheet centre() {
        return at(setup.framing().aim());
    }

    /** The sheet where a direction falls on it, the lens's fall-off included. */
    public ExposedSheet at(Direction direction) {
        Function<Instant, WideLight.Glow> seen = sky.from(direction);
        return under(direction, at -> seen.apply(at).luminanceCdM2());
    }

    /** The same without the light of the Moon, which marks the sheet as glow and trail in one. */
    public ExposedSheet withoutMoonlight(Direction direction) {
        return under(direction, sky.moonless(direction));
    }

    private ExposedSheet under(Direction direction, ToDoubleFunction<Instant> luminanceCdM2) {
        Lens lens = setup.lens();
        double fallOff = lens.relativeIllumination(direction.to(setup.framing().aim()), setup.fNumber());
        SkyOnFilm light = SkyOnFilm.changing(lens,
                at -> new SkyBrightness(fallOff * luminanceCdM2.applyAsDouble(at)), setup.whole());
        return ExposedSheet.of(setup.film(), lens, setup.fNumber(), light, setup.openings());
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
        Direction there = setup.framing().toSky(trail.middle().xMm(), trail.middle().yMm());
        ExposedSheet under = trail.target() == Body.MOON ? withoutMoonlight(there) : at(there);
        double lossMag = lossMag(there);
        return new Mark(under.records(magnitude, semidiameter, trail.middleSpeedMmS(), lossMag),
                under.stopsOverSky(magnitude, semidiameter, trail.middleSpeedMmS(), lossMag));
    }

    /** Light that something in a direction loses to the air and to the lens's fall-off, in magnitudes. */
    public double lossMag(Direction direction) {
        return lossMag(setup, direction);
    }

    static double lossMag(SheetSetup setup, Direction direction) {
        Angle offAxis = direction.to(setup.framing().aim());
        return Atmosphere.lossMag(setup.site().extinctionMag(), direction.altitude())
                - 2.5 * Math.log10(Math.max(LEAST_SHARE,
                        offAxis.cos() * setup.lens().mountShare(offAxis, setup.fNumber())));
    }
}
