package gloam.store;

import gloam.gear.Camera;
import gloam.gear.Coordinates;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.units.Label;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A first trip file: one site, one camera, three wishes, and every key once with a comment; optional keys
 * stand behind a {@code #}.
 *
 * @param site         name of the site
 * @param where        its coordinates; at sea level if they have no height
 * @param zone         the zone its clocks keep
 * @param firstNight   date of the first night's evening
 * @param lastNight    date of the last night's evening
 * @param camera       the camera
 * @param cameraGiven  whether it is the user's own rather than an example
 * @param film         the name of a built-in film
 * @param sheets       number of sheets carried
 */
public record TripDraft(String site, Coordinates where, ZoneId zone, LocalDate firstNight,
        LocalDate lastNight,
                        Camera camera, boolean cameraGiven, String film, int sheets) {

    /** Nearer to the equator the pole stands too low for a frame about it. */
    private static final double LEAST_POLE_ALTITUDE_DEG = 15;
    private static final double LOWEST_AIM_DEG = 20;
    private static final double HIGHEST_AIM_DEG = 70;
    private static final int COORDINATE_DECIMALS = 6;

    /** The text of the file, in YAML. */
    public String text() {
        Lens lens = camera.lens();
        return new KeyComments().beside(String.format(Locale.ROOT, HEAD, quoted(site), quoted(site),
                number(where.latitude().degrees()), number(where.longitude().degrees()),
                number(where.heightM().orElse(0)),
                where.heightM().isPresent() ? "" : "\tnot given: sea level", zone.getId(), firstNight,
                lastNight, firstNight, quoted(site), quoted(site))
                + String.format(Locale.ROOT, CAMERA, cameraGiven ? ""
                : "\tan example: put your own in its place",
                quoted(camera.name()), number(lens.focalLengthMm()), number(camera.frame().widthMm()),
                number(camera.frame().heightMm()), fNumbers(), widest(),
                Double.isInfinite(lens.focusM()) ? "infinity" : number(lens.focusM()),
                number(lens.transmittance()),
                widest(), number(lens.spotUm()), number(lens.filterStops()), Label.of(lens.projection()),
                number(lens.vignetting().cornerStops()), number(camera.changeover().toSeconds() / 60.0))
                + String.format(Locale.ROOT, FILM, film, String.join(", ", FilmFile.names()), sheets)
                + String.format(Locale.ROOT, WISHES, round(), widest(), quoted(site),
                quoted(camera.name()), widest(), across()));
    }

    private String fNumbers() {
        return camera.lens().fNumbers().stream().map(FNumber::marked).map(Shown::number)
                .collect(Collectors.joining(", "));
    }

    private String widest() {
        return Shown.number(camera.lens().fNumbers().get(0).marked());
    }

    /** What turns about one point: the pole, or near the equator what rises. */
    private String round() {
        return Math.abs(where.latitude().degrees()) >= LEAST_POLE_ALTITUDE_DEG ? """
                  - name: Wheel about the pole
                    pole: {}
                    # pole: {roll-deg: 90}\tthe same with the camera turned
                    # point: {azimuth-deg: 0, altitude-deg: 41, roll-deg: 0}
                """ : """
                  - name: Stars rise steeply
                    point: {azimuth-deg: 90, altitude-deg: 45, roll-deg: 0}
                    # pole: {}
                    # pole: {roll-deg: 90}\tthe same with the camera turned
                """;
    }

    /** Where the equator of the sky stands highest: the longest trails. */
    private String across() {
        double latitudeDeg = where.latitude().degrees();
        double altitudeDeg = Math.max(LOWEST_AIM_DEG, Math.min(HIGHEST_AIM_DEG, 90 - Math.abs(latitudeDeg)));
        return "{azimuth-deg: " + (latitudeDeg < 0 ? 0 : 180) + ", altitude-deg: " + Math.round(altitudeDeg)
                + "}";
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).setScale(COORDINATE_DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A text as YAML takes it whatever is in it. */
    private static String quoted(String text) {
        return '"' + Shown.plain(text).replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private static final String HEAD = """
            # A trip for Gloam. Change what is not yours. Keys behind a # are further ones: take the # away to
            # use one, and put it before the key whose place it takes. Numbers are in the unit of their key, or
            # carry their own, such as 12 cm or 1h30m. Azimuth runs from north (0) through east (90).
            # gloam check --trip FILE   shows how this file is understood and which defaults it uses
            # gloam plan --trip FILE    makes the timetable
            # gloam help trip-file      lists every key
            title: %s

            sites:
              - name: %s
                latitude-deg: %s
                longitude-deg: %s
                height-m: %s%s
                # place: 41°03′N 2°09′W 1080m
                zone: %s
                # dark-sky-mag-arcsec2: 21.6
                # extinction-mag: 0.3
                # skyline: skyline.csv
                # sea-horizon: true
                # light-domes: [{azimuth-deg: 140, people: 20000, distance-km: 25, colour-k: 2700}]
                # light-domes: [{azimuth-deg: 255, altitude-deg: 15, mag-arcsec2: 20.4}]\ta measured glow
                # sky: [{at: 2027-01-08T22:30, azimuth-deg: 0, altitude-deg: 90, mag-arcsec2: 21, error-mag: 0.1}]
                # preview: {f-number: 2, iso: 6400, exposure-s: 30}\ta digital frame of this place's own
                # forecast: clouds.csv\tfor this place alone

            nights:
              from: %s
              to: %s
              # stay: 3
            # evenings: weekends\tif you are not free every evening
            # evenings: [fri, %s]\tor days and dates
            # awake: {from: "17:30", until: "01:30"}
            # travel-min: 90
            # travel: [{from: %s, to: %s, minutes: 40}]\tput the names of two sites

            """;

    private static final String CAMERA = """
            camera:%s
              name: %s
              focal-length-mm: %s
              frame-mm: {width: %s, height: %s}
              # frame-mm: 4x5in\tor so
              f-numbers: [%s]
              # f-numbers: [f/%s]\tor so
              # pinhole-mm: 0.3\tin place of f-numbers, transmittance, spot-um and focus-m
              focus-m: %s
              transmittance: %s
              # t-stop: {f-number: %s, t-number: 12.3}
              spot-um: %s
              filter-stops: %s
              projection: %s
              corner-stops: %s
              changeover-min: %s
            # cameras:\tseveral, in place of camera
            #   - {name: Box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [11, 16, 22]}
            #   - name: Tin\tthe keys of camera, and a film of its own
            #     focal-length-mm: 60
            #     frame-mm: 4x5in
            #     pinhole-mm: 0.3
            #     film: negative-classic-100

            """;

    private static final String FILM = """
            film: %s\tbuilt in: %s
            # film:\ta film of your own, here or in its file
            #   name: Slow pan, batch 7
            #   iso: 100
            #   kind: negative
            #   layers: mono
            #   reciprocity: {model: power, exponent: 1.28, from-s: 1}\thow it loses speed in long exposures
            #   # reciprocity: {model: none}\tno loss
            #   # reciprocity: {model: schwarzschild, schwarzschild-p: 0.78, from-s: 1}\tthe power law by p = 1 / exponent
            #   # reciprocity: {model: added-power, added-at-one-second-s: 0.2, exponent: 1.4}\tan addition that grows
            #   # reciprocity: {model: catenary, bend: 0.06, best-s: 0.1, reference-s: 0.1}\tloss on both sides of a best time
            #   # reciprocity: {model: table, points: [{metered-s: 1, corrected-s: 1}, {metered-s: 10, corrected-s: 17}]}\tpoints as the maker prints them
            #   # reciprocity: {red: {model: power, exponent: 1.3}, green: {model: none}, blue: {model: none}}\twith layers: three
            #   tone: {density-min: 0.1, density-max: 2.2, density-mid: 0.7, gamma: 0.65}
            #   speed-offset-stops: 0
            #   source: Invented.
            sheets: %d
            # sheets-per-night: 3
            # journal: journal.jsonl
            # batch: pack 7

            # preview: {f-number: 2, iso: 6400, exposure-s: 30}
            # forecast: clouds.csv
            # least-clear-percent: 30
            # clear-prior-percent: 50

            """;

    private static final String WISHES = """
            wishes:
            %s    # follow: {body: mars, level-within-deg: 4, roll-deg: 0}
                # follow: {body: mars, altitude-deg: {least: 15, most: 50}, azimuth-deg: {from: 60, to: 220}}
                # follow: {star: Alnilam}\ta star by its name
                # follow: {star: {ra-deg: 266.4, dec-deg: -29}}\ta star by its place
                sky: dark
                tone-at-most-stops: -1
                # tone-stops: -2
                # records-at-least: 12
                # records: mars
                # records: [mars, Aldebaran]\teach of a list
                # trail-mm: {least: 15, most: 40}
                exposure-min: {shortest: 60, longest: 240}
                # f-numbers: [%s]
                worth: 2
                # repeat: 2
                # moon: in-frame
                # moon: {frame: out-of-frame, altitude-deg: {least: 5, most: 40}, lit-percent: {least: 30, most: 80}, side: left}
                # sun-depth-deg: {least: 20, most: 40}
                # time-of-night: {from: "22:30", to: "02:00"}
                # twilight-min: {least: 5, most: 30}
                # twilight-percent: {least: 30, most: 70}
                # arc-deg: {least: 30, most: 60}
                # film: negative-slow-25
                # site: %s
                # camera: %s
                # openings: [{pole: {}}, {pole: {roll-deg: 90}, exposure-min: 10, f-number: %s, gap-min: 5}]\tin place of pole, sky, exposure-min and f-numbers
              - name: Trails across the sky\t
                point: %s\t
                sky: dark\t
                tone-at-most-stops: -1\t
                exposure-min: {shortest: 30, longest: 120}\t
              - name: Last light\t
                point: {azimuth-deg: 270, altitude-deg: 15}\t
                sky: dusk\t
                tone-stops: 0\t
                exposure-min: {shortest: 20, longest: 90}\t
                # bracket-stops: 1
            """;
}
