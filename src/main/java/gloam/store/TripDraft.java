package gloam.store;

import gloam.gear.Camera;
import gloam.gear.Coordinates;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A trip file to begin with: one site, one camera, three wishes, every key explained.
 *
 * @param site         what the place is called
 * @param where        the place; without a height it is taken to lie at sea level
 * @param zone         the zone its clocks keep
 * @param firstNight   date of the first night's evening
 * @param lastNight    date of the last night's evening
 * @param camera       the camera
 * @param cameraGiven  whether that is the user's own, not an example
 * @param film         the name of a built-in film
 * @param sheets       how many sheets may be spent
 */
public record TripDraft(String site, Coordinates where, ZoneId zone, LocalDate firstNight, LocalDate lastNight,
                        Camera camera, boolean cameraGiven, String film, int sheets) {

    /** Nearer to the equator the pole stands too low for a frame about it. */
    private static final double LEAST_POLE_ALTITUDE_DEG = 15;
    private static final double LOWEST_AIM_DEG = 20;
    private static final double HIGHEST_AIM_DEG = 70;
    private static final int COORDINATE_DECIMALS = 6;
    private static final int COMMENT_COLUMN = 42;

    /** The file's text, in YAML. */
    public String text() {
        return aligned(String.format(Locale.ROOT, HEAD, quoted(site), quoted(site), number(where.latitude().degrees()),
                number(where.longitude().degrees()), number(where.heightM().orElse(0)),
                where.heightM().isPresent() ? "" : "\tnot given: sea level",
                zone.getId(), firstNight, lastNight) + cameraText() + String.format(Locale.ROOT, WISHES, film, sheets, round(),
                across()));
    }

    /** The text with what stands behind tabs as comments below each other. */
    private static String aligned(String text) {
        return text.lines().map(line -> line.split("\t", 2)).map(parts -> parts.length < 2 ? parts[0]
                : String.format(Locale.ROOT, "%-" + COMMENT_COLUMN + "s  # %s", parts[0], parts[1]))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private String cameraText() {
        Lens lens = camera.lens();
        return String.format(Locale.ROOT, CAMERA, cameraGiven ? "" : "\tan example: put your own in its place", quoted(camera.name()),
                number(lens.focalLengthMm()), number(camera.frame().widthMm()), number(camera.frame().heightMm()),
                lens.fNumbers().stream().map(FNumber::number).collect(Collectors.joining(", ")),
                Double.isInfinite(lens.focusM()) ? "infinity" : number(lens.focusM()), number(lens.transmittance()),
                number(lens.spotUm()), number(lens.filterStops()), lens.projection().name().toLowerCase(Locale.ROOT),
                number(lens.vignetting().cornerStops()), number(camera.changeover().toSeconds() / 60.0));
    }

    /** What turns about one point: the pole, or near the equator what rises. */
    private String round() {
        return Math.abs(where.latitude().degrees()) >= LEAST_POLE_ALTITUDE_DEG ? """
                  - name: Wheel about the pole
                    pole: {roll-deg: 0}\tthe pole in the middle of the frame
                """ : """
                  - name: Stars rise steeply
                    point: {azimuth-deg: 90, altitude-deg: 45}
                """;
    }

    /** Where the equator of the sky stands highest: the longest trails. */
    private String across() {
        double latitudeDeg = where.latitude().degrees();
        double altitudeDeg = Math.max(LOWEST_AIM_DEG, Math.min(HIGHEST_AIM_DEG, 90 - Math.abs(latitudeDeg)));
        return "{azimuth-deg: " + (latitudeDeg < 0 ? 0 : 180) + ", altitude-deg: " + Math.round(altitudeDeg) + "}";
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).setScale(COORDINATE_DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros()
                .toPlainString();
    }

    /** A text as YAML takes it whatever is in it. */
    private static String quoted(String text) {
        return '"' + Shown.plain(text).replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private static final String HEAD = """
            # A trip for Gloam. Keys carry their units; a number may also be written with its own, such as 12 cm or 1h30m.
            # gloam check --trip FILE   tells how this file is understood and which defaults it uses
            # gloam plan --trip FILE    makes the timetable
            title: %s

            sites:\tone or more; a night is spent at one of them
              - name: %s
                latitude-deg: %s\tnorth positive; 41°03′N will do too
                longitude-deg: %s\teast positive
                height-m: %s%s
                zone: %s
                # dark-sky-mag-arcsec2: 21.6\tthe moonless zenith; larger is darker. Measure it, or leave it so
                # extinction-mag: 0.3\thaze; left out, it is reckoned for clear air
                # skyline: skyline.csv\tazimuth_deg,altitude_deg of the hills around

            nights: {from: %s, to: %s}\tdates of the evenings

            """;

    private static final String CAMERA = """
            camera:%s
              name: %s
              focal-length-mm: %s
              frame-mm: {width: %s, height: %s}
              f-numbers: [%s]
              focus-m: %s\tthe distance it is focused at; infinity for the stars
              transmittance: %s\tshare of the light that the glass passes
              spot-um: %s\twidth of a star's spot by lens and film
              filter-stops: %s
              projection: %s\tor a fisheye's: equidistant, equisolid
              corner-stops: %s\tlight the mount takes from the corner at the widest f-number
              changeover-min: %s\tfrom closing one sheet to opening the next

            """;

    private static final String WISHES = """
            film: %s\tbuilt in; for your own: {name: …, iso: 640, kind: positive, reciprocity: …}
            sheets: %d

            # preview: {f-number: 2, iso: 6400, exposure-s: 30}\ta digital frame of the dark sky that looked right

            wishes:\tpictures wanted; azimuth runs from north (0) through east (90)
            %s    sky: dark\tdark, moonlit, dusk, dawn or any
                tone-at-most-stops: -1\tthe sky this far below the film's mid-tone, or darker
                exposure-min: {shortest: 60, longest: 240}
                worth: 2\tagainst the other wishes
              - name: Trails across the sky
                point: %s
                sky: dark
                tone-at-most-stops: -1
                exposure-min: {shortest: 30, longest: 120}
                # records-at-least: 12\tso many star trails must show
                # trail-mm: {least: 15, most: 40}\thow long they are in the middle of the frame
              - name: Last light
                point: {azimuth-deg: 270, altitude-deg: 15}
                sky: dusk
                tone-stops: 0\tas near as may be to the mid-tone
                exposure-min: {shortest: 20, longest: 90}
            """;
}
