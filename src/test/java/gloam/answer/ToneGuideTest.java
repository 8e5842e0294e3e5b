package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.answer.ToneGuide.Patch;
import gloam.journal.ToneWord;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ToneGuideTest {

    @Test
    void patchesAreTheGreysOfSrgb() {
        // IEC 61966-2-1: 1.055 · 0.18^(1/2.4) - 0.055 = 0.4613, of 255 that is 118
        assertEquals(118, Patch.screenLevel(0.18));
        assertEquals(0, Patch.screenLevel(0));
        assertEquals(255, Patch.screenLevel(1));
        // below 0.0031308 in proportion: 12.92 · 0.003 · 255 = 9.88
        assertEquals(10, Patch.screenLevel(0.003));
    }

    @Test
    void everyWordHasAPatchAndTheMidToneIsAGreyCard() {
        assertEquals(Arrays.asList(ToneWord.values()), ToneGuide.all().patches().stream().map(Patch::word)
                .toList());
        assertEquals(118, ToneGuide.all().patches().get(3).screenLevel(), 1); // of 0.18, above
        assertEquals(0.18, ToneGuide.all().patches().get(3).reflectance(), 0.005); // density 0.74 is 18.2 %
    }
}
