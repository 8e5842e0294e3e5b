package gloam.answer;

import gloam.answer.ExposureQuestion.TimeFor;
import gloam.answer.ExposureQuestion.ToneAfter;
import gloam.ephemeris.Ephemeris;
import gloam.exposure.Bracket;
import gloam.exposure.Exposure;
import gloam.exposure.ExposureTable;
import gloam.exposure.ExposureTable.Row;
import gloam.exposure.Scene;
import gloam.exposure.Shutter;
import gloam.exposure.SkyOnFilm;
import gloam.exposure.Trade;
import gloam.gear.FNumber;
import gloam.light.GroundLight;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * Exposure times in one situation, all f-numbers of a lens side by side.
 *
 * @param question  what was asked
 * @param light     the light that was exposed for
 * @param night     the night in which the sheet is exposed, under a sky that changes
 * @param exposures one for each f-number, widest first
 * @param course    how the tone grows through the night, where one f-number is asked about
 * @param trade     sharpness compared with the number of stars, if they call for different f-numbers
 */
public record Exposures(ExposureQuestion question, LightFound light, Optional<UsableNight> night,
                        List<AtFNumber> exposures, Optional<ToneCourse> course, Optional<Trade> trade) {

    /** Copies the list. */
    public Exposures {
        exposures = List.copyOf(exposures);
    }

    /**
     * The result at one f-number.
     *
     * @param row     its time and tones
     * @param closeAt when to close the shutter, if its opening is known and the tone is reached
     * @param tNumber f-number of a lossless lens that passes as much light
     * @param spot    size of a star's image
     * @param bracket times for several sheets, if asked for and if all of them end
     */
    public record AtFNumber(Row row, Optional<Instant> closeAt, double tNumber, SpotWidths spot,
                            Optional<Bracket> bracket) {
    }

    /**
     * Answers a question.
     *
     * @param ephemeris used only to compute a sky
     * @throws gloam.units.BadInput if the shutter would be open by day
     */
    public static Exposures of(Supplier<Ephemeris> ephemeris, ExposureQuestion question) {
        return of(ephemeris, question, UnaryOperator.identity());
    }

    /** The same, more being known of what is before the lens. */
    static Exposures of(Supplier<Ephemeris> ephemeris, ExposureQuestion question,
            UnaryOperator<Scene> known) {
        Optional<UsableNight> night = question.computed().filter(computed -> !computed.steady())
                .map(computed -> UsableNight.of(ephemeris.get(), question, computed));
        LightFound light = LightFound.of(ephemeris, question);
        Optional<Shutter> shutter = night.map(UsableNight::shutter);
        ExposureTable table = new ExposureTable(question.film(), question.lens(),
                known.apply(question.sky() instanceof KnownSky.Computed computed
                        ? computed(ephemeris.get(), question, computed, shutter, light)
                        : Scene.of(known(question, light.sky()), light.stars())));
        List<Row> rows = question.lens().fNumbers().stream().map(fNumber -> row(table, question, fNumber))
                .toList();
        return new Exposures(question, light, night, rows.stream().map(row -> new AtFNumber(row,
                closeAt(shutter, row.exposure()), question.lens().tNumber(row.fNumber()),
                SpotWidths.of(question.lens(), row.fNumber()), bracket(table, question, row))).toList(),
                shutter.filter(open -> rows.size() == 1)
                        .map(open -> ToneCourse.of(table, rows.get(0).fNumber(), open))
                        .filter(course -> !course.points().isEmpty()),
                Trade.of(question.lens(), rows));
    }

    private static SkyOnFilm known(ExposureQuestion question, SkyBrightness sky) {
        return question.sky() instanceof KnownSky.Measured ? SkyOnFilm.measured(question.lens(), sky)
                : SkyOnFilm.steady(question.lens(), sky);
    }

    private static Row row(ExposureTable table, ExposureQuestion question, FNumber fNumber) {
        return question.unknown() instanceof ToneAfter after ? table.after(fNumber, after.lasts())
                : table.toTone(fNumber, ((TimeFor) question.unknown()).toneStops());
    }

    private static Optional<Bracket> bracket(ExposureTable table, ExposureQuestion question, Row row) {
        return question.unknown() instanceof TimeFor time && time.sheets() > 1
                ? table.bracket(row.fNumber(), time.toneStops(), time.sheets()) : Optional.empty();
    }

    private static Optional<Instant> closeAt(Optional<Shutter> shutter, Exposure exposure) {
        return shutter.filter(open -> !exposure.neverFinishes())
                .map(open -> open.opensAt().plusMillis(Math.round(exposure.correctedS() * 1000)));
    }

    private static Scene computed(Ephemeris ephemeris, ExposureQuestion question, KnownSky.Computed known,
                                  Optional<Shutter> shutter, LightFound found) {
        GroundLight ground = new GroundLight(ephemeris, known.site());
        Function<Function<Instant, SkyLight.Sample>, SkyOnFilm> onFilm = light ->
                shutter.map(open -> SkyOnFilm.computed(question.lens(), light, open))
                        .orElseGet(() -> SkyOnFilm.steady(question.lens(), light.apply(known.openAt())));
        return new Scene(onFilm.apply(SkySeen.of(ephemeris, question, known).at()),
                question.groundReflectance().isEmpty() ? Optional.empty() : Optional.of(onFilm.apply(
                        at -> ground.reflecting(question.groundReflectance().getAsDouble(), at))),
                        found.stars());
    }
}
