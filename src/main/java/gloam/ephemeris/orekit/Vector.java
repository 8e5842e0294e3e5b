package gloam.ephemeris.orekit;

/** Three components along the axes of the Geocentric Celestial Reference System. */
record Vector(double x, double y, double z) {

    Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    /** The sum with a multiple of another. */
    Vector plusTimes(double factor, Vector other) {
        return new Vector(x + factor * other.x, y + factor * other.y, z + factor * other.z);
    }

    Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    Vector unit() {
        return times(1 / length());
    }

    /** The angle to another vector, 0 to π, exact for small angles too. */
    double angleRad(Vector other) {
        return Math.atan2(cross(other).length(), dot(other));
    }

    /** The unit vector of a longitude and a latitude, such as right ascension and declination. */
    static Vector ofAngles(double longitudeRad, double latitudeRad) {
        double cosLatitude = Math.cos(latitudeRad);
        return new Vector(cosLatitude * Math.cos(longitudeRad), cosLatitude * Math.sin(longitudeRad),
                Math.sin(latitudeRad));
    }
}
