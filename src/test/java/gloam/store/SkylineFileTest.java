package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.gear.Skyline;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SkylineFileTest {

    @TempDir
    Path folder;

    @Test
    void pointsComeInAnyOrderWithCommentsAnyLineEndAndMark() {
        Skyline skyline = read("\uFEFF# from the map\r\nazimuth_deg, altitude_deg\r\n\r\n270,-0.5\r\n"
                + "  90 , 12\r\n# end\r\n");
        assertEquals(List.of(new Skyline.Point(90, 12), new Skyline.Point(270, -0.5)), skyline.points());
    }

    @Test
    void allErrorsOfAFileComeWithTheirPlaces() {
        assertEquals(List.of(
                "s.csv:2:1 azimuth_deg: azimuth 361 deg is out of range; give 0 … 360 deg",
                "s.csv:2:5 altitude_deg: expected degrees, found \"high\". Write a plain number, -10 … 89 "
                + "deg.",
                "s.csv:3:1: expected 2 cells (azimuth_deg,altitude_deg), found 3. Give each, with commas "
                + "between.", "s.csv:5:4 altitude_deg: expected degrees, found nothing. Write a value."),
                refusal("azimuth_deg,altitude_deg\n361,high\n1,2,3\n4,5\n10,\n"));
    }

    @Test
    void headerIsNeeded() {
        assertEquals(List.of("s.csv:1:1: expected the header azimuth_deg,altitude_deg, found \"90,12\""),
                refusal("90,12\n"));
        assertEquals(List.of("s.csv:1:1: no rows. Begin with the line azimuth_deg,altitude_deg "
                + "and give a line a point."), refusal(""));
    }

    private List<String> refusal(String text) {
        return Refusals.of(folder, () -> read(text));
    }

    /** The terrain of a trip's only site. */
    private Skyline read(String text) {
        Refusals.file(folder, "s.csv", text);
        return TripFile.read(Refusals.file(folder, "trip.yaml", """
                title: On the hill
                sites: [{name: Hill, place: "50,10,100", zone: UTC, skyline: s.csv}]
                nights: {from: 2027-02-06, to: 2027-02-06}
                camera: {name: box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [8]}
                film: instant-mono-640
                sheets: 1
                wishes: []
                """)).trip().sites().get(0).skyline();
    }
}
