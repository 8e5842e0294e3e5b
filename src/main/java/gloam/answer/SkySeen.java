package gloam.answer;

import gloam.answer.ExposureQuestion.ToneAfter;
import gloam.ephemeris.Ephemeris;
import gloam.gear.Camera;
import gloam.light.SkyLight;
import gloam.proof.AwayFromMoon;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The computed sky that an exposure is for: at the frame's centre; with the Moon in the frame, away from it.
 *
 * @param at           its light at any instant
 * @param awayFromMoon whether the Moon is in the frame, of which the size is known, while the shutter is
 *                     open; where the time is asked for, when it opens
 */
record SkySeen(Function<Instant, SkyLight.Sample> at, boolean awayFromMoon) {

    static SkySeen of(Ephemeris ephemeris, ExposureQuestion question, KnownSky.Computed known) {
        return question.frame().map(frame -> Framing.level(known.aim(),
                        new Camera("", question.lens(), frame, Duration.ZERO)))
                .filter(framing -> AwayFromMoon.concerns(ephemeris, known.site(), framing,
                        openings(question, known)))
                .map(framing -> new SkySeen(AwayFromMoon.seen(ephemeris, known.site(), framing), true))
                .orElseGet(() -> {
                    SkyLight sky = new SkyLight(ephemeris, known.site());
                    return new SkySeen(at -> sky.at(known.aim(), at), false);
                });
    }

    private static List<Interval> openings(ExposureQuestion question, KnownSky.Computed known) {
        List<Interval> openings = new ArrayList<>(question.earlier());
        openings.add(Interval.lasting(known.openAt(),
                question.unknown() instanceof ToneAfter after && !known.steady() ? after.lasts()
                        : Duration.ofSeconds(1)));
        return Interval.sorted(openings);
    }
}
