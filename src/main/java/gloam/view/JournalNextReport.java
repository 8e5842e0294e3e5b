package gloam.view;

import gloam.answer.NextExposure;
import gloam.journal.NextSheet;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The exposure to try next.
 *
 * @param generatedAt       when the report was made
 * @param film              the film's name
 * @param used              number of sheets that the advice is based on
 * @param toneStops         tone wanted, in stops from the mid-tone
 * @param sheetsLeft        sheets left
 * @param fNumber           the f-number advised
 * @param exposureS         the time advised, in seconds
 * @param reason            why, in words
 * @param spreadStops       standard deviation of the tone that not knowing the film leaves now, in stops
 * @param mostLikelyRight   the exposure most likely to come within half a stop of the tone
 * @param mostTelling       the exposure that reveals most about the film
 * @param brackets          brackets of 2, 3 and 4 sheets, for when none can be judged in between
 */
public record JournalNextReport(OffsetDateTime generatedAt, String film, int used, double toneStops,
        int sheetsLeft,
                                double fNumber, double exposureS, String reason, double spreadStops,
                                NextSheet.Choice mostLikelyRight, NextSheet.Choice mostTelling,
                                List<BracketRow> brackets)
        implements Report {

    /** Reports advice. */
    public static JournalNextReport of(NextExposure answer, Instant now) {
        NextSheet.Advice advice = answer.advice();
        NextSheet.Choice chosen = answer.chosen();
        int sheetsLeft = answer.wanted().sheetsLeft();
        return new JournalNextReport(new SiteClock(ZoneOffset.UTC).at(now), answer.fit().published().name(),
                answer.fit().used().size(), answer.wanted().toneStops(), sheetsLeft,
                chosen.fNumber().marked(), chosen.exposureS(), reason(advice, sheetsLeft),
                advice.spreadStops(), advice.likeliest(), advice.telling(),
                advice.brackets().stream().map(BracketRow::of).toList());
    }

    private static String reason(NextSheet.Advice advice, int sheetsLeft) {
        String right = Wording.percent(advice.likeliest().rightByTheSecond());
        String telling = Wording.percent(advice.telling().rightByTheSecond());
        if (sheetsLeft == 1) {
            return "with one sheet left it is the one most likely right, "
                    + Wording.percent(advice.likeliest().rightChance());
        }
        return advice.learnFirst()
                ? "it reveals most about the film: judged before the next, it makes one of two sheets right "
                + "in " + telling
                        + ", where the likeliest first makes " + right
                : "it is the one most likely right, " + Wording.percent(advice.likeliest().rightChance())
                + ", and judged before the "
                        + "next it makes one of two sheets right in " + right
                        + "; the most telling first makes " + telling;
    }

    @Override
    public Document document() {
        Document document = Document.headed("Next sheet: " + Wording.fNumber(fNumber()) + ", "
                + Wording.exposure(exposureS()));
        document.text("because " + reason() + ".");
        document.gap();
        document.add(choices());
        document.gap();
        brackets().forEach(bracket -> document.under("bracket of " + bracket.sheets() + ": "
                + bracket.exposuresS().stream().map(Wording::exposure).collect(Collectors.joining(", "))
                + " at " + Wording.fNumber(mostLikelyRight().fNumber().marked()) + "; one is right in "
                + Wording.percent(bracket.rightChance())));
        document.gap();
        document.text("Film " + film() + " after " + Wording.count(used(), "sheet") + "; wanted "
                + Wording.signed(toneStops(), 1)
                + " stops from the mid-tone, right within half a stop. The film alone "
                + "leaves a doubt of " + Wording.number(spreadStops(), 1)
                + " stops now. The light is taken as steady; "
                + "a bracket is for when no sheet can be looked at in between.");
        return document;
    }

    private Table choices() {
        Table table = new Table(Table.words(""), Table.numbers("f/"), Table.numbers("exposure"),
                Table.numbers("right", "%"), Table.numbers("right by the second", "%").leaving(2),
                Table.numbers("doubt after,", "stops").leaving(1));
        row(table, "most likely right", mostLikelyRight());
        row(table, "reveals most", mostTelling());
        return table;
    }

    private static void row(Table table, String name, NextSheet.Choice choice) {
        table.row(name, Wording.plain(choice.fNumber().marked()), Wording.exposure(choice.exposureS()),
                Wording.number(100 * choice.rightChance(), 0),
                Wording.number(100 * choice.rightByTheSecond(), 0),
                Wording.number(choice.spreadAfterStops(), 1));
    }

    /** Exposures a stop apart, in seconds, and the probability, 0 to 1, that one of them is right. */
    public record BracketRow(int sheets, List<Double> exposuresS, double rightChance) {

        static BracketRow of(NextSheet.BracketOfTimes bracket) {
            return new BracketRow(bracket.exposuresS().size(), bracket.exposuresS(),
                    bracket.rightChance());
        }
    }
}
