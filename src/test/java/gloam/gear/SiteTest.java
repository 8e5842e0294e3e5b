package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.units.Angle;
import gloam.units.BadInput;
import java.time.ZoneOffset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "95  |   0 |    0 | 21.5 | 0.2 | latitude 95 deg is out of range; give -90 … 90 deg",
        "0   | 181 |    0 | 21.5 | 0.2 | longitude 181 deg is out of range; give -180 … 180 deg",
        "0   |   0 | 9500 | 21.5 | 0.2 | height 9500 m is out of range; give -430 … 9000 m",
        "0   |   0 |    0 |   12 | 0.2 | dark sky 12 mag/arcsec2 is out of range; give 14 … 22.5 mag/arcsec2",
        "0   |   0 |    0 | 21.5 |  -1 | extinction -1 mag is out of range; give 0 … 2 mag",
    })
    void refusesWhatCannotBe(double latitudeDeg, double longitudeDeg, double heightM, double darkSky,
                             double extinction, String message) {
        BadInput bad = assertThrows(BadInput.class, () -> new Site("site", Angle.ofDegrees(latitudeDeg),
                Angle.ofDegrees(longitudeDeg), heightM, ZoneOffset.UTC, darkSky, extinction, Skyline.FLAT));
        assertEquals(message, bad.getMessage());
    }
}
