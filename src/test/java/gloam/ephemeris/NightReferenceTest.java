package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Event.Kind;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every event of the tables is found and none that they do not hold. */
class NightReferenceTest {

    private static final Ephemeris EPHEMERIS = OrekitEphemeris.builtIn();
    private static final int DAYS = 120;
    private static final double TOLERANCE_S = 0.2;
    /** The altitude within which a slow event must lie, 1 arcsec; its sine near the horizon is as much. */
    private static final double TOLERANCE_ARCSEC = 1;
    private static final Duration A_MINUTE = Duration.ofMinutes(1);

    static Stream<Arguments> sitesAndEvents() {
        return Stream.of(table("events-2027", LocalDate.of(2027, 1, 1)),
                table("events-2027-polar-summer", LocalDate.of(2027, 5, 1))).flatMap(stream -> stream);
    }

    private static Stream<Arguments> table(String name, LocalDate first) {
        Map<String, Map<Kind, List<Instant>>> bySite = new LinkedHashMap<>();
        for (Row row : ReferenceTable.read("swiss-ephemeris/" + name + ".csv").rows()) {
            String site = row.text("latitude_deg") + " " + row.text("longitude_deg") + " "
                    + row.text("height_m");
            bySite.computeIfAbsent(site, key -> new LinkedHashMap<>())
                    .computeIfAbsent(kind(row), key -> new ArrayList<>()).add(row.instant("utc"));
        }
        return bySite.entrySet().stream()
                .map(entry -> Arguments.of(Named.of(name + " " + entry.getKey(), site(entry.getKey())), first,
                        entry.getValue()));
    }

    @ParameterizedTest
    @MethodSource("sitesAndEvents")
    void findsEveryEventAndNoOther(Site site, LocalDate first, Map<Kind, List<Instant>> expected) {
        Instant from = first.atStartOfDay(ZoneOffset.UTC).toInstant();
        Instant to = from.plus(Duration.ofDays(DAYS));
        Map<Kind, List<Instant>> found =
                Night.range(EPHEMERIS, site, first.minusDays(1), first.plusDays(DAYS)).stream()
                        .flatMap(night -> night.events().stream())
                        .filter(event -> event.what() != Kind.MOON_TRANSIT)
                        .filter(event -> !event.at().isBefore(from) && event.at().isBefore(to))
                        .collect(Collectors.groupingBy(Event::what,
                                Collectors.mapping(Event::at, Collectors.toList())));
        assertEquals(expected.keySet(), found.keySet());
        expected.forEach((kind, instants) -> assertSame(site, kind, instants, found.get(kind)));
    }

    private static void assertSame(Site site, Kind kind, List<Instant> expected, List<Instant> found) {
        assertEquals(expected.size(), found.size(), () -> kind + ": number of events");
        for (int i = 0; i < expected.size(); i++) {
            Instant at = expected.get(i);
            double offS = Math.abs(Duration.between(at, found.get(i)).toNanos() * 1e-9);
            double slopeArcsecS = slopeArcsecS(site, kind, at);
            double allowedS = slopeArcsecS > 1 ? TOLERANCE_S : TOLERANCE_ARCSEC / slopeArcsecS;
            assertTrue(offS <= allowedS, () -> kind + " " + at + " is off by " + offS + " s of " + allowedS);
        }
    }

    /** How fast the altitude changes; 1 arcsec a second is 1 deg an hour. */
    private static double slopeArcsecS(Site site, Kind kind, Instant at) {
        Body body = kind == Kind.MOONRISE || kind == Kind.MOONSET ? Body.MOON : Body.SUN;
        double before = EPHEMERIS.position(body, site, at.minus(A_MINUTE)).airlessAltitude().arcsec();
        double after = EPHEMERIS.position(body, site, at.plus(A_MINUTE)).airlessAltitude().arcsec();
        return Math.max(Math.abs(after - before) / 120, 1e-3);
    }

    private static Site site(String text) {
        String[] numbers = text.split(" ");
        return Places.at(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1]),
                Double.parseDouble(numbers[2]));
    }

    private static Kind kind(Row row) {
        boolean up = row.text("direction").equals("up");
        return switch (row.text("event")) {
            case "sun_rise_set" -> up ? Kind.SUNRISE : Kind.SUNSET;
            case "moon_rise_set" -> up ? Kind.MOONRISE : Kind.MOONSET;
            case "civil" -> up ? Kind.CIVIL_DAWN : Kind.CIVIL_DUSK;
            case "nautical" -> up ? Kind.NAUTICAL_DAWN : Kind.NAUTICAL_DUSK;
            case "astronomical" -> up ? Kind.ASTRONOMICAL_DAWN : Kind.ASTRONOMICAL_DUSK;
            default -> throw new IllegalArgumentException(row.text("event"));
        };
    }
}
