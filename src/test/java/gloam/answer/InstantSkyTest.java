package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.support.StandingSky;
import gloam.units.Angle;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class InstantSkyTest {

    private static final double KM_A_AU = 149_597_870.7;

    /** The table's first instant at its first site. */
    @Test
    void everyBodyStandsWhereTheReferencePutsIt() {
        List<ReferenceTable.Row> rows = ReferenceTable.read("swiss-ephemeris/positions.csv").stream()
                .toList();
        ReferenceTable.Row first = rows.get(0);
        Site site = Places.at(first.number("latitude_deg"), first.number("longitude_deg"),
                first.number("height_m"));
        InstantSky sky = InstantSky.of(OrekitEphemeris.builtIn(), site, first.instant("utc"), List.of());
        for (int i = 0; i < Body.values().length; i++) {
            ReferenceTable.Row row = rows.get(i);
            Appearance seen = sky.bodies().get(i);
            assertEquals(row.text("body"), seen.body().label());
            Direction there = Direction.ofDegrees(row.number("azimuth_deg"),
                    row.number("altitude_airless_deg"));
            Direction here = new Direction(seen.position().azimuth(), seen.position().airlessAltitude());
            assertEquals(0, there.to(here).arcsec(), 0.3); // the table's tolerance
            // the same
            assertEquals(1, seen.position().distanceKm() / KM_A_AU / row.number("distance_au"), 1e-6);
        }
        assertEquals(sky.bodies().get(1), sky.moon().seen());
    }

    /**
     * Without Sun and Moon a city's zenith of 16 mag/arcsec² is 10.8 · 10^4 · 10^(-0.4 · 16) = 4.30 · 10^-2
     * cd/m².
     */
    @Test
    void aDarkZenithHasTheLightOfTheSite() {
        StandingSky dark = new StandingSky(Direction.ofDegrees(0, -40), Direction.ofDegrees(180, -40),
                384_400,
                Angle.ofDegrees(90));
        Star star = Star.at("a star", 10, 20);
        InstantSky sky = InstantSky.of(dark, Places.inACity(50, 10, 0), Instant.parse("2027-02-08T22:00:00Z"),
                List.of(star));
        assertEquals(16, sky.zenith().total().magArcsec2(), 0.01);
        assertEquals(4.30e-2, sky.zenith().total().cdM2(), 0.04e-2); // rounding of the constant 10.8
        assertEquals(List.of(new InstantSky.StarPlace(star,
        dark.position(star, Places.at(50, 10, 0), Instant.EPOCH))),
                sky.stars());
    }
}
