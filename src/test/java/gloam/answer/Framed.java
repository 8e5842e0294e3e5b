package gloam.answer;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.gear.Frame;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Framings on a sheet of 80 × 60 mm at 100 mm and f/11, on a moonless evening. */
final class Framed {

    static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    static final Site SITE = Places.at(41, -2.15, 1080);
    static final Instant EVENING = Instant.parse("2027-02-08T21:00:00Z");
    static final double STAR_DEG_H = 15.041067;

    private Framed() {
    }

    static Camera camera() {
        return camera(100, 80, 60);
    }

    static Camera camera(double focalLengthMm, double widthMm, double heightMm) {
        return new Camera("camera", new Lens(focalLengthMm, List.of(FNumber.exact(11)), 0.9,
                Double.POSITIVE_INFINITY, 40,
                0, Projection.RECTILINEAR, Vignetting.NONE), new Frame(widthMm, heightMm), Duration.ZERO);
    }

    static FrameQuestion question(Site site, Direction aim, Duration lasts) {
        return question(site, aim, Interval.lasting(EVENING, lasts), true);
    }

    static FrameQuestion question(Site site, Direction aim, Interval open, boolean airless) {
        return new FrameQuestion(site, new Setting(Framing.level(aim, camera()), FNumber.exact(11),
                List.of(open)),
                Duration.ofMinutes(10), airless);
    }

    /** A film of that speed without failure in that camera. */
    static Sheet sheet(FrameQuestion question, double iso) {
        return new Sheet(question.site(), Films.print(iso, Reciprocity.none()), List.of(question.setting()));
    }

    static Star alike(Star star, String name, double magnitude) {
        return new Star(name, star.rightAscensionDeg(), star.declinationDeg(), 0, 0, magnitude, 0.6);
    }
}
