package gloam.view;

import gloam.answer.ExposureQuestion.TimeFor;
import gloam.answer.ExposureQuestion.ToneAfter;
import gloam.answer.ExposureQuestion;
import gloam.answer.Exposures;
import gloam.answer.KnownSky;
import gloam.answer.LightFound;
import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.film.ReciprocityTable;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.planner.Preview;
import gloam.units.Finite;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * The light, film and lens that an exposure is computed for.
 *
 * @param source             where the sky's brightness comes from, in words
 * @param skyMagArcsec2      brightness of the sky at the frame's centre; of a changing sky, when the shutter
 *                           opens
 * @param awayFromMoon       whether the Moon is in the frame, and that sky is the one 8° from it or more
 * @param skyCdM2            the same as a luminance, in cd/m²
 * @param otherSkies         other readings of the same sky
 * @param skyColour          colour of the sky, if computed
 * @param ground             the ground, if the exposure is for the ground
 * @param film               name of the film
 * @param iso                its rated speed
 * @param reciprocity        its reciprocity law in words
 * @param focalLengthMm      focal length in mm
 * @param focusM             focused distance in metres; absent for infinity
 * @param transmittance      share of the light that the lens passes, 0 to 1
 * @param cornerStops        light in the frame's corners relative to its centre at the widest f-number, in
 *                           stops; minus is less; absent if the frame is not known
 * @param cornerStopsStopped the same at the smallest aperture
 * @param toneStops          tone wanted in stops from the mid-tone, if the question is for the time
 * @param sheets             number of sheets to expose
 * @param lastsS             exposure time in seconds, if the question is for the tone
 * @param site               the site, if given
 * @param earlier            earlier exposures on the same sheet
 * @param openAt             when the shutter opens, if given
 * @param latestCloseAt      when it must close at the latest, under a changing sky
 * @param events             events of the sky until then
 * @param azimuthDeg         azimuth of the aim in degrees, from north through east
 * @param altitudeDeg        altitude of the aim in degrees
 * @param starDeclinationDeg declination in degrees of the star whose trail limit is given
 * @param aimDeclinationDeg  declination of the star at the frame's centre; near a pole it draws only a point
 * @param extinctionMag      by how many magnitudes the atmosphere dims that star
 * @param leastDifferenceDensity least difference in density from the sky at which its trail shows
 */
