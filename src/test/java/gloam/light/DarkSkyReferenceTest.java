package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DarkSkyReferenceTest {

    static Stream<Row> zenithDistances() {
        return ReferenceTable.read("patat-2003/dark-sky-by-zenith-distance.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("zenithDistances")
    void skyBrightensAwayFromTheZenithAsMeasured(Row row) {
        double brightenedMag = 2.5 * Math.log10(DarkSky.relativeToZenith(row.number("zenithDeg"), 0.11));
        assertEquals(row.number("brightenedMag"), brightenedMag, 0.01);
    }
}
