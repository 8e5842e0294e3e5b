package gloam.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Direction;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.units.Stops;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExposedFrameTest {

    private static final Frame FRAME = new Frame(80, 60);

    @Test
    void mountDimsSkyAndStarsAlikeInTheCorner() {
        ExposedFrame clear = frame(Vignetting.NONE);
        ExposedFrame shaded = frame(new Vignetting(1.5, 50,
                FNumber.exact(11))); // the corner of 80 × 60 mm lies 50 mm out
        Direction corner = Sheets.setup(Places.MID_NORTH, Direction.ofDegrees(0, 41), lens(Vignetting.NONE), FRAME,
                Sheets.mono(new Reciprocity.None()), Sheets.open("2027-02-06T21:00:00Z", 60)).framing().toSky(40, 30);
        // Pogson: a stop is 2.5 lg 2 mag
        assertEquals(1.5 * 2.5 * Math.log10(2), shaded.lossMag(corner) - clear.lossMag(corner), 1e-6);
        // a film that keeps its speed makes of 1.5 stops less light 1.5 stops less exposure
        assertEquals(-1.5, Stops.between(clear.at(corner).skyProgress(), shaded.at(corner).skyProgress()), 1e-6);
        assertEquals(clear.centre().skyProgress(), shaded.centre().skyProgress(), 1e-12); // rounding
    }

    private static ExposedFrame frame(Vignetting vignetting) {
        return new ExposedFrame(new AnalyticEphemeris(), Sheets.setup(Places.MID_NORTH, Direction.ofDegrees(0, 41),
                lens(vignetting), FRAME, Sheets.mono(new Reciprocity.None()),
                Sheets.open("2027-02-06T21:00:00Z", 60)));
    }

    private static Lens lens(Vignetting vignetting) {
        return new Lens(120, List.of(FNumber.exact(11)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
                Projection.RECTILINEAR, vignetting);
    }
}
