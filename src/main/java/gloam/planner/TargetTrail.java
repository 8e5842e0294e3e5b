package gloam.planner;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Star;
import gloam.ephemeris.Target;
import gloam.light.Atmosphere;
import gloam.units.Angle;
import java.util.Arrays;
import java.util.List;

/** The trail of a body or star during a night: how bright it is, and the limits of its image by f-number. */
final class TargetTrail {

    private final Target target;
    private final NightSky sky;
    private final List<TrailLimits> limits;
    private final double[] seenMag;
    private final double[] lossMag;

    private TargetTrail(Target target, NightSky sky, List<TrailLimits> limits) {
        this.target = target;
        this.sky = sky;
        this.limits = limits;
        this.seenMag = new double[sky.clock().nodes() + 1];
        this.lossMag = new double[sky.clock().nodes() + 1];
        Arrays.fill(seenMag, Double.NaN);
    }

    /** The trail of a target on a night; its speed is that in the middle of the night. */
    static TargetTrail of(Target target, NightSky sky, Equipment with) {
        int middleMin = sky.clock().minutes() / 2;
        Angle semidiameter = target instanceof Body body ? appearance(body, sky, middleMin).semidiameter()
                : Angle.ZERO;
        double speedMmS = Equipment.equatorMmS(with.camera())
                * position(target, sky, middleMin).declination().cos();
        return new TargetTrail(target, sky, with.limits(speedMmS, semidiameter));
    }

    private static SkyPosition position(Target target, NightSky sky, int minute) {
        return target instanceof Body body ? appearance(body, sky, minute).position()
                : sky.position(target, minute);
    }

    private static Appearance appearance(Body body, NightSky sky, int minute) {
        return sky.ephemeris().appearance(body, sky.site(), sky.clock().at(minute));
    }

    Target target() {
        return target;
    }

    /**
     * By how many magnitudes it is brighter than its trail limit.
     *
     * @param number    place of the f-number
     * @param toneStops tone of the sky
     * @param log2Lx    light of the sky on the film half-way through, as the logarithm to base 2 of lx
     * @param middleMin minute half-way through
     */
    double marginMag(int number, double toneStops, double log2Lx, int middleMin) {
        int node = Math.round(middleMin / (float) NightClock.NODE_MIN);
        if (Double.isNaN(seenMag[node])) {
            look(node);
        }
        return limits.get(number).magnitude(toneStops, log2Lx) - seenMag[node] - lossMag[node];
    }

    private void look(int node) {
        int minute = node * NightClock.NODE_MIN;
        seenMag[node] = target instanceof Body body ? appearance(body, sky, minute).magnitude()
                : ((Star) target).magnitude();
        lossMag[node] = Atmosphere.lossMag(sky.site().extinctionMag(),
                position(target, sky, minute).apparentAltitude());
    }
}
