package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** A sheet of colour film comes out alike in whatever asks for it. */
class OneColourTest {

    private static final String SHEET = " --place 41.05,-2.15,1080 --zone Europe/Madrid"
            + " --film instant-colour-125"
            + " --focal-length 120 --f-number 8 --azimuth 255 --altitude 25";

    /** Dusk, a dark sky, and one that the Moon lights, at the frame's centre. */
    @ParameterizedTest
    @ValueSource(strings = {"2027-02-08T19:10 --lasts 20m", "2027-02-09T00:30 --lasts 90m",
        "2027-02-16T21:00 --lasts 40m"})
    void exposeAndProofAgreeOnEveryLayer(String opening) {
        JsonNode expose = Run.json("expose --from " + opening + SHEET).at("/exposures/0");
        // trails of stars run there too; the sheet's size in pixels has no say
        JsonNode centre = Run.json("proof --size 24 --frame 80x80 --from " + opening + SHEET).at("/tones/0");
        JsonNode large = Run.json("proof --size 90 --frame 80x80 --from " + opening + SHEET).at("/tones/0");
        double[] exposed = IntStream.range(0, 3).mapToDouble(layer ->
                expose.at("/layers/" + layer + "/toneStops").doubleValue()).toArray();
        for (int layer = 0; layer < 3; layer++) {
            double proved = centre.at("/toneStops/" + layer).doubleValue();
            assertEquals(exposed[layer], proved, 0.02, expose + " " + centre);
            assertEquals(proved, large.at("/toneStops/" + layer).doubleValue());
        }
        assertEquals(expose.at("/skyToneStops").doubleValue(), exposed[1], 0.001);
    }
}
