package gloam.cli;

import gloam.answer.Keepers;
import gloam.view.JournalStatsReport;
import gloam.units.BadInput;
import gloam.units.Range;
import gloam.view.Report;
import java.util.OptionalDouble;

/** Counts keepers and what spoils sheets, by pack, film, season and wish. */
final class JournalStatsCommand extends ReportingCommand {

    private static final Range SHEETS = new Range("number of sheets in a pack", 1, 1000, "");
    private static final Range PRICE = new Range("price of a pack", 0, 1e6, "");

    private final JournalOptions journal = group(new JournalOptions());

    private final JournalOptions.Choice choice = group(new JournalOptions.Choice());

    private final Option<Integer> packSheets = option("--pack-sheets", "N", Integer.class,
            "Sheets in a pack: shows how many of each noted pack are left.");

    private final Option<Double> packPrice = option("--pack-price", "AMOUNT", Double.class,
            "Price of a pack, with --pack-sheets: shows what a keeper cost.");

    JournalStatsCommand(Session session) {
        super(session, "stats",
                "Count keepers, what spoils sheets and how far off plan they are, by pack, film, season and "
                + "wish.", "gloam journal stats --journal demo-data/journal.jsonl");
    }

    @Override
    Report report(Session session) {
        if (packPrice.given() && !packSheets.given()) {
            throw new BadInput("--pack-price AMOUNT needs the size of a pack; add --pack-sheets N");
        }
        Keepers keepers = Keepers.of(choice.of(journal.read(this::note)));
        return JournalStatsReport.of(packSheets.value().map(sheets -> keepers.ofPacks(
                (int) FromOption.checked("--pack-sheets", SHEETS, sheets),
                packPrice.value().map(price -> OptionalDouble.of(
                        FromOption.checked("--pack-price", PRICE, price))).orElse(OptionalDouble.empty())))
                .orElse(keepers), session.now());
    }
}
