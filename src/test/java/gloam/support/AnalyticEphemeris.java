package gloam.support;

import static java.lang.Math.toRadians;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.OutsideCoverage;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Instant;

/**
 * An ephemeris of short published formulas: tests run on it without data, and check the precise one with it.
 *
 * <p><b>Model.</b> {@link LowPrecisionSun}, {@link LowPrecisionMoon}, {@link KeplerianPlanets}; mean sidereal
 * time: J. Meeus, Astronomical Algorithms, 2nd ed., (12.4); precession: IAU 1976, ibid. (21.2, 21.3);
 * refraction: Sæmundsson 1986, ibid. (16.4), the inverse of Bennett 1982, scaled by the standard atmosphere's
 * pressure.
 * <b>Valid.</b> 2000 to 2060.
 * <b>Error.</b> Sun 0.02°, stars 0.02°, planets 0.2°, Moon 0.4°.
 * <b>Departures.</b> No nutation, no aberration and light-time (but for the Sun's, in its formula), UT1 =
 * UTC, refraction held below −1.9°.
 */
public final class AnalyticEphemeris implements Ephemeris {

    private static final Interval COVERED =
            new Interval(Instant.parse("2000-01-01T00:00:00Z"), Instant.parse("2060-01-01T00:00:00Z"));
    private static final Instant J2000 = Instant.parse("2000-01-01T12:00:00Z");
    private static final double TT_LESS_UTC_S = 69.184;
    private static final double KM_A_AU = 149_597_870.7;
    private static final double EQUATOR_RADIUS_KM = 6378.137;
    private static final double FLATTENING = 1 / 298.257223563;

    @Override
    public Interval covers() {
        return COVERED;
    }

    @Override
    public SkyPosition position(Target target, Site site, Instant at) {
        double days = checkedDays(at);
        double siderealRad = siderealRad(days) + site.longitude().radians();
        boolean star = target instanceof Star;
        Vector geocentric = geocentric(target, days);
        Vector seen = star ? geocentric : geocentric.plus(observerKm(site, siderealRad).times(-1));
        Vector local = seen.turnedAboutZ(siderealRad).turnedAboutY(Math.PI / 2 - site.latitude().radians());
        double azimuthRad = Math.PI - local.longitudeRad();
        Angle airless = Angle.ofRadians(local.latitudeRad());
        return new SkyPosition(Angle.ofRadians(azimuthRad).positive(), airless,
                refracted(airless, site.heightM()),
                Angle.ofRadians(seen.longitudeRad()).positive(), Angle.ofRadians(seen.latitudeRad()),
                star ? Double.POSITIVE_INFINITY : seen.length());
    }

    @Override
    public Appearance appearance(Body body, Site site, Instant at) {
        double days = checkedDays(at);
        Vector sun = geocentric(Body.SUN, days).times(1 / KM_A_AU);
        Vector place = geocentric(body, days).times(1 / KM_A_AU);
        Vector fromSun = place.plus(sun.times(-1));
        SkyPosition position = position(body, site, at);
        double fromSiteAu = position.distanceKm() / KM_A_AU;
        double phaseRad = body == Body.SUN ? 0
                : Math.acos(place.dot(fromSun) / (place.length() * fromSun.length()));
        double magnitude = BodyLook.magnitude(body, Math.toDegrees(phaseRad), fromSun.length(), fromSiteAu);
        return new Appearance(body, position, Angle.ofRadians(phaseRad), (1 + Math.cos(phaseRad)) / 2,
                magnitude,
                Angle.ofRadians(BodyLook.semidiameterRad(body, fromSiteAu)));
    }

    private static double checkedDays(Instant at) {
        if (!COVERED.contains(at)) {
            throw new OutsideCoverage(at, COVERED);
        }
        return (at.getEpochSecond() - J2000.getEpochSecond() + at.getNano() * 1e-9) / 86400;
    }

    /** Greenwich mean sidereal time for days from J2000.0 (UT1). */
    static double siderealRad(double days) {
        double centuries = days / 36525;
        return toRadians(280.46061837 + 360.98564736629 * days + 0.000387933 * centuries * centuries);
    }

    /** Equator of date; km, for a star a unit vector. */
    private static Vector geocentric(Target target, double days) {
        double daysTt = days + TT_LESS_UTC_S / 86400;
        if (target instanceof Star star) {
            return precessed(atEpoch(star, daysTt), daysTt);
        }
        return switch ((Body) target) {
            case SUN -> LowPrecisionSun.ecliptic(daysTt).times(KM_A_AU).turnedAboutX(-obliquityRad(daysTt));
            case MOON -> LowPrecisionMoon.ecliptic(daysTt).turnedAboutX(-obliquityRad(daysTt));
            default -> precessed(planet((Body) target, daysTt).turnedAboutX(-obliquityRad(0)), daysTt);
        };
    }

    private static Vector planet(Body planet, double daysTt) {
        Vector fromSun = KeplerianPlanets.fromSun(planet, daysTt);
        return fromSun.plus(KeplerianPlanets.earthFromSun(daysTt).times(-1)).times(KM_A_AU);
    }

    private static Vector atEpoch(Star star, double daysTt) {
        double years = daysTt / 365.25;
        double declinationRad = toRadians(star.declinationDeg());
        double masToRad = toRadians(1 / 3.6e6);
        double raStepRad =
                star.properMotionRaMasYr() * masToRad * years / Math.max(1e-6, Math.cos(declinationRad));
        return Vector.polar(toRadians(star.rightAscensionDeg()) + raStepRad,
                declinationRad + star.properMotionDecMasYr() * masToRad * years, 1);
    }

    private static Vector precessed(Vector j2000, double daysTt) {
        double centuries = daysTt / 36525;
        double zetaRad = arcsec(2306.2181, 0.30188, 0.017998, centuries);
        double zRad = arcsec(2306.2181, 1.09468, 0.018203, centuries);
        double thetaRad = arcsec(2004.3109, -0.42665, -0.041833, centuries);
        return j2000.turnedAboutZ(-zetaRad).turnedAboutY(thetaRad).turnedAboutZ(-zRad);
    }

    private static double arcsec(double first, double second, double third, double centuries) {
        return toRadians((first + (second + third * centuries) * centuries) * centuries / 3600);
    }

    private static double obliquityRad(double daysTt) {
        return toRadians(23.439291 - 0.0130042 * daysTt / 36525);
    }

    private static Vector observerKm(Site site, double siderealRad) {
        double sin = site.latitude().sin();
        double squared = FLATTENING * (2 - FLATTENING);
        double radiusKm = EQUATOR_RADIUS_KM / Math.sqrt(1 - squared * sin * sin);
        double heightKm = site.heightM() / 1000;
        double acrossKm = (radiusKm + heightKm) * site.latitude().cos();
        return new Vector(acrossKm * Math.cos(siderealRad), acrossKm * Math.sin(siderealRad),
                (radiusKm * (1 - squared) + heightKm) * sin);
    }

    private static Angle refracted(Angle airless, double heightM) {
        double altitudeDeg = Math.max(airless.degrees(), -1.9);
        double pressureShare = Math.pow(1 - 2.25577e-5 * heightM, 5.25588);
        double argumentDeg = Math.min(90, altitudeDeg + 10.3 / (altitudeDeg + 5.11));
        double refractionArcmin = pressureShare * 1.02 / Math.tan(toRadians(argumentDeg));
        return Angle.ofDegrees(airless.degrees() + refractionArcmin / 60);
    }
}
