package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConstellationTest {

    private static final StarCatalogue STARS = StarCatalogue.builtIn();

    @Test
    void thereAreEightyEightEachWithStars() {
        List<Constellation> all = Constellation.all();
        assertEquals(88, all.size());
        assertEquals(88, all.stream().map(Constellation::abbreviation).collect(Collectors.toSet()).size());
        for (Constellation one : all) {
            assertTrue(one.abbreviation().matches("[A-Z][A-Za-z]{2}"), one.abbreviation());
            assertTrue(STARS.in(one).size() >= 2, one.name());
        }
    }

    @Test
    void isFoundByNameAndByLetters() {
        Constellation orion = new Constellation("Ori", "Orion");
        assertEquals(orion, Constellation.named(" orion ").orElseThrow());
        assertEquals(orion, Constellation.named("ORI").orElseThrow());
        assertTrue(Constellation.named("Orionis").isEmpty());
        List<String> brightest = STARS.in(orion).stream().limit(2).map(Star::name).toList();
        assertEquals(List.of("Rigel", "Betelgeuse"), brightest);
    }

    /**
     * Middles of areas in degrees as handbooks give them, to some degrees; from memory. Stars do not fill an
     * area evenly, so that their middle may lie some degrees off. Octans holds the pole, Pisces the origin of
     * right ascension.
     */
    @ParameterizedTest
    @CsvSource({"Ori, 83.6, 6.0", "Cyg, 308.8, 44.5", "Sco, 253.3, -27.0", "Cru, 186.7, -60.2",
            "Psc, 7.2, 13.7",
        "Lyr, 282.8, 36.7", "Oct, 345, -82.2"})
    void hasItsMiddleWhereItsStarsAre(String letters, double raDeg, double decDeg) {
        Star middle = Constellation.named(letters).orElseThrow().middle(STARS);
        double offDeg = Direction.ofDegrees(middle.rightAscensionDeg(), middle.declinationDeg())
                .to(Direction.ofDegrees(raDeg, decDeg)).degrees();
        assertTrue(offDeg < 8, () -> middle + " is off by " + offDeg);
    }
}
