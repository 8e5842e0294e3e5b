package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every kind of error in a trip file with its exact line. */
class TripFileErrorsTest {

    private static final String GOOD = """
            title: t
            sites:
              - name: A
                latitude-deg: 41
                longitude-deg: -2
                height-m: 1000
                zone: Europe/Madrid
            nights: {from: 2027-02-01, to: 2027-02-03}
            camera: {focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [11, 16, 45]}
            film: instant-mono-640
            sheets: 8
            wishes:
              - name: w
                point: {azimuth-deg: 0, altitude-deg: 42}
                exposure-min: {shortest: 20, longest: 180}
            """;

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        latitude-deg: 41 | latitude-deg: 95 | 4:19 sites[0].latitude-deg: latitude 95 deg is out of range; give -90 … 90 deg
        latitude-deg: 41 | latitude-deg: north | 4:19 sites[0].latitude-deg: latitude "north" is not understood. Write \
        degrees, such as 40.41, 40°24′36″N or 40:24:36
        latitude-deg: 41 | latitude-deg: 41°W | 4:19 sites[0].latitude-deg: latitude "41°W" is not understood. Give a sign \
        or one of the letters N and S, such as 40.41, 40°24′36″N or 40:24:36
        latitude-deg: 41 | latitude-deg: 41¶    place: 41N 2W | 4:19 sites[0].latitude-deg: stands beside place; keep one \
        of the two
        height-m: 1000 | height-m: 1000 s | 6:15 sites[0].height-m: expected metres, found "1000 s". Units that fit: km, m, \
        ft, in, cm, mm, um.
        latitude-deg: 41 | latitude-deg: "41" | 4:19 sites[0].latitude-deg: expected degrees, found "41". Take its \
        quotes away.
        latitude-deg: 41 | latitude-deg: 041 | 4:19 sites[0].latitude-deg: expected degrees, found "041". Write a \
        plain number, -90 … 90 deg.
        latitude-deg: 41 | latitude-deg: .nan | 4:19 sites[0].latitude-deg: expected degrees, found ".nan". Write a \
        plain number, -90 … 90 deg.
        latitude-deg: 41 | latitude-deg: [41] | 4:19 sites[0].latitude-deg: expected degrees, found a list
        latitude-deg: 41 | latitude-deg: {a: 1} | 4:19 sites[0].latitude-deg: expected degrees, found a section of \
        keys
        latitude-deg: 41 | latitude-deg: | 4:18 sites[0].latitude-deg: expected degrees, found nothing. Write a value.
        latitude-deg: 41 | lattitude-deg: 41 | 4:5 sites[0].lattitude-deg: unknown key. Did you mean latitude-deg?
        longitude-deg: -2 | longitude-deg: 181 | 5:20 sites[0].longitude-deg: longitude 181 deg is out of range; give -180 … \
        180 deg
        height-m: 1000 | height-m: 1e9 | 6:15 sites[0].height-m: height 1000000000 m is out of range; give -430 … 9000 m
        zone: Europe/Madrid | zone: Europe/Madird | 7:11 sites[0].zone: unknown time zone "Europe/Madird". Did you \
        mean Europe/Madrid?
        zone: Europe/Madrid | zone: Middle/Of/Nowhere | 7:11 sites[0].zone: unknown time zone "Middle/Of/Nowhere". \
        Write Area/City as the tz database does, such as Europe/Madrid, or UTC.
        from: 2027-02-01 | from: 2027-02-30 | 8:16 nights.from: expected a date of the calendar as year-month-day, \
        such as 2027-02-14, found "2027-02-30"
        to: 2027-02-03 | to: 2027-01-03 | 8:32 nights.to: the last night 2027-01-03 is before the first, \
        2027-02-01. Give a later one.
        to: 2027-02-03 | to: 2029-02-03 | 8:32 nights.to: number of nights 734 is out of range; give 1 … 400
        to: 2027-02-03 | to: 2027-02-03, stay: 4 | 8:50 nights.stay: a stay of 4 nights does not fit into 3. \
        Give fewer.
        to: 2027-02-03 | to: 2027-02-03, stay: 1.5 | 8:50 nights.stay: expected a whole number, found "1.5". Leave \
        out the fraction.
        width: 80, height: 80 | width: 80 | 9:42 camera.frame-mm.height: is missing. Add the key height.
        width: 80 | width: 1 | 9:50 camera.frame-mm.width: frame side 1 mm is out of range; give 5 … 1000 mm
        f-numbers: [11, 16, 45] | f-numbers: [11, 0.1] | 9:83 camera.f-numbers[1]: f-number 0.1 is out of range; give 0.7 … 512
        f-numbers: [11, 16, 45] | f-numbers: [] | 9:78 camera.f-numbers: number of f-numbers 0 is out of range; give 1 … 60
        f-numbers: [11, 16, 45] | f-numbers: [11], focus-m: 0.1 | 9:93 camera.focus-m: focus distance 0.1 m is out of range; \
        give 0.132 m and more
        f-numbers: [11, 16, 45] | f-numbers: [11], focus-m: far | 9:93 camera.focus-m: expected metres, found "far". \
        Write a plain number, 0.132 m and more, or infinity.
        f-numbers: [11, 16, 45] | f-numbers: [11], projection: rectlinear | 9:96 camera.projection: expected \
        rectilinear, equidistant or equisolid, found "rectlinear". Did you mean rectilinear?
        f-numbers: [11, 16, 45] | f-numbers: [11], corner-stops: 5 | 9:98 camera.corner-stops: loss in the corner 5 \
        stops is out of range; give 0 … 4 stops
        f-numbers: [11, 16, 45] | f-numbers: [11], t-stop: {f-number: 11, t-number: 10} | 9:92 camera.t-stop: \
        T-number 10.08 is below the f-number 11.31, markings taken exactly; a lens passes no more light than comes in, so \
        its T-number is the f-number or more
        f-numbers: [11, 16, 45] | f-numbers: [11], t-stop: {f-number: 11} | 9:92 camera.t-stop.t-number: is missing. \
        Add the key t-number.
        f-numbers: [11, 16, 45] | f-numbers: [11], transmittance: 0.9, t-stop: {f-number: 11, t-number: 12} | 9:112 \
        camera.t-stop: stands beside transmittance; keep one of the two
        film: instant-mono-640 | film: instant-mono-64 | 10:7 film: no built-in film is named "instant-mono-64", and \
        a film's file ends in .yaml or .json. Did you mean instant-mono-640?
        film: instant-mono-640 | film: mine.yaml | 10:7 film: no file mine.yaml. Check the name and the folder you \
        are in.
        film: instant-mono-640 | film: /etc/mine.yaml | 10:7 film: the file "/etc/mine.yaml" lies outside the folder \
        of the file that names it. Put it beside that file.
        film: instant-mono-640 | film: a/../../mine.yaml | 10:7 film: the file "a/../../mine.yaml" lies outside the \
        folder of the file that names it. Put it beside that file.
        sheets: 8 | sheets: 0 | 11:9 sheets: sheets 0 is out of range; give 1 … 500
        sheets: 8 | forecast: c.csv¶sheets: 8 | 11:11 forecast: no file c.csv. Check the name and the folder you are in.
        exposure-min: {shortest: 20, longest: 180} | moon: {side: above} | 15:18 wishes[0].moon.side: expected ahead, \
        right, behind or left, found "above"
        exposure-min: {shortest: 20, longest: 180} | time-of-night: late | 15:20 wishes[0].time-of-night: expected a \
        section of keys, found "late". No file has that name either.
        exposure-min: {shortest: 20, longest: 180} | arc-deg: {least: 20, most: 10} | 15:14 wishes[0].arc-deg: most, 10, \
        is below least, 20. Put them in order.
        exposure-min: {shortest: 20, longest: 180} | time-of-night: {from: late, to: 01:00} | 15:27 \
        wishes[0].time-of-night.from: expected a time such as 22:30, found "late". Write 24-hour time, hours and minutes \
        with two digits each.
        wishes: | wishess: | 12:1 wishess: unknown key. Did you mean wishes?
        name: w | name: w¶    colour: red | 14:5 wishes[0].colour: unknown key. Known here: name, camera, openings, point, follow, \
        pole, sky, tone-stops, tone-at-most-stops, records-at-least, records, trail-mm, exposure-min, f-numbers, worth, \
        repeat, bracket-stops, moon, sun-depth-deg, time-of-night, twilight-min, twilight-percent, arc-deg, site, film.
        azimuth-deg: 0 | azimuth-deg: 361 | 14:26 wishes[0].point.azimuth-deg: azimuth 361 deg is out of range; give 0 … 360 deg
        altitude-deg: 42} | altitude-deg: 42}¶    follow: {body: mars} | 15:13 wishes[0].follow: stands beside \
        point; keep one of the two
        point: {azimuth-deg: 0, altitude-deg: 42} | sky: any | 13:5 wishes[0]: needs one of the keys point, follow, pole.
        point: {azimuth-deg: 0, altitude-deg: 42} | follow: {body: sun} | 14:20 wishes[0].follow.body: expected \
        moon, mercury, venus, mars, jupiter, saturn, uranus or neptune, found "sun"
        point: {azimuth-deg: 0, altitude-deg: 42} | follow: {star: {ra-deg: 10}} | 14:20 \
        wishes[0].follow.star.dec-deg: is missing. Add the key dec-deg.
        point: {azimuth-deg: 0, altitude-deg: 42} | follow: {star: Vegga} | 14:20 wishes[0].follow.star: nothing in \
        the sky is named "Vegga"; did you mean Vega?
        point: {azimuth-deg: 0, altitude-deg: 42} | follow: {star: sun} | 14:20 wishes[0].follow.star: the Sun is \
        never to be pointed at. Name something else.
        name: w | name: w¶    sky: drak | 14:10 wishes[0].sky: expected dark, moonlit, dusk, dawn or any, found \
        "drak". Did you mean dark?
        name: w | name: w¶    tone-stops: -1¶    tone-at-most-stops: -2 | 15:25 wishes[0].tone-at-most-stops: stands \
        beside tone-stops; keep one of the two
        name: w | name: w¶    records: mars¶    records-at-least: 3 | 14:14 wishes[0].records: stands beside \
        records-at-least; keep one of the two
        name: w | name: w¶    trail-mm: {least: long, most: 40} | 14:23 wishes[0].trail-mm.least: expected \
        millimetres, found "long". Write a plain number, 0 … 2000 mm.
        name: w | name: w¶    trail-mm: {least: 50, most: 40} | 14:33 wishes[0].trail-mm.most: 40 mm is below the \
        lower limit of 50 mm. Put them in order.
        longest: 180 | longest: 10 | 15:43 wishes[0].exposure-min.longest: 10 min is below the lower limit of 20 min. \
        Put them in order.
        name: w | name: w¶    f-numbers: [11, 22] | 14:21 wishes[0].f-numbers[1]: the lens has no f/22. It has 11, \
        16, 45.
        name: w | name: w¶    point: {azimuth-deg: 0, altitude-deg: 1}¶  - name: w | 15:11 wishes[1].name: the name \
        "w" is used twice. Give each its own.
        name: w | name: w¶    repeat: 1.5 | 14:13 wishes[0].repeat: expected a whole number, found "1.5". Leave \
        out the fraction.
        name: w | name: w¶    film: {name: x} | 14:11 wishes[0].film.iso: is missing. Add the key iso.
        """)
    void errorNamesItsPlaceAndWhatToDo(String good, String bad, String problem) {
        List<String> problems = refusal(GOOD.replace(good, bad == null ? "" : bad.replace("¶", "\n")));
        assertEquals("trip.yaml:" + problem, problems.get(0));
    }

    @Test
    void allErrorsComeAtOnceInTheOrderOfTheFile() {
        String bad = GOOD.replace("latitude-deg: 41", "latitude-deg: 95").replace("sheets: 8", "sheets: many")
                .replace("title", "titel").replace("zone: Europe/Madrid", "colour: red");
        assertEquals(List.of(
                "trip.yaml:1:1 titel: unknown key. Did you mean title?",
                "trip.yaml:3:5 sites[0].zone: is missing. Add the key zone.",
                "trip.yaml:4:19 sites[0].latitude-deg: latitude 95 deg is out of range; give -90 … 90 deg",
                "trip.yaml:7:5 sites[0].colour: unknown key. Known here: name, place, latitude-deg, "
                + "longitude-deg, height-m, "
                        + "zone, dark-sky-mag-arcsec2, extinction-mag, skyline, sea-horizon, preview, "
                        + "forecast, light-domes, sky.",
                "trip.yaml:11:9 sheets: expected a number, found \"many\". Write a plain number, 1 … 500."),
                refusal(bad));
    }

    @Test
    void errorsInSectionsOfTheirOwnFileNameThatFile() {
        Refusals.file(folder, "sites.json", "[{\"name\": \"A\", \"latitude-deg\": 95, \"longitude-deg\": 1,\n"
                + " \"height-m\": 1, \"zone\": \"UTC\", \"skyline\": \"s.csv\"}]");
        Refusals.file(folder, "s.csv", "azimuth_deg,altitude_deg\n1,90\n");
        String bad = GOOD.replaceFirst("(?s)sites:.*nights", "sites: sites.json\nnights")
                .replace("sheets: 8", "sheets: 0");
        assertEquals(List.of(
                "trip.yaml:6:9 sheets: sheets 0 is out of range; give 1 … 500",
                "sites.json:1:32 sites[0].latitude-deg: latitude 95 deg is out of range; give -90 … 90 deg",
                "s.csv:2:3 altitude_deg: skyline altitude 90 deg is out of range; give -10 … 89 deg"),
                refusal(bad));
    }

    @Test
    void circleOfFilesIsRefused() {
        Refusals.file(folder, "camera.yaml", "frame-mm: trip.yaml\n");
        assertTrue(refusal(GOOD.replaceAll("camera: .*", "camera: camera.yaml")).contains(
                "camera.yaml:1:11 camera.frame-mm: the file \"trip.yaml\" names itself. Take the circle "
                + "out."));
    }

    @Test
    void missingTripIsNamed() {
        assertEquals(List.of("no file trip.yaml. Check the name and the folder you are in."),
                Refusals.of(folder, () -> TripFile.read(folder.resolve("trip.yaml"))));
    }

    @Test
    void manyErrorsAreCutShort() {
        StringBuilder bad = new StringBuilder(GOOD);
        for (int i = 0; i < 300; i++) {
            bad.append("k").append(i).append("-unknown: 1\n");
        }
        List<String> problems = refusal(bad.toString());
        assertEquals(51, problems.size());
        assertEquals("and 250 more. Correct these first.", problems.get(50));
    }

    @Test
    void textCannotSteerATerminal() {
        List<String> problems = refusal(GOOD.replace("sheets: 8", "sheets: \"\\e[31m\\nx".repeat(500)
                + "\""));
        assertTrue(problems.get(0).chars().noneMatch(Character::isISOControl), problems.get(0));
        assertTrue(problems.get(0).length() < 200, problems.get(0));
    }

    private List<String> refusal(String text) {
        return Refusals.of(folder, () -> TripFile.read(Refusals.file(folder, "trip.yaml", text)));
    }
}
