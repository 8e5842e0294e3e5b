package gloam.journal;

/**
 * What is known of a number.
 *
 * @param mean its mean
 * @param sd   its standard deviation
 */
public record Estimate(double mean, double sd) {
}
