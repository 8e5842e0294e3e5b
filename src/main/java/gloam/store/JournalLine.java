package gloam.store;

import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.journal.Entry;
import gloam.journal.Exposed;
import gloam.journal.Opening;
import gloam.journal.Outcome;
import gloam.journal.Place;
import gloam.journal.Spoiler;
import gloam.journal.ToneWord;
import gloam.journal.Verdict;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.annotation.JsonNaming;
import tools.jackson.databind.annotation.JsonSerialize;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * A line of the journal as it stands in the file: an {@link Entry} under keys with their units, what is not
 * known left out.
 *
 * @param gloamJournal version of the form of a line
 */
@JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
record JournalLine(int gloamJournal, String id, Instant written, Optional<String> corrects,
        Optional<Boolean> withdrawn,
                   String film, Optional<String> batch, Optional<SiteKeys> site,
                   Optional<BigDecimal> azimuthDeg,
                   Optional<BigDecimal> altitudeDeg, LensKeys lens, List<OpeningKeys> openings, Light light,
                   BigDecimal starImageSpeedMmS, BigDecimal starLossMag, Optional<BigDecimal> temperatureC,
                   Optional<ToneWord> tone, Optional<BigDecimal> toneStops,
                   Optional<BigDecimal> toneSpreadStops,
                   Optional<BigDecimal> faintestMag, Optional<Boolean> kept,
                   Optional<List<Spoiler>> spoiledBy, Optional<String> note,
                   Optional<String> wish) {

    private static final int VERSION = 1;
    private static final Range VERSIONS = new Range("gloam-journal", VERSION, VERSION, "");
    private static final Range SPOILERS = new Range("number of spoilers", 0, Spoiler.values().length, "");

    /** Refuses what no entry can be with {@link BadInput}. */
    JournalLine {
        VERSIONS.check(gloamJournal);
        Exposed.OPENINGS.check(openings.size());
        spoiledBy.ifPresent(all -> SPOILERS.check(all.size()));
        azimuthDeg.ifPresent(azimuth -> Direction.AZIMUTH.check(azimuth.doubleValue()));
        altitudeDeg.ifPresent(altitude -> Direction.ALTITUDE.check(altitude.doubleValue()));
        if (tone.isPresent() && toneStops.isPresent()) {
            throw new BadInput("tone-stops stands beside tone; keep one of the two");
        }
    }

    /** Where the light on the film is known from. */
    enum Light { COMPUTED, MEASURED }

    /** The line of an entry, without a line end. */
    static String of(Entry entry) {
        Exposed exposed = entry.exposed();
        Outcome outcome = entry.outcome();
        Optional<Verdict.InStops> measured = outcome.verdict().filter(Verdict.InStops.class::isInstance)
                .map(Verdict.InStops.class::cast);
        return Bound.line(new JournalLine(VERSION, entry.id(), entry.writtenAt(), entry.corrects(),
                Optional.of(true).filter(yes -> entry.withdrawn()), exposed.film(), text(exposed.batch()),
                exposed.place().map(SiteKeys::of), exposed.aim().map(aim -> cut(aim.azimuth().degrees(), 3)),
                exposed.aim().map(aim -> cut(aim.altitude().degrees(), 3)), LensKeys.of(exposed.lens()),
                exposed.openings().stream().map(OpeningKeys::of).toList(),
                exposed.measured() ? Light.MEASURED : Light.COMPUTED, cut(exposed.stars().imageSpeedMmS(), 6),
                cut(exposed.stars().lossMag(), 3), cut(exposed.temperatureC(), 1),
                outcome.verdict().filter(Verdict.InWords.class::isInstance)
                        .map(verdict -> ((Verdict.InWords) verdict).word()),
                measured.map(verdict -> cut(verdict.stops(), 2)),
                measured.map(verdict -> cut(verdict.spreadStops(), 2)),
                cut(outcome.faintestMag(), 2), outcome.kept(),
                Optional.of(outcome.spoiledBy()).filter(all -> !all.isEmpty()), text(entry.note()),
                entry.wish()));
    }

    /**
     * The entry in a line.
     *
     * @throws BadInput with the place of what is wrong
     */
    static Entry read(Tree.Text text) {
        JournalLine line = Bound.read(text, JournalLine.class);
        try {
            return line.entry();
        } catch (BadInput refused) {
            throw new BadInput(text.at(1, 1) + ": " + refused.getMessage());
        }
    }

    private Entry entry() {
        Optional<Verdict> verdict = tone.<Verdict>map(Verdict.InWords::new)
                .or(() -> toneStops.map(stops -> new Verdict.InStops(stops.doubleValue(),
                        toneSpreadStops.map(BigDecimal::doubleValue).orElse(Verdict.USUAL_SPREAD_STOPS))));
        Optional<Direction> aim = azimuthDeg.flatMap(azimuth -> altitudeDeg.map(altitude ->
                Direction.ofDegrees(azimuth.doubleValue(), altitude.doubleValue())));
        return new Entry(id, written, corrects, withdrawn.orElse(false),
                new Exposed(film, batch.orElse(""), site.map(SiteKeys::place), aim, lens.lens(),
                        openings.stream().map(OpeningKeys::opening).toList(), light == Light.MEASURED,
                        new Exposed.Stars(starImageSpeedMmS.doubleValue(), starLossMag.doubleValue()),
                        number(temperatureC)),
                new Outcome(verdict, number(faintestMag), kept, spoiledBy.orElse(List.of())),
                note.orElse(""), wish);
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

    /** An opening of the shutter and the light on the film. */
    @JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
    record OpeningKeys(Instant open, Instant close,
            @JsonSerialize(contentUsing = FourDigits.class) List<Double> filmLx) {

        /** Refuses what does not close after it opens with {@link BadInput}. */
        OpeningKeys {
            if (!open.isBefore(close)) {
                throw new BadInput("closes at " + close + ", not after it opens. Put the two in order.");
            }
        }

        private static OpeningKeys of(Opening opening) {
            return new OpeningKeys(opening.open().start(), opening.open().endExclusive(),
                    opening.illuminancesLx());
        }

        private Opening opening() {
            return new Opening(new Interval(open, close), filmLx);
        }
    }

    /** A number in four digits, such as 2.474e-04. */
    private static final class FourDigits extends StdSerializer<Double> {

        FourDigits() {
            super(Double.class);
        }

        @Override
        public void serialize(Double number, JsonGenerator json, SerializationContext context) {
            json.writeNumber(String.format(Locale.ROOT, "%.3e", number));
        }
    }

    private static Optional<String> text(String text) {
        return Optional.of(text).filter(some -> !some.isEmpty());
    }

    private static Optional<BigDecimal> cut(OptionalDouble value, int decimals) {
        return value.isPresent() ? Optional.of(cut(value.getAsDouble(), decimals)) : Optional.empty();
    }

    private static BigDecimal cut(double value, int decimals) {
        BigDecimal cut = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return cut.scale() < 0 ? cut.setScale(0) : cut;
    }

    private static OptionalDouble number(Optional<BigDecimal> value) {
        return value.map(number -> OptionalDouble.of(number.doubleValue())).orElse(OptionalDouble.empty());
    }
}
