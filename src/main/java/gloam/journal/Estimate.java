package gloam.journal;

/**
 * An estimated number.
 *
 * @param mean its mean
 * @param sd   its standard deviation
 */
public record Estimate(double mean, double sd) {
}
