package gloam.view;

import gloam.ephemeris.Ephemeris;
import gloam.exposure.FilmPlane;
import gloam.gear.Lens;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.planner.Preview;
import java.util.function.Supplier;

/** Reads the brightness of the sky off whatever tells it, so that they can be compared. */
final class SkyReader {

    private final Supplier<Ephemeris> ephemeris;
    private final Lens lens;

    SkyReader(Supplier<Ephemeris> ephemeris, Lens lens) {
        this.ephemeris = ephemeris;
        this.lens = lens;
    }

    /** The sky at the frame's centre, when the shutter opens if it changes. */
    SkyBrightness brightness(KnownSky sky) {
        if (sky instanceof KnownSky.Metered metered) {
            Preview frame = metered.preview();
            return FilmPlane.luminanceOfFrame(lens, frame.fNumber(), frame.iso(), seconds(frame));
        }
        return sky instanceof KnownSky.Computed computed ? parts(computed).total()
                : ((KnownSky.Measured) sky).brightness();
    }

    /** A computed sky by its parts, when the shutter opens. */
    SkyLight.Sample parts(KnownSky.Computed computed) {
        return new SkyLight(ephemeris.get(), computed.site()).at(computed.aim(), computed.openAt());
    }

    /** Where the brightness comes from, in words. */
    static String source(KnownSky sky) {
        if (sky instanceof KnownSky.Metered metered) {
            Preview frame = metered.preview();
            return "preview frame " + Wording.fNumber(frame.fNumber().marked()) + ", ISO "
                    + Wording.plain(frame.iso()) + ", " + Wording.plain(seconds(frame)) + " s";
        }
        return !(sky instanceof KnownSky.Computed computed) ? "measured sky"
                : computed.steady() ? "computed sky, taken as steady" : "computed sky as it changes";
    }

    private static double seconds(Preview frame) {
        return frame.exposure().toNanos() * 1e-9;
    }
}
