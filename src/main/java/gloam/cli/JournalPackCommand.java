package gloam.cli;

import gloam.answer.Keepers;
import gloam.journal.Journal;
import gloam.journal.Pack;
import gloam.store.Input;
import gloam.store.JournalFile;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.view.JournalPackReport;
import gloam.view.Report;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Notes the size and price of a pack, for what is left of it and what its keepers cost. */
final class JournalPackCommand extends ReportingCommand {

    private final JournalOptions journal = group(new JournalOptions());

    private final Option<String> film = option("--film", "NAME", String.class,
            "The film (default: the trip's, else the journal's only one).");

    private final Option<String> batch = option("--batch", "NAME", String.class,
            "The pack or batch (default: the trip's).");

    private final Option<Input> trip = input("--trip", "FILE", "A trip file, for its film and pack.");

    private final Option<Integer> sheets = option("--sheets", "N", Integer.class, "Sheets in the pack.")
            .required();

    private final Option<Double> price = option("--price", "AMOUNT", Double.class,
            "What the pack cost, in any currency.");

    JournalPackCommand(Session session) {
        super(session, "pack", "Note how many sheets a pack has and what it cost; stats uses it.",
                "gloam journal pack --journal journal.jsonl --film instant-mono-640 --batch A --sheets 8 "
                + "--price 42");
    }

    @Override
    Report report(Session session) {
        Pack pack = pack(trip.value().map(TripFile::read));
        refuseFormats(report(session, pack, true, Journal.of(List.of(), List.of())));
        boolean noted = FromOption.of("--journal", () -> JournalFile.note(journal.file(), pack,
                session.now().truncatedTo(ChronoUnit.SECONDS)));
        return report(session, pack, noted, journal.read(this::note));
    }

    private Report report(Session session, Pack pack, boolean noted, Journal known) {
        return JournalPackReport.of(journal.file().toString(), pack, noted,
                Keepers.Stock.of(pack, known.sheets()), session.now());
    }

    private Pack pack(Optional<TripFile.Reading> read) {
        int many = (int) FromOption.checked("--sheets", Pack.SHEETS, sheets.get());
        OptionalDouble cost = price.value().map(amount ->
                OptionalDouble.of(FromOption.checked("--price", Pack.PRICE, amount)))
                .orElse(OptionalDouble.empty());
        String name = batch.value().or(() -> read.flatMap(TripFile.Reading::batch)).orElseThrow(() ->
                new BadInput("no pack given; use --batch NAME"));
        String stock = film.value().or(() -> read.map(trips -> trips.trip().film().name()))
                .orElseGet(this::onlyFilm);
        return FromOption.of("--batch", () -> new Pack(stock, name, many, cost));
    }

    private String onlyFilm() {
        List<String> films = journal.read(damage -> { }).films();
        if (films.size() != 1) {
            throw new BadInput("no film given; use --film NAME, or --trip FILE");
        }
        return films.get(0);
    }
}
