package gloam.ephemeris.orekit;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.OutsideCoverage;
import gloam.ephemeris.Refraction;
import gloam.ephemeris.Sightline;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Target;
import gloam.ephemeris.orekit.EarthOrientation.Values;
import gloam.ephemeris.orekit.EarthTurn.Equator;
import gloam.gear.Site;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLConnection;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * Places from JPL's ephemeris and the Earth's orientation after the IERS Conventions (2010).
 *
 * <p>Without a file of the Earth's orientation universal time UT1 is taken as UTC, which is true to 0.9 s,
 * and the pole as fixed in the Earth, which is true to 0.5″. May be asked by many threads at once.
 */
public final class OrekitEphemeris implements Ephemeris {

    private static final String RESOURCES = "/gloam/ephemeris/";
    private static final Interval BUILT_IN = new Interval(startOf(2000), startOf(2060));
    /** Left out at both ends of a file, for light on its way and for the difference of time scales. */
    private static final long MARGIN_S = 86_400;

    private final Interval covers;
    private final LeapSeconds leapSeconds;
    private final CelestialPole celestialPole;
    private final Optional<EarthOrientation> orientation;
    private final Sightings sightings;
    /** What a thread last asked for; null at first. */
    private final ThreadLocal<Moment> last = new ThreadLocal<>();

    private OrekitEphemeris(Interval covers, LeapSeconds leapSeconds, CelestialPole celestialPole,
                            Optional<EarthOrientation> orientation, JplEphemeris planets) {
        this.covers = covers;
        this.leapSeconds = leapSeconds;
        this.celestialPole = celestialPole;
        this.orientation = orientation;
        this.sightings = new Sightings(planets);
    }

    /** The ephemeris of the data in the jar, read at the first call. */
    public static OrekitEphemeris builtIn() {
        return BuiltIn.EPHEMERIS;
    }

