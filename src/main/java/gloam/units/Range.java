package gloam.units;

import java.math.BigDecimal;

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
        throw new BadInput(what + " " + plain(value) + unitAfterSpace() + " is out of range; give " + allowed());
    }

    /** The allowed values in words, such as {@code -90 … 90 deg}, or {@code 0.1 m and more}. */
    public String allowed() {
        return Double.isInfinite(most)
                ? plain(least) + unitAfterSpace() + " and more"
                : plain(least) + " … " + plain(most) + unitAfterSpace();
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
