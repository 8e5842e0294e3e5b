package gloam.proof;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.exposure.ExposedSheet;
import gloam.exposure.SkyOnFilm;
import gloam.gear.Lens;
import gloam.light.Atmosphere;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.units.Angle;
import java.time.Instant;
import java.util.function.Function;

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
        Lens lens = setup.lens();
        double fallOff = lens.relativeIllumination(direction.to(setup.framing().aim()), setup.fNumber());
        Function<Instant, WideLight.Glow> seen = sky.from(direction);
        SkyOnFilm light = SkyOnFilm.changing(lens,
                at -> new SkyBrightness(fallOff * seen.apply(at).luminanceCdM2()), setup.whole());
        return ExposedSheet.of(setup.film(), lens, setup.fNumber(), light, setup.openings());
    }

    /** Light that something in a direction loses to the air and to the lens's fall-off, in magnitudes. */
    public double lossMag(Direction direction) {
        return lossMag(setup, direction);
    }

    static double lossMag(SheetSetup setup, Direction direction) {
        Angle offAxis = direction.to(setup.framing().aim());
        return setup.site().extinctionMag() * Atmosphere.airmass(direction.altitude())
                - 2.5 * Math.log10(Math.max(LEAST_SHARE,
                        offAxis.cos() * setup.lens().mountShare(offAxis, setup.fNumber())));
    }
}
