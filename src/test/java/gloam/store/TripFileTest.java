package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.gear.Vignetting;
import gloam.planner.Aim;
import gloam.planner.Preview;
import gloam.planner.SkyKind;
import gloam.planner.Trip;
import gloam.planner.Trips;
import gloam.planner.TrailLength;
import gloam.planner.Wish;
import gloam.units.Angle;
import gloam.units.BadInput;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TripFileTest {

    static final String YAML = """
            title: Full
            sites:
              - {name: A, latitude-deg: 40.41, longitude-deg: -1.23, height-m: 1320, zone: Europe/Madrid,
                 dark-sky-mag-arcsec2: 21.4, extinction-mag: 0.21, light-domes: [], sky: [],
                 sea-horizon: true, skyline: skyline.csv}
            nights: {from: 2027-02-01, to: 2027-02-14, stay: 2}
            camera: {name: Box, focal-length-mm: 120, frame-mm: {width: 80, height: 70}, f-numbers: [45, 11, 12],
                     focus-m: 3, transmittance: 0.88, spot-um: 50, changeover-min: 6.5, filter-stops: 1,
                     projection: equidistant, corner-stops: 1.2}
            film: {name: own, iso: 640, kind: positive, layers: mono, speed-offset-stops: 0, source: own,
                   tone: {density-min: 0.1, density-max: 2, density-mid: 0.7, gamma: 1},
                   reciprocity: {model: power, exponent: 1.30, from-s: 1}}
            sheets: 8
            preview: {f-number: 2.8, iso: 640, exposure-s: 0.5}
            least-clear-percent: 20
            clear-prior-percent: 40
            wishes:
              - name: fixed
                point: {azimuth-deg: 10, altitude-deg: 42, roll-deg: -5}
                sky: dusk
                tone-stops: -2
                records-at-least: 12
                trail-mm: {least: 15, most: 40}
                exposure-min: {shortest: 20, longest: 180.5}
                f-numbers: [11, 45]
                worth: 3
                repeat: 2
                film: instant-colour-125
              - name: followed
                follow: {body: mars, level-within-deg: 3, roll-deg: 0}
                sky: any
                tone-at-most-stops: -4
                records: mars
                exposure-min: {shortest: 1, longest: 2}
                worth: 1
                repeat: 1
              - name: star
                follow: {star: {ra-deg: 10, dec-deg: -20}, roll-deg: 0}
                sky: dark
                exposure-min: {shortest: 1, longest: 2}
                worth: 1
                repeat: 1
            """;

    @TempDir
    Path folder;

    @Test
    void aSiteOverTheSeaLooksBelowTheLevel() {
        Refusals.file(folder, "skyline.csv", "azimuth_deg,altitude_deg\n0,5\n90,0\n");
        List<Skyline.Point> seen = read("trip.yaml", YAML).trip().sites().get(0).skyline().points();
        assertEquals(new Skyline.Point(0, 5), seen.get(0));
        assertEquals(-1.76 * Math.sqrt(1320) / 60, seen.get(1).altitudeDeg(), 1e-12);
        BadInput refused = assertThrows(BadInput.class,
                () -> read("trip.yaml", YAML.replace("sea-horizon: true", "sea-horizon: often")));
        assertTrue(refused.getMessage().contains("sites[0].sea-horizon")
                && refused.getMessage().contains("expected true or false"), refused.getMessage());
    }

    @Test
    void everythingATripFileCanSayIsUnderstood() {
        Refusals.file(folder, "skyline.csv", "azimuth_deg,altitude_deg\n0,5\n");
        TripFile.Reading reading = read("trip.yaml", YAML);
        Trip trip = reading.trip();
        assertEquals(List.of(), reading.defaultsUsed());
        assertEquals(OptionalInt.of(2), reading.stay());
        assertEquals("Full", trip.title());
        assertEquals(LocalDate.of(2027, 2, 1), trip.firstNight());
        assertEquals(LocalDate.of(2027, 2, 14), trip.lastNight());
        assertEquals(8, trip.sheets());
        assertEquals(Optional.of(new Preview(FNumber.exact(Math.sqrt(8)), 640, Duration.ofMillis(500))),
                trip.preview().everywhere());
        Lens lens = new Lens(120, Stream.of(Math.pow(2, 3.5), 12.0,
                Math.pow(2, 5.5)).map(FNumber::exact).toList(), 0.88, 3, 50, 1,
                Projection.EQUIDISTANT,
                new Vignetting(1.2, Math.hypot(40, 35), FNumber.exact(Math.pow(2, 3.5))));
        assertEquals(new Camera("Box", lens, new Frame(80, 70), Duration.ofSeconds(390)), trip.camera());
        assertSite(trip.sites().get(0));
        assertWishes(trip);
    }

    private static void assertSite(Site site) {
        assertEquals("A", site.name());
        assertEquals(Angle.ofDegrees(40.41), site.latitude());
        assertEquals(Angle.ofDegrees(-1.23), site.longitude());
        assertEquals(1320, site.heightM());
        assertEquals(ZoneId.of("Europe/Madrid"), site.zone());
        assertEquals(21.4, site.darkSkyMagArcsec2());
        assertEquals(0.21, site.extinctionMag());
        assertEquals(List.of(new Skyline.Point(0, 5)), site.skyline().points());
    }

    private static void assertWishes(Trip trip) {
        TrailLength anyLength = new TrailLength(OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(new Wish("fixed", new Aim.Point(Direction.ofDegrees(10, 42), Angle.ofDegrees(-5)),
                SkyKind.DUSK, new Wish.Tone.Near(-2), new Wish.Records.AtLeast(12),
                new TrailLength(OptionalDouble.of(15), OptionalDouble.of(40)), Duration.ofMinutes(20),
                Duration.ofSeconds(10_830),
                List.of(FNumber.exact(Math.pow(2, 3.5)), FNumber.exact(Math.pow(2, 5.5))), 3, 2,
                Optional.of(FilmFile.film("instant-colour-125"))), trip.wishes().get(0));
        assertEquals(new Wish("followed",
                Trips.following(Body.MARS, Optional.of(Angle.ofDegrees(3))),
                SkyKind.ANY, new Wish.Tone.AtMost(-4), new Wish.Records.These(List.of(Body.MARS)),
                anyLength, Duration.ofMinutes(1), Duration.ofMinutes(2), List.of(), 1, 1, Optional.empty()),
                trip.wishes().get(1));
        assertEquals(Trips.following(Star.at("star at 10, -20", 10, -20), Optional.empty()),
                trip.wishes().get(2).aim());
    }

    @Test
    void whatIsLeftOutGetsStatedDefaults() {
        TripFile.Reading reading = read("least.yaml", """
                sites: [{name: A, latitude-deg: 0, longitude-deg: 0, height-m: 0, zone: UTC}]
                nights: {from: 2027-02-01, to: 2027-02-01}
                camera: {focal-length-mm: 120, frame-mm: {width: 80, height: 70}, f-numbers: [11]}
                film: {name: own, iso: 100, kind: negative, reciprocity: {model: power, exponent: 1.2}}
                sheets: 1
                wishes:
                  - {name: w, point: {azimuth-deg: 0, altitude-deg: 40}, exposure-min: {shortest: 300}}
                  - {name: v, follow: {body: moon}}
                """);
        assertEquals(List.of("title: least.yaml",
                "sites[0].dark-sky-mag-arcsec2: 21.6",
                "sites[0].extinction-mag: " + reading.trip().sites().get(0).extinctionMag()
                        + " (clear air at this height)",
                "sites[0].skyline: level all around", "sites[0].sea-horizon: false",
                "sites[0].light-domes: none", "sites[0].sky: none",
                "camera.name: camera", "camera.changeover-min: 5", "camera.transmittance: 0.9",
                "camera.focus-m: infinity", "camera.spot-um: 40", "camera.filter-stops: 0",
                "camera.projection: rectilinear", "camera.corner-stops: 0",
                "film.layers: mono", "film.reciprocity.from-s: 1", "film.tone: as is usual for its kind",
                "film.speed-offset-stops: 0", "film.source: not stated",
                "least-clear-percent: 30", "clear-prior-percent: 50",
                "wishes[0].point.roll-deg: 0", "wishes[0].sky: any",
                "wishes[0].exposure-min.longest: 240, or the shortest where that is more",
                "wishes[0].worth: 1", "wishes[0].repeat: 1",
                "wishes[1].follow.roll-deg: 0", "wishes[1].sky: any",
                "wishes[1].exposure-min: shortest 1, longest 240", "wishes[1].worth: 1",
                "wishes[1].repeat: 1"), reading.defaultsUsed());
        assertEquals(Duration.ofMinutes(300), reading.trip().wishes().get(0).longest());
        assertEquals(Double.POSITIVE_INFINITY, reading.trip().camera().lens().focusM());
    }

    private TripFile.Reading read(String name, String text) {
        return TripFile.read(Refusals.file(folder, name, text));
    }
}
