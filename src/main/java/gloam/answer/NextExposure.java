package gloam.answer;

import gloam.answer.ExposureQuestion.TimeFor;
import gloam.answer.ExposureQuestion.ToneAfter;
import gloam.answer.ExposureQuestion.Unknown;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.exposure.Bracket;
import gloam.exposure.Exposure;
import gloam.exposure.SkyDoubt;
import gloam.exposure.TrailLimit;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.journal.FilmFit;
import gloam.journal.Journal;
import gloam.journal.NightAtSite;
import gloam.journal.Place;
import gloam.units.BadInput;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * The exposure to try next: at each f-number the time that the fitted film asks for, or the nearest that may
 * be given, and the chance that the sheet is right.
 *
 * @param fit     the film as the journal knows it, and tonight's light if sheets of it are judged
 * @param wanted  the question
 * @param choices one for each f-number, widest first
 */
public record NextExposure(FilmFit fit, Wanted wanted, List<Choice> choices) {

    /** An aim half a minute off is not seen on the sheet, and exposures settle in a few steps. */
    private static final Duration NEAR = Duration.ofSeconds(30);
    private static final int MOST_AIMS = 8;

    /** Copies the list. */
    public NextExposure {
        choices = List.copyOf(choices);
    }

    /**
     * What is wanted of the next sheet.
     *
     * @param lens      the lens, with the f-numbers to choose from
     * @param skies     readings of the sky at the frame's centre, the first of which is exposed for
     * @param shortest  the shortest exposure possible
     * @param longest   the longest one
     * @param toneStops the tone wanted, in stops from the mid-tone
     * @param sheets    sheets to spend on the picture
     * @param wish      the wish at whose aim a sky is computed; empty for its own aim
     */
    public record Wanted(Lens lens, List<KnownSky> skies, Duration shortest, Duration longest,
                         double toneStops, int sheets, Optional<NextOfWish> wish) {

        /** Refuses what is out of range with {@link BadInput}. */
        public Wanted {
            skies = List.copyOf(skies);
            Bracket.SHEETS.check(sheets);
            if (shortest.isZero() || longest.compareTo(shortest) < 0) {
                throw new BadInput("the longest exposure is below the shortest; give a longer one");
            }
        }

        private Optional<KnownSky.Computed> computed() {
            return skies.stream().filter(KnownSky.Computed.class::isInstance)
                    .map(KnownSky.Computed.class::cast).findFirst();
        }

        /** The same at the wish's aim, the shutter being open for twice that time. */
        private Wanted aimed(Supplier<Ephemeris> ephemeris, Duration half) {
            return with(lens, wish.map(served -> skies.stream()
                    .map(sky -> served.at(ephemeris, sky, half)).toList()).orElse(skies));
        }

        private Wanted at(FNumber fNumber) {
            return with(lens.with(List.of(fNumber)), skies);
        }

        private Wanted with(Lens other, List<KnownSky> others) {
            return new Wanted(other, others, shortest, longest, toneStops, sheets, wish);
        }

        /** Whether the aim hangs on how long the shutter is open. */
        private boolean moves() {
            return wish.filter(NextOfWish::moves).isPresent()
                    && computed().filter(known -> !known.steady()).isPresent();
        }

        private Optional<NightAtSite> tonight() {
            return computed().map(known -> NightAtSite.of(Place.of(known.site()), known.openAt(),
                            !(skies.get(0) instanceof KnownSky.Computed)));
        }

        private ExposureQuestion question(FilmStock film, Unknown unknown) {
            return new ExposureQuestion(film, lens, Optional.empty(), skies, OptionalDouble.empty(),
                    List.of(), TrailLimit.LEAST_DIFFERENCE_DENSITY, unknown);
        }
    }

    /**
     * An exposure.
     *
     * @param fNumber     the f-number
     * @param exposureS   exposure time in seconds
     * @param toneStops   the tone that it makes, in stops from the mid-tone
     * @param spreadStops standard deviation of that tone, in stops
     * @param rightChance probability, 0 to 1, that the sheet comes within half a stop of the tone wanted
     * @param bracket     several sheets about the tone instead, if asked for and all are possible
     * @param aim         where the camera points, if the sky is computed
     */
    public record Choice(FNumber fNumber, double exposureS, double toneStops, double spreadStops,
                         double rightChance, Optional<Bracket> bracket, Optional<Direction> aim) {

        private Duration half() {
            return Duration.ofMillis(Math.round(exposureS * 1000 / 2));
        }
    }

