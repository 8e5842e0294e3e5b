package gloam.store;

import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.journal.Entry;
import gloam.journal.Exposed;
import gloam.journal.Outcome;
import gloam.journal.Place;
import gloam.journal.Spoiler;
import gloam.journal.ToneWord;
import gloam.journal.Verdict;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Range;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.annotation.JsonNaming;

/**
 * A sheet as it stands in a line of the journal: an {@link Entry} under keys with their units, what is not
 * known left out.
 *
 * @param gloamJournal version of the form of a line
 * @param id           name of the line: that of the sheet, or in the first form a number
 * @param corrects     in the first form, the line that this one replaces
 */
@JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
record JournalLine(int gloamJournal, String id, Instant written, Optional<String> corrects,
                   Optional<Boolean> withdrawn, String film, Optional<String> batch, Optional<SiteKeys> site,
                   Optional<BigDecimal> azimuthDeg, Optional<BigDecimal> altitudeDeg, LensKeys lens,
                   List<JournalOpening> openings, Light light, BigDecimal starImageSpeedMmS,
                   BigDecimal starLossMag, Optional<BigDecimal> temperatureC, Optional<ToneWord> tone,
                   Optional<BigDecimal> toneStops, Optional<BigDecimal> toneSpreadStops,
                   Optional<BigDecimal> faintestMag, Optional<Boolean> kept,
                   Optional<List<Spoiler>> spoiledBy, Optional<String> note, Optional<String> wish,
                   Optional<BigDecimal> plannedToneStops, Optional<String> picture,
                   Optional<JournalReading> reading) {

    /** The form that is written; the first had whole sheets for corrections and the light on the film. */
    static final int VERSION = 2;
    /** Allowed forms; what newer ones say besides is passed over. */
    static final Range VERSIONS = new Range("gloam-journal", 1, 999, "");
    /** Those that plans have, so that the light is that of the aim which is kept. */
    private static final int AIM_DECIMALS = 5;
    private static final Range SPOILERS = new Range("number of spoilers", 0, Spoiler.values().length, "");

    /** Refuses what no entry can be with {@link BadInput}. */
    JournalLine {
        VERSIONS.check(gloamJournal);
        Exposed.OPENINGS.check(openings.size());
        spoiledBy.ifPresent(all -> SPOILERS.check(all.size()));
        checkAim(azimuthDeg, altitudeDeg);
        plannedToneStops.ifPresent(planned -> Verdict.TONE.check(planned.doubleValue()));
        if (tone.isPresent() && toneStops.isPresent()) {
            throw new BadInput("tone-stops stands beside tone; keep one of the two");
        }
    }

    /** Where the light on the film is known from. */
    enum Light { COMPUTED, MEASURED }

    /** The line of a sheet. */
    static JournalLine of(Entry entry) {
        Exposed exposed = entry.exposed();
        Outcome outcome = entry.outcome();
        Optional<Verdict.InStops> measured = outcome.verdict().filter(Verdict.InStops.class::isInstance)
                .map(Verdict.InStops.class::cast);
        return new JournalLine(VERSION, entry.identity(), entry.writtenAt(), Optional.empty(),
                Optional.of(true).filter(yes -> entry.withdrawn()), exposed.film(), text(exposed.batch()),
                exposed.place().map(SiteKeys::of), exposed.aim().map(JournalLine::azimuth),
                exposed.aim().map(JournalLine::altitude), LensKeys.of(exposed.lens()),
                exposed.openings().stream().map(opening -> JournalOpening.of(opening,
                        exposed.lens(opening))).toList(),
                exposed.measured() ? Light.MEASURED : Light.COMPUTED, cut(exposed.stars().imageSpeedMmS(), 6),
                cut(exposed.stars().lossMag(), 3), cut(exposed.temperatureC(), 1),
                outcome.verdict().filter(Verdict.InWords.class::isInstance)
                        .map(verdict -> ((Verdict.InWords) verdict).word()),
                measured.map(verdict -> cut(verdict.stops(), 2)),
                measured.map(verdict -> cut(verdict.spreadStops(), 2)),
                cut(outcome.faintestMag(), 2), outcome.kept(),
                Optional.of(outcome.spoiledBy()).filter(all -> !all.isEmpty()), text(entry.note()),
                entry.wish(), cut(entry.plannedToneStops(), 2), entry.picture(),
                outcome.reading().map(JournalReading::of));
    }

    /**
     * What a sheet says, whatever its names and whenever it was written. Computed light follows from the
     * rest; it differs with the data and the program that computed it.
     */
    JournalLine saying() {
        return new JournalLine(VERSION, "", Instant.EPOCH, Optional.empty(), Optional.empty(), film, batch,
                site, azimuthDeg, altitudeDeg, lens, openings.stream().map(opening -> opening.saying(
                light == Light.MEASURED)).toList(), light, BigDecimal.ZERO, BigDecimal.ZERO, temperatureC,
                tone, toneStops, toneSpreadStops, faintestMag, kept, spoiledBy, note, wish, plannedToneStops,
                picture, reading);
    }

    /**
     * The sheet in a line, its identity the line's.
     *
     * @throws BadInput if the values do not go together
     */
    Entry entry() {
        Optional<Verdict> verdict = tone.<Verdict>map(Verdict.InWords::new)
                .or(() -> toneStops.map(stops -> new Verdict.InStops(stops.doubleValue(),
                        toneSpreadStops.map(BigDecimal::doubleValue).orElse(Verdict.USUAL_SPREAD_STOPS))));
        Lens through = lens.lens();
        return new Entry("", id, written, withdrawn.orElse(false),
                new Exposed(film, batch.orElse(""), site.map(SiteKeys::place),
                        aim(azimuthDeg, altitudeDeg), through,
                        openings.stream().map(opening -> opening.opening(through)).toList(),
                        light == Light.MEASURED,
                        new Exposed.Stars(starImageSpeedMmS.doubleValue(), starLossMag.doubleValue()),
                        number(temperatureC)),
                new Outcome(verdict, number(faintestMag), kept, spoiledBy.orElse(List.of()),
                        reading.map(JournalReading::reading)),
                note.orElse(""), wish, number(plannedToneStops), picture);
    }

    /** A place. */
    @JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
    record SiteKeys(String name, BigDecimal latitudeDeg, ZoneId zone) {

        /** Refuses a latitude outside its range with {@link BadInput}. */
        SiteKeys {
            Site.LATITUDE.check(latitudeDeg.doubleValue());
        }

        private static SiteKeys of(Place place) {
            return new SiteKeys(place.name(), cut(place.latitude().degrees(), 4), place.zone());
        }

        private Place place() {
            return new Place(name, Angle.ofDegrees(latitudeDeg.doubleValue()), zone);
        }
    }

    /** A lens, for the frame's centre, where no mount takes light; without {@code focusM} at infinity. */
    @JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
    record LensKeys(BigDecimal focalLengthMm, BigDecimal fNumber, BigDecimal transmittance,
            Optional<BigDecimal> focusM,
                    BigDecimal spotUm, BigDecimal filterStops, Projection projection) {

        /** Refuses an f-number outside its range with {@link BadInput}. */
        LensKeys {
            FNumber.RANGE.check(fNumber.doubleValue());
        }

        private static LensKeys of(Lens lens) {
            return new LensKeys(cut(lens.focalLengthMm(), 3), cut(lens.fNumbers().get(0).marked(), 4),
                    cut(lens.transmittance(), 4),
                    Optional.of(lens.focusM()).filter(Double::isFinite).map(focusM -> cut(focusM, 3)),
                    cut(lens.spotUm(), 2), cut(lens.filterStops(), 3), lens.projection());
        }

        private Lens lens() {
            return new Lens(focalLengthMm.doubleValue(), List.of(FNumber.marked(fNumber.doubleValue())),
                    transmittance.doubleValue(), focusM.map(BigDecimal::doubleValue)
                    .orElse(Double.POSITIVE_INFINITY),
                    spotUm.doubleValue(), filterStops.doubleValue(), projection, Vignetting.NONE);
        }
    }

    /** Refuses an azimuth or altitude outside its range with {@link BadInput}. */
    static void checkAim(Optional<BigDecimal> azimuthDeg, Optional<BigDecimal> altitudeDeg) {
        azimuthDeg.ifPresent(azimuth -> Direction.AZIMUTH.check(azimuth.doubleValue()));
        altitudeDeg.ifPresent(altitude -> Direction.ALTITUDE.check(altitude.doubleValue()));
    }

    /** The direction, if both are known. */
    static Optional<Direction> aim(Optional<BigDecimal> azimuthDeg,
            Optional<BigDecimal> altitudeDeg) {
        return azimuthDeg.flatMap(azimuth -> altitudeDeg.map(altitude ->
                Direction.ofDegrees(azimuth.doubleValue(), altitude.doubleValue())));
    }

    /** An azimuth as the journal keeps it, in degrees. */
    static BigDecimal azimuth(Direction aim) {
        return cut(aim.azimuth().degrees(), AIM_DECIMALS);
    }

    /** An altitude as the journal keeps it, in degrees. */
    static BigDecimal altitude(Direction aim) {
        return cut(aim.altitude().degrees(), AIM_DECIMALS);
    }

    private static Optional<String> text(String text) {
        return Optional.of(text).filter(some -> !some.isEmpty());
    }

    static Optional<BigDecimal> cut(OptionalDouble value, int decimals) {
        return value.isPresent() ? Optional.of(cut(value.getAsDouble(), decimals)) : Optional.empty();
    }

    /** A number cut to so many decimals, without zeros that say nothing. */
    static BigDecimal cut(double value, int decimals) {
        BigDecimal cut = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return cut.scale() < 0 ? cut.setScale(0) : cut;
    }

    static OptionalDouble number(Optional<BigDecimal> value) {
        return value.map(number -> OptionalDouble.of(number.doubleValue())).orElse(OptionalDouble.empty());
    }
}
