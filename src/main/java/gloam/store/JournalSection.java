package gloam.store;

import gloam.ephemeris.Direction;
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
import gloam.units.Interval;
import gloam.units.Range;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads an entry of the journal from the keys of its line. */
final class JournalSection {

    private static final Range VERSION = new Range("gloam-journal", JournalLine.VERSION, JournalLine.VERSION, "");
    private static final Range SPOILERS = new Range("number of spoilers", 0, Spoiler.values().length, "");

    private enum Light { COMPUTED, MEASURED }

    private JournalSection() {
    }

    /** The entry at an item. */
    static Entry entry(Item item) {
        Fields fields = item.fields();
        fields.required("gloam-journal", value -> value.whole(VERSION));
        Value<String> id = fields.required("id", Item::text);
        Value<Instant> written = fields.required("written", JournalSection::instant);
        Value<Optional<String>> corrects = fields.optional("corrects", Item::text);
        Value<Optional<Boolean>> withdrawn = fields.optional("withdrawn", JournalSection::truth);
        Value<Exposed> exposed = exposed(item, fields);
        Value<Outcome> outcome = outcome(item, fields);
        Value<Optional<String>> note = fields.optional("note", Item::text);
        fields.noOthers();
        return new Entry(id.get(), written.get(), corrects.get(), withdrawn.get().orElse(false), exposed.get(),
                outcome.get(), note.get().orElse(""));
    }

    private static Value<Exposed> exposed(Item item, Fields fields) {
        Value<String> film = fields.required("film", Item::text);
        Value<Optional<String>> batch = fields.optional("batch", Item::text);
        Value<Optional<Place>> place = fields.optional("site", JournalSection::place);
        Value<Optional<Double>> azimuthDeg = fields.optional("azimuth-deg", value -> value.number(Direction.AZIMUTH));
        Value<Optional<Double>> altitudeDeg = fields.optional("altitude-deg", value -> value.number(Direction.ALTITUDE));
        Value<Lens> lens = fields.required("lens", JournalSection::lens);
        Value<List<Opening>> openings = fields.required("openings",
                value -> value.list(Exposed.OPENINGS, JournalSection::opening));
        Value<Light> light = fields.required("light", value -> value.word(List.of(Light.values())));
        Value<Double> speedMmS = fields.number("star-image-speed-mm-s", Exposed.Stars.SPEED);
        Value<Double> lossMag = fields.number("star-loss-mag", Exposed.Stars.LOSS);
        Value<Optional<Double>> temperatureC =
                fields.optional("temperature-c", value -> value.number(Exposed.TEMPERATURE));
        return item.value(here -> new Exposed(film.get(), batch.get().orElse(""), place.get(),
                azimuthDeg.get().flatMap(azimuth -> altitudeDeg.get()
                        .map(altitude -> Direction.ofDegrees(azimuth, altitude))),
                lens.get(), openings.get(), light.get() == Light.MEASURED,
                new Exposed.Stars(speedMmS.get(), lossMag.get()), optional(temperatureC.get())));
    }

    private static Value<Outcome> outcome(Item item, Fields fields) {
        Value<Optional<Double>> spread =
                fields.optional("tone-spread-stops", value -> value.number(Verdict.SPREAD));
        Value<Optional<Verdict>> verdict = fields.oneOf(List.of(
                new Fields.Choice<>("tone", value -> new Verdict.InWords(value.word(List.of(ToneWord.values())))),
                new Fields.Choice<>("tone-stops", value -> new Verdict.InStops(value.number(Verdict.TONE),
                        spread.get().orElse(Verdict.USUAL_SPREAD_STOPS)))));
        Value<Optional<Double>> faintest = fields.optional("faintest-mag", value -> value.number(Outcome.MAGNITUDE));
        Value<Optional<Boolean>> kept = fields.optional("kept", JournalSection::truth);
        Value<Optional<List<Spoiler>>> spoiledBy = fields.optional("spoiled-by",
                value -> value.list(SPOILERS, by -> by.word(List.of(Spoiler.values()))));
        return item.value(here -> new Outcome(verdict.get(), optional(faintest.get()), kept.get(),
                spoiledBy.get().orElse(List.of())));
    }

    private static Place place(Item item) {
        Fields fields = item.fields();
        Value<String> name = fields.required("name", Item::text);
        Value<Double> latitudeDeg = fields.number("latitude-deg", Site.LATITUDE);
        Value<ZoneId> zone = fields.required("zone", Item::zone);
        fields.noOthers();
        return new Place(name.get(), Angle.ofDegrees(latitudeDeg.get()), zone.get());
    }

    /** The lens at an item, for the frame's centre, where no mount takes light. */
    private static Lens lens(Item item) {
        Fields fields = item.fields();
        Value<Double> focalLengthMm = fields.number("focal-length-mm", Lens.FOCAL_LENGTH);
        Value<Double> fNumber = fields.required("f-number", CameraSection::fNumber);
        Value<Double> transmittance = fields.number("transmittance", Lens.TRANSMITTANCE);
        Value<Optional<Double>> focusM = fields.optional("focus-m", value -> value.number(Lens.FOCUS));
        Value<Double> spotUm = fields.number("spot-um", Lens.SPOT);
        Value<Double> filterStops = fields.number("filter-stops", Lens.FILTER);
        Value<Projection> projection = fields.required("projection", value -> value.word(List.of(Projection.values())));
        fields.noOthers();
        return new Lens(focalLengthMm.get(), List.of(fNumber.get()), transmittance.get(),
                focusM.get().orElse(Double.POSITIVE_INFINITY), spotUm.get(), filterStops.get(), projection.get(),
                Vignetting.NONE);
    }

    private static Opening opening(Item item) {
        Fields fields = item.fields();
        Value<Instant> open = fields.required("open", JournalSection::instant);
        Value<Instant> close = fields.required("close", JournalSection::instant);
        Value<List<Double>> lx = fields.required("film-lx",
                value -> value.list(Opening.SAMPLES, light -> light.number(Opening.ILLUMINANCE)));
        fields.noOthers();
        if (!open.get().isBefore(close.get())) {
            throw item.fault("closes at " + close.get() + ", not after it opens. Put the two in order.");
        }
        return new Opening(new Interval(open.get(), close.get()), lx.get());
    }

    private static Instant instant(Item item) {
        try {
            return Instant.parse(item.text());
        } catch (DateTimeException wrong) {
            throw item.fault("expected an instant such as 2027-02-08T20:35:00Z, found " + Shown.quoted(item.text()));
        }
    }

    private static boolean truth(Item item) {
        return switch (item.text()) {
            case "true" -> true;
            case "false" -> false;
            default -> throw item.fault("expected true or false, found " + Shown.quoted(item.text()));
        };
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
