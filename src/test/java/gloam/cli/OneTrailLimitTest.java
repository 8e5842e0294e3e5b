package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/**
 * However it is asked, one sheet has one tone and one trail limit: at its centre, in its corners, at the
 * pole.
 */
class OneTrailLimitTest {

    private static final double SIDE_MM = 80;
    private static final double FOCAL_MM = 75;

    @TempDir
    Path folder;

    /** A picture to the south; one about the pole; one that the Moon is in, and one that follows it. */
    @ParameterizedTest
    @CsvSource({"'point: {azimuth-deg: 150, altitude-deg: 50}'", "'pole: {}'",
        "'point: {azimuth-deg: 280, altitude-deg: 8}, moon: in-frame'", "'follow: {body: moon}'"})
    void planTrailExposeAndProofAgree(String aim) throws IOException {
        Path trip = Files.writeString(folder.resolve("trip.yaml"), """
                sites:
                  - {name: Loma, place: "41.05,-2.15,1080", zone: Europe/Madrid}
                nights: {from: 2027-02-11, to: 2027-02-11}
                camera: {name: Box, focal-length-mm: %s, frame-mm: 80x80, f-numbers: [4, 5.6, 8, 11, 16]}
                film: instant-mono-640
                sheets: 1
                wishes:
                  - {name: Only, %s, tone-stops: -2, sun-depth-deg: {least: 18},
                     exposure-min: {shortest: 30, longest: 60}}
                """.formatted(FOCAL_MM, aim));
        JsonNode window = Run.json("plan --trip " + trip).at("/nights/0/windows/0");
        assertTrue(window.isObject(), window.toString());
        String sheet = " --trip " + trip + " --azimuth " + window.get("azimuthDeg") + " --altitude "
                + window.get("altitudeDeg") + " --f-number " + window.get("fNumber") + " --from "
                + window.get("openAt").asString() + " --lasts " + window.get("correctedS") + "s";
        JsonNode trail = Run.json("trail" + sheet);
        JsonNode expose = Run.json("expose" + sheet).at("/exposures/0");
        JsonNode proof = Run.json("proof --size 60" + sheet);
        double toneStops = window.get("skyToneStops").doubleValue();
        double limitMag = window.get("trailLimitMag").doubleValue();
        for (JsonNode told : List.of(trail.at("/sheet"), expose, proof.at("/trail/sheet"))) {
            assertEquals(toneStops, told.get("skyToneStops").doubleValue(), 0.02, told.toString());
            assertEquals(limitMag, told.get("trailLimitMag").doubleValue(), 0.02, told.toString());
        }
        boolean moon = aim.contains("moon");
        JsonNode judged = proof.at(moon ? "/awayFromMoonToneStops/0" : "/tones/0/toneStops/0");
        assertEquals(toneStops, judged.doubleValue(), 0.02, proof.toString());
        assertEquals(moon, trail.at("/sheet/awayFromMoon").booleanValue());
        assertEquals(limitMag, trail.at("/starsHere/0/trailLimitMag").doubleValue(), 0.02);
        for (int place = 0; place < 5; place++) {
            assertEquals(trail.at("/starsHere/" + place + "/trailLimitMag"),
                    proof.at("/trail/starsHere/" + place + "/trailLimitMag"));
        }
        assertEquals(window.get("recordedStars"), trail.at("/records/stars"));
        assertEquals(trail.at("/records/stars"), proof.at("/trail/records/stars"));
    }

    /**
     * A corner at θ from the axis of a lens without a rim gets cos⁴θ of the sky's light, cosθ of a star's,
     * whose image moves 1/cos²θ as fast where it runs along the radius and 1/cosθ across it (rectilinear
     * image, f tanθ); a sheet exposed for the sky in the corner's direction, through a filter of cos⁴θ, by a
     * film that loses no speed shows stars fainter by the ratio.
     */
    @Test
    void aCornersLimitIsThatOfItsOwnSkyAndStars() {
        String sheet = " --place 41.05,-2.15,1080 --zone Europe/Madrid --film instant-mono-640"
                + " --reciprocity none --focal-length 75 --frame 80x80 --f-number 11 --spot 40"
                + " --from 2027-02-08T21:30 --lasts 40m";
        JsonNode trail = Run.json("trail --azimuth 150 --altitude 50" + sheet);
        double theta = Math.atan(Math.hypot(SIDE_MM, SIDE_MM) / 2 / FOCAL_MM);
        for (int corner = 1; corner < 5; corner++) {
            JsonNode here = trail.at("/starsHere/" + corner);
            double[] seen = seen(here.get("xMm").doubleValue(), here.get("yMm").doubleValue(), 150, 50);
            JsonNode alone = Run.json("expose --azimuth " + seen[0] + " --altitude " + seen[1] + " --filter "
                    + -4 * Math.log(Math.cos(theta)) / Math.log(2) + sheet);
            double declination = Math.toRadians(alone.at("/situation/aimDeclinationDeg").doubleValue());
            double aloneMmH = FOCAL_MM * Math.toRadians(15.041) * Math.cos(declination);
            double moreLight = Math.pow(Math.cos(theta), -3) * aloneMmH / here.get("speedMmH").doubleValue();
            assertEquals(alone.at("/exposures/0/trailLimitMag").doubleValue() + 2.5 * Math.log10(moreLight),
                    here.get("trailLimitMag").doubleValue(), 0.03, here.toString());
        }
    }

    /** Azimuth and altitude of a point of the sheet of a level camera. */
    private static double[] seen(double xMm, double yMm, double azimuthDeg, double altitudeDeg) {
        double altitude = Math.toRadians(altitudeDeg);
        double ahead = FOCAL_MM * Math.cos(altitude) - yMm * Math.sin(altitude);
        double up = FOCAL_MM * Math.sin(altitude) + yMm * Math.cos(altitude);
        return new double[] {azimuthDeg + Math.toDegrees(Math.atan2(xMm, ahead)),
            Math.toDegrees(Math.atan2(up, Math.hypot(xMm, ahead)))};
    }
}