    private static OrekitEphemeris read() {
        try (InputStream leaps = resource("leap-seconds.tsv");
             InputStream pole = resource("celestial-pole.bin")) {
            LeapSeconds leapSeconds = LeapSeconds.read(leaps);
            CelestialPole celestialPole = CelestialPole.read(pole, new PoleSeries(leapSeconds));
            return new OrekitEphemeris(BUILT_IN, leapSeconds, celestialPole, Optional.empty(),
                    JplEphemeris.of(wholeResource("unxp2000.405")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The same with Sun, Moon and planets from a file in JPL's binary form.
     *
     * @throws BadInput when the file cannot be read or is no such file
     */
    public OrekitEphemeris withPlanets(Path path) {
        UserFile file = new UserFile("ephemeris", path, "Give a file in JPL's binary form, such as unxp2000.405.");
        try {
            JplEphemeris planets = JplEphemeris.of(file.bytes()).checked();
            Interval inFile = new Interval(
                    LeapSeconds.NOON_2000.plusSeconds((long) planets.firstS() + MARGIN_S),
                    LeapSeconds.NOON_2000.plusSeconds((long) planets.lastS() - MARGIN_S));
            return new OrekitEphemeris(inFile, leapSeconds, celestialPole, orientation, planets)
                    .within(orientation);
        } catch (IOException e) {
            throw file.unreadable(e);
        }
    }

    /**
     * The same with UT1 and the pole's wandering from a finals2000A file of the IERS, for the days it holds.
     *
     * @throws BadInput when the file cannot be read, is no such file or holds no day of the ephemeris
     */
    public OrekitEphemeris withEarthOrientation(Path file) {
        return within(Optional.of(EarthOrientation.read(file, leapSeconds)));
    }

    private OrekitEphemeris within(Optional<EarthOrientation> measured) {
        Interval common = measured.map(given -> covers.intersect(given.covers()).orElseThrow(
                () -> new BadInput("the Earth orientation covers " + given.covers().start() + " … "
                        + given.covers().endExclusive()
                        + ", outside the ephemeris. Give files of common dates.")))
                .orElse(covers);
        return new OrekitEphemeris(common, leapSeconds, celestialPole, measured, sightings.planets());
    }

    @Override
    public Interval covers() {
        return covers;
    }

    @Override
    public SkyPosition position(Target target, Site site, Instant at) {
        Moment moment = moment(site, at);
        return position(sightings.of(target, moment.observer), moment);
    }

    @Override
    public Sightline sightline(Target target, Site site, Instant at) {
        Observer observer = moment(site, at).observer;
        return sightline(sightings.of(target, observer), observer);
    }

    @Override
    public Appearance appearance(Body body, Site site, Instant at) {
        Moment moment = moment(site, at);
        Sighting sighting = sightings.of(body, moment.observer);
        return sightings.look(body, sighting, moment.observer).at(position(sighting, moment));
    }

    private static SkyPosition position(Sighting sighting, Moment moment) {
        Sightline line = sightline(sighting, moment.observer);
        Equator equator = moment.turn.equator();
        double equinox = sighting.direction().dot(equator.equinox());
        double sixHours = sighting.direction().dot(equator.sixHours());
        Angle airless = latitude(line.east(), line.north(), line.up());
        return new SkyPosition(longitude(line.north(), line.east()), airless,
                moment.ground.refraction.apparent(airless),
                longitude(equinox, sixHours),
                latitude(equinox, sixHours, sighting.direction().dot(equator.pole())),
                sighting.distanceKm());
    }

    private static Sightline sightline(Sighting sighting, Observer observer) {
        Vector direction = sighting.direction();
        return new Sightline(direction.dot(observer.east()), direction.dot(observer.north()),
                direction.dot(observer.up()), sighting.distanceKm());
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
        boolean sameSite = known != null && known.ground.site == site;
        if (sameSite && known.at.equals(at)) {
            return known;
        }
        if (!covers.contains(at)) {
            throw new OutsideCoverage(at, covers);
        }
        Ground ground = sameSite ? known.ground : Ground.of(site);
        double utcS = LeapSeconds.utcS(at);
        double ttS = utcS + leapSeconds.ttMinusUtcS(at);
        Values values = orientation.isPresent() ? orientation.get().at(utcS, leapSeconds.taiMinusUtcS(at)) : Values.UNKNOWN;
        EarthTurn turn = EarthTurn.at(ttS, utcS, values, celestialPole.at(ttS));
        Moment moment = new Moment(ground, at, turn, sightings.observer(ground.point, turn));
        last.set(moment);
        return moment;
    }

    private static Instant startOf(int year) {
        return LocalDate.ofYearDay(year, 1).atStartOfDay().toInstant(ZoneOffset.UTC);
    }

    private static InputStream resource(String name) {
        return OrekitEphemeris.class.getResourceAsStream(RESOURCES + name);
    }

    /** All bytes of a large resource, read into their place at once: gathering them piece by piece takes twice the memory. */
    private static byte[] wholeResource(String name) throws IOException {
        URLConnection resource = OrekitEphemeris.class.getResource(RESOURCES + name).openConnection();
        try (InputStream in = resource.getInputStream()) {
            byte[] content = new byte[resource.getContentLength()];
            if (in.readNBytes(content, 0, content.length) < content.length) {
                throw new EOFException(name + " ends before its length");
            }
            return content;
        }
    }

    /** Holds the ephemeris of the data in the jar from the first call on. */
    private static final class BuiltIn {

        static final OrekitEphemeris EPHEMERIS = read();
    }

    /** What is computed once for a site. */
    private record Ground(Site site, GroundPoint point, Refraction refraction) {

        static Ground of(Site site) {
            return new Ground(site, new GroundPoint(site), Refraction.ofHeight(site.heightM()));
        }
    }

    /** What is computed once for an instant at a site. */
    private record Moment(Ground ground, Instant at, EarthTurn turn, Observer observer) {
    }
}
