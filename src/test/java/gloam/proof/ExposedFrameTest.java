package gloam.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.support.StandingSky;
import gloam.units.Angle;
import gloam.units.Stops;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExposedFrameTest {

    private static final Ephemeris EPHEMERIS = new AnalyticEphemeris();
    private static final Frame FRAME = new Frame(80, 60);

    @Test
    void mountDimsSkyAndStarsAlikeInTheCorner() {
        ExposedFrame clear = frame(Vignetting.NONE);
        ExposedFrame shaded = frame(new Vignetting(1.5, 50,
                FNumber.exact(11))); // the corner of 80 × 60 mm lies 50 mm out
        Direction corner = Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(0, 41), lens(Vignetting.NONE),
                FRAME,
                Sheets.mono(new Reciprocity.None()),
                Sheets.open("2027-02-06T21:00:00Z", 60)).first().framing().toSky(40, 30);
        // Pogson: a stop is 2.5 lg 2 mag
        assertEquals(1.5 * 2.5 * Math.log10(2), shaded.lossMag(corner) - clear.lossMag(corner), 1e-6);
        // a film that keeps its speed makes of 1.5 stops less light 1.5 stops less exposure
        assertEquals(-1.5, Stops.between(clear.at(corner).skyProgress(), shaded.at(corner).skyProgress()),
                1e-6);
        assertEquals(clear.centre().skyProgress(), shaded.centre().skyProgress(), 1e-12); // rounding
    }

    /**
     * Light goes with 1/N²: an hour at f/16 brings a fourth of an hour at f/8 on a film that keeps its speed,
     * under a sky that stays as it is.
     */
    @Test
    void openingsAtTwoFNumbersAddUp() {
        Setting wide = setting(0, 41, 8, 21);
        double alone = skyProgress(wide, wide);
        assertEquals(1.25 * alone, skyProgress(wide, wide, setting(0, 41, 16, 22)), 1e-9 * alone); // rounding
        assertEquals(1.25 * alone, skyProgress(setting(0, 41, 16, 22), wide, setting(0, 41, 16, 22)),
                1e-9 * alone);
        assertEquals(2 * alone, skyProgress(wide, wide, setting(0, 41, 8, 22)), 1e-9 * alone);
    }

    @Test
    void openingsAtTwoAimsAddUpPointByPoint() {
        Setting high = setting(0, 70, 8, 21);
        Setting low = setting(120, 25, 11, 22);
        Direction highCorner = high.framing().toSky(40, 30);
        Direction lowCorner = low.framing().toSky(40, 30);
        ExposedFrame together = new ExposedFrame(EPHEMERIS, sheet(high, low));
        double sum = new ExposedFrame(EPHEMERIS, sheet(high)).at(highCorner).skyProgress()
                + new ExposedFrame(EPHEMERIS, sheet(low)).at(lowCorner).skyProgress();
        assertEquals(sum, together.at(highCorner).skyProgress(), 1e-12 * sum); // rounding
        assertEquals(sum, new ExposedFrame(EPHEMERIS, sheet(high, low), low).at(lowCorner).skyProgress(),
                1e-12 * sum);
    }

    private static double skyProgress(Setting drawn, Setting... settings) {
        StandingSky still = new StandingSky(Direction.ofDegrees(270, -40), Direction.ofDegrees(90, -40),
                384_400, Angle.ofDegrees(60));
        return new ExposedFrame(still, sheet(settings), drawn).centre().skyProgress();
    }

    private static Sheet sheet(Setting... settings) {
        return new Sheet(Places.MID_NORTH, Sheets.mono(new Reciprocity.None()), List.of(settings));
    }

    /** An hour of a night without Moon, from a full hour on. */
    private static Setting setting(double azimuthDeg, double altitudeDeg, double fNumber, int hour) {
        return Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(azimuthDeg, altitudeDeg),
                Sheets.lens(120, fNumber, 0.05), FRAME, Sheets.mono(new Reciprocity.None()),
                Sheets.open("2027-02-06T" + hour + ":00:00Z", 60)).first();
    }

    private static ExposedFrame frame(Vignetting vignetting) {
        return new ExposedFrame(EPHEMERIS, Sheets.sheet(Places.MID_NORTH, Direction.ofDegrees(0, 41),
                lens(vignetting), FRAME, Sheets.mono(new Reciprocity.None()),
                Sheets.open("2027-02-06T21:00:00Z", 60)));
    }

    private static Lens lens(Vignetting vignetting) {
        return new Lens(120, List.of(FNumber.exact(11)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
                Projection.RECTILINEAR, vignetting);
    }
}