public record Situation(String source, double skyMagArcsec2, double skyCdM2, boolean awayFromMoon,
                        List<OtherSky> otherSkies,
                        Optional<LightFound.Colour> skyColour, Optional<LightFound.Ground> ground,
                        String film,
                        int fittedToSheets, double iso, String reciprocity, double focalLengthMm,
                        OptionalDouble focusM, double transmittance,
                        OptionalDouble cornerStops, OptionalDouble cornerStopsStopped,
                        OptionalDouble toneStops,
                        int sheets, OptionalDouble lastsS, Optional<Site> site, List<Opening> earlier,
                        Optional<OffsetDateTime> openAt, Optional<OffsetDateTime> latestCloseAt,
                        List<NightRow.EventRow> events, OptionalDouble azimuthDeg, OptionalDouble altitudeDeg,
                        double starDeclinationDeg, double aimDeclinationDeg, double extinctionMag,
                        double leastDifferenceDensity) {

    private static final int TERMS = 8;

    /** What was asked for and the light that was found, in a report's words and figures. */
    static Situation of(Exposures answer, SiteClock clock) {
        ExposureQuestion question = answer.question();
        LightFound light = answer.light();
        Lens lens = question.lens();
        FilmStock film = question.film();
        Optional<KnownSky.Computed> computed = question.computed();
        return new Situation(sourceOf(question.sky()), light.sky().magArcsec2(), light.sky().cdM2(),
                light.awayFromMoon(),
                light.otherSkies().stream().map(other -> new OtherSky(sourceOf(other.known()),
                        other.brightness().magArcsec2(), other.brighterStops())).toList(),
                light.colour(), light.ground(), film.name(), film.fittedToSheets(), film.iso(), law(film),
                lens.focalLengthMm(),
                Finite.of(lens.focusM()), lens.transmittance(), light.cornerStops(),
                light.cornerStopsStopped(),
                question.unknown() instanceof TimeFor time ? OptionalDouble.of(time.toneStops())
                        : OptionalDouble.empty(),
                question.unknown() instanceof TimeFor time ? time.sheets() : 1,
                question.unknown() instanceof ToneAfter after
                ? OptionalDouble.of(after.lasts().toNanos() * 1e-9)
                        : OptionalDouble.empty(),
                computed.map(known -> known.site()), question.earlier().stream()
                        .map(opening -> new Opening(clock.at(opening.start()),
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
    private static String sourceOf(KnownSky sky) {
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
                : "reciprocity failure by a formula trusted to " + Wording.plain(law.coveredToS())
                + " s metered";
    }

    /** The film in words. */
    String ofFilm() {
        return FilmWords.name(film(), fittedToSheets()) + ", ISO " + Wording.plain(iso()) + "; "
                + reciprocity();
    }

    /** The text of it, a term a line, with what is said of the films. */
    Document document(List<String> films) {
        Document document = Document.part();
        add(document, "Sky", source() + (awayFromMoon() ? ", away from the Moon: " : ": ")
                + Wording.number(skyMagArcsec2(), 2) + " mag/arcsec²");
        otherSkies().forEach(other -> add(document, "But", other.source() + ": "
                + Wording.number(other.skyMagArcsec2(), 2) + " mag/arcsec², "
                + stops(other.brighterStops())));
        site().ifPresent(place -> add(document, "Site", SiteText.of(place)));
        openAt().ifPresent(at -> add(document, "Open", opening()));
        earlier().forEach(opening -> add(document, "Before", "open " + Wording.second(opening.openAt())
                + " to " + Wording.second(opening.closeAt()) + " on the same sheet"));
        if (!events().isEmpty()) {
            add(document, "Then", events().stream()
                    .map(event -> event.what().replace('-', ' ') + " " + Wording.minute(event.at()))
                    .collect(Collectors.joining(", ")));
        }
        ground().ifPresent(ground -> add(document, "Ground", "reflects " + Wording.plain(ground.reflectance())
                + " of " + Wording.light(ground.lux()) + " lx"));
        films.forEach(film -> add(document, "Film", film));
        add(document, "Lens", Wording.plain(focalLengthMm()) + " mm, focused at "
                + Wording.focus(focusM())
                + ", passes " + Wording.plain(transmittance()) + " of the light");
        add(document, "Want", wanted());
        return document;
    }

    private static void add(Document document, String title, String text) {
        document.add(new Block.Term(title, text, TERMS, false));
    }

    private static String stops(double brighter) {
        String amount = Wording.number(Math.abs(brighter), 1);
        return amount.equals("0.0") ? "the same" : amount + " stops "
                + (brighter > 0 ? "brighter" : "darker");
    }

    private String opening() {
        return openAt().map(at -> Wording.date(Wording.secondDate(at)) + " " + Wording.second(at) + " ("
                + Wording.offset(at) + "), azimuth " + Wording.plain(azimuthDeg().orElseThrow())
                + "°, altitude " + Wording.plain(altitudeDeg().orElseThrow()) + "°").orElseThrow()
                + latestCloseAt().filter(at -> lastsS().isEmpty())
                        .map(at -> "; close by " + Wording.minuteBefore(at)).orElse("");
    }

    private String wanted() {
        String what = ground().isPresent() ? "the ground" : "the sky";
        if (lastsS().isPresent()) {
            double seconds = lastsS().getAsDouble();
            return "the tone of " + what + " after " + Wording.lasting(seconds) + openAt()
                    .filter(at -> latestCloseAt().isPresent())
                    .map(at -> ", closing at " + Wording.second(at.plusNanos(Math.round(seconds * 1e9))))
                    .orElse("");
        }
        double stops = toneStops().orElseThrow();
        return stops == 0 ? what + " in the film's mid-tone" : what + " "
                + Wording.number(Math.abs(stops), 1) + " stops " + (stops > 0 ? "lighter" : "darker")
                + " than the film's mid-tone";
    }

    /** How long a tone takes that is not reached in the time there is. */
    String never() {
        return latestCloseAt.isPresent() ? "never" : Wording.exposure(Double.POSITIVE_INFINITY);
    }

    /**
     * Another reading of the same sky.
     *
     * @param source        where it comes from, in words
     * @param skyMagArcsec2 its brightness
     * @param brighterStops by how many stops it is brighter than the sky exposed for; minus is darker
     */
    public record OtherSky(String source, double skyMagArcsec2, double brighterStops) {
    }

    /**
     * An opening of the shutter.
     *
     * @param openAt  when it opened
     * @param closeAt when it closed
     */
    public record Opening(OffsetDateTime openAt, OffsetDateTime closeAt) {
    }
}
