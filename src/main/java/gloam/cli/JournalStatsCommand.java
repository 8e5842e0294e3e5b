package gloam.cli;

import gloam.answer.Keepers;
import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.journal.Pack;
import gloam.units.BadInput;
import gloam.view.JournalStatsReport;
import gloam.view.Report;
import java.util.List;
import java.util.OptionalDouble;

/** Counts keepers and what spoils sheets, by pack, film, season and wish. */
final class JournalStatsCommand extends ReportingCommand {

    private final JournalOptions journal = group(new JournalOptions());

    private final JournalOptions.Choice choice = group(new JournalOptions.Choice());

    private final Option<Integer> packSheets = option("--pack-sheets", "N", Integer.class,
            "Sheets in a pack, in place of what journal pack noted: shows how many of each are left.");

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
        Journal known = journal.read(this::note);
        List<Entry> chosen = choice.of(known);
        List<Pack> packs = packSheets.value().map(sheets -> Pack.of(chosen,
                (int) FromOption.checked("--pack-sheets", Pack.SHEETS, sheets),
                packPrice.value().map(price -> OptionalDouble.of(
                        FromOption.checked("--pack-price", Pack.PRICE, price)))
                        .orElse(OptionalDouble.empty()))).orElseGet(() -> choice.packs(known));
        return JournalStatsReport.of(Keepers.of(chosen).withStock(packs, known.sheets()), session.now());
    }
}
