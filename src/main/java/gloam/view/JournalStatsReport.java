package gloam.view;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import gloam.answer.Keepers;
import gloam.journal.Tally;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Numbers of keepers and the causes that spoil sheets.
 *
 * @param generatedAt when the report was made
 * @param keepers     the sheets, in groups
 */
public record JournalStatsReport(OffsetDateTime generatedAt,
        @JsonUnwrapped Keepers keepers) implements Report {

    /** Reports keepers. */
    public static JournalStatsReport of(Keepers answer, Instant now) {
        return new JournalStatsReport(new SiteClock(ZoneOffset.UTC).at(now), answer);
    }

    @Override
    public boolean empty() {
        return keepers.all().sheets() == 0;
    }

    @Override
    public Document document() {
        Document document = Document.named("Keepers and what spoils sheets");
        if (empty()) {
            return document.text(JournalListReport.NO_SHEET);
        }
        List<Table.Column> columns = new ArrayList<>(List.of(Table.words(""), Table.numbers("sheets"),
                Table.numbers("kept"), Table.numbers("kept", "%").leaving(3),
                Table.numbers("undecided").leaving(1)));
        if (planned()) {
            columns.add(Table.numbers("off plan", "stops").leaving(4));
        }
        columns.add(Table.words("spoiled by").leaving(2));
        Table table = new Table(columns.toArray(Table.Column[]::new));
        Stream.of(List.of(keepers.all()), keepers.packs(), keepers.films(), keepers.seasons(),
                keepers.wishes()).flatMap(List::stream).forEach(group -> row(table, group));
        document.figure("keepers", made -> KeepersDrawing.of(this, made));
        document.add(table);
        keepers.stock().forEach(pack -> document.text(words(pack)));
        return document;
    }

    /** What is left of a pack, in words. */
    static String words(Keepers.Stock pack) {
        return pack.pack() + ": " + (pack.sheetsLeft() < 0
                ? Wording.count(-pack.sheetsLeft(), "sheet") + " more than in a pack"
                : Wording.count(pack.sheetsLeft(), "sheet") + " left") + (pack.keeperPrice().isEmpty() ? ""
                : ", a keeper cost " + Wording.number(pack.keeperPrice().getAsDouble(), 2));
    }

    private boolean planned() {
        return keepers.all().compared() > 0;
    }

    private void row(Table table, Tally group) {
        boolean decided = group.sheets() > group.undecided();
        List<String> cells = new ArrayList<>(List.of(group.group(), String.valueOf(group.sheets()),
                String.valueOf(group.kept()), decided ? Wording.number(100 * group.keptShare(), 0) : "-",
                String.valueOf(group.undecided())));
        if (planned()) {
            cells.add(group.offPlanStops().isEmpty() ? ""
                    : Wording.signed(group.offPlanStops().getAsDouble(), 1) + " of " + group.compared());
        }
        cells.add(group.spoilers().stream().map(spoiled -> spoiled.by() + " " + spoiled.sheets())
                .collect(Collectors.joining(", ")));
        table.row(cells.toArray(String[]::new));
    }
}
