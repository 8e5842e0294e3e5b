package gloam.units;

/**
 * A plane angle.
 *
 * <p>Carries no convention of its own: whoever holds one says its zero direction, positive sense and range.
 *
 * @param radians the angle in radians, any finite value
 */
public record Angle(double radians) implements Comparable<Angle> {

    /** No angle at all. */
    public static final Angle ZERO = new Angle(0);

    private static final double TURN_RAD = 2 * Math.PI;

    /** Refuses a value that is not finite: that is a slip in a computation, never a user's error. */
    public Angle {
        Finite.check(radians, "angle");
    }

    /** The angle of that many radians. */
    public static Angle ofRadians(double radians) {
        return new Angle(radians);
    }

    /** The angle of that many degrees. */
    public static Angle ofDegrees(double degrees) {
        return new Angle(Math.toRadians(degrees));
    }

    /** This angle in degrees. */
    public double degrees() {
        return Math.toDegrees(radians);
    }

    /** This angle in seconds of arc. */
    public double arcsec() {
        return degrees() * 3600;
    }

    /** Sine of this angle. */
    public double sin() {
        return Math.sin(radians);
    }

    /** Cosine of this angle. */
    public double cos() {
        return Math.cos(radians);
    }

    /** The sum of this angle and another, not brought into any range. */
    public Angle plus(Angle other) {
        return new Angle(radians + other.radians);
    }

    /** This angle less another, not brought into any range. */
    public Angle minus(Angle other) {
        return new Angle(radians - other.radians);
    }

    /** The same direction as an angle from 0 (included) to a full turn (left out). */
    public Angle positive() {
        double inTurn = radians % TURN_RAD;
        double positive = inTurn < 0 ? inTurn + TURN_RAD : inTurn;
        return new Angle(positive >= TURN_RAD ? 0 : positive);
    }

    /** The same direction as an angle from minus half a turn (left out) to half a turn (included). */
    public Angle signed() {
        double positive = positive().radians;
        return new Angle(positive > Math.PI ? positive - TURN_RAD : positive);
    }

    /** Degrees, as a person looks for them in a message. */
    @Override
    public String toString() {
        return degrees() + "°";
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(radians, other.radians);
    }
}
