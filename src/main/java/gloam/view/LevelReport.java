package gloam.view;

import gloam.answer.LevelSpans;
import gloam.ephemeris.Direction;
import gloam.gear.Site;
import gloam.trail.LevelSearch;
import gloam.trail.Trail;
import gloam.units.Finite;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The spans in which a body's trail has a wanted angle, in darkness and above the skyline, in a camera aimed
 * so that the body stays at one point of the frame.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param question    the question
 * @param spans       the spans, in order of time
 */
public record LevelReport(OffsetDateTime generatedAt, Site site, LevelQuestion question, List<LevelRow> spans)
        implements Report {

    /** Reports the spans found. */
    public static LevelReport of(LevelSpans found, Instant now) {
        SiteClock clock = new SiteClock(found.site().zone());
        return new LevelReport(clock.at(now), found.site(), LevelQuestion.of(found.wanted()),
                found.spans().stream().map(span -> LevelRow.of(span, clock)).toList());
    }

    @Override
    public boolean empty() {
        return spans.isEmpty();
    }

    @Override
    public Document document() {
        LevelQuestion question = question();
        Document document = Document.headed("Trail of " + Wording.title(question.body()) + " within "
                + Wording.plain(question.withinDeg())
                + "° of " + (question.wantedDeg() == 0 ? "level" : Wording.plain(question.wantedDeg()) + "°")
                + ", nights of " + question.from() + " to " + question.to());
        document.text("at " + SiteText.of(site()));
        document.gap();
        if (spans().isEmpty()) {
            document.under("never in these nights in the dark and above the skyline");
            return document;
        }
        Table table = new Table(Table.words("night"), Table.words("from"), Table.words("to"),
                Table.words("best"),
                Table.numbers("off", "°").leaving(3), Table.numbers("azimuth", "°").leaving(5),
                Table.numbers("altitude", "°").leaving(5),
                Table.numbers("length", "mm").leaving(2), Table.numbers("sagitta", "mm").leaving(1),
                Table.words("Moon").leaving(4));
        for (LevelRow span : spans()) {
            table.row(Wording.date(span.night()), Wording.minuteAfter(span.from()),
                    Wording.minuteBefore(span.to()),
                    Wording.minute(span.bestAt()), Wording.signed(span.offDeg(), 1),
                    Wording.direction(span.azimuthDeg()), Wording.number(span.altitudeDeg(), 1),
                    Wording.number(span.lengthMm(), 1, "–"), Wording.number(span.sagittaMm(), 2, "–"),
                    span.moonUp() ? "up" : "down");
        }
        document.add(table);
        document.gap();
        document.text("Aim, length and sagitta are those of a camera that is set at the best moment and "
                + "stays open from the first time to the last. Dark means the Sun below −18°.");
        return document;
    }

    /**
     * The question.
     *
     * @param wantedDeg wanted angle of the trail to the frame's horizontal in degrees, plus is up to the
     *                  right; either sense of motion will do
     * @param withinDeg allowed deviation in degrees
     * @param xMm       where on the frame the body stays: to the right of the centre, in mm
     * @param yMm       and above it, in mm
     */
    public record LevelQuestion(String body, LocalDate from, LocalDate to, double wantedDeg, double withinDeg,
                           double rollDeg, double focalLengthMm, double xMm, double yMm) {

        static LevelQuestion of(LevelSpans.Wanted wanted) {
            return new LevelQuestion(wanted.body().label(), wanted.first(), wanted.last(),
                    wanted.search().wanted().degrees(), wanted.search().tolerance().degrees(),
                    wanted.search().framing().roll().degrees(),
                    wanted.search().framing().camera().lens().focalLengthMm(),
                    wanted.search().place().xMm(), wanted.search().place().yMm());
        }
    }

    /**
     * One span.
     *
     * @param night       date of the evening
     * @param from        its start
     * @param to          its end
     * @param bestAt      when the trail is closest to the wanted angle
     * @param offDeg      deviation then, in degrees
     * @param azimuthDeg  azimuth of the aim then, in degrees from north through east
     * @param altitudeDeg altitude of the aim then, in degrees
     * @param lengthMm    length of the trail on the sheet over the whole span with that aim, in mm; absent if
     *                    none
     * @param sagittaMm   how far it bends from straight, in mm; absent with the length
     * @param moonUp      whether the Moon is above the horizon during part of it
     */
    public record LevelRow(LocalDate night, OffsetDateTime from, OffsetDateTime to, OffsetDateTime bestAt,
            double offDeg,
                          double azimuthDeg, double altitudeDeg, OptionalDouble lengthMm,
                          OptionalDouble sagittaMm, boolean moonUp) {

        static LevelRow of(LevelSpans.Span span, SiteClock clock) {
            LevelSearch.Level level = span.level();
            Direction aim = level.framing().aim();
            return new LevelRow(span.evening(), clock.at(level.span().start()),
                    clock.at(level.span().endExclusive()), clock.at(level.best()), level.off().degrees(),
                    aim.azimuth().degrees(), aim.altitude().degrees(),
                    Finite.of(span.drawn().map(Trail::lengthMm)),
                    Finite.of(span.drawn().map(Trail::sagittaMm)), span.moonUp());
        }
    }
}
