package gloam.view;

import gloam.ephemeris.Ephemeris;
import gloam.exposure.ExposureTable.PassingStars;
import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ReciprocityTable;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.GroundLight;
import gloam.light.SkyBrightness;
import gloam.light.SkyColour;
import gloam.view.ExposureQuestion.TimeFor;
import gloam.view.ExposureQuestion.ToneAfter;
import gloam.units.Angle;
import gloam.units.Finite;
import gloam.units.Stops;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.function.Supplier;

/** Puts what an exposure is asked for into a report's words and figures. */
final class SituationBuilder {

    private final Supplier<Ephemeris> ephemeris;
    private final ExposureQuestion question;
    private final SiteClock clock;
    private final SkyReader reader;

    SituationBuilder(Supplier<Ephemeris> ephemeris, ExposureQuestion question, SiteClock clock) {
        this.ephemeris = ephemeris;
        this.question = question;
        this.clock = clock;
        this.reader = new SkyReader(ephemeris, question.lens());
    }

    /**
     * The stars whose trails are told of.
     *
     * @param declination their declination
     * @param aimed       that of the star at the frame's centre
     * @param stars       how they pass
     */
    record Trails(Angle declination, Angle aimed, PassingStars stars) {
    }

    Situation build(Optional<UsableNight> night, Trails trails) {
        SkyBrightness sky = reader.brightness(question.sky());
        Lens lens = question.lens();
        FilmStock film = question.film();
        Optional<KnownSky.Computed> computed = question.computed();
        return new Situation(SkyReader.source(question.sky()), sky.magArcsec2(),
                sky.cdM2(), otherSkies(sky), computed.map(this::colour),
                computed.flatMap(this::ground), film.name(), film.iso(),
                law(film), lens.focalLengthMm(),
                Finite.of(lens.focusM()),
                lens.transmittance(), cornerStops(lens.fNumbers().get(0)),
                cornerStops(lens.fNumbers().get(lens.fNumbers().size() - 1)),
                question.unknown() instanceof TimeFor time ? OptionalDouble.of(time.toneStops())
                        : OptionalDouble.empty(),
                question.unknown() instanceof TimeFor time ? time.sheets() : 1,
                question.unknown() instanceof ToneAfter after ? OptionalDouble.of(after.lasts().toNanos() * 1e-9)
                        : OptionalDouble.empty(),
                computed.map(known -> Place.of(known.site())), earlier(),
                computed.map(known -> clock.asked(known.openAt())),
                night.map(usable -> clock.asked(usable.shutter().available().endExclusive())),
                night.map(usable -> usable.events().stream().map(event -> NightRow.EventRow.of(event, clock)).toList())
                        .orElse(List.of()),
                optional(known -> known.aim().azimuth().degrees()),
                optional(known -> known.aim().altitude().degrees()),
                trails.declination.degrees(), trails.aimed.degrees(), trails.stars.lossMag(),
                trails.stars.leastDifferenceDensity());
    }

    private List<Situation.OtherSky> otherSkies(SkyBrightness used) {
        return question.skies().stream().skip(1).map(sky -> {
            SkyBrightness other = reader.brightness(sky);
            return new Situation.OtherSky(SkyReader.source(sky), other.magArcsec2(),
                    Stops.between(used.cdM2(), other.cdM2()));
        }).toList();
    }

    private Situation.Colour colour(KnownSky.Computed known) {
        double bv = reader.parts(known).colourBv();
        return new Situation.Colour(bv, SkyColour.temperatureK(bv));
    }

    private Optional<Situation.Ground> ground(KnownSky.Computed known) {
        if (question.groundReflectance().isEmpty()) {
            return Optional.empty();
        }
        double reflectance = question.groundReflectance().getAsDouble();
        GroundLight light = new GroundLight(ephemeris.get(), known.site());
        return Optional.of(new Situation.Ground(reflectance, light.lux(known.openAt()),
                light.landscape(reflectance, known.openAt()).cdM2()));
    }

    private OptionalDouble cornerStops(FNumber fNumber) {
        if (question.frame().isEmpty()) {
            return OptionalDouble.empty();
        }
        Lens lens = question.lens();
        double cornerMm = question.frame().orElseThrow().halfDiagonalMm();
        Angle corner = lens.projection().offAxis(cornerMm / lens.imageDistanceMm());
        double share = lens.relativeIllumination(corner, fNumber);
        return share > 0 ? OptionalDouble.of(Stops.between(1, share)) : OptionalDouble.empty();
    }

    private List<Situation.Opening> earlier() {
        return question.earlier().stream().map(opening -> new Situation.Opening(clock.asked(opening.start()),
                clock.asked(opening.endExclusive()))).toList();
    }

    private OptionalDouble optional(ToDoubleFunction<KnownSky.Computed> value) {
        return question.computed().map(known -> OptionalDouble.of(value.applyAsDouble(known)))
                .orElse(OptionalDouble.empty());
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
