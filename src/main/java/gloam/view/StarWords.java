package gloam.view;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers of stars in words. */
final class StarWords {

    private static final MathContext ESTIMATE = new MathContext(2);

    private StarWords() {
    }

    /** Such as "51 ± 14 of 214 stars to mag 6 and about 120 fainter (estimated)". */
    static String of(int recorded, int spread, int crossing, String stars, double toMag, int fainter) {
        return recorded + (spread == 0 ? "" : " ± " + spread) + " of " + crossing
                + (stars.isEmpty() ? "" : " " + stars) + " to mag " + Wording.plain(toMag)
                + (fainter == 0 ? "" : " and about " + new BigDecimal(fainter).round(ESTIMATE).toPlainString()
                + " fainter (estimated)");
    }
}
