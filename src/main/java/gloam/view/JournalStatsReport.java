package gloam.view;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import gloam.answer.Keepers;
import gloam.journal.Tally;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.stream.Collectors;

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
        Table table = new Table(Table.words(""), Table.numbers("sheets"), Table.numbers("kept"),
                Table.numbers("kept", "%").leaving(3), Table.numbers("undecided").leaving(1),
                Table.words("spoiled by").leaving(2));
        row(table, keepers.all());
        keepers.packs().forEach(group -> row(table, group));
        keepers.films().forEach(group -> row(table, group));
        keepers.seasons().forEach(group -> row(table, group));
        return document.add(table);
    }

    private static void row(Table table, Tally group) {
        boolean decided = group.sheets() > group.undecided();
        table.row(group.group(), String.valueOf(group.sheets()), String.valueOf(group.kept()),
                decided ? Wording.number(100 * group.keptShare(), 0) : "-", String.valueOf(group.undecided()),
                group.spoilers().stream().map(spoiled -> spoiled.by() + " " + spoiled.sheets())
                        .collect(Collectors.joining(", ")));
    }
}
