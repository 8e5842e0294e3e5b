package gloam.view;

import gloam.answer.Keepers;
import gloam.journal.Tally;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;

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
                                 List<Group> seasons) implements JournalReport {

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
