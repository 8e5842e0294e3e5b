package gloam.view;

import gloam.journal.Entry;
import gloam.journal.Exposed;
import gloam.journal.Outcome;
import gloam.journal.Place;
import gloam.journal.Verdict;
import gloam.units.Label;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A sheet of the journal, with the meanings of {@link Entry}.
 *
 * @param id        its short name in this file
 * @param identity  its name in every copy of the journal
 * @param openAt    when the shutter first opened, in local time; in UTC if the site was not noted
 * @param closeAt   when it last closed
 * @param openings  number of openings
 * @param openS     total exposure time in seconds
 * @param filmLx    illuminance on the film half-way through the longest opening, in lux
 * @param light     {@code computed} or {@code measured}
 * @param tone      tone of the sky in a word, if judged so
 * @param toneStops tone of the sky in stops from the mid-tone, if measured
 * @param wish      the wish of a trip that it serves, if noted
 * @param plannedToneStops tone of the sky that the plan expected, in stops from the mid-tone, if planned
 * @param picture   path of a photo of it from the journal's folder, if noted
 * @param reading   what a scan of it showed, if one was read
 */
public record SheetRow(String id, String film, String batch, Optional<String> site, OffsetDateTime openAt,
                       OffsetDateTime closeAt, int openings, double openS, double fNumber,
                       OptionalDouble azimuthDeg,
                       OptionalDouble altitudeDeg, double filmLx, String light, OptionalDouble temperatureC,
                       Optional<String> tone, OptionalDouble toneStops, OptionalDouble faintestMag,
                       Optional<Boolean> kept, List<String> spoiledBy, String note, Optional<String> wish,
                       OptionalDouble plannedToneStops, Optional<String> picture, String identity,
                       Optional<ScanReadingRow> reading) {

    static SheetRow of(Entry entry) {
        Exposed exposed = entry.exposed();
        Outcome outcome = entry.outcome();
        ZoneId zone = exposed.place().map(Place::zone).orElse(ZoneOffset.UTC);
        SiteClock clock = new SiteClock(zone);
        return new SheetRow(entry.id(), exposed.film(), exposed.batch(), exposed.place().map(Place::name),
                clock.at(exposed.whole().start()), clock.at(exposed.whole().endExclusive()),
                exposed.openings().size(), exposed.openS(),
                exposed.fNumber().marked(),
                optional(exposed.aim().map(aim -> aim.azimuth().degrees())),
                optional(exposed.aim().map(aim -> aim.altitude().degrees())),
                exposed.middleLx(), exposed.measured() ? "measured" : "computed",
                exposed.temperatureC(), outcome.verdict().flatMap(SheetRow::word),
                optional(outcome.verdict().flatMap(SheetRow::stops)), outcome.faintestMag(), outcome.kept(),
                outcome.spoiledBy().stream().map(Label::of).toList(), entry.note(), entry.wish(),
                entry.plannedToneStops(), entry.picture(), entry.identity(),
                outcome.reading().map(scan -> ScanReadingRow.of(scan, clock)));
    }

    /**
     * The command that computes the sheet's picture with the camera of its trip; nothing where site or aim
     * are not noted, or there was more than one opening.
     */
    Optional<String> proof() {
        return site.filter(name -> openings == 1 && azimuthDeg.isPresent() && altitudeDeg.isPresent())
                .map(name -> "gloam proof --trip TRIP.yaml --site " + quoted(name) + " --film " + quoted(film)
                + " --f-number " + Wording.plain(fNumber) + " --azimuth "
                + Wording.plain(azimuthDeg.getAsDouble()) + " --altitude "
                + Wording.plain(altitudeDeg.getAsDouble()) + " --from "
                + openAt.toLocalDateTime().truncatedTo(ChronoUnit.SECONDS) + " --lasts " + Math.round(openS)
                + "s --out entry-" + id + ".png");
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "'\\''") + "'";
    }

    /** The verdict in a word or stops; nothing where there is none. */
    String verdict() {
        return tone.map(word -> word.replace('-', ' ')).orElse(toneStops.isPresent()
                ? Wording.signed(toneStops.getAsDouble(), 1) + " stops" : "");
    }

    /** What is noted of the sheet, by what that is; nothing is an empty text. */
    Map<String, String> noted() {
        Map<String, String> noted = new LinkedHashMap<>();
        noted.put("temperature", temperatureC.isPresent()
                ? Wording.plain(temperatureC.getAsDouble()) + " °C" : "");
        noted.put("tone", verdict());
        noted.put("faintest star", faintestMag.isPresent()
                ? Wording.plain(faintestMag.getAsDouble()) + " mag" : "");
        noted.put("kept", kept.map(Wording::yes).orElse(""));
        noted.put("spoiled by", String.join(", ", spoiledBy));
        noted.put("wish", wish.orElse(""));
        noted.put("picture", picture.orElse(""));
        noted.put("reading", reading.map(ScanReadingRow::text).orElse(""));
        noted.put("note", note);
        return noted;
    }

    /** A tone in a word or stops. */
    static String words(Verdict verdict) {
        return verdict instanceof Verdict.OfScan scan ? ScanToneRow.of(scan.tone()).stops()
                : word(verdict).map(word -> word.replace('-', ' ')).orElseGet(() ->
                Wording.signed(verdict.typicalStops(), 1) + " stops");
    }

    private static Optional<String> word(Verdict verdict) {
        return verdict instanceof Verdict.InWords words ? Optional.of(Label.of(words.word()))
                : Optional.empty();
    }

    private static Optional<Double> stops(Verdict verdict) {
        return verdict instanceof Verdict.InStops measured ? Optional.of(measured.stops()) : Optional.empty();
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** Sheets as a table to read. */
    static Table table(List<SheetRow> rows) {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.numbers("entry"), Table.words("opened"),
                Table.numbers("open").leaving(4),
                Table.numbers("f/"), Table.words("film").leaving(2), Table.words("site").leaving(1),
                Table.words("sky tone")));
        boolean planned = rows.stream().anyMatch(row -> row.plannedToneStops.isPresent());
        if (planned) {
            columns.add(Table.numbers("planned", "stops").leaving(6));
        }
        columns.addAll(List.of(Table.numbers("to", "mag").leaving(3), Table.words("kept").leaving(5)));
        Table table = new Table(columns.toArray(Table.Column[]::new));
        for (SheetRow row : rows) {
            List<String> cells = new ArrayList<>(List.of(row.id(), row.openAt().toLocalDate() + " "
                    + Wording.minute(row.openAt()) + (row.site().isEmpty() ? "Z" : ""),
                    Wording.exposure(row.openS()), Wording.plain(row.fNumber()),
                    row.film() + (row.batch().isEmpty() ? "" : ", " + row.batch()), row.site().orElse(""),
                    row.verdict()));
            if (planned) {
                cells.add(row.plannedToneStops.isPresent()
                        ? Wording.signed(row.plannedToneStops.getAsDouble(), 1) : "");
            }
            cells.addAll(List.of(row.faintestMag().isPresent()
                    ? Wording.number(row.faintestMag().getAsDouble(), 1) : "",
                    row.kept().map(Wording::yes).orElse("")));
            table.row(cells.toArray(String[]::new));
            row.wish().ifPresent(wish -> table.note("for \"" + wish + "\""));
            if (!row.spoiledBy().isEmpty()) {
                table.note("spoiled by " + String.join(", ", row.spoiledBy()).replace('-', ' '));
            }
            row.picture().ifPresent(picture -> table.note("picture " + picture));
            row.reading().ifPresent(scan -> table.note("read from " + scan.text()));
            if (!row.note().isEmpty()) {
                table.note(row.note());
            }
        }
        return table;
    }
}
