package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gloam.answer.ReadLimit;
import gloam.answer.ReadQuestion;
import gloam.answer.SheetReading;
import gloam.answer.Trails;
import gloam.frame.OpeningEnds;
import gloam.gear.Site;
import gloam.journal.Opening;
import gloam.trail.Framing;
import gloam.units.Finite;
import gloam.units.Label;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What a scan of a spent sheet shows.
 *
 * @param generatedAt when the report was made
 * @param entry       the sheet's entry in the journal
 * @param scan        the scan's file
 * @param site        where it was exposed
 * @param film        its film
 * @param tone        the tone of the sky in the middle of the sheet
 * @param noted       where the camera is said to have pointed
 * @param drawn       what its trails show; absent on a blank sheet
 * @param kept        that it was written to the entry; absent where it was not
 * @param reading     what the drawing is made of
 */
public record JournalReadReport(OffsetDateTime generatedAt, String entry, String scan, Site site, String film,
        ScanToneRow tone, AimRow noted, Optional<ReadTrailsRow> drawn, Optional<KeptRow> kept,
        @JsonIgnore SheetReading reading) implements Report {

    /** Reports a reading. */
    public static JournalReadReport of(SheetReading reading, String scan, Optional<KeptRow> kept,
            Instant now) {
        ReadQuestion question = reading.question();
        SiteClock clock = new SiteClock(question.site().zone());
        return new JournalReadReport(clock.at(now), question.entry().id(), scan, question.site(),
                question.film().name(), ScanToneRow.of(reading.tone()), AimRow.of(reading.noted()),
                reading.drawn().map(drawn -> ReadTrailsRow.of(reading, drawn, clock)), kept,
                reading);
    }

    /**
     * That a reading was written to its entry.
     *
     * @param journal the journal's file
     * @param already whether the entry said so already, so that nothing was added
     */
    public record KeptRow(String journal, boolean already) {
    }

    /**
     * What the trails on a sheet show.
     *
     * @param found           where the camera pointed, until it was moved
     * @param offAimDeg       how far that is from where it is said to have pointed
     * @param mirrored        whether the scan shows the sheet mirrored
     * @param residualMm      how far the lines lie from the trails, in the mean
     * @param onLinesFraction share of the trails laid over the scan that lies on bright lines
     * @param openings        when the shutter was open
     * @param clouds          when no trail was drawn though the shutter was open
     * @param bump            that the camera was moved meanwhile; absent where it was not
     * @param scanContrast    density on the scan beside that on the sheet, by the trails
     * @param scanContrastSd  one standard deviation of that
     * @param trailsPredicted how many trails should mark the sheet
     * @param trailsSeen      how many of them do
     * @param faintestSeenMag the faintest of them; absent where none is seen
     * @param trailLimitMag   faintest V magnitude that leaves a trail in the middle, by all trails; absent
     *                        where too few are near it
     * @param limitErrorMag   one standard deviation of that
     * @param trails          each, those first that should stand out most
     */
    public record ReadTrailsRow(AimRow found, double offAimDeg, boolean mirrored, double residualMm,
            double onLinesFraction, List<ReadOpeningRow> openings, List<Situation.Opening> clouds,
            Optional<BumpRow> bump, double scanContrast, double scanContrastSd, int trailsPredicted,
            int trailsSeen, OptionalDouble faintestSeenMag, OptionalDouble trailLimitMag,
            OptionalDouble limitErrorMag, List<ReadTrailRow> trails) {

        static ReadTrailsRow of(SheetReading reading, SheetReading.Drawn drawn, SiteClock clock) {
            return new ReadTrailsRow(AimRow.of(drawn.found()),
                    reading.noted().aim().to(drawn.found().aim()).degrees(), drawn.mirrored(),
                    drawn.residualMm(), drawn.onLines(), IntStream.range(0, drawn.openings().size())
                    .mapToObj(number -> ReadOpeningRow.of(reading.question().entry().exposed().openings()
                    .get(number), drawn.openings().get(number), clock)).toList(),
                    drawn.course().clouds().stream().map(cloud -> new Situation.Opening(
                    clock.at(cloud.start()), clock.at(cloud.endExclusive()))).toList(),
                    drawn.bumped().map(bumped -> BumpRow.of(bumped.at(), drawn.found().aim(),
                    bumped.after().aim(), clock)), drawn.contrast().factor(),
                    drawn.contrast().factor() * drawn.contrast().error(), drawn.trails().size(),
                    drawn.seen(), drawn.faintestSeenMag(), Finite.of(drawn.limit().map(ReadLimit::magnitude)),
                    Finite.of(drawn.limit().map(ReadLimit::errorMag)),
                    drawn.trails().stream().map(ReadTrailRow::of).toList());
        }
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
        return JournalReadText.of(this);
    }
}
