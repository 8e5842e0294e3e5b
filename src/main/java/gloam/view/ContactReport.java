package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gloam.answer.ContactSheet;
import gloam.gear.Site;
import gloam.proof.Picture;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;

/**
 * Proofs of one picture side by side.
 *
 * @param generatedAt when the report was made
 * @param statement   what the pictures are, and are not
 * @param site        where
 * @param film        name of the film
 * @param azimuthDeg  where the camera points
 * @param altitudeDeg how high
 * @param openAt      when the shutter opens
 * @param settings    a proof for each f-number and time
 * @param spreadStops standard deviation of the tone of the sheet asked about
 * @param spread      proofs of it, that much darker, as computed, and that much lighter
 */
public record ContactReport(OffsetDateTime generatedAt, String statement, Site site, String film,
                            double azimuthDeg, double altitudeDeg, OffsetDateTime openAt,
                            List<ProofRow> settings,
                            double spreadStops, List<ProofRow> spread) implements Report {

    /** Reports a contact sheet. */
    public static ContactReport of(ContactSheet answer, Instant now) {
        Sheet sheet = answer.sheet();
        Setting first = sheet.first();
        SiteClock clock = new SiteClock(sheet.site().zone());
        return new ContactReport(clock.at(now), ProofReport.STATEMENT.replace("picture", "pictures")
                .replace("a photograph", "photographs"), sheet.site(),
                FilmWords.name(sheet.film().name(), sheet.film().fittedToSheets()),
                first.framing().aim().azimuth().positive().degrees(),
                first.framing().aim().altitude().degrees(), clock.at(first.whole().start()),
                answer.settings().stream().map(ProofRow::of).toList(), answer.spreadStops(),
                answer.spread().stream().map(ProofRow::of).toList());
    }

    @Override
    public ZoneId zone() {
        return site.zone();
    }

    @Override
    public Document document() {
        Document document = Document.headed("Contact sheet").text(heading() + ", " + film);
        document.figure("the proofs", made -> ContactDrawing.of(this, made));
        document.gap();
        document.add(table(settings));
        document.gap();
        document.heading(2, "As it comes out with sky and film darker or lighter than taken")
                .add(table(spread));
        document.gap();
        document.text(statement + ". Tone: of the sky at the frame's centre, in stops from the mid-tone. "
                + "Stars: those that mark the sheet, of those to magnitude 6.");
        return document;
    }

    /** Where and when. */
    String heading() {
        return site.name() + ", " + Wording.bearing(azimuthDeg) + ", altitude "
                + Wording.number(altitudeDeg, 0)
                + "°, opened " + Wording.date(Wording.secondDate(openAt)) + " " + Wording.minute(openAt)
                + " (" + site.zone() + ")";
    }

    private static Table table(List<ProofRow> rows) {
        Table table = new Table(Table.numbers("f/"), Table.numbers("open"), Table.words(""),
                Table.numbers("tone", "stops"), Table.numbers("stars"));
        rows.forEach(row -> table.row(Wording.plain(row.fNumber()), Wording.exposure(row.lastsS()),
                row.deviation(), Wording.signed(row.toneStops(), 1), String.valueOf(row.recordedStars())));
        return table;
    }

    /**
     * One proof.
     *
     * @param fNumber       its f-number
     * @param lastsS        exposure time in seconds
     * @param deviations    by how many standard deviations it is lighter than computed
     * @param toneStops     tone of the sky at the frame's centre, away from a Moon in the frame
     * @param recordedStars stars to magnitude 6 that mark it
     * @param recordedStarsSpread by how many that number may be wrong
     * @param printed       whether it is the print made from a negative
     * @param picture       the sheet as it looks when developed
     */
    public record ProofRow(double fNumber, double lastsS, int deviations, double toneStops, int recordedStars,
                           int recordedStarsSpread, boolean printed, @JsonIgnore Picture picture) {

        static ProofRow of(ContactSheet.Frame frame) {
            return new ProofRow(frame.fNumber().marked(), frame.lasts().toMillis() / 1e3, frame.deviations(),
                    frame.toneStops(), frame.stars().recorded(), frame.stars().spread(),
                    frame.picture().printed(), frame.picture());
        }

        /** By how much it is lighter than computed, in words. */
        String deviation() {
            return deviations == 0 ? "as computed" : deviations < 0 ? "darker" : "lighter";
        }

        /** Its tone and stars. */
        String result() {
            return Wording.signed(toneStops, 1) + " stops, " + Wording.count(recordedStars, "star");
        }
    }
}
