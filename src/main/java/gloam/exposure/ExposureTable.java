package gloam.exposure;

import gloam.ephemeris.EarthTurn;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.units.Angle;
import gloam.units.Finite;
import gloam.units.Interval;
import gloam.units.Stops;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * What each f-number asks for and gives under one sky.
 *
 * @param film  the film in the camera
 * @param lens  the lens on it
 * @param scene what is before it
 */
public record ExposureTable(FilmStock film, Lens lens, Scene scene) {

    /**
     * Stars that cross the frame's centre.
     *
     * <p>About a pole of the sky a star draws a point, however faint it shows: the limit of a trail is given
     * there for stars as far from the pole as half-way from the frame's centre to its nearest edge, which
     * draw the rings of such a sheet; where no frame is known, 10° from it.
     *
     * @param imageSpeedMmS          speed of their image on the film
     * @param lossMag                light they lose in the air
     * @param leastDifferenceDensity least difference from the sky's tone by which a trail shows, in density
     */
    public record PassingStars(double imageSpeedMmS, double lossMag, double leastDifferenceDensity) {

        private static final Angle FROM_POLE = Angle.ofDegrees(10);
        private static final double HALF_WAY = 0.25;

        /** Refuses what is not finite. */
        public PassingStars {
            Finite.check(imageSpeedMmS, "speed of a star's image in mm/s");
            Finite.check(lossMag, "light lost in the air in mag");
        }

        /** Stars of a declination through a lens, their trails seen by the usual difference. */
        public static PassingStars of(Lens lens, double declinationDeg, double lossMag) {
            return new PassingStars(speedMmS(lens.imageDistanceMm(), declinationDeg), lossMag,
                    TrailLimit.LEAST_DIFFERENCE_DENSITY);
        }

        /** Speed in mm/s on the axis of the image of a star of a declination, by the image distance in mm. */
        public static double speedMmS(double imageDistanceMm, double declinationDeg) {
            return imageDistanceMm * EarthTurn.RAD_S * Math.max(0, Math.cos(Math.toRadians(declinationDeg)));
        }

        /**
         * Declination of the stars for which the limit of a trail is given: that of the aim, but not next to
         * a pole.
         */
        public static Angle told(Lens lens, Optional<Frame> frame, Angle aimed) {
            double mostRad = Math.PI / 2 - fromPole(lens, frame).radians();
            return Angle.ofRadians(Math.max(-mostRad, Math.min(mostRad, aimed.radians())));
        }

        /** Speed in mm/s of the slowest images for which the limit of a trail is given. */
        public static double slowestMmS(Lens lens, Optional<Frame> frame) {
            return lens.imageDistanceMm() * EarthTurn.RAD_S * fromPole(lens, frame).sin();
        }

        private static Angle fromPole(Lens lens, Optional<Frame> frame) {
            return frame.map(sheet -> lens.projection()
                    .offAxis(HALF_WAY * Math.min(sheet.widthMm(), sheet.heightMm())
                    / lens.imageDistanceMm())).orElse(FROM_POLE);
        }

        /** The same stars, their trails seen by another difference. */
        public PassingStars seenBy(double differenceDensity) {
            return new PassingStars(imageSpeedMmS, lossMag, differenceDensity);
        }
    }

    /**
     * What one f-number comes to.
     *
     * @param fNumber        the f-number
     * @param exposure       the time, and the tone of what is exposed for
     * @param skyToneStops   tone of the sky, which is not that of the exposure where it is for the ground
     * @param layerToneStops tones of the film's layers, in its order, of what is exposed for
     * @param filter         the filter that takes the cast away, where there is one
     * @param trailLimitMag  faintest V magnitude that marks the sheet; negative infinity where none does
     */
    public record Row(FNumber fNumber, Exposure exposure, double skyToneStops, List<Double> layerToneStops,
                      Optional<CorrectionFilter> filter, double trailLimitMag) {

        /** Copies the list. */
        public Row {
            layerToneStops = List.copyOf(layerToneStops);
        }

        /** How the layers of colour film come apart; none of one layer. */
        public ColourShift colourShift() {
            return ColourShift.ofTones(layerToneStops);
        }
    }

    /** The time an f-number needs to a tone. */
    public Row toTone(FNumber fNumber, double toneStops) {
        Exposure exposure = scene.subject().exposure(film, fNumber, toneStops);
        double openS = openS(exposure);
        double skyStops = scene.ground().isEmpty() ? exposure.toneStops()
                : scene.sky().toneStops(film, film.reciprocity(), fNumber, openS);
        List<Double> layerStops = layerToneStops(fNumber, openS,
                Collections.nCopies(film.layers().size(), 1.0));
        return new Row(fNumber, exposure, skyStops, layerStops, CorrectionFilter.of(layerStops,
                shares -> layerToneStops(fNumber, openS, shares)), trailLimitMag(fNumber, openS, skyStops));
    }

    private List<Double> layerToneStops(FNumber fNumber, double openS, List<Double> filterShares) {
        return scene.subject().layerToneStops(film, fNumber, openS, filterShares);
    }

    /** The tone an f-number gives in a time, all of it usable. */
    public Row after(FNumber fNumber, Duration lasts) {
        return toTone(fNumber, scene.subject()
                .toneStops(film, film.reciprocity(), fNumber, lasts.toNanos() * 1e-9));
    }

    /** Several sheets around a tone at an f-number; empty where one of them never finishes. */
    public Optional<Bracket> bracket(FNumber fNumber, double toneStops, int sheets) {
        return Bracket.of(stops -> scene.subject().exposure(film, fNumber, stops), toneStops, sheets);
    }

    private double openS(Exposure exposure) {
        return exposure.neverFinishes() ? scene.subject().shutter().map(open -> open.available().seconds())
                .orElse(Exposure.LONGEST_S) : exposure.correctedS();
    }

    /** Of the trails of the longest opening. */
    private double trailLimitMag(FNumber fNumber, double openS, double skyStops) {
        PassingStars stars = scene.stars();
        Interval longest = Interval.longest(scene.sky().openings(openS));
        TrailLimit.Passing on = new TrailLimit.Passing(new ExposedSheet(film, lens, fNumber,
                longest.seconds(), Stops.factor(skyStops), scene.sky().at(fNumber)
                .illuminanceLx(longest.middle())), stars.imageSpeedMmS(), stars.lossMag());
        return TrailLimit.magnitude(on, stars.leastDifferenceDensity());
    }
}
