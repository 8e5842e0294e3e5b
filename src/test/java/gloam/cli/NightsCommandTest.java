package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Which nights are listed, in which order, and what is said of each. */
class NightsCommandTest {

    private static final String[] PLACE = {"--place", "52.06,4.45,2", "--zone", "Europe/Amsterdam", "--from",
        "2027-03-04", "--to", "2027-04-04"};

    @TempDir
    Path folder;

    private String trip(String gardenMag, String more) throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: First pack
                sites:
                  - {name: Garden, latitude-deg: 52.06, longitude-deg: 4.45, height-m: 2, zone: Europe/Amsterdam,
                     dark-sky-mag-arcsec2: %s}
                  - {name: Heath, latitude-deg: 52.83, longitude-deg: 6.45, height-m: 14, zone: Europe/Amsterdam,
                     dark-sky-mag-arcsec2: 21.2}
                nights: {from: 2027-03-01, to: 2027-03-21}
                camera: {name: box, focal-length-mm: 106, frame-mm: {width: 79, height: 79}, f-numbers: [12, 16]}
                film: instant-mono-640
                sheets: 8
                %s
                wishes:
                  - {name: Wheel, pole: {}, sky: dark, tone-at-most-stops: -1, exposure-min: {shortest: 60, longest: 120}}
                  - {name: Moonlit, point: {azimuth-deg: 30, altitude-deg: 20}, sky: moonlit, tone-stops: -1,
                     exposure-min: {shortest: 10, longest: 60}}
                """.formatted(gardenMag, more)).toString();
    }

    private static JsonNode nights(String... options) throws IOException {
        List<String> args = new ArrayList<>(List.of("nights", "--format", "json"));
        args.addAll(List.of(options));
        Run run = Run.of(args);
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    private static List<LocalDate> dates(JsonNode nights) {
        return nights.valueStream().map(night -> LocalDate.parse(night.get("night").asString())).toList();
    }

    @Test
    void theBestTenAreListedOrAsManyAsWanted() throws IOException {
        JsonNode ten = nights("--trip", trip("19.1", ""));
        assertEquals(10, ten.get("nights").size());
        assertEquals(42, ten.get("nightsRanked").asInt());
        assertEquals(3, nights("--trip", trip("19.1", ""), "--best", "3").get("nights").size());
        JsonNode all = nights("--trip", trip("19.1", ""), "--all").get("nights");
        assertEquals(42, all.size());
        for (int rank = 1; rank < all.size(); rank++) {
            assertTrue(all.get(rank - 1).get("score").asDouble() >= all.get(rank).get("score").asDouble());
        }
        assertTrue(Run.of("nights", "--trip", trip("19.1", "")).out()
                .endsWith("the best 10 of 42; --best N lists more, --all every one\n"));
        assertEquals(2, Run.of("nights", "--trip", trip("19.1", ""), "--best", "0").exit());
    }

    /** What a night is worth is what a plan of that evening at that site alone is worth. */
    @Test
    void aNightIsWorthItsOwnPlan() throws IOException {
        String trip = trip("19.1", "");
        for (JsonNode night : nights("--trip", trip, "--best", "2").get("nights")) {
            List<JsonNode> windows = Timetables.windows(Timetables.json(trip, "--site",
                    night.get("site").asString(), "--night", night.get("night").asString()));
            double worth = windows.stream().mapToDouble(window -> window.get("score").asDouble()).sum();
            assertEquals(worth / 2, night.get("score").asDouble(), 1e-3, "two wishes of worth 1");
            assertEquals(windows.size(), night.get("wishes").size());
            assertEquals(2, night.get("wishesAsked").asInt());
        }
    }

    /** The same trip under a lighter sky is worth less there: the heath goes before the garden. */
    @Test
    void theDarkerSiteGoesFirst() throws IOException {
        for (JsonNode night : nights("--trip", trip("17.5", ""), "--best", "5").get("nights")) {
            assertEquals("Heath", night.get("site").asString());
        }
    }

    /** New Moon on 8 March 2027: before it the Moon wanes, after it waxes. */
    @Test
    void eachNightSaysWhenItIsDarkAndWhatTheMoonDoes() throws IOException {
        for (JsonNode night : nights("--trip", trip("19.1", ""), "--all").get("nights")) {
            LocalDate date = LocalDate.parse(night.get("night").asString());
            boolean after = date.isAfter(LocalDate.of(2027, 3, 8));
            assertTrue(date.equals(LocalDate.of(2027, 3, 8)) || after == night.get("moonWaxing").asBoolean(),
                    night.toString());
            JsonNode dark = night.get("dark").get(0);
            double hours = (OffsetDateTime.parse(dark.get("to").asString()).toEpochSecond()
                    - OffsetDateTime.parse(dark.get("from").asString()).toEpochSecond()) / 3600.0;
            assertEquals(night.get("darkHours").asDouble(), hours, 0.01);
            assertTrue(night.get("clearShare").isNull());
        }
        String text = Run.of("nights", "--trip", trip("19.1", ""), "--all").out();
        assertTrue(text.matches("(?s).*Wed 2027-03-10 .*?\\d of 2  2\\d:\\d\\d–0[45]:\\d\\d .*waxing \\d+ "
                + "%.*"), text);
    }

    @Test
    void aForecastIsShownAndCounts() throws IOException {
        Files.writeString(folder.resolve("clouds.csv"), "time,cloud_fraction\n2027-03-05T12:00Z,0.1\n"
                + "2027-03-06T11:00Z,0.1\n2027-03-06T12:00Z,0.9\n2027-03-07T12:00Z,0.9\n");
        JsonNode nights = nights("--trip", trip("19.1", "forecast: clouds.csv"), "--all").get("nights");
        assertEquals("2027-03-05", nights.get(0).get("night").asString());
        assertEquals(0.9, nights.get(0).get("clearShare").asDouble(), 1e-6);
        nights.valueStream().filter(night -> night.get("night").asString().equals("2027-03-06"))
                .forEach(night -> assertEquals(0, night.get("score").asDouble(), night.toString()));
        assertTrue(Run.of("nights", "--trip", trip("19.1", "forecast: clouds.csv")).out().contains(" 90 %"));
    }

    @Test
    void onlyFreeEveningsAreRanked() throws IOException {
        List<LocalDate> weekends = dates(nights("--trip", trip("19.1", ""), "--all", "--evenings", "weekends")
                .get("nights"));
        assertEquals(12, weekends.size());
        assertTrue(weekends.stream().map(LocalDate::getDayOfWeek)
                .allMatch(Set.of(DayOfWeek.FRIDAY, DayOfWeek.SATURDAY)::contains), weekends::toString);
        assertEquals(3, nights("--place", "52.06,4.45,2", "--zone", "Europe/Amsterdam", "--from",
                "2027-03-04",
                "--to", "2027-03-16", "--evenings", "tue", "--evenings", "2027-03-05").get("nights").size());
        Run none = Run.of("nights", "--trip", trip("19.1", ""), "--evenings", "2028-01-01");
        assertEquals(2, none.exit());
        assertTrue(none.err().contains("(--evenings)"), none.err());
    }

    @Test
    void staysShareNoDate() throws IOException {
        JsonNode found = nights("--trip", trip("19.1", ""), "--stay", "3");
        Set<LocalDate> taken = new HashSet<>();
        assertTrue(found.get("stays").size() > 2);
        for (JsonNode stay : found.get("stays")) {
            LocalDate from = LocalDate.parse(stay.get("from").asString());
            assertEquals(List.of(from, from.plusDays(1), from.plusDays(2)), dates(stay.get("nights")));
            dates(stay.get("nights")).forEach(date -> assertTrue(taken.add(date), found.toString()));
            Set<String> wishes = new HashSet<>();
            stay.get("nights").forEach(night -> night.get("wishes")
                    .forEach(wish -> wishes.add(wish.asString())));
            assertEquals(wishes.size(), stay.get("wishes").size());
            assertTrue(!stay.get("reason").asString().isEmpty());
        }
        JsonNode weekends = nights("--trip", trip("19.1", ""), "--stay", "2", "--evenings", "weekends")
                .get("stays");
        assertEquals(3, weekends.size());
        weekends.forEach(stay -> assertEquals(DayOfWeek.FRIDAY,
                LocalDate.parse(stay.get("from").asString()).getDayOfWeek()));
    }

    /** New Moon on 8 March, full Moon on 22 March 2027. */
    @Test
    void theSkyIsWantedForWhatIsSaid() throws IOException {
        LocalDate dark = dates(nights(PLACE).get("nights")).get(0);
        LocalDate moonlit = dates(nights(Stream.concat(Stream.of(PLACE), Stream.of("--for", "moonlit"))
                .toArray(String[]::new)).get("nights")).get(0);
        assertTrue(Math.abs(dark.toEpochDay() - LocalDate.of(2027, 3, 8).toEpochDay()) <= 6, dark::toString);
        assertTrue(Math.abs(moonlit.toEpochDay() - LocalDate.of(2027, 3, 22).toEpochDay()) <= 6,
                moonlit::toString);
        JsonNode planets = nights(Stream.concat(Stream.of(PLACE), Stream.of("--for", "planets", "--all"))
                .toArray(String[]::new)).get("nights");
        assertTrue(planets.get(0).get("reason").asString().contains(" high"), planets.get(0).toString());
        Run both = Run.of("nights", "--trip", trip("19.1", ""), "--for", "dark");
        assertEquals(2, both.exit());
        assertTrue(both.err().contains("leave out --for"), both.err());
    }
}
