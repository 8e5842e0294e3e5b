package gloam.light;

import gloam.ephemeris.Direction;
import gloam.gear.LightDome.Measured;
import gloam.gear.LightDome.Town;
import gloam.gear.LightDome;
import gloam.gear.Site;
import gloam.units.Angle;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The glow of towns over the horizon.
 *
 * <p><b>Model.</b> 45° high over a town the glow is 0.01 P r^-2.5 of a natural sky, P people r km away:
 * Walker 1977, PASP 89, 405, the constant from memory; from there over the sky as {@link TownAir} says. A
 * measured glow sets the strength itself. <b>Valid.</b> Clear moonless air, towns of 1 to 100 km.
 * <b>Error.</b> 0.7 stop by people and distance, since towns differ in lamps; 0.2 stop measured.
 * <b>Departures.</b> The natural sky is 21.9 mag/arcsec²; a measured glow spreads like that of a town 30 km
 * away; a measurement darker than the sky without the town counts as no town; one colour for all
 * directions, that of the lamps, air making it no redder or bluer.
 */
final class TownGlow implements LightModel {

    private static final double NATURAL_CD_M2 = SkyBrightness.ofMagArcsec2(21.9).cdM2();
    private static final double HALF_WAY_UP = Math.sqrt(0.5);
    private static final double USUAL_KM = 30;
    private static final int ROUNDS = 100;
    private static final double USUAL_BV = SkyColour.bvOfTemperature(LightDome.USUAL_COLOUR_K);
    private static final Towns NONE = new Towns(List.of());

    @Override
    public OverSite over(Site site) {
        return site.lightDomes().isEmpty() ? NONE : towns(site);
    }

    private static OverSite towns(Site site) {
        TownAir air = new TownAir(site);
        List<Dome> ones = site.lightDomes().stream().map(dome -> Dome.asNatural(air, dome)).toList();
        double[] strengths = strengths(site, ones);
        return new Towns(IntStream.range(0, strengths.length)
                .mapToObj(dome -> ones.get(dome).times(strengths[dome])).toList());
    }

    /**
     * By what each glow is stronger than a natural sky, 45° high: the least squares of all measurements that
     * darken nothing, town by town until they stand still.
     */
    private static double[] strengths(Site site, List<Dome> ones) {
        double[] strengths = new double[ones.size()];
        double[][] parts = new double[ones.size()][ones.size()];
        double[] left = new double[ones.size()];
        for (int row = 0; row < left.length; row++) {
            left[row] = equation(site, ones, row, parts[row]);
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (int dome = 0; dome < strengths.length; dome++) {
                double along = 0;
                double square = 0;
                for (int row = 0; row < left.length; row++) {
                    along += parts[row][dome] * left[row];
                    square += parts[row][dome] * parts[row][dome];
                }
                double change = Math.max(-strengths[dome], along / square);
                strengths[dome] += change;
                for (int row = 0; row < left.length; row++) {
                    left[row] -= parts[row][dome] * change;
                }
            }
        }
        return strengths;
    }

    /** What is known of a dome: its parts by the strengths of all, and their sum. */
    private static double equation(Site site, List<Dome> ones, int row, double[] parts) {
        LightDome dome = ones.get(row).dome;
        if (dome.known() instanceof Town town) {
            parts[row] = 1;
            return walker(town.people(), town.distanceKm());
        }
        Measured seen = (Measured) dome.known();
        Direction at = new Direction(dome.azimuth(), seen.altitude());
        double seenCdM2 = SkyBrightness.ofMagArcsec2(seen.magArcsec2()).cdM2();
        double rest = Airglow.relativeToZenith(90 - seen.altitude().degrees(), site.extinctionMag());
        for (int column = 0; column < parts.length; column++) {
            parts[column] = (ones.get(column).cdM2(at) - rest * ones.get(column).cdM2(Direction.ZENITH))
                    / seenCdM2;
        }
        return 1 - rest * SkyBrightness.ofMagArcsec2(site.darkSkyMagArcsec2()).cdM2() / seenCdM2;
    }

