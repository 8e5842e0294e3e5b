package gloam.support;

/** A vector in space; the axes and the unit are its user's to say. */
record Vector(double x, double y, double z) {

    /** The vector of a longitude and latitude (or right ascension and declination), and a length. */
    static Vector polar(double longitudeRad, double latitudeRad, double length) {
        double equatorial = length * Math.cos(latitudeRad);
        return new Vector(equatorial * Math.cos(longitudeRad), equatorial * Math.sin(longitudeRad),
                length * Math.sin(latitudeRad));
    }

    double length() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    double longitudeRad() {
        return Math.atan2(y, x);
    }

    double latitudeRad() {
        return Math.atan2(z, Math.hypot(x, y));
    }

    Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /** This vector in axes turned about x by an angle: equatorial from ecliptic for minus the obliquity. */
    Vector turnedAboutX(double angleRad) {
        double cos = Math.cos(angleRad);
        double sin = Math.sin(angleRad);
        return new Vector(x, cos * y + sin * z, cos * z - sin * y);
    }

    /** This vector in axes turned about y by an angle. */
    Vector turnedAboutY(double angleRad) {
        double cos = Math.cos(angleRad);
        double sin = Math.sin(angleRad);
        return new Vector(cos * x - sin * z, y, sin * x + cos * z);
    }

    /** This vector in axes turned about z by an angle. */
    Vector turnedAboutZ(double angleRad) {
        double cos = Math.cos(angleRad);
        double sin = Math.sin(angleRad);
        return new Vector(cos * x + sin * y, cos * y - sin * x, z);
    }
}
