package gloam.ephemeris;

import gloam.units.Angle;

/** The three twilights by the airless altitude of the Sun's centre at which each ends. */
public enum Twilight {
    CIVIL(-6), NAUTICAL(-12), ASTRONOMICAL(-18);

    private final Angle limit;

    Twilight(double limitDeg) {
        this.limit = Angle.ofDegrees(limitDeg);
    }

    /** Airless altitude of the Sun's centre at the dark end of this twilight. */
    public Angle limit() {
        return limit;
    }
}
