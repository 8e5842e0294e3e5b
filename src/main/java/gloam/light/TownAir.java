package gloam.light;

import gloam.gear.Site;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * How the air over a site spreads the light of a town over the sky.
 *
 * <p><b>Model.</b> Garstang 1986, PASP 98, 364: a town's light, thrown up by the ground and by its lamps, is
 * scattered by molecules and dust along the line of sight, with a first correction for light scattered
 * twice; dust's phase function as in Garstang 1991, PASP 103, 1109. His clarity K follows from the dust in
 * the site's extinction. <b>Valid.</b> Towns to about 100 km, altitudes from 5°. <b>Error.</b> The shape is
 * good to about a tenth from 10° up in clear air; dust over the town itself is not known. <b>Departures.</b>
 * A flat Earth, the town a point at the site's height, never nearer than 1 km to what it lights; no clouds.
 */
final class TownAir {

    private static final double REACH_KM = 200;
    private static final double TOWN_KM = 1;
    private static final double NEXT_TO_GROUND_KM = 1e-6;

    /** Molecules: scale in 1/km, and what a kilometre of them scatters at sea level. */
    private static final double MOLECULES_FALL = 0.104;
    private static final double MOLECULES_PER_KM = 4.6e-27 * 2.55e19 * 1e5;
    /** Dust for each K, as multiples of molecules: what it scatters, and what it takes. */
    private static final double DUST_SCATTERS = 11.11;
    private static final double DUST_TAKES = 11.778;
    private static final double DUST_FALL = 0.657;
    private static final double DUST_FALL_A_K = 0.059;
    private static final double MAG = 2.5 / Math.log(10);

    /** Shares of a town's light that leave it upwards, and that its ground reflects. */
    private static final double UPWARD = 0.15;
    private static final double REFLECTED = 0.15;

    private static final GaussIntegrator ALONG = new GaussIntegratorFactory().legendre(48, 0, 1);

    private final double molecules;
    private final double dust;
    private final double dustFall;

    TownAir(Site site) {
        this(site.heightM() / 1000, clarity(site.extinctionMag() - Atmosphere.OZONE_MAG
                - Atmosphere.moleculesMag(site.heightM()), site.heightM() / 1000));
    }

    /** The air over a ground of that height, of Garstang's clarity K. */
    TownAir(double heightKm, double clarity) {
        this.molecules = molecules(heightKm);
        this.dust = clarity * molecules;
        this.dustFall = DUST_FALL + DUST_FALL_A_K * clarity;
    }

    private static double molecules(double heightKm) {
        return MOLECULES_PER_KM * Math.exp(-MOLECULES_FALL * heightKm);
    }

    /** Garstang's K of dust that takes that many magnitudes over a ground of that height. */
    static double clarity(double dustMag, double heightKm) {
        double magAtK = MAG * DUST_TAKES * molecules(heightKm);
        return Math.max(0, dustMag) * DUST_FALL / (magAtK - DUST_FALL_A_K * Math.max(0, dustMag));
    }

    /**
     * Luminance by a town that sends out one unit of light, along a line of sight.
     *
     * @param distanceKm of the town
     * @param up         sine of the line's altitude, from 0 up
     * @param towards    cosine of the angle between the line and the town on the horizon
     */
    double luminance(double distanceKm, double up, double towards) {
        double nearestKm = distanceKm * towards;
        double asideKm = Math.max(TOWN_KM, distanceKm * Math.sqrt(Math.max(0, 1 - towards * towards)));
        double from = asinh(-nearestKm / asideKm);
        double length = asinh((REACH_KM - nearestKm) / asideKm) - from;
        return ALONG.integrate(x -> {
            double angle = from + length * x * x;
            double alongKm = nearestKm + asideKm * Math.sinh(angle);
            return 2 * length * x * asideKm * Math.cosh(angle)
                    * scattered(distanceKm, alongKm, up, towards);
        });
    }

    private static double asinh(double x) {
        return Math.log(x + Math.sqrt(x * x + 1));
    }

    /** What a kilometre of a line of sight adds, so far along it. */
    private double scattered(double distanceKm, double alongKm, double up, double towards) {
        double heightKm = Math.max(NEXT_TO_GROUND_KM, alongKm * up);
        double squareKm2 = Math.max(TOWN_KM * TOWN_KM,
                alongKm * alongKm + distanceKm * distanceKm - 2 * alongKm * distanceKm * towards);
        double fromTownKm = Math.sqrt(squareKm2);
        double moleculesFall = Math.exp(-MOLECULES_FALL * heightKm);
        double dustFallen = Math.exp(-dustFall * heightKm);
        double moleculesOver = molecules * (1 - moleculesFall) / MOLECULES_FALL / heightKm;
        double dustOver = dust * (1 - dustFallen) / dustFall / heightKm;
        double through = Math.exp(-(moleculesOver + DUST_TAKES * dustOver) * (fromTownKm + alongKm));
        double twice = 1 + fromTownKm * (DUST_SCATTERS * dustOver + moleculesOver / 3);
        double turned = Math.max(-1, Math.min(1, (distanceKm * towards - alongKm) / fromTownKm));
        return emission(Math.acos(Math.min(1, heightKm / fromTownKm))) / squareKm2 * through * twice
                * (molecules * moleculesFall * moleculesPhase(turned)
                + DUST_SCATTERS * dust * dustFallen * dustPhase(Math.toDegrees(Math.acos(turned))));
    }

    /** A town's intensity at an angle from the zenith, for one unit of light sent out. */
    static double emission(double zenithRad) {
        return (2 * REFLECTED * (1 - UPWARD) * Math.cos(zenithRad) + 0.554 * UPWARD * Math.pow(zenithRad, 4))
                / (2 * Math.PI);
    }

    private static double moleculesPhase(double cosine) {
        return 3 / (16 * Math.PI) * (1 + cosine * cosine);
    }

    /** What dust scatters by an angle in degrees, a steradian. */
    static double dustPhase(double deg) {
        if (deg < 10) {
            return 7.5 * Math.exp(-0.1249 * deg * deg / (1 + 0.04996 * deg * deg));
        }
        return deg < 124 ? 1.88 * Math.exp(-0.07226 * deg + 0.0002406 * deg * deg)
                : 0.025 + 0.015 * Math.sin(Math.toRadians(2.25 * deg - 369));
    }
}
