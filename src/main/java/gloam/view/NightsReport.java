package gloam.view;

import gloam.answer.Ranking;
import gloam.ephemeris.Night;
import gloam.planner.Stay;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;

/**
 * Nights, best first.
 *
 * @param generatedAt when the report was made
 * @param nights      the nights in order of rank
 * @param stays       runs of consecutive nights at one site in order of rank; empty unless asked for
 */
public record NightsReport(OffsetDateTime generatedAt, List<NightRow> nights, List<StayRow> stays)
        implements Report {

    /** Reports a ranking. */
    public static NightsReport of(Ranking ranking, Instant now) {
        ZoneId zone = ranking.nights().get(0).night().site().zone();
        return new NightsReport(new SiteClock(zone).at(now),
                ranking.nights().parallelStream().map(NightRow::of).toList(),
                ranking.stays().stream().map(StayRow::of).toList());
    }

    @Override
    public Document document() {
        Document document = Document.named("Nights").figure("calendar", () -> NightCalendar.of(this));
        if (!stays().isEmpty()) {
            document.heading(2, "Stays, best first");
            document.gap();
            document.add(staysTable());
            document.gap();
        }
        document.heading(2, "Nights, best first");
        document.gap();
        document.add(nightsTable());
        return document;
    }

    private Table staysTable() {
        Table table = new Table(Table.numbers("rank"), Table.words("first night"), Table.words("last night"),
                Table.words("site").leaving(1), Table.numbers("score"));
        int rank = 1;
        for (StayRow stay : stays()) {
            table.row(String.valueOf(rank++), Wording.date(stay.from()), Wording.date(stay.to()), stay.site(),
                    Wording.number(stay.score(), 2));
        }
        return table;
    }

    private Table nightsTable() {
        Table table = new Table(Table.numbers("rank"), Table.words("night"), Table.words("site"),
                Table.numbers("score"), Table.words("why"));
        int rank = 1;
        for (NightRow night : nights()) {
            table.row(String.valueOf(rank++), Wording.date(night.night()), night.site(),
                    Wording.number(night.score(), 2), night.reason());
        }
        return table;
    }

    /**
     * A run of consecutive nights at one site.
     *
     * @param site  where
     * @param from  date of the first evening
     * @param to    date of the last evening
     * @param score mean of the nights' scores
     */
    public record StayRow(String site, LocalDate from, LocalDate to, double score) {

        static StayRow of(Stay stay) {
            Night first = stay.nights().get(0).night();
            Night last = stay.nights().get(stay.nights().size() - 1).night();
            return new StayRow(first.site().name(), first.date(), last.date(), stay.score());
        }
    }

    @Override
    public boolean empty() {
        return nights.stream().allMatch(night -> night.darkHours() == 0);
    }
}
