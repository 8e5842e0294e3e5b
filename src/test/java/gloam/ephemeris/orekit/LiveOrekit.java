package gloam.ephemeris.orekit;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.bodies.CelestialBodies;
import org.orekit.bodies.LazyLoadedCelestialBodies;
import org.orekit.data.ClasspathCrawler;
import org.orekit.data.DataProvidersManager;
import org.orekit.data.LazyLoadedDataContext;
import org.orekit.frames.Frame;
import org.orekit.time.AbsoluteDate;
import org.orekit.utils.PVCoordinates;

/** Orekit itself, asked at every instant, finding the files of the jar by its own means. */
final class LiveOrekit {

    static final LazyLoadedDataContext CONTEXT = context();

    private LiveOrekit() {
    }

    private static LazyLoadedDataContext context() {
        LazyLoadedDataContext context = new LazyLoadedDataContext();
        context.getDataProvidersManager().addProvider(new ClasspathCrawler("gloam/ephemeris/tai-utc.dat"));
        context.getFrames().addEOPHistoryLoader(EarthOrientation.CONVENTIONS, (converter, history) -> { });
        return context;
    }

    /** The bodies by the file of a year. */
    static CelestialBodies bodies(int year) {
        DataProvidersManager manager = new DataProvidersManager();
        manager.addProvider(new ClasspathCrawler("gloam/ephemeris/unxp" + year + ".405"));
        LazyLoadedCelestialBodies bodies = new LazyLoadedCelestialBodies(manager, CONTEXT.getTimeScales(),
                CONTEXT.getFrames().getGCRF());
        bodies.addDefaultCelestialBodyLoader("^unxp\\d+\\.405$");
        return bodies;
    }

    /** The date of a time in seconds of terrestrial time from J2000.0. */
    static AbsoluteDate date(double ttS) {
        return CONTEXT.getTimeScales().getJ2000Epoch().shiftedBy(ttS);
    }

    static int yearOf(double ttS) {
        return date(ttS).getComponents(CONTEXT.getTimeScales().getTT()).getDate().getYear();
    }

    /** Place and motion of a body from the solar system's barycentre, in m and m/s. */
    static PVCoordinates barycentric(CelestialBodies bodies, String body, AbsoluteDate date) {
        return bodies.getBody(body).getPVCoordinates(date, barycentre(bodies));
    }

    static Frame barycentre(CelestialBodies bodies) {
        return bodies.getSolarSystemBarycenter().getInertiallyOrientedFrame();
    }

    static double arcsec(Vector3D one, Vector3D other) {
        return Math.toDegrees(Vector3D.angle(one, other)) * 3600;
    }
}
