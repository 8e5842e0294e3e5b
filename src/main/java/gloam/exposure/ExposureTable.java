package gloam.exposure;

import gloam.film.FilmStock;
import gloam.gear.Lens;
import gloam.units.Interval;
import gloam.units.Stops;
import java.time.Duration;
import java.time.Instant;

/**
 * What each f-number asks for and gives under one sky.
 *
 * @param film  the film in the camera
 * @param lens  the lens on it
 * @param sky   the sky at the frame's centre
 * @param stars the stars that cross the frame's centre
 */
public record ExposureTable(FilmStock film, Lens lens, SkyOnFilm sky, PassingStars stars) {

    /**
     * Stars that cross the frame's centre.
     *
     * @param imageSpeedMmS speed of their image on the film
     * @param lossMag       light they lose in the air
     */
    public record PassingStars(double imageSpeedMmS, double lossMag) {

        /** The Earth's turn against the stars (IERS Conventions 2010, table 1.2), which carries them along. */
        private static final double EARTH_TURN_RAD_S = 7.292115e-5;

        /** Stars of a declination through a lens. */
        public static PassingStars of(Lens lens, double declinationDeg, double lossMag) {
            double speedMmS = lens.imageDistanceMm() * EARTH_TURN_RAD_S * Math.cos(Math.toRadians(declinationDeg));
            return new PassingStars(speedMmS, lossMag);
        }
    }

    /**
     * What one f-number comes to.
     *
     * @param fNumber       the f-number
     * @param exposure      the time and the tone
     * @param trailLimitMag faintest V magnitude that marks the sheet; negative infinity where none does
     */
    public record Row(double fNumber, Exposure exposure, double trailLimitMag) {
    }

    /** The time an f-number needs to a tone of the sky. */
    public Row toTone(double fNumber, double toneStops) {
        Exposure exposure = exposure(fNumber, toneStops);
        return new Row(fNumber, exposure, TrailLimit.magnitude(circumstances(fNumber, exposure)));
    }

    /** The tone an f-number gives in a time, all of it usable. */
    public Row after(double fNumber, Duration lasts) {
        Interval open = Interval.lasting(opensAt(), lasts);
        return toTone(fNumber, ExposureEngine.toneStops(ExposureEngine.progress(film, sky.at(fNumber), open)));
    }

    private Exposure exposure(double fNumber, double toneStops) {
        LightCurve light = sky.at(fNumber);
        return sky.usable().map(span -> ExposureEngine.exposure(film, light, span, toneStops))
                .orElseGet(() -> ExposureEngine.exposure(film, film.midToneLxS() / light.illuminanceLx(opensAt()),
                        toneStops));
    }

    private TrailLimit.Circumstances circumstances(double fNumber, Exposure exposure) {
        double openS = exposure.neverFinishes()
                ? sky.usable().map(Interval::seconds).orElseThrow() : exposure.correctedS();
        Instant middle = opensAt().plusMillis(Math.round(openS * 500));
        return new TrailLimit.Circumstances(film, lens, fNumber, openS, Stops.factor(exposure.skyToneStops()),
                sky.at(fNumber).illuminanceLx(middle), stars.imageSpeedMmS(), stars.lossMag());
    }

    /** When the shutter opens; under a sky that never changes any instant will do. */
    private Instant opensAt() {
        return sky.usable().map(Interval::start).orElse(Instant.EPOCH);
    }
}