    /**
     * The advice for a film by its sheets in a journal.
     *
     * @param ephemeris used only to compute a sky
     * @param batch     the pack or batch of the next sheet; empty if not named
     * @throws BadInput if the shutter would be open by day
     */
    public static NextExposure of(Supplier<Ephemeris> ephemeris, FilmStock published, Journal journal,
            String batch, Wanted wanted) {
        FilmFit fit = KnownFilm.fit(published, journal, batch, wanted.tonight());
        return new NextExposure(fit, wanted, wanted.moves() ? wanted.lens.fNumbers().stream()
                .map(fNumber -> followed(ephemeris, fit, wanted.at(fNumber))).toList()
                : choices(ephemeris, fit, wanted.aimed(ephemeris, Duration.ZERO)));
    }

    /** The exposure at one f-number, aimed where what is followed stands in the middle of it. */
    private static Choice followed(Supplier<Ephemeris> ephemeris, FilmFit fit, Wanted wanted) {
        Choice choice = choices(ephemeris, fit, wanted.aimed(ephemeris, Duration.ZERO)).get(0);
        Duration half = Duration.ZERO;
        for (int i = 0; i < MOST_AIMS && choice.half().minus(half).abs().compareTo(NEAR) > 0; i++) {
            half = choice.half();
            choice = choices(ephemeris, fit, wanted.aimed(ephemeris, half)).get(0);
        }
        return choice;
    }

    private static List<Choice> choices(Supplier<Ephemeris> ephemeris, FilmFit fit, Wanted wanted) {
        Exposures toTone = exposures(ephemeris, fit, wanted, new TimeFor(wanted.toneStops, wanted.sheets));
        Duration longest = toTone.night().map(night -> night.shutter().available().lasts())
                .filter(left -> left.compareTo(wanted.longest) < 0).orElse(wanted.longest);
        double shortestS = seconds(wanted.shortest);
        double longestS = seconds(longest);
        List<Choice> choices = new ArrayList<>();
        for (int i = 0; i < toTone.exposures().size(); i++) {
            Exposures.AtFNumber at = toTone.exposures().get(i);
            double neededS = at.row().exposure().correctedS();
            if (neededS >= shortestS && neededS <= longestS) {
                choices.add(choice(wanted, at, neededS, at.bracket().filter(bracket ->
                        bracket.exposuresS().stream().allMatch(s -> s >= shortestS && s <= longestS))));
            } else {
                Duration bound = neededS < shortestS ? wanted.shortest : longest;
                choices.add(choice(wanted, exposures(ephemeris, fit, wanted, new ToneAfter(bound)).exposures()
                        .get(i), seconds(bound), Optional.empty()));
            }
        }
        return choices;
    }

    private static Exposures exposures(Supplier<Ephemeris> ephemeris, FilmFit fit, Wanted wanted,
            Unknown unknown) {
        return Exposures.of(ephemeris, wanted.question(fit.film(), unknown), fit.tonight().isEmpty()
                ? UnaryOperator.identity() : scene -> scene.known(SkyDoubt.NONE));
    }

    private static Choice choice(Wanted wanted, Exposures.AtFNumber at, double exposureS,
            Optional<Bracket> bracket) {
        Exposure exposure = at.row().exposure();
        return new Choice(at.row().fNumber(), exposureS, exposure.toneStops(), exposure.spreadStops(),
                Bracket.rightChance(exposure.toneStops() - wanted.toneStops, exposure.spreadStops()),
                bracket, wanted.computed().map(KnownSky.Computed::aim));
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }

    /** The exposure advised: the one most likely right, of equals the shortest. */
    public Choice chosen() {
        return choices.stream().max(Comparator.comparingDouble(Choice::rightChance)
                .thenComparing(Comparator.comparingDouble(Choice::exposureS).reversed())).orElseThrow();
    }
}
