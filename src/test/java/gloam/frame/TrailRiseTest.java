package gloam.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line of known width on an even sky: the sum across a normal profile is √(2π) σ of its height. */
class TrailRiseTest {

    private static final int SIDE = 200;
    private static final double SKY = 0.3;
    private static final double HEIGHT = 0.06;

    @ParameterizedTest
    @ValueSource(doubles = {0.6, 1.2, 2, 3})
    void theWholeOfATrailIsThatOfItsProfile(double sigmaPx) {
        LightImage image = new LightImage(SIDE, SIDE);
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                double off = y + 0.5 - SIDE / 2.0;
                image.add(x, y, (float) SrgbCurve.light(SKY
                        + HEIGHT * Math.exp(-off * off / (2 * sigmaPx * sigmaPx))));
            }
        }
        TrailRise rise = TrailRise.of(new Ridges(image), List.of(List.of(
                new double[] {20, SIDE / 2.0}, new double[] {180, SIDE / 2.0})));
        assertEquals(HEIGHT * Math.sqrt(2 * Math.PI) * sigmaPx, rise.whole(), 0.03 * rise.whole());
        assertEquals(rise.whole() / rise.level(), TrailRise.widthPx(List.of(rise)).orElseThrow(), 1e-9);
    }
}
