package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CloudCoverTest {

    /** Worked by hand: the rule of the guide, "On the day". */
    @Test
    void theChanceFallsWithTheMeanAndTheLongestCoveredStretch() {
        assertEquals(1, CloudCover.clearChance(0, 0));
        assertEquals(0.7, CloudCover.clearChance(0.3, 0), 1e-12);
        assertEquals(0.5 * 0.75, CloudCover.clearChance(0.5, 0.25), 1e-12);
        assertEquals(0, CloudCover.clearChance(1, 1));
    }
}
