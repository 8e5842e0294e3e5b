package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.exposure.ExposureTable.PassingStars;
import gloam.exposure.ExposureTable.Row;
import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.light.SkyBrightness;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TradeTest {

    private static final FilmStock FILM = Films.print(640, Reciprocity.power(1.2, 1));

    @Test
    void wideStopRecordsMoreStarsThoughTheSmallOneIsSharper() {
        // Common practice, no source: a lens fixed at 3 m records more stars at its wide stop, blurred, than
        // at the sharp small one
        Lens lens = lens(3, FNumber.series(12, 16, 22, 32, 45, 64, 90));
        Trade trade = Trade.of(lens, rows(lens)).orElseThrow();
        assertEquals(FNumber.exact(12), trade.mostRecording().fNumber());
        assertEquals(lens.sharpestFNumber(), trade.sharpest().fNumber());
        assertTrue(trade.blurredMm() > trade.sharpestMm());
        assertEquals(trade.mostRecording().trailLimitMag() - trade.sharpest().trailLimitMag(),
                trade.gainedMag());
        // V 2.9 against 0.7 independently computed for f/12 and f/64, with another threshold: 0.5 mag
        assertEquals(2.2, trade.gainedMag(), 0.5);
    }

    @Test
    void lensFocusedOnTheStarsHasNothingToTrade() {
        Lens lens = lens(Double.POSITIVE_INFINITY, FNumber.series(12, 16, 22));
        assertEquals(Optional.empty(), Trade.of(lens, rows(lens)));
    }

    private static List<Row> rows(Lens lens) {
        SkyOnFilm sky = SkyOnFilm.steady(lens, SkyBrightness.ofMagArcsec2(21));
        ExposureTable table = new ExposureTable(FILM, lens, Scene.of(sky, PassingStars.of(lens, 0, 0.35)));
        return lens.fNumbers().stream().map(fNumber -> table.after(fNumber, Duration.ofHours(3))).toList();
    }

    private static Lens lens(double focusM, List<FNumber> fNumbers) {
        return new Lens(120, fNumbers, 0.85, focusM, 60, 0, Projection.RECTILINEAR, Vignetting.NONE);
    }
}
