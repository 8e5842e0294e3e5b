package gloam.view;

import gloam.answer.Keepers;
import gloam.journal.Pack;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.OptionalDouble;

/**
 * A pack noted in the journal. It is on disk before this is reported.
 *
 * @param generatedAt when the report was made
 * @param journal     the journal's file
 * @param already     whether the journal had it already, so that nothing was added
 * @param film        the film's name
 * @param batch       the pack's name
 * @param sheets      how many sheets it had
 * @param price       what it cost, if noted
 * @param stock       what is left of it
 */
public record JournalPackReport(OffsetDateTime generatedAt, String journal, boolean already, String film,
                                String batch, int sheets, OptionalDouble price, Keepers.Stock stock)
        implements Report {

    /** Reports a pack, which was noted now or before. */
    public static JournalPackReport of(String journal, Pack pack, boolean noted, Keepers.Stock stock,
                                       Instant now) {
        return new JournalPackReport(new SiteClock(ZoneOffset.UTC).at(now), journal, !noted, pack.film(),
                pack.batch(), pack.sheets(), pack.price(), stock);
    }

    @Override
    public Document document() {
        Document document = Document.named("Journal");
        document.text((already() ? "Nothing added: " + journal() + " says so already" : "Noted in "
                + journal() + ": " + Wording.count(sheets(), "sheet") + (price().isEmpty() ? ""
                : " for " + Wording.number(price().getAsDouble(), 2))) + ".");
        return document.under(JournalStatsReport.words(stock()));
    }
}
