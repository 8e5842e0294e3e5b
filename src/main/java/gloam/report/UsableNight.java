package gloam.report;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Event;
import gloam.ephemeris.Night;
import gloam.exposure.Shutter;
import gloam.gear.Site;
import gloam.report.ExposureQuestion.ToneAfter;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * The night in which a sheet is exposed.
 *
 * @param shutter when it was open and when it may be
 * @param events  what changes the light from its first opening on
 */
record UsableNight(Shutter shutter, List<Event> events) {

    /**
     * The night of a question under a sky that changes.
     *
     * <p>A wanted tone must be reached by the end of darkness, or by sunrise when that is over or never comes; a
     * wanted time may run into the dawn.
     *
     * @throws BadInput when the shutter would be open by day
     */
    static UsableNight of(Ephemeris ephemeris, ExposureQuestion question, KnownSky.Computed known) {
        Site site = known.site();
        Instant openAt = known.openAt();
        LocalDate evening = openAt.minus(Duration.ofHours(12)).atZone(site.zone()).toLocalDate();
        Night night = Night.of(ephemeris, site, evening);
        question.earlier().forEach(opening -> sunDown(night, opening.start()));
        Interval down = sunDown(night, openAt);
        Instant until = question.unknown() instanceof ToneAfter after ? closing(openAt, after, down)
                : night.darkness().stream().map(Interval::endExclusive).filter(openAt::isBefore)
                        .reduce((first, second) -> second).orElse(down.endExclusive());
        Shutter shutter = new Shutter(question.earlier(), new Interval(openAt, until));
        return new UsableNight(shutter, night.events().stream()
                .filter(event -> shutter.span().contains(event.at()) && event.what() != Event.Kind.MOON_TRANSIT)
                .toList());
    }

    private static Instant closing(Instant openAt, ToneAfter after, Interval down) {
        Instant closeAt = openAt.plus(after.lasts());
        if (closeAt.isAfter(down.endExclusive())) {
            throw new BadInput("the shutter would still be open at sunrise, "
                    + Wording.lasting(Duration.between(openAt, down.endExclusive()).toSeconds())
                    + " after it opens. Shorten the exposure (--lasts)");
        }
        return closeAt;
    }

    private static Interval sunDown(Night night, Instant openAt) {
        return night.sunDown().stream().filter(span -> span.contains(openAt)).findFirst()
                .orElseThrow(() -> new BadInput("the Sun is up at "
                        + openAt.atZone(night.site().zone()).toLocalDateTime()
                        + ", or it is another night; open the shutter after sunset and before sunrise"));
    }
}
