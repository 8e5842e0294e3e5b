package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LabelTest {

    private static final List<Weather> ALL = List.of(Weather.values());

    private enum Weather {
        CLEAR, HIGH_CLOUD, RAIN
    }

    @Test
    void partsAreJoinedByHyphensAndInSentencesBySpaces() {
        assertEquals("high-cloud", Label.of(Weather.HIGH_CLOUD));
        assertEquals("high cloud", Label.words(Weather.HIGH_CLOUD));
        assertEquals(List.of("clear", "high-cloud", "rain"), Label.all(ALL));
    }

    @ParameterizedTest
    @EnumSource(Weather.class)
    void aLabelNamesItsConstant(Weather weather) {
        assertEquals(Optional.of(weather), Label.named(Label.of(weather), ALL));
    }

    @Test
    void lettersMayBeLargeAndOtherWordsNameNone() {
        assertEquals(Optional.of(Weather.HIGH_CLOUD), Label.named(" High-Cloud ", ALL));
        assertEquals(Optional.empty(), Label.named("high", ALL));
        assertEquals(Optional.empty(), Label.named("rain", List.of(Weather.CLEAR)));
    }
}
