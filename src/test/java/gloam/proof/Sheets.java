package gloam.proof;

import gloam.ephemeris.Direction;
import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ToneCurve;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Sheets for the tests of proofs. */
final class Sheets {

    private Sheets() {
    }

    static FilmStock mono(Reciprocity law) {
        return new FilmStock("mono", 400, FilmStock.Kind.POSITIVE, List.of(new FilmStock.Layer("mono", law)),
                ToneCurve.PRINT, 0, "invented");
    }

    static FilmStock colour() {
        return new FilmStock("colour", 400, FilmStock.Kind.POSITIVE,
                List.of(new FilmStock.Layer("red", Reciprocity.power(1.26, 1)),
                        new FilmStock.Layer("green", Reciprocity.power(1.2, 1)),
                        new FilmStock.Layer("blue", Reciprocity.power(1.3, 1))),
                ToneCurve.PRINT, 0, "invented");
    }

    /** A lens whose whole spot, diffraction included, has that width. */
    static Lens lens(double focalLengthMm, double fNumber, double spotMm) {
        double diffractionMm = 2.44 * 550e-6 * fNumber;
        double ownUm = 1000 * Math.sqrt(spotMm * spotMm - diffractionMm * diffractionMm);
        return new Lens(focalLengthMm, List.of(FNumber.exact(fNumber)), 1, Double.POSITIVE_INFINITY, ownUm, 0,
                Projection.RECTILINEAR, Vignetting.NONE);
    }

    static Sheet sheet(Site site, Direction aim, Lens lens, Frame frame, FilmStock film,
            Interval... openings) {
        Camera camera = new Camera("camera", lens, frame, Duration.ZERO);
        return new Sheet(site, film, List.of(new Setting(Framing.level(aim, camera), lens.fNumbers().get(0),
                List.of(openings))));
    }

    static Interval open(String start, int minutes) {
        return Interval.lasting(Instant.parse(start), Duration.ofMinutes(minutes));
    }
}
