package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gloam.answer.SheetReading;
import gloam.answer.Trails;
import gloam.frame.OpeningEnds;
import gloam.gear.Site;
import gloam.journal.Opening;
import gloam.trail.Framing;
import gloam.units.Label;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What a scan of a spent sheet shows.
 *
 * @param generatedAt      when the report was made
 * @param entry            the sheet's entry in the journal
 * @param scan             the scan's file
 * @param site             where it was exposed
 * @param film             its film
 * @param noted            where the camera is said to have pointed
 * @param found            where it pointed
 * @param offAimDeg        how far the two are apart
 * @param mirrored         whether the scan shows the sheet mirrored
 * @param residualMm       how far the lines lie from the trails, in the mean
 * @param onLinesFraction  share of the trails laid over the scan that lies on bright lines
 * @param openings         when the shutter was open
 * @param trailsPredicted  how many trails should mark the sheet
 * @param trailsSeen       how many of them do
 * @param faintestSeenMag  the faintest of them; absent where none is seen
 * @param trails           each, those first that should stand out most
 * @param reading          what the drawing is made of
 */
public record JournalReadReport(OffsetDateTime generatedAt, String entry, String scan, Site site, String film,
        AimRow noted, AimRow found, double offAimDeg, boolean mirrored, double residualMm,
        double onLinesFraction, List<ReadOpeningRow> openings, int trailsPredicted, int trailsSeen,
        OptionalDouble faintestSeenMag, List<ReadTrailRow> trails, @JsonIgnore SheetReading reading)
        implements Report {

    /** Reports a reading. */
    public static JournalReadReport of(SheetReading reading, String scan, Instant now) {
        SheetReading.Question question = reading.question();
        SiteClock clock = new SiteClock(question.site().zone());
        return new JournalReadReport(clock.at(now), question.entry().id(), scan, question.site(),
                question.film().name(), AimRow.of(reading.noted()), AimRow.of(reading.found()),
                reading.noted().aim().to(reading.found().aim()).degrees(), reading.mirrored(),
                reading.residualMm(), reading.onLines(), IntStream.range(0, reading.openings().size())
                .mapToObj(number -> ReadOpeningRow.of(question.entry().exposed().openings().get(number),
                reading.openings().get(number), clock)).toList(), reading.trails().size(),
                (int) reading.seen(), reading.faintestSeenMag(),
                reading.trails().stream().map(ReadTrailRow::of).toList(), reading);
    }

    /**
     * Where a camera pointed.
     *
     * @param azimuthDeg    from north through east
     * @param altitudeDeg   how high
     * @param rollDeg       its turn about its axis
     * @param focalLengthMm its focal length
     */
    public record AimRow(double azimuthDeg, double altitudeDeg, double rollDeg, double focalLengthMm) {

        static AimRow of(Framing framing) {
            return new AimRow(framing.aim().azimuth().degrees(), framing.aim().altitude().degrees(),
                    framing.roll().signed().degrees(), framing.camera().lens().focalLengthMm());
        }

        @JsonIgnore
        String text() {
            return "azimuth " + Wording.direction(azimuthDeg) + "° (" + Wording.bearing(azimuthDeg)
                    + "), altitude " + Wording.number(altitudeDeg, 1) + "°, roll "
                    + Wording.number(rollDeg, 1) + "°";
        }
    }

    /**
     * An opening of the shutter.
     *
     * @param openAt       when it opened, as noted
     * @param closeAt      when it closed, as noted
     * @param begins       how many trails were found to begin with it
     * @param opensLaterS  by how much it opened later; absent where too few trails tell
     * @param opensErrorS  one standard deviation of that
     * @param ends         how many trails were found to end with it
     * @param closesLaterS by how much it closed later
     * @param closesErrorS one standard deviation of that
     */
    public record ReadOpeningRow(OffsetDateTime openAt, OffsetDateTime closeAt, int begins,
            OptionalDouble opensLaterS, OptionalDouble opensErrorS, int ends, OptionalDouble closesLaterS,
            OptionalDouble closesErrorS) {

        static ReadOpeningRow of(Opening noted, OpeningEnds found, SiteClock clock) {
            return new ReadOpeningRow(clock.at(noted.open().start()), clock.at(noted.open().endExclusive()),
                    found.begins(), found.opensLaterS(), found.opensErrorS(), found.ends(),
                    found.closesLaterS(), found.closesErrorS());
        }
    }

    /**
     * A trail that should mark the sheet.
     *
     * @param name          of what draws it
     * @param kind          what that is
     * @param magnitude     how bright it is
     * @param stopsOverSky  how far it should rise above the sky, in stops
     * @param seen          whether it is on the scan
     * @param levelFraction how far its level lies over that beside it, as a share of white
     * @param errorFraction one standard deviation of that
     */
    public record ReadTrailRow(String name, String kind, double magnitude, double stopsOverSky, boolean seen,
            double levelFraction, double errorFraction) {

        static ReadTrailRow of(SheetReading.ReadTrail trail) {
            Trails.Track track = trail.track();
            return new ReadTrailRow(track.name(), Label.of(track.kind()), track.magnitude(),
                    track.mark().orElseThrow().stopsOverSky(), trail.seen(), trail.level(),
                    trail.error());
        }
    }

    @Override
    public ZoneId zone() {
        return site.zone();
    }

    @Override
    public Document document() {
        Document document = Document.headed("Entry " + entry + " as " + scan + " shows it");
        document.text("The camera pointed to " + found.text() + ", ± 0.1°; noted: " + noted.text() + ", "
                + Wording.number(offAimDeg, 1) + "° away.");
        document.under("Focal length " + Wording.number(found.focalLengthMm(), 1) + " mm; the trails lie "
                + "where they should to " + Wording.number(residualMm, 2) + " mm"
                + (mirrored ? "; the scan is mirrored" : "") + ".");
        document.figure("predicted and found trails", made -> ReadDrawing.of(this, made));
        document.gap();
        document.add(times());
        document.under("The ends of trails show how long each opening was and how far apart they were; all "
                + "times together cannot be told from a camera turned about the pole.");
        document.gap();
        document.text(trailsSeen + " of the " + Wording.count(trailsPredicted, "trail")
                + " predicted are on it" + (faintestSeenMag.isEmpty() ? "." : ", the faintest of magnitude "
                + Wording.number(faintestSeenMag.getAsDouble(), 1) + "."));
        document.add(table());
        return document;
    }

    private Table times() {
        Table table = new Table(Table.words("opening"), Table.words("noted"), Table.words("found"),
                Table.numbers("by trails"));
        for (ReadOpeningRow row : openings) {
            table.row("opens", Wording.second(row.openAt()), later(row.opensLaterS(), row.opensErrorS()),
                    String.valueOf(row.begins()));
            table.row("closes", Wording.second(row.closeAt()), later(row.closesLaterS(), row.closesErrorS()),
                    String.valueOf(row.ends()));
        }
        return table;
    }

    private static String later(OptionalDouble seconds, OptionalDouble error) {
        return seconds.isEmpty() ? "not shown" : Wording.number(Math.abs(seconds.getAsDouble()), 0) + " s "
                + (seconds.getAsDouble() < 0 ? "earlier" : "later") + " ± "
                + Wording.number(Math.max(1, error.getAsDouble()), 0) + " s";
    }

    private Table table() {
        Table table = new Table(Table.words("trail"), Table.numbers("mag"),
                Table.numbers("predicted", "stops over sky"), Table.words("on the scan"),
                Table.numbers("level over sky", "%"), Table.numbers("±", "%").leaving(1));
        trails.forEach(trail -> table.row(trail.kind().equals("star") ? trail.name()
                : Wording.title(trail.name()), Wording.number(trail.magnitude(), 1),
                Wording.number(trail.stopsOverSky(), 1), trail.seen() ? "seen" : "not seen",
                Wording.signed(100 * trail.levelFraction(), 1),
                Wording.number(100 * trail.errorFraction(), 1)));
        return table;
    }
}
