package gloam.view;

import gloam.answer.NextExposure;
import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The exposure to try next.
 *
 * @param generatedAt   when the report was made
 * @param film          the film's name
 * @param batch         the pack or batch that the advice is for; absent for one not opened yet, and where no
 *                      sheet has one
 * @param fittedToSheets number of sheets that the advice is based on
 * @param ofTonight     how many of them are of tonight and show its light
 * @param toneStops     tone wanted, in stops from the mid-tone
 * @param fNumber       the f-number advised
 * @param exposureS     the time advised, in seconds
 * @param rightChance   probability, 0 to 1, that the sheet comes within half a stop of the tone
 * @param reason        why, in words
 * @param choices       the exposure at each f-number
 */
public record JournalNextReport(OffsetDateTime generatedAt, String film, Optional<String> batch,
                                int fittedToSheets, int ofTonight, double toneStops, double fNumber,
                                double exposureS, double rightChance, String reason, List<ChoiceRow> choices)
        implements Report {

    /** Reports advice. */
    public static JournalNextReport of(NextExposure answer, Instant now) {
        NextExposure.Choice chosen = answer.chosen();
        int ofTonight = answer.fit().tonight().map(tonight -> answer.fit().nights().stream()
                .filter(night -> night.site().equals(tonight.site())
                        && night.evening().equals(tonight.evening()))
                .mapToInt(night -> night.sheets()).sum()).orElse(0);
        return new JournalNextReport(new SiteClock(ZoneOffset.UTC).at(now), answer.fit().published().name(),
                answer.fit().pack().filter(name -> !name.isEmpty()), answer.fit().film().fittedToSheets(),
                ofTonight, answer.wanted().toneStops(), chosen.fNumber().marked(), chosen.exposureS(),
                chosen.rightChance(), reason(answer, chosen),
                answer.choices().stream().map(ChoiceRow::of).toList());
    }

    private static String reason(NextExposure answer, NextExposure.Choice chosen) {
        double offStops = chosen.toneStops() - answer.wanted().toneStops();
        String chance = "the chance of a right sheet is " + Wording.percent(chosen.rightChance());
        return Math.abs(offStops) < 0.05
                ? chance + ", " + (answer.choices().size() == 1 ? "as well as is known"
                        : "more than at any other f-number")
                : chance + ": the closest exposure allowed is " + Wording.number(Math.abs(offStops), 1)
                + " stops too " + (offStops < 0 ? "dark" : "light");
    }

    @Override
    public Document document() {
        Document document = Document.headed("Next sheet: " + Wording.fNumber(fNumber()) + ", "
                + Wording.exposure(exposureS()));
        document.text("because " + reason() + ".");
        choices().stream().filter(choice -> choice.fNumber().marked() == fNumber())
                .flatMap(choice -> choice.aim().stream()).findFirst().ifPresent(aim ->
                document.text("Aim at azimuth " + Wording.direction(aim.azimuth().degrees()) + "°, altitude "
                        + Wording.number(aim.altitude().degrees(), 1) + "°."));
        document.gap();
        Table table = new Table(Table.numbers("f/"), Table.numbers("exposure"),
                Table.numbers("tone", "stops"), Table.numbers("right", "%"));
        choices().forEach(choice -> table.row(Wording.plain(choice.fNumber().marked()),
                Wording.exposure(choice.exposureS()), Wording.signed(choice.toneStops(), 1) + " ± "
                        + Wording.number(choice.spreadStops(), 1),
                Wording.number(100 * choice.rightChance(), 0)));
        document.add(table);
        if (choices().stream().anyMatch(choice -> choice.bracket().isPresent())) {
            document.gap();
        }
        choices().forEach(choice -> choice.bracket().ifPresent(bracket -> document.under("bracket of "
                + bracket.exposuresS().size() + " at " + Wording.fNumber(choice.fNumber().marked()) + ": "
                + bracket.exposuresS().stream().map(Wording::exposure).collect(Collectors.joining(", "))
                + "; the chance that one is right is " + Wording.percent(bracket.chanceOfOneHit()))));
        document.gap();
        document.text("Film " + film() + batch().map(name -> ", " + name).orElse("")
                + (fittedToSheets() == 0 ? ", as published" : " after "
                + Wording.count(fittedToSheets(), "sheet"))
                + (ofTonight() == 0 ? "" : ", of which " + ofTonight() + " show tonight's light")
                + "; wanted " + Wording.signed(toneStops(), 1)
                + " stops from the mid-tone. A sheet is right "
                + "within half a stop of that, however the eye judges it. Judge it, add it to the journal "
                + "and ask again; a bracket is for when no sheet can be looked at in between.");
        return document;
    }

    /** An exposure at one f-number, with the meanings of {@link NextExposure.Choice}. */
    public record ChoiceRow(FNumber fNumber, double exposureS, double toneStops, double spreadStops,
                            double rightChance, Optional<ExposureRow.Sheets> bracket,
                            Optional<Direction> aim) {

        static ChoiceRow of(NextExposure.Choice choice) {
            return new ChoiceRow(choice.fNumber(), choice.exposureS(), choice.toneStops(),
                    choice.spreadStops(), choice.rightChance(), choice.bracket().map(ExposureRow.Sheets::of),
                    choice.aim());
        }
    }
}
