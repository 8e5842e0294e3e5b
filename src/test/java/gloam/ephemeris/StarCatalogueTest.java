package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StarCatalogueTest {

    private static final StarCatalogue CATALOGUE = StarCatalogue.builtIn();

    @Test
    void holdsTheStarsBrightestFirst() {
        List<Star> stars = CATALOGUE.stars();
        assertEquals(5044, stars.size());
        assertEquals("Sirius", stars.get(0).name());
        for (int i = 1; i < stars.size(); i++) {
            assertTrue(stars.get(i - 1).magnitude() <= stars.get(i).magnitude());
        }
        assertTrue(stars.get(stars.size() - 1).magnitude() <= 6);
        assertTrue(stars.stream().noneMatch(star -> star.name().isBlank()));
    }

    /** Places and magnitudes of the Hipparcos catalogue (ESA 1997), in ICRS at J2000.0; from memory. */
    @ParameterizedTest
    @CsvSource({"Vega, 279.2347, 38.7837, 0.03", "Polaris, 37.9546, 89.2641, 1.97",
            "Sirius, 101.2872, -16.7161, -1.44",
        "Achernar, 24.4285, -57.2368, 0.45"})
    void placesOfBrightStars(String name, double raDeg, double decDeg, double magnitude) {
        Star star = CATALOGUE.named(name).orElseThrow();
        assertEquals(raDeg, star.rightAscensionDeg(), 1e-3,
                "the table gives 1e-4 deg; near the pole RA counts less");
        assertEquals(decDeg, star.declinationDeg(), 1e-4);
        assertEquals(magnitude, star.magnitude(), 0.01);
    }

    @Test
    void findsAStarByEachOfItsNames() {
        Star vega = CATALOGUE.named("vega").orElseThrow();
        assertEquals(vega, CATALOGUE.named("HIP 91262").orElseThrow());
        assertEquals(vega, CATALOGUE.named(" α Lyr ").orElseThrow());
        assertEquals(vega, CATALOGUE.named("3 Lyr").orElseThrow());
        assertTrue(CATALOGUE.named("no such star").isEmpty());
        assertTrue(CATALOGUE.named(" ").isEmpty());
    }

    @Test
    void everyBrightStarHasItsOwnName() {
        List<Star> bright = CATALOGUE.stars().stream().filter(star -> star.magnitude() < 2).toList();
        assertEquals(bright.size(), bright.stream().map(Star::name).collect(Collectors.toSet()).size());
    }
}
