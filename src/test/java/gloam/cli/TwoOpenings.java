package gloam.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import tools.jackson.databind.JsonNode;

/** A trip with a sheet that is opened twice, at aims and f-numbers of their own. */
final class TwoOpenings {

    /** Dusk, then the pole: keys of a wish. */
    static final String TEXT = """
                    openings:
                      - point: {azimuth-deg: 230, altitude-deg: 15}
                        sky: dusk
                        exposure-min: {shortest: 2, longest: 20}
                        f-numbers: [16, 22]
                      - {pole: {}, sky: dark, exposure-min: 60, f-number: 11, gap-min: 10}
                """;

    private TwoOpenings() {
    }

    /** A trip of two sheets whose first wish has these openings and this tone. */
    static String trip(Path folder, String openings, String tone) throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: Two on one
                sites:
                  - {name: Moor gate, place: "54.5,-2.3,420", zone: Europe/London}
                nights: {from: 2027-01-05, to: 2027-01-06}
                camera: {name: box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [8, 11, 16, 22]}
                film: instant-mono-640
                sheets: 2
                wishes:
                  - name: Last light and the wheel
                """ + openings + "    " + tone + "\n" + """
                  - {name: Wheel, pole: {}, tone-at-most-stops: -1, exposure-min: {shortest: 60, longest: 90}}
                """).toString();
    }

    /** The sheet of that wish. */
    static JsonNode first(String trip) throws IOException {
        return Timetables.windows(Timetables.json(trip)).stream()
                .filter(window -> window.get("wish").asString().startsWith("Last")).findFirst().orElseThrow();
    }
}
