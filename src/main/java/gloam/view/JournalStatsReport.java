package gloam.view;

import gloam.answer.Keepers;
import gloam.journal.Tally;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Keepers and what spoils sheets.
 *
 * @param generatedAt when the report was made
 * @param all         all sheets together
 * @param packs       each pack that was noted
 * @param films       each film
 * @param seasons     each season, winter first
 */
public record JournalStatsReport(OffsetDateTime generatedAt, Group all, List<Group> packs, List<Group> films,
                                 List<Group> seasons) implements Report {

    /** The report of keepers. */
    public static JournalStatsReport of(Keepers answer, Instant now) {
        return new JournalStatsReport(new SiteClock(ZoneOffset.UTC).at(now), Group.of(answer.all()),
                groups(answer.packs()), groups(answer.films()), groups(answer.seasons()));
    }

    private static List<Group> groups(List<Tally> tallies) {
        return tallies.stream().map(Group::of).toList();
    }

    @Override
    public boolean empty() {
        return all.sheets == 0;
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
        row(table, all());
        packs().forEach(group -> row(table, group));
        films().forEach(group -> row(table, group));
        seasons().forEach(group -> row(table, group));
        return document.add(table);
    }

    private static void row(Table table, Group group) {
        boolean decided = group.sheets() > group.undecided();
        table.row(group.name(), String.valueOf(group.sheets()), String.valueOf(group.kept()),
                decided ? Wording.number(100 * group.keptFraction(), 0) : "-", String.valueOf(group.undecided()),
                group.spoiledBy().stream().map(spoiled -> spoiled.by() + " " + spoiled.sheets())
                        .collect(Collectors.joining(", ")));
    }

    /**
     * A group of sheets.
     *
     * @param name         what they have in common
     * @param sheets       how many there are
     * @param kept         how many are keepers
     * @param undecided    how many are not yet said to be kept or not
     * @param keptFraction keepers among those decided on
     * @param spoiledBy    what spoiled how many, the worst first
     */
    public record Group(String name, int sheets, int kept, int undecided, double keptFraction, List<SpoiledRow> spoiledBy) {

        static Group of(Tally tally) {
            return new Group(tally.group(), tally.sheets(), tally.kept(), tally.undecided(),
                    tally.keptShare(), tally.spoilers().stream()
                            .map(spoiled -> new SpoiledRow(spoiled.by(), spoiled.sheets())).toList());
        }
    }

    /** How many sheets something spoiled. */
    public record SpoiledRow(String by, int sheets) {
    }
}