    /** Glow 45° high over a town as a multiple of a natural sky. */
    static double walker(double people, double distanceKm) {
        return 0.01 * people * Math.pow(distanceKm, -2.5);
    }

    /** The glow of one town. */
    private record Dome(TownAir air, LightDome dome, double distanceKm, double oneCdM2, double strength) {

        /** Here, since making it takes 0.1 s and most sites have no town. */
        private static final GaussIntegrator QUARTER = new GaussIntegratorFactory().legendre(12, 0, 1);

        /** One as bright as a natural sky 45° high. */
        static Dome asNatural(TownAir air, LightDome dome) {
            double distanceKm = dome.known() instanceof Town town ? town.distanceKm() : USUAL_KM;
            return new Dome(air, dome, distanceKm,
                    NATURAL_CD_M2 / air.luminance(distanceKm, HALF_WAY_UP, HALF_WAY_UP), 1);
        }

        Dome times(double stronger) {
            return new Dome(air, dome, distanceKm, oneCdM2, stronger * strength);
        }

        double cdM2(Direction direction) {
            Angle altitude = direction.altitude().degrees() > 0 ? direction.altitude() : Angle.ZERO;
            return cdM2(altitude.sin(), altitude.cos() * direction.azimuth().minus(dome.azimuth()).cos());
        }

        private double cdM2(double up, double towards) {
            return strength == 0 ? 0 : strength * oneCdM2 * air.luminance(distanceKm, up, towards);
        }

        /** Of level ground: over both halves of the sky, closer where the town and the horizon are. */
        double groundLx() {
            return 2 * QUARTER.integrate(x -> 2 * Math.PI * x * QUARTER.integrate(y -> {
                double altitudeRad = Math.PI / 2 * y * y;
                double cosine = Math.cos(altitudeRad);
                return Math.PI * y * cosine * Math.sin(altitudeRad)
                        * cdM2(Math.sin(altitudeRad), cosine * Math.cos(Math.PI * x * x));
            }));
        }
    }

    /** All towns of a site, alike at every instant. */
    private static final class Towns implements OverSite, Glow {

        private final List<Dome> domes;
        private final double colourBv;
        private final double spreadStops;
        /** Not a number until it is asked for: it takes as long as some hundred directions. */
        private volatile double groundLx = Double.NaN;

        Towns(List<Dome> domes) {
            this.domes = domes;
            double[] weights = domes.stream().mapToDouble(Dome::strength).toArray();
            this.spreadStops = Math.sqrt(domes.stream().mapToDouble(one ->
                    Math.pow(one.strength * one.dome.spreadStops(), 2)).sum())
                    / Math.max(Double.MIN_NORMAL, Arrays.stream(weights).sum());
            this.colourBv = Arrays.stream(weights).sum() == 0 ? USUAL_BV : SkyColour.bv(weights,
                    domes.stream().mapToDouble(one -> SkyColour.blueShare(
                    SkyColour.bvOfTemperature(one.dome.colourK()))).toArray());
        }

        @Override
        public double spreadStops(Instant at) {
            return spreadStops;
        }

        @Override
        public double path(Direction direction) {
            double sum = 0;
            for (Dome dome : domes) {
                sum += dome.cdM2(direction);
            }
            return sum;
        }

        @Override
        public Glow at(Circumstances sky) {
            return this;
        }

        @Override
        public double zenithCdM2() {
            return path(Direction.ZENITH);
        }

        @Override
        public double cdM2(Sight sight) {
            return 1;
        }

        @Override
        public double groundLx() {
            if (Double.isNaN(groundLx)) {
                groundLx = domes.stream().mapToDouble(Dome::groundLx).sum();
            }
            return groundLx;
        }

        @Override
        public double colourBv() {
            return colourBv;
        }
    }
}
