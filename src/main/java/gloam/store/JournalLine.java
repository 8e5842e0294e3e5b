package gloam.store;

import gloam.gear.FNumbers;
import gloam.gear.Lens;
import gloam.journal.Entry;
import gloam.journal.Exposed;
import gloam.journal.Opening;
import gloam.journal.Outcome;
import gloam.journal.Place;
import gloam.journal.Spoiler;
import gloam.journal.Verdict;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Writes an entry of the journal as one line of JSON, keys with their units, what is not known left out. */
final class JournalLine {

    /** Version of the form of a line. */
    static final int VERSION = 1;

    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator json;

    private JournalLine(JsonGenerator json) {
        this.json = json;
    }

    /** The line, without a line end. */
    static String of(Entry entry) {
        StringWriter line = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(ObjectWriteContext.empty(), line)) {
            new JournalLine(json).write(entry);
        }
        return line.toString();
    }

    private void write(Entry entry) {
        json.writeStartObject();
        json.writeNumberProperty("gloam-journal", VERSION);
        json.writeStringProperty("id", entry.id());
        json.writeStringProperty("written", entry.writtenAt().toString());
        if (entry.corrects().isPresent()) {
            json.writeStringProperty("corrects", entry.corrects().get());
        }
        if (entry.withdrawn()) {
            json.writeBooleanProperty("withdrawn", true);
        }
        write(entry.exposed());
        write(entry.outcome());
        text("note", entry.note());
        json.writeEndObject();
    }

    private void write(Exposed exposed) {
        json.writeStringProperty("film", exposed.film());
        text("batch", exposed.batch());
        if (exposed.place().isPresent()) {
            write(exposed.place().get());
        }
        if (exposed.aim().isPresent()) {
            number("azimuth-deg", exposed.aim().get().azimuth().degrees(), 3);
            number("altitude-deg", exposed.aim().get().altitude().degrees(), 3);
        }
        write(exposed.lens());
        json.writeArrayPropertyStart("openings");
        for (Opening opening : exposed.openings()) {
            write(opening);
        }
        json.writeEndArray();
        json.writeStringProperty("light", exposed.measured() ? "measured" : "computed");
        number("star-image-speed-mm-s", exposed.stars().imageSpeedMmS(), 6);
        number("star-loss-mag", exposed.stars().lossMag(), 3);
        if (exposed.temperatureC().isPresent()) {
            number("temperature-c", exposed.temperatureC().getAsDouble(), 1);
        }
    }

    private void write(Place place) {
        json.writeObjectPropertyStart("site");
        json.writeStringProperty("name", place.name());
        number("latitude-deg", place.latitude().degrees(), 4);
        json.writeStringProperty("zone", place.zone().getId());
        json.writeEndObject();
    }

    private void write(Lens lens) {
        json.writeObjectPropertyStart("lens");
        number("focal-length-mm", lens.focalLengthMm(), 3);
        number("f-number", FNumbers.marking(lens.fNumbers().get(0)), 4);
        number("transmittance", lens.transmittance(), 4);
        if (!Double.isInfinite(lens.focusM())) {
            number("focus-m", lens.focusM(), 3);
        }
        number("spot-um", lens.spotUm(), 2);
        number("filter-stops", lens.filterStops(), 3);
        json.writeStringProperty("projection", Item.label(lens.projection()));
        json.writeEndObject();
    }

    private void write(Opening opening) {
        json.writeStartObject();
        json.writeStringProperty("open", opening.open().start().toString());
        json.writeStringProperty("close", opening.open().endExclusive().toString());
        json.writeArrayPropertyStart("film-lx");
        for (double lx : opening.illuminancesLx()) {
            json.writeNumber(String.format(Locale.ROOT, "%.3e", lx));
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void write(Outcome outcome) {
        if (outcome.verdict().isPresent()) {
            write(outcome.verdict().get());
        }
        if (outcome.faintestMag().isPresent()) {
            number("faintest-mag", outcome.faintestMag().getAsDouble(), 2);
        }
        if (outcome.kept().isPresent()) {
            json.writeBooleanProperty("kept", outcome.kept().get());
        }
        if (!outcome.spoiledBy().isEmpty()) {
            json.writeArrayPropertyStart("spoiled-by");
            for (Spoiler spoiler : outcome.spoiledBy()) {
                json.writeString(Item.label(spoiler));
            }
            json.writeEndArray();
        }
    }

    private void write(Verdict verdict) {
        if (verdict instanceof Verdict.InStops measured) {
            number("tone-stops", measured.stops(), 2);
            number("tone-spread-stops", measured.spreadStops(), 2);
        } else {
            json.writeStringProperty("tone", Item.label(((Verdict.InWords) verdict).word()));
        }
    }

    private void text(String key, String text) {
        if (!text.isEmpty()) {
            json.writeStringProperty(key, text);
        }
    }

    private void number(String key, double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        json.writeName(key);
        json.writeNumber(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
    }
}
