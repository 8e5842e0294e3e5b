package gloam.light;

import gloam.ephemeris.Direction;
import gloam.gear.Site;
import java.time.Instant;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.stat.StatUtils;

/**
 * Light from beyond the air that fills the sky: zodiacal light, starlight. Below the horizon that of the
 * horizon.
 */
abstract class DiffuseLight implements LightModel {

    private static final int HOURS = 24;
    private static final double QUARTILE_PERCENT = 25;

    private final double colourBv;
    private final double spreadStops;

    DiffuseLight(double colourBv, double spreadStops) {
        this.colourBv = colourBv;
        this.spreadStops = spreadStops;
    }

    /**
     * Light from among the stars outside the air, in S10.
     *
     * @param star a direction among the stars
     * @param sun  the Sun's
     */
    abstract double s10(Vector3D star, Vector3D sun);

    @Override
    public final OverSite over(Site site) {
        DiffuseAir air = new DiffuseAir(site);
        double zenithCdM2 = zenithCdM2(site, air);
        return new OverSite() {

            @Override
            public double path(Direction direction) {
                return 1;
            }

            @Override
            public double spreadStops(Instant at) {
                return spreadStops;
            }

            @Override
            public Glow at(Circumstances sky) {
                Vector3D sun = sky.stars().amongStars(sky.airlessSun().vector());
                return new Glow() {

                    @Override
                    public double cdM2(Sight sight) {
                        Vector3D seen = sight.vector();
                        double up = Math.max(0, seen.getZ());
                        Vector3D star = sky.stars().amongStars(up > 0 ? seen
                                : new Vector3D(seen.getX(), seen.getY(), 0).normalize());
                        double s10 = s10(star, sun);
                        return DiffuseTable.cdM2(s10 * air.transmission(s10, DiffuseAir.airmass(up)));
                    }

                    @Override
                    public double groundLx() {
                        return Math.PI * zenithCdM2;
                    }

                    @Override
                    public double colourBv() {
                        return colourBv;
                    }
                };
            }

            @Override
            public double zenithCdM2() {
                return zenithCdM2;
            }
        };
    }

    private double zenithCdM2(Site site, DiffuseAir air) {
        return DiffuseTable.cdM2(StatUtils.percentile(IntStream.range(0, HOURS).mapToDouble(hour -> {
            Vector3D zenith = new Vector3D(2 * Math.PI * hour / HOURS, site.latitude().radians());
            double s10 = s10(zenith, zenith.negate());
            return s10 * air.transmission(s10, 1);
        }).toArray(), QUARTILE_PERCENT));
    }
}
