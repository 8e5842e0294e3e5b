package gloam.store;

import gloam.field.Forecast;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Site;
import gloam.journal.Exposed;
import gloam.planner.CarriedCamera;
import gloam.planner.Evenings;
import gloam.planner.Limits;
import gloam.planner.Outings;
import gloam.planner.Preview;
import gloam.planner.Travel;
import gloam.planner.Trip;
import gloam.planner.Weather;
import gloam.planner.Wish;
import gloam.units.Range;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Reads a trip from a YAML or JSON file.
 *
 * <p>A section may be the name of a file, relative to the trip file. Unknown keys are errors.
 */
public final class TripFile {

    private static final Range NIGHTS = new Range("number of nights", 1, 400, "");

    private TripFile() {
    }

    /** Reads a trip file; throws one {@link gloam.units.BadInput} with all its errors. */
    public static Reading read(Path file) {
        return read(Input.of(file.toString()));
    }

    /** The same for an option. */
    public static Reading read(Input file) {
        Findings findings = new Findings();
        return findings.result(() -> reading(Source.of(file, findings)));
    }

    /**
     * A trip as understood.
     *
     * @param trip         the trip
     * @param defaultsUsed every value that the file omits, with its default, such as
     *                     {@code sites[0].dark-sky-mag-arcsec2: 21.6}
     * @param stay         number of consecutive nights to spend away, if the file says so
     * @param journal      the journal of its sheets, if the file names one
     * @param batch        the pack that its film is from, if the file names one
     */
    public record Reading(Trip trip, List<String> defaultsUsed, OptionalInt stay,
            Optional<TripJournal> journal, Optional<String> batch) {

        /** Copies the list. */
        public Reading {
            defaultsUsed = List.copyOf(defaultsUsed);
        }

        /** The same of the trip with something of it chosen or worked out. */
        public Reading with(Trip changed) {
            return new Reading(changed, defaultsUsed, stay, journal, batch);
        }

        /** The pack of the film of that name, if that is the trip's and its pack is named. */
        public Optional<String> batchOf(String film) {
            return batch.filter(name -> film.equals(trip.film().name()));
        }
    }

    static Reading reading(Source source) {
        Fields fields = source.root().fields();
        String fileName = source.path().getFileName().toString();
        Value<String> title = fields.orDefault("title", fileName, fileName, Item::text);
        fields.defaultRule("title", "the file's name");
        boolean metered = fields.has("preview");
        Value<List<SiteSection>> sites = fields.required("sites", value -> SiteSection.sites(value, metered));
        Value<Nights> nights = fields.required("nights", TripFile::nights);
        Value<Optional<Evenings>> evenings = fields.optional("evenings",
                value -> OutingsSection.evenings(value, nights));
        Value<Optional<Limits.TimeOfNight>> awake = fields.optional("awake", OutingsSection::awake);
        Value<Travel> travel = OutingsSection.travel(fields, sites);
        Value<List<CarriedCamera>> cameras = fields.exactlyOneOf(List.of(
                new Fields.Choice<>("camera", value -> List.of(new CarriedCamera(CameraSection.camera(value),
                Optional.empty()))), new Fields.Choice<>("cameras", CameraSection::cameras)));
        Value<FilmStock> film = fields.required("film", FilmFile::film);
        Value<Integer> sheets = fields.required("sheets", value -> value.whole(Trip.SHEETS));
        Value<Optional<Integer>> sheetsPerNight = fields.optional("sheets-per-night",
                value -> value.whole(Outings.SHEETS_PER_NIGHT));
        Value<Optional<TripJournal>> journal = fields.optional("journal", TripJournal::named);
        Value<Optional<String>> batch = fields.optional("batch", value -> Exposed.batch(value.text()));
        Value<Optional<Preview>> preview = fields.optional("preview", TripFile::preview);
        Value<Optional<Forecast>> forecast = fields.optional("forecast",
                value -> ForecastFile.named(value, nights.get().from));
        Value<Double> leastClear = fields.numberOr("least-clear-percent", Weather.USUAL_LEAST_CLEAR_PERCENT,
                Weather.LEAST_CLEAR);
        Value<Double> clearPrior = fields.numberOr("clear-prior-percent", Weather.USUAL_CLEAR_PRIOR_PERCENT,
                Weather.CLEAR_PRIOR);
        Value<List<Wish>> wishes = fields.orDefault("wishes", List.of(), "none",
                value -> WishSection.wishes(value, cameras, sites));
        fields.noOthers();
        List<Value<Site>> lit = sites.get().stream().map(site -> site.lit(preview, cameras)).toList();
        Map<String, Value<Forecast>> forecasts = SiteSection.forecasts(sites.get(), nights);
        Weather weather = new Weather(forecast.get(), Value.all(forecasts), leastClear.get(),
                clearPrior.get());
        Trip trip = new Trip(title.get(), lit.stream().map(Value::get).toList(), nights.get().from,
                nights.get().to, cameras.get(), film.get(), sheets.get(),
                SiteSection.previews(preview.get(), sites.get()), wishes.get(), weather, Optional.empty(),
                new Outings(evenings.get().orElse(Evenings.ALL),
                sheetsPerNight.get().orElse(Outings.ANY.sheetsPerNight()), awake.get(), travel.get()));
        return new Reading(trip, source.findings().defaultsUsed(), nights.get().stay, journal.get(),
                batch.get());
    }

    private static Nights nights(Item item) {
        Fields fields = item.fields();
        Value<LocalDate> from = fields.required("from", ItemTimes::date);
        Value<LocalDate> to = fields.required("to", value -> lastNight(value, from));
        Value<Optional<Integer>> stay = fields.optional("stay", value -> stay(value, from, to));
        fields.noOthers();
        return new Nights(from.get(), to.get(), stay.get().map(OptionalInt::of).orElse(OptionalInt.empty()));
    }

    private static LocalDate lastNight(Item item, Value<LocalDate> from) {
        LocalDate to = ItemTimes.date(item);
        from.content().ifPresent(first -> {
            if (to.isBefore(first)) {
                throw item.fault("the last night " + to + " is before the first, " + first
                        + ". Give a later one.");
            }
            NIGHTS.check(nights(first, to));
        });
        return to;
    }

    private static int stay(Item item, Value<LocalDate> from, Value<LocalDate> to) {
        int stay = item.whole(NIGHTS);
        long nights = nights(from.get(), to.get());
        if (stay > nights) {
            throw item.fault("a stay of " + stay + " nights does not fit into " + nights + ". Give fewer.");
        }
        return stay;
    }

    private static long nights(LocalDate first, LocalDate last) {
        return ChronoUnit.DAYS.between(first, last) + 1;
    }

    static Preview preview(Item item) {
        Fields fields = item.fields();
        Value<FNumber> fNumber = fields.required("f-number", CameraSection::fNumber);
        Value<Double> iso = fields.number("iso", Preview.ISO);
        Value<Double> exposureS = fields.number("exposure-s", Preview.EXPOSURE);
        fields.noOthers();
        return new Preview(fNumber.get(), iso.get(), Duration.ofNanos(Math.round(exposureS.get() * 1e9)));
    }

    /** The dates of the first and the last evening, and how many nights to be away in a row. */
    record Nights(LocalDate from, LocalDate to, OptionalInt stay) {
    }
}
