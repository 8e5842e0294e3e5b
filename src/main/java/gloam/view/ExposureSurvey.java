package gloam.view;

import gloam.ephemeris.Ephemeris;
import gloam.exposure.Bracket;
import gloam.exposure.ExposureTable;
import gloam.exposure.ExposureTable.PassingStars;
import gloam.exposure.ExposureTable.Row;
import gloam.exposure.Scene;
import gloam.exposure.Shutter;
import gloam.exposure.SkyOnFilm;
import gloam.exposure.Trade;
import gloam.gear.FNumber;
import gloam.light.Atmosphere;
import gloam.light.GroundLight;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.view.ExposureReport.SharpnessTrade;
import gloam.view.ExposureQuestion.TimeFor;
import gloam.view.ExposureQuestion.ToneAfter;
import gloam.units.Angle;
import gloam.units.BadInput;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Sets all f-numbers of a lens side by side under one sky. */
public final class ExposureSurvey {

    /** Where nothing is said of the aim, stars are taken half-way up, on the equator, in clear air at sea level. */
    private static final Angle USUAL_ALTITUDE = Angle.ofDegrees(45);

    private final Supplier<Ephemeris> ephemeris;
    private final ExposureQuestion question;

    /** A survey; the ephemeris is asked for only when the sky is to be computed. */
    public ExposureSurvey(Supplier<Ephemeris> ephemeris, ExposureQuestion question) {
        this.ephemeris = ephemeris;
        this.question = question;
    }

    /**
     * The answer.
     *
     * @throws BadInput when the shutter would be open by day
     */
    public ExposureReport report(Instant now) {
        Optional<UsableNight> night = question.computed().filter(known -> !known.steady())
                .map(known -> UsableNight.of(ephemeris.get(), question, known));
        PassingStars stars = stars();
        ExposureTable table = new ExposureTable(question.film(), question.lens(),
                scene(stars, night.map(UsableNight::shutter)));
        List<Row> rows = question.lens().fNumbers().stream().map(fNumber -> row(table, fNumber)).toList();
        SiteClock clock = new SiteClock(question.computed().map(known -> known.site().zone()).orElse(ZoneOffset.UTC));
        Situation situation = new SituationBuilder(ephemeris, question, clock)
                .build(night, new SituationBuilder.Trails(declination(), aimed(), stars));
        List<ExposureRow> exposures = rows.stream()
                .map(row -> ExposureRow.of(table, row, bracket(table, row), clock)).toList();
        Optional<SharpnessTrade> trade = Trade.of(question.lens(), rows).map(SharpnessTrade::of);
        return new ExposureReport(clock.asked(now), situation, exposures, trade,
                ExposureRemarks.of(situation, exposures, trade, question.film().colour()));
    }

    private Optional<Bracket> bracket(ExposureTable table, Row row) {
        return question.unknown() instanceof TimeFor time && time.sheets() > 1
                ? table.bracket(row.fNumber(), time.toneStops(), time.sheets()) : Optional.empty();
    }

    private Row row(ExposureTable table, FNumber fNumber) {
        return question.unknown() instanceof ToneAfter after ? table.after(fNumber, after.lasts())
                : table.toTone(fNumber, ((TimeFor) question.unknown()).toneStops());
    }

    private PassingStars stars() {
        return PassingStars.of(question.lens(), declination().degrees(), lossMag())
                .seenBy(question.leastDifferenceDensity());
    }

    private Scene scene(PassingStars stars, Optional<Shutter> shutter) {
        if (!(question.sky() instanceof KnownSky.Computed known)) {
            SkyBrightness sky = new SkyReader(ephemeris, question.lens()).brightness(question.sky());
            return Scene.of(SkyOnFilm.steady(question.lens(), sky), stars);
        }
        SkyLight light = new SkyLight(ephemeris.get(), known.site());
        return new Scene(onFilm(at -> light.at(known.aim(), at).total(), known, shutter),
                ground(known).map(landscape -> onFilm(landscape, known, shutter)), stars);
    }

    private Optional<Function<Instant, SkyBrightness>> ground(KnownSky.Computed known) {
        GroundLight light = new GroundLight(ephemeris.get(), known.site());
        return question.groundReflectance().isEmpty() ? Optional.empty()
                : Optional.of(at -> light.landscape(question.groundReflectance().getAsDouble(), at));
    }

    private SkyOnFilm onFilm(Function<Instant, SkyBrightness> light, KnownSky.Computed known,
                             Optional<Shutter> shutter) {
        return shutter.map(open -> SkyOnFilm.changing(question.lens(), light, open))
                .orElseGet(() -> SkyOnFilm.steady(question.lens(), light.apply(known.openAt())));
    }

    private Angle declination() {
        return PassingStars.told(question.lens(), question.frame(), aimed());
    }

    /** Declination of the star at the frame's centre. */
    private Angle aimed() {
        return question.computed().map(known -> known.aim().declination(known.site().latitude())).orElse(Angle.ZERO);
    }

    private double lossMag() {
        return question.computed()
                .map(known -> known.site().extinctionMag() * Atmosphere.airmass(known.aim().altitude()))
                .orElse(Atmosphere.clearExtinctionMag(0) * Atmosphere.airmass(USUAL_ALTITUDE));
    }
}
