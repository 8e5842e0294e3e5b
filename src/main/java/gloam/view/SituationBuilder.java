package gloam.view;

import gloam.gear.Site;
import gloam.answer.ExposureQuestion;
import gloam.answer.ExposureQuestion.TimeFor;
import gloam.answer.ExposureQuestion.ToneAfter;
import gloam.answer.Exposures;
import gloam.answer.KnownSky;
import gloam.answer.LightFound;
import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ReciprocityTable;
import gloam.gear.Lens;
import gloam.planner.Preview;
import gloam.units.Finite;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Puts what an exposure is asked for into a report's words and figures. */
final class SituationBuilder {

    private SituationBuilder() {
    }

    static Situation of(Exposures answer, SiteClock clock) {
        ExposureQuestion question = answer.question();
        LightFound light = answer.light();
        Lens lens = question.lens();
        FilmStock film = question.film();
        Optional<KnownSky.Computed> computed = question.computed();
        return new Situation(source(question.sky()), light.sky().magArcsec2(), light.sky().cdM2(),
                light.otherSkies().stream().map(other -> new Situation.OtherSky(source(other.known()),
                        other.brightness().magArcsec2(), other.brighterStops())).toList(),
                light.colour(), light.ground(), film.name(), film.fittedToSheets(), film.iso(), law(film), lens.focalLengthMm(),
                Finite.of(lens.focusM()), lens.transmittance(), light.cornerStops(), light.cornerStopsStopped(),
                question.unknown() instanceof TimeFor time ? OptionalDouble.of(time.toneStops())
                        : OptionalDouble.empty(),
                question.unknown() instanceof TimeFor time ? time.sheets() : 1,
                question.unknown() instanceof ToneAfter after ? OptionalDouble.of(after.lasts().toNanos() * 1e-9)
                        : OptionalDouble.empty(),
                computed.map(known -> known.site()), question.earlier().stream()
                        .map(opening -> new Situation.Opening(clock.at(opening.start()),
                                clock.at(opening.endExclusive()))).toList(),
                computed.map(known -> clock.at(known.openAt())),
                answer.night().map(usable -> clock.at(usable.shutter().available().endExclusive())),
                answer.night().map(usable -> usable.events().stream()
                        .map(event -> NightRow.EventRow.of(event, clock)).toList()).orElse(List.of()),
                Finite.of(computed.map(known -> known.aim().azimuth().degrees())),
                Finite.of(computed.map(known -> known.aim().altitude().degrees())),
                light.starDeclination().degrees(), light.aimDeclination().degrees(), light.stars().lossMag(),
                light.stars().leastDifferenceDensity());
    }

    /** Where the brightness of a sky comes from, in words. */
    private static String source(KnownSky sky) {
        if (sky instanceof KnownSky.Metered metered) {
            Preview frame = metered.preview();
            return "preview frame " + Wording.fNumber(frame.fNumber().marked()) + ", ISO "
                    + Wording.plain(frame.iso()) + ", " + Wording.plain(metered.exposureS()) + " s";
        }
        return !(sky instanceof KnownSky.Computed computed) ? "measured sky"
                : computed.steady() ? "computed sky, taken as steady" : "computed sky as it changes";
    }

    private static String law(FilmStock film) {
        if (film.colour()) {
            return "a reciprocity law for each layer, the green layer's setting the times";
        }
        Reciprocity law = film.reciprocity();
        if (law instanceof Reciprocity.PowerLaw power) {
            return "exposure = metered^" + Wording.plain(power.exponent())
                    + (power.fromS() == 1 ? " from 1 s"
                            : " in units of " + Wording.plain(power.fromS()) + " s from there");
        }
        if (law instanceof ReciprocityTable table) {
            return "reciprocity failure by a table to " + Wording.plain(table.coveredToS()) + " s metered";
        }
        return law instanceof Reciprocity.None ? "no reciprocity failure"
                : "reciprocity failure by a formula trusted to " + Wording.plain(law.coveredToS()) + " s metered";
    }
}
