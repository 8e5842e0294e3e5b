package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import gloam.answer.Ranking;
import gloam.ephemeris.Night;
import gloam.planner.NightRank;
import gloam.planner.Wish;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Nights, best first.
 *
 * @param generatedAt  when the report was made
 * @param nightsRanked how many nights were ranked, each site's counted by itself
 * @param nights       the best of them in order of rank
 * @param stays        the best runs of consecutive nights at one site that share no date, in order of rank;
 *                     empty unless asked for
 * @param all          every night in order of rank, or the best alone where no picture is wanted
 */
public record NightsReport(OffsetDateTime generatedAt, int nightsRanked, List<RankedNightRow> nights,
                           List<StayRow> stays, @JsonIgnore List<NightYear.Row> all) implements Report {

    /** Reports a ranking. */
    public static NightsReport of(Ranking ranking, Instant now) {
        ZoneId zone = ranking.nights().get(0).night().site().zone();
        return new NightsReport(new SiteClock(zone).at(now), ranking.ranked(),
                ranking.best().stream().map(RankedNightRow::of).toList(),
                ranking.stays().stream().map(StayRow::of).toList(),
                ranking.nights().parallelStream().map(NightYear.Row::of).toList());
    }

    @Override
    public Document document() {
        Document document = Document.named("Nights").figure("nights", made -> NightYear.of(this, made));
        if (!stays().isEmpty()) {
            document.heading(2, "Stays, best first");
            document.gap();
            document.add(staysTable());
            document.gap();
        }
        document.heading(2, "Nights, best first");
        document.gap();
        document.add(nightsTable());
        if (nights.size() < nightsRanked) {
            document.gap();
            document.text("the best " + nights.size() + " of " + nightsRanked
                    + "; --best N lists more, --all every one");
        }
        return document;
    }

    private boolean asked() {
        return nights.get(0).wishesAsked() > 0;
    }

    private Table staysTable() {
        Table table = new Table(Table.numbers("rank"), Table.words("first night"), Table.words("last night"),
                Table.words("site").leaving(1), Table.numbers("worth"), Table.words(asked() ? "wishes" : ""),
                Table.words("Moon"));
        int rank = 1;
        for (StayRow stay : stays()) {
            table.row(String.valueOf(rank++), Wording.date(stay.from()), Wording.date(stay.to()), stay.site(),
                    Wording.number(stay.score(), 2), stay.served(), stay.moon());
            table.note(stay.reason());
        }
        return table;
    }

    private Table nightsTable() {
        boolean forecast = nights.stream().anyMatch(night -> night.clearShare().isPresent());
        Table table = new Table(Table.numbers("rank"), Table.words("night"), Table.words("site"),
                Table.numbers("worth"), Table.words(asked() ? "wishes" : ""), Table.words("dark"),
                Table.words("moonless").leaving(3), Table.words("Moon"), Table.words("Moon up").leaving(2),
                Table.words(forecast ? "clear" : "").leaving(1));
        int rank = 1;
        for (RankedNightRow row : nights()) {
            NightRow night = row.row();
            table.row(String.valueOf(rank++), Wording.date(night.night()), night.site(),
                    Wording.number(night.score(), 2), row.served(), row.hours(row.dark()),
                    row.hours(row.moonless()), row.moon(), row.hours(row.moonUp()),
                    row.clearShare().isPresent() ? Wording.percent(row.clearShare().getAsDouble()) : "");
            table.note(night.reason());
        }
        return table;
    }

    /**
     * A night ranked, and when in it what is.
     *
     * @param row         the night
     * @param zone        the zone of its times
     * @param wishesAsked how many wishes are asked of it
     * @param dark        when the Sun's centre is below -18°
     * @param moonless    when the Moon is below the horizon too
     * @param moonUp      when the Moon is above the horizon and the Sun below
     * @param moonWaxing  whether the Moon waxes
     * @param clearShare  mean share of the sky that is clear while it is dark, by the forecast
     */
    public record RankedNightRow(@JsonUnwrapped NightRow row, String zone, int wishesAsked,
                                 List<PlanReport.Span> dark, List<PlanReport.Span> moonless,
                                 List<PlanReport.Span> moonUp, boolean moonWaxing,
                                 OptionalDouble clearShare) {

        static RankedNightRow of(Ranking.Shown shown) {
            NightRank rank = shown.rank();
            Night night = rank.night();
            return new RankedNightRow(NightRow.of(rank), night.site().zone().getId(), rank.asked(),
                    spans(night, night.darkness()), spans(night, night.moonlessDarkness()),
                    spans(night, Interval.intersect(night.sunDown(), night.moonUp())), shown.waxing(),
                    shown.clearShare());
        }

        private static List<PlanReport.Span> spans(Night night, List<Interval> spans) {
            SiteClock clock = new SiteClock(night.site().zone());
            return spans.stream().map(span -> new PlanReport.Span(clock.at(span.start()),
                    clock.at(span.endExclusive()))).toList();
        }

        private String served() {
            return wishesAsked == 0 ? "" : row.wishes().size() + " of " + wishesAsked;
        }

        private String hours(List<PlanReport.Span> spans) {
            NightTimes times = new NightTimes(row.night(), ZoneId.of(zone));
            return spans.isEmpty() ? "never" : spans.stream().map(span -> times.hours(
                    new Interval(span.from().toInstant(), span.to().toInstant())))
                    .collect(Collectors.joining(", "));
        }

        private String moon() {
            return (moonWaxing ? "waxing " : "waning ")
                    + Wording.percent(row.moon().illuminatedFraction().orElseThrow());
        }

    }

    /**
     * A run of consecutive nights at one site.
     *
     * @param site        where
     * @param from        date of the first evening
     * @param to          date of the last evening
     * @param score       mean of the nights' scores
     * @param nights      its nights in order of date
     * @param wishes      names of the wishes that one or more of them serve
     * @param wishesAsked how many wishes are asked of each
     * @param reason      why, night by night
     */
    public record StayRow(String site, LocalDate from, LocalDate to, double score,
                          List<RankedNightRow> nights, List<String> wishes, int wishesAsked, String reason) {

        static StayRow of(Ranking.ShownStay shown) {
            List<NightRank> ranks = shown.stay().nights();
            Night first = ranks.get(0).night();
            List<RankedNightRow> nights = shown.nights().stream().map(RankedNightRow::of).toList();
            return new StayRow(first.site().name(), first.date(), ranks.get(ranks.size() - 1).night().date(),
                    shown.stay().score(), nights, shown.stay().served().stream().map(Wish::name).toList(),
                    ranks.get(0).asked(), nights.stream().map(night -> Wording.date(night.row.night()) + ": "
                    + night.row.reason()).collect(Collectors.joining("; ")));
        }

        private String served() {
            return wishesAsked == 0 ? "" : wishes.size() + " of " + wishesAsked;
        }

        private String moon() {
            return nights.size() == 1 ? nights.get(0).moon()
                    : nights.get(0).moon() + " to " + nights.get(nights.size() - 1).moon();
        }
    }

    @Override
    public boolean empty() {
        return all.stream().allMatch(row -> row.night().darkHours() == 0);
    }
}
