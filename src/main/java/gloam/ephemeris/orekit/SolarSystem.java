package gloam.ephemeris.orekit;

import gloam.ephemeris.Body;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.bodies.CelestialBodies;
import org.orekit.bodies.CelestialBody;
import org.orekit.bodies.CelestialBodyFactory;
import org.orekit.frames.Frame;
import org.orekit.frames.Predefined;
import org.orekit.time.AbsoluteDate;
import org.orekit.utils.Constants;
import org.orekit.utils.PVCoordinates;

/**
 * Places of the bodies from the solar system's barycentre, in km along the axes of the International
 * Celestial Reference System: Orekit's, sampled and interpolated. Times are seconds of terrestrial time
 * from J2000.0.
 */
final class SolarSystem {

    private static final double DAY_S = Constants.JULIAN_DAY;
    private static final double M_IN_KM = 1000;
    /** Neptune is 4.5e12 m away. */
    private static final double FARTHEST_M = 1e14;

    private final EarthOrientation earthOrientation;
    private final PlanetSource source;
    private final Map<Body, Interpolants> bodies = new EnumMap<>(Body.class);
    private final Interpolants earth;

    SolarSystem(EarthOrientation earthOrientation, PlanetSource source) {
        this.earthOrientation = earthOrientation;
        this.source = source;
        for (Body body : Body.values()) {
            bodies.put(body, interpolants(Sampling.of(body), nameOf(body)));
        }
        this.earth = interpolants(Sampling.of(Body.MOON), CelestialBodyFactory.EARTH);
    }

    Vector3D positionKm(Body body, double ttS) {
        return bodies.get(body).at(ttS).value(ttS);
    }

    /** Place and motion of the Earth's centre, in km and km/s. */
    PVCoordinates earthKm(double ttS) {
        Interpolant there = earth.at(ttS);
        return new PVCoordinates(there.value(ttS), there.rate(ttS));
    }

    /** How a body's globe stands. */
    synchronized PlanetAxis axis(Body body, double ttS) {
        AbsoluteDate date = earthOrientation.date(ttS);
        CelestialBodies there = source.at(date);
        Frame axes = there.getBody(nameOf(body)).getBodyOrientedFrame();
        return new PlanetAxis(barycentric(there).getStaticTransformTo(axes, date).getRotation());
    }

    /**
     * The same, every body looked for at both ends of what is covered.
     *
     * @throws gloam.units.BadInput when a file of the user's lacks one
     */
    SolarSystem checked() {
        List<Instant> ends = List.of(source.covers().start(), source.covers().endExclusive());
        for (Instant end : ends) {
            double ttS = earthOrientation.ttS(end);
            earth.at(ttS);
            bodies.values().forEach(body -> body.at(ttS));
        }
        return this;
    }

    private Interpolants interpolants(Sampling sampling, String name) {
        return new Interpolants(source.originS(), sampling.spanDays * DAY_S, sampling.points,
                ttS -> sample(name, ttS));
    }

    /** Orekit's loaders are made for one thread. */
    private synchronized Vector3D sample(String name, double ttS) {
        AbsoluteDate date = earthOrientation.date(ttS);
        return place(name, date).filter(there -> there.getNorm() < FARTHEST_M)
                .orElseThrow(() -> source.lacking(name, date)).scalarMultiply(1 / M_IN_KM);
    }

    /** Whatever Orekit throws over a damaged file, it means that there is no place. */
    private Optional<Vector3D> place(String name, AbsoluteDate date) {
        try {
            CelestialBodies there = source.at(date);
            CelestialBody body = there.getBody(name);
            return Optional.of(body.getPosition(date, barycentric(there, body)));
        } catch (RuntimeException damaged) {
            return Optional.empty();
        }
    }

    /** Sun and planets each come with a frame of the barycentre; it spares the way to another body's. */
    private static Frame barycentric(CelestialBodies bodies, CelestialBody body) {
        Frame parent = body.getInertiallyOrientedFrame().getParent();
        return parent.getName().equals(Predefined.ICRF.getName()) ? parent : barycentric(bodies);
    }

    private static Frame barycentric(CelestialBodies bodies) {
        return bodies.getSolarSystemBarycenter().getInertiallyOrientedFrame();
    }

    private static String nameOf(Body body) {
        return body.name().charAt(0) + body.label().substring(1);
    }

    /**
     * How a body's places are sampled: a kilometre, for the Moon a few metres, off Orekit's.
     *
     * @param spanDays a span of one interpolant, a part of the 32 days of a record
     * @param points   samples in it
     */
    private record Sampling(int spanDays, int points) {

        static Sampling of(Body body) {
            return switch (body) {
                case MOON -> new Sampling(8, 12);
                case MERCURY -> new Sampling(16, 12);
                default -> new Sampling(32, 8);
            };
        }
    }
}
