package gloam.ephemeris.orekit;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.OutsideCoverage;
import gloam.ephemeris.Sightline;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Target;
import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Places from JPL's ephemeris and the Earth's orientation after the IERS Conventions, both by Orekit.
 *
 * <p>Without a file of the Earth's orientation universal time UT1 is taken as UTC, which is true to 0.9 s,
 * and the pole as fixed in the Earth, which is true to 0.5″. May be asked by many threads at once.
 */
public final class OrekitEphemeris implements Ephemeris {

    private final Interval covers;
    private final EarthOrientation earthOrientation;
    private final PlanetSource planets;
    private final SolarSystem solarSystem;
    private final Sightings sightings;
    /** What a thread last asked for; null at first. */
    private final ThreadLocal<Moment> last = new ThreadLocal<>();

    private OrekitEphemeris(Interval covers, EarthOrientation earthOrientation, PlanetSource planets,
                            SolarSystem solarSystem) {
        this.covers = covers;
        this.earthOrientation = earthOrientation;
        this.planets = planets;
        this.solarSystem = solarSystem;
        this.sightings = new Sightings(solarSystem);
    }

    /** The ephemeris of the data in the jar, made at the first call. */
    public static OrekitEphemeris builtIn() {
        return BuiltIn.EPHEMERIS;
    }

    private static OrekitEphemeris made() {
        EarthOrientation earthOrientation = new EarthOrientation(List.of());
        PlanetSource planets = new YearlyFiles(earthOrientation);
        return new OrekitEphemeris(planets.covers(), earthOrientation, planets,
                new SolarSystem(earthOrientation, planets));
    }

    /**
     * The same with Sun, Moon and planets from a file in JPL's binary form.
     *
     * @throws BadInput when the file cannot be read or is no such file
     */
    public OrekitEphemeris withPlanets(Path file) {
        PlanetSource own = JplFile.read(file, earthOrientation);
        return new OrekitEphemeris(common(own.covers(), earthOrientation), earthOrientation, own,
                new SolarSystem(earthOrientation, own).checked());
    }

    /**
     * The same with UT1 and the pole's wandering from a finals2000A file of the IERS, for the days it holds.
     *
     * @throws BadInput when the file cannot be read, is no such file or holds no day of the ephemeris
     */
    public OrekitEphemeris withEarthOrientation(Path file) {
        EarthOrientation measured = EarthOrientation.read(file, earthOrientation.scales());
        return new OrekitEphemeris(common(planets.covers(), measured), measured, planets, solarSystem);
    }

    private static Interval common(Interval planets, EarthOrientation earthOrientation) {
        Optional<Interval> measured = earthOrientation.covers();
        return measured.map(days -> planets.intersect(days).orElseThrow(() -> new BadInput(
                "the Earth orientation covers " + days.start() + " … " + days.endExclusive()
                        + ", outside the ephemeris. Give files of common dates."))).orElse(planets);
    }

    @Override
    public Interval covers() {
        return covers;
    }

    @Override
    public SkyPosition position(Target target, Site site, Instant at) {
        Moment moment = moment(site, at);
        return position(sightings.of(target, moment.topocentre), moment);
    }

    @Override
    public Sightline sightline(Target target, Site site, Instant at) {
        Topocentre topocentre = moment(site, at).topocentre;
        return sightline(sightings.of(target, topocentre), topocentre);
    }

    @Override
    public Appearance appearance(Body body, Site site, Instant at) {
        Moment moment = moment(site, at);
        Sighting sighting = sightings.of(body, moment.topocentre);
        return sightings.look(body, sighting, moment.topocentre).at(position(sighting, moment), solarSystem);
    }

    private SkyPosition position(Sighting sighting, Moment moment) {
        Vector3D line = sightline(sighting, moment.topocentre).direction();
        Vector3D pole = moment.attitude.pole();
        Vector3D equinox = earthOrientation.equinox(moment.attitude);
        double toEquinox = sighting.direction().dotProduct(equinox);
        double toSixHours = sighting.direction().dotProduct(pole.crossProduct(equinox));
        Angle airless = latitude(line.getX(), line.getY(), line.getZ());
        return new SkyPosition(longitude(line.getY(), line.getX()), airless,
                moment.ground.refraction().apparent(airless),
                longitude(toEquinox, toSixHours),
                latitude(toEquinox, toSixHours, sighting.direction().dotProduct(pole)),
                sighting.distanceKm());
    }

    private static Sightline sightline(Sighting sighting, Topocentre from) {
        Vector3D direction = sighting.direction();
        return new Sightline(new Vector3D(direction.dotProduct(from.east()),
                direction.dotProduct(from.north()), direction.dotProduct(from.up())), sighting.distanceKm());
    }

    private static Angle longitude(double x, double y) {
        return Angle.ofRadians(Math.atan2(y, x)).positive();
    }

    private static Angle latitude(double x, double y, double z) {
        return Angle.ofRadians(Math.atan2(z, Math.sqrt(x * x + y * y)));
    }

    /** The site at an instant, out of memory when it is what was last asked for. */
    private Moment moment(Site site, Instant at) {
        Moment known = last.get();
        boolean sameSite = known != null && known.ground.site() == site;
        if (sameSite && known.at.equals(at)) {
            return known;
        }
        if (!covers.contains(at)) {
            throw new OutsideCoverage(at, covers);
        }
        Ground ground = sameSite ? known.ground : Ground.of(site, earthOrientation.ellipsoid());
        EarthAttitude attitude = earthOrientation.attitude(at);
        Moment moment = new Moment(ground, at, attitude, Topocentre.of(ground, attitude, solarSystem));
        last.set(moment);
        return moment;
    }

    /** Holds the ephemeris of the data in the jar from the first call on. */
    private static final class BuiltIn {

        static final OrekitEphemeris EPHEMERIS = made();
    }

    /** What is computed once for an instant at a site. */
    private record Moment(Ground ground, Instant at, EarthAttitude attitude, Topocentre topocentre) {
    }
}
