package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A camera with a pinhole in place of a lens. */
class PinholeTest {

    private static final String TRIP = """
            sites:
              - {name: Heath, latitude-deg: 47.9, longitude-deg: 9.4, height-m: 700, zone: Europe/Zurich}
            nights: {from: 2027-03-03, to: 2027-03-03}
            camera: {focal-length-mm: 60, frame-mm: 4x5in, pinhole-mm: 0.3}
            film: negative-classic-100
            sheets: 1
            wishes:
              - name: Dusk
                point: {azimuth-deg: 260, altitude-deg: 20}
                sky: dusk
                tone-stops: 0
                exposure-min: {shortest: 60, longest: 500}
            """;

    @TempDir
    Path folder;
    private TripText trip;

    @BeforeEach
    void trip() {
        trip = new TripText(TRIP, folder);
    }

    @Test
    void itsFNumberIsTheFocalLengthOverItsDiameter() throws IOException {
        assertTrue(trip.checked()
                .contains("60 mm on 101.6 × 127 mm; f/200; focus infinity; transmittance 1; spot "
                + "300 µm"), trip.checked());
        assertEquals(200, trip.windows().get(0).get("fNumber").doubleValue());
        assertTrue(trip.with("0.3}", "0.35}").checked().contains("; f/171.43;"));
    }

    @Test
    void itIsPlannedAsALensOfThatFNumber() throws IOException {
        TripText lens = trip.with("pinhole-mm: 0.3", "f-numbers: [200], transmittance: 1, spot-um: 300");
        assertEquals(lens.windows(), trip.windows());
        assertEquals(trip.windows(), trip.with("exposure-min", "f-numbers: [200]\n    exposure-min")
                .windows());
    }

    @Test
    void whatAPinholeCannotHaveIsRefusedAtItsPlace() throws IOException {
        assertTrue(trip.with("0.3}", "0.3, f-numbers: [200]}").fault()
                .contains(":4:60 camera.pinhole-mm: stands beside f-numbers; keep one of the two"));
        assertTrue(trip.with("0.3}", "0.1}").fault()
                .contains(":4:60 camera.pinhole-mm: is f/600 with a focal "
                + "length of 60 mm; give one from f/0.7 to f/512."));
        assertTrue(trip.with("0.3}", "1.1}").fault()
                .contains(":4:60 camera.pinhole-mm: pinhole 1.1 mm is out of range; give 0.05 … 1 mm"));
        assertTrue(trip.with("0.3}", "0.3, focus-m: 4}").fault()
                .contains(":4:74 camera.focus-m: a pinhole is not focused. Take focus-m away."));
        assertTrue(trip.with("0.3}", "0.3, t-stop: {f-number: 200, t-number: 210}}").fault()
                .contains("camera.t-stop: a pinhole has no glass. Take t-stop away."));
        assertTrue(trip.with(", pinhole-mm: 0.3", "").fault()
                .contains("camera: needs one of the keys f-numbers, pinhole-mm."));
    }
}
