package gloam.answer;

import gloam.ephemeris.Daylight;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Event;
import gloam.ephemeris.Night;
import gloam.exposure.Shutter;
import gloam.gear.Site;
import gloam.answer.ExposureQuestion.ToneAfter;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The night in which a sheet is exposed.
 *
 * @param shutter when it was open and when it may open
 * @param events  events that change the light from its first opening on
 */
public record UsableNight(Shutter shutter, List<Event> events) {

    /**
     * The night of a question about a changing sky.
     *
     * <p>A wanted tone must be reached by the end of darkness, or by sunrise when that is over or never
     * comes; a wanted time may run into the dawn.
     *
     * @throws BadInput if the shutter would be open by day, or was open in another night
     */
    public static UsableNight of(Ephemeris ephemeris, ExposureQuestion question, KnownSky.Computed known) {
        Site site = known.site();
        Instant openAt = known.openAt();
        Optional<Instant> closeAt = question.unknown() instanceof ToneAfter after
                ? Optional.of(openAt.plus(after.lasts())) : Optional.empty();
        List<Interval> openings = new ArrayList<>(question.earlier());
        openings.add(new Interval(openAt, closeAt.orElse(openAt.plusMillis(1))));
        Daylight.refuse(ephemeris, site, openings);
        Night night = Night.of(ephemeris, site, Night.eveningOf(site, openAt));
        refuseOtherNights(night, question.earlier());
        Shutter shutter = new Shutter(question.earlier(),
                new Interval(openAt, closeAt.orElseGet(() -> latest(night, openAt))));
        return new UsableNight(shutter, night.events().stream()
                .filter(event -> shutter.span().contains(event.at())
                && event.what() != Event.Kind.MOON_TRANSIT)
                .toList());
    }

    private static void refuseOtherNights(Night night, List<Interval> openings) {
        for (Interval open : openings) {
            if (!night.span().contains(open.start())) {
                throw new BadInput("the opening at "
                        + open.start().atZone(night.site().zone()).toLocalDateTime()
                        + " is in another night than the night of " + night.date()
                        + "; give openings of one night (--open)");
            }
        }
    }

    private static Instant latest(Night night, Instant openAt) {
        return night.darkness().stream().map(Interval::endExclusive).filter(openAt::isBefore)
                .reduce((first, second) -> second).orElseGet(() -> night.sunDown().stream()
                        .map(Interval::endExclusive).filter(openAt::isBefore).findFirst()
                        .orElse(night.span().endExclusive()));
    }
}
