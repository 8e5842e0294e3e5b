package gloam.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * What a number from outside may be: its name, its least and greatest value and its unit.
 *
 * <p>The record that owns the number owns its range; options, files and constructors all ask the same one.
 *
 * @param what  the number's name in plain words
 * @param least the least allowed value
 * @param most  the greatest allowed value, infinite where only the least counts
 * @param unit  the unit's short name, empty for a pure number
 */
public record Range(String what, double least, double most, String unit) {

    /**
     * The value itself when it is allowed.
     *
     * @throws BadInput when it lies outside or is not a number
     */
    public double check(double value) {
        if (value >= least && value <= most) {
            return value;
        }
        throw new BadInput(what + " " + plain(value) + unitAfterSpace() + " is out of range; give "
                + allowed());
    }

    /** The allowed values in words, such as {@code -90 … 90 deg}, or {@code 0.1 m and more}. */
    public String allowed() {
        String from = plain(rounded(least, RoundingMode.CEILING));
        return Double.isInfinite(most)
                ? from + unitAfterSpace() + " and more"
                : from + " … " + plain(rounded(most, RoundingMode.FLOOR)) + unitAfterSpace();
    }

    /** A bound to six digits, so that what is printed is allowed itself. */
    private static double rounded(double bound, RoundingMode inwards) {
        return BigDecimal.valueOf(bound).round(new MathContext(6, inwards)).doubleValue();
    }

    private String unitAfterSpace() {
        return unit.isEmpty() ? "" : " " + unit;
    }

    private static String plain(double value) {
        return Double.isFinite(value)
                ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
                : Double.toString(value);
    }
}
