package gloam.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.ephemeris.Direction;
import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ToneCurve;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.support.Places;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetTest {

    private static final Instant DUSK = Instant.parse("2027-02-06T18:00:00Z");
    private static final Frame SQUARE = new Frame(80, 80);
    private static final FilmStock FILM = new FilmStock("mono", 400, FilmStock.Kind.POSITIVE,
            List.of(new FilmStock.Layer("mono", new Reciprocity.None())), ToneCurve.PRINT, 0, "invented");

    private static Interval minutes(int from, int to) {
        return new Interval(DUSK.plus(Duration.ofMinutes(from)), DUSK.plus(Duration.ofMinutes(to)));
    }

    private static Setting setting(Frame frame, double azimuthDeg, double marking, Interval... openings) {
        Lens lens = new Lens(120, FNumber.series(8, 11), 0.9, Double.POSITIVE_INFINITY, 40, 0,
                Projection.RECTILINEAR, Vignetting.NONE);
        Framing framing = Framing.level(Direction.ofDegrees(azimuthDeg, 40),
                new Camera("camera", lens, frame, Duration.ZERO));
        return new Setting(framing, FNumber.marked(marking), List.of(openings));
    }

    private static Sheet sheet(Setting... settings) {
        return new Sheet(Places.MID_NORTH, FILM, List.of(settings));
    }

    @Test
    void itsOpeningsAreThoseOfAllItsSettingsInOrderOfTime() {
        Sheet sheet = sheet(setting(SQUARE, 0, 8, minutes(10, 20), minutes(70, 75)),
                setting(SQUARE, 180, 11, minutes(30, 60)));
        assertEquals(List.of(minutes(10, 20), minutes(30, 60), minutes(70, 75)), sheet.openings());
        assertEquals(minutes(10, 75), sheet.first().whole());
        assertEquals(FNumber.marked(8), sheet.first().fNumber());
        assertEquals(SQUARE, sheet.frame());
    }

    @Test
    void theShutterIsOpenAtOneSettingAtATime() {
        Setting first = setting(SQUARE, 0, 8, minutes(10, 20));
        assertThrows(IllegalArgumentException.class,
                () -> sheet(first, setting(SQUARE, 180, 8, minutes(19, 30))));
        assertThrows(IllegalArgumentException.class,
                () -> setting(SQUARE, 0, 8, minutes(10, 20), minutes(0, 5)));
        assertEquals(2, sheet(first, setting(SQUARE, 180, 8, minutes(20, 30))).openings().size());
    }

    @Test
    void aSheetIsExposedAndHasOneSize() {
        assertThrows(IllegalArgumentException.class, () -> sheet());
        assertThrows(IllegalArgumentException.class, () -> setting(SQUARE, 0, 8));
        Setting square = setting(SQUARE, 0, 8, minutes(10, 20));
        Setting oblong = setting(new Frame(80, 60), 0, 8, minutes(30, 40));
        assertThrows(IllegalArgumentException.class, () -> sheet(square, oblong));
    }
}
