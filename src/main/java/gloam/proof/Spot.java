package gloam.proof;

import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.units.StandardNormal;

/** How the light of a spot that is drawn along a line is spread over the sheet; all of it always arrives. */
sealed interface Spot {

    /** Above this share of a spot's width, what is round and sharp-edged makes it a disc. */
    double MOSTLY = 0.7;
    /** Discs narrower than so many pixels look soft. */
    double LEAST_DISC_PX = 3;

    /**
     * Share of the light that falls on a square millimetre at a place.
     *
     * @param alongMm  place along the line, from its start
     * @param asideMm  place across it
     * @param lengthMm of the line, 0 or more
     */
    double perMm2(double alongMm, double asideMm, double lengthMm);

    /** How far from its line it reaches in mm. */
    double reachMm();

    /** The spot of a body whose own disc is that wide, on pixels of that side. */
    static Spot of(Lens lens, FNumber fNumber, double discMm, double pixelMm) {
        double widthMm = Math.hypot(lens.spotMm(fNumber), discMm);
        double sharpMm = Math.hypot(lens.defocusMm(fNumber), discMm);
        return sharpMm > MOSTLY * widthMm && widthMm > LEAST_DISC_PX * pixelMm
                ? new Disc(widthMm / 2) : Soft.of(widthMm, pixelMm);
    }

    /**
     * Fading from the middle as a Gaussian does.
     *
     * @param sigmaMm its standard deviation
     */
    record Soft(double sigmaMm) implements Spot {

        /** Full width at half the peak over the standard deviation. */
        private static final double HALF_WIDTH = 2 * Math.sqrt(2 * Math.log(2));
        /** Spreads a spot smaller than a pixel evenly enough over pixels wherever it falls, to 0.2 %. */
        private static final double PIXEL_SIGMA = 0.6;
        private static final int REACH = 5;
        private static final double STANDING = 1e-3;

        static Soft of(double widthMm, double pixelMm) {
            return new Soft(Math.hypot(widthMm / HALF_WIDTH, PIXEL_SIGMA * pixelMm));
        }

        @Override
        public double perMm2(double alongMm, double asideMm, double lengthMm) {
            double aside = asideMm / sigmaMm;
            double across = Math.exp(-aside * aside / 2) / (sigmaMm * Math.sqrt(2 * Math.PI));
            if (lengthMm < STANDING * sigmaMm) {
                double along = alongMm / sigmaMm;
                return across * Math.exp(-along * along / 2) / (sigmaMm * Math.sqrt(2 * Math.PI));
            }
            return across * (StandardNormal.below(alongMm / sigmaMm)
                    - StandardNormal.below((alongMm - lengthMm) / sigmaMm)) / lengthMm;
        }

        @Override
        public double reachMm() {
            return REACH * sigmaMm;
        }
    }

    /**
     * Evenly lit and sharp-edged, as of a body's disc or a lens out of focus.
     *
     * @param radiusMm half its width
     */
    record Disc(double radiusMm) implements Spot {

        private static final double STANDING_MM = 1e-6;

        @Override
        public double perMm2(double alongMm, double asideMm, double lengthMm) {
            double halfMm = Math.sqrt(Math.max(0, radiusMm * radiusMm - asideMm * asideMm));
            double lineMm = Math.max(STANDING_MM, lengthMm);
            double overMm = Math.min(lineMm, alongMm + halfMm) - Math.max(0, alongMm - halfMm);
            return Math.max(0, overMm) / lineMm / (Math.PI * radiusMm * radiusMm);
        }

        @Override
        public double reachMm() {
            return radiusMm;
        }
    }
}
