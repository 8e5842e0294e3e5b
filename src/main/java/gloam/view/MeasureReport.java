package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import gloam.answer.MeasuredFrame;
import gloam.answer.Measurement;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What digital frames measure of the sky over a site.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param frames      the frames, in the order given
 * @param sky         measurements for a trip file
 */
public record MeasureReport(OffsetDateTime generatedAt, Site site, List<MeasuredFrameRow> frames,
                            List<SkyLineRow> sky) implements Report {

    /** Reports a measurement. */
    public static MeasureReport of(Measurement found, Instant now) {
        SiteClock clock = new SiteClock(found.site().zone());
        return new MeasureReport(clock.at(now), found.site(),
                found.frames().stream().map(frame -> MeasuredFrameRow.of(frame, clock)).toList(),
                found.readings().stream().map(reading -> SkyLineRow.of(reading, clock)).toList());
    }

    /**
     * A measurement as the trip file has it.
     *
     * @param at         when
     * @param azimuthDeg where
     * @param altitudeDeg how high
     * @param magArcsec2 the sky, V mag/arcsec²
     * @param errorMag   one standard deviation
     */
    public record SkyLineRow(OffsetDateTime at, double azimuthDeg, double altitudeDeg, double magArcsec2,
                             double errorMag) {

        static SkyLineRow of(SkyReading reading, SiteClock clock) {
            return new SkyLineRow(clock.at(reading.at()), reading.azimuth().degrees(),
                    reading.altitude().degrees(), reading.magArcsec2(), reading.spreadMag());
        }

        /** The line in the trip file, behind its dash. */
        @JsonIgnore
        String line() {
            return "{at: " + at.truncatedTo(ChronoUnit.SECONDS) + ", azimuth-deg: "
                    + Wording.direction(azimuthDeg) + ", altitude-deg: " + Wording.direction(altitudeDeg)
                    + ", mag-arcsec2: " + Wording.number(magArcsec2, 2) + ", error-mag: "
                    + Wording.number(errorMag, 2) + "}";
        }
    }

    @Override
    public Document document() {
        Document document = Document.headed("The sky as measured by "
                + Wording.count(frames.size(), "frame"));
        document.text("at " + SiteText.of(site));
        for (int i : IntStream.range(0, frames.size()).toArray()) {
            document.gap();
            document.add(MeasuredFrameText.of(frames.get(i)));
            document.figure("what " + frames.get(i).name() + " shows",
                    made -> MeasureDrawing.of(frames.get(i), made));
        }
        if (!sky.isEmpty()) {
            document.gap();
            document.text("For the trip file, under sky: of the site. Each measurement bears so much of the "
                    + "error that all share that together they count as one frame does:");
            sky.forEach(line -> document.item(line.line()));
        }
        return document;
    }
}
