package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.ToneGuide;
import gloam.view.JournalGuideReport.WordRow;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class JournalGuideReportTest {

    private static final List<WordRow> WORDS = JournalGuideReport.of(ToneGuide.all(), Instant.EPOCH).words();

    @Test
    void theMidToneIsAGreyCard() {
        assertEquals(0.18, WORDS.get(3).reflectance(), 0.005); // density 0.74 is 18.2 %
        assertEquals("middle", WORDS.get(3).word());
    }

    @Test
    void eachWordIsLighterThanTheOneBefore() {
        for (int i = 1; i < WORDS.size(); i++) {
            assertTrue(WORDS.get(i).reflectance() > 1.2 * WORDS.get(i - 1).reflectance(),
                    WORDS.get(i).word());
            assertTrue(WORDS.get(i).patch().compareTo(WORDS.get(i - 1).patch()) > 0);
        }
    }
}
