package gloam.proof;

import gloam.ephemeris.Direction;
import gloam.exposure.ExposureEngine;
import gloam.exposure.FilmPlane;
import gloam.light.SkyBrightness;
import gloam.sheet.Setting;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;

/**
 * What wide light makes of single points of a sheet: the rate of each layer, summed up by Simpson's rule over
 * spans that are halved until the rate runs along a parabola in them.
 */
final class PointProgress {

    /**
     * A fifteenth of it is about the error left: one part in a thousand. Twice as much overlooks a Moon that
     * passes.
     */
    private static final double BENDS_WITHIN = 0.015;
    private static final int MOST_HALVINGS = 8;

    private final Setting setting;
    private final List<Layer> layers;
    private final WideLight light;
    private final Duration panel;

    /**
     * Progress at one setting.
     *
     * @param panel time between the first looks at most
     */
    PointProgress(Setting setting, List<Layer> layers, WideLight light, Duration panel) {
        this.setting = setting;
        this.layers = layers;
        this.light = light;
        this.panel = panel;
    }

    int layers() {
        return layers.size();
    }

    /** Progress of each layer at a point of the sheet. */
    double[] at(Framing.Point point) {
        return at(setting.framing().toSky(point.xMm(), point.yMm()));
    }

    /** The same where a direction falls on it. */
    double[] at(Direction direction) {
        double fallOff = setting.fallOff(direction);
        Function<Instant, WideLight.Glow> seen = light.from(direction);
        double[] sum = new double[layers.size()];
        for (Interval opening : setting.openings()) {
            int panels = (int) Math.ceil(opening.seconds() / (2 * panel.toMillis() / 1e3));
            Sight sight = new Sight(seen, fallOff, opening);
            double panelS = opening.seconds() / panels;
            Look start = sight.look(0);
            for (int i = 0; i < panels; i++) {
                Look end = sight.look((i + 1) * panelS);
                add(sum, sight.between(start, sight.look((i + 0.5) * panelS), end, 0));
                start = end;
            }
        }
        return sum;
    }

    /** What a layer takes of wide light on the lens's axis, in lx of white light. */
    static double illuminanceLx(Setting setting, Layer layer, WideLight.Glow glow) {
        return layer.band().share(glow.colourBv()) * FilmPlane.illuminanceLx(setting.lens(),
                setting.fNumber(), new SkyBrightness(glow.luminanceCdM2()));
    }

    private static void add(double[] sum, double[] part) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += part[i];
        }
    }

    /** The rates of the layers at a moment of an opening. */
    private record Look(double sinceS, double[] ratesPerS) {
    }

    /** One direction during one opening. */
    private final class Sight {

        private final Function<Instant, WideLight.Glow> seen;
        private final double fallOff;
        private final Interval opening;

        Sight(Function<Instant, WideLight.Glow> seen, double fallOff, Interval opening) {
            this.seen = seen;
            this.fallOff = fallOff;
            this.opening = opening;
        }

        Look look(double sinceS) {
            WideLight.Glow glow = seen.apply(opening.start().plusNanos(Math.round(sinceS * 1e9)));
            double[] ratesPerS = new double[layers.size()];
            for (int i = 0; i < ratesPerS.length; i++) {
                Layer layer = layers.get(i);
                ratesPerS[i] = ExposureEngine.ratePerS(layer.film(),
                        fallOff * illuminanceLx(setting, layer, glow));
            }
            return new Look(sinceS, ratesPerS);
        }

        double[] between(Look start, Look middle, Look end, int halvings) {
            Look early = look((start.sinceS + middle.sinceS) / 2);
            Look late = look((middle.sinceS + end.sinceS) / 2);
            double[] sum = simpson(start, early, middle);
            add(sum, simpson(middle, late, end));
            if (halvings == MOST_HALVINGS || bend(start, middle, end, early, late, sum) < BENDS_WITHIN) {
                return sum;
            }
            sum = between(start, early, middle, halvings + 1);
            add(sum, between(middle, late, end, halvings + 1));
            return sum;
        }

        /**
         * How far rates stray from the parabola through three others, by what they weigh, as a share of a
         * sum.
         */
        private double bend(Look start, Look middle, Look end, Look early, Look late, double[] sum) {
            double most = 0;
            for (int i = 0; i < sum.length; i++) {
                double first = start.ratesPerS[i];
                double second = middle.ratesPerS[i];
                double third = end.ratesPerS[i];
                double strayPerS = Math.abs(early.ratesPerS[i] - (3 * first + 6 * second - third) / 8)
                        + Math.abs(late.ratesPerS[i] - (3 * third + 6 * second - first) / 8);
                most = Math.max(most, sum[i] == 0 ? 0 : strayPerS * (end.sinceS - start.sinceS) / 3 / sum[i]);
            }
            return most;
        }

        private double[] simpson(Look start, Look middle, Look end) {
            double[] sum = new double[layers.size()];
            for (int i = 0; i < sum.length; i++) {
                sum[i] = (end.sinceS - start.sinceS) / 6
                        * (start.ratesPerS[i] + 4 * middle.ratesPerS[i] + end.ratesPerS[i]);
            }
            return sum;
        }
    }
}
