package gloam.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The nights of a timetable, each on one sheet from sunset to sunrise: how bright the zenith is, as a grey
 * and a curve; how high the Moon and aims stand; twilights; the forecast's cloud; windows and their slack.
 */
final class NightStrip {

    private static final double LETTER = 12;
    /** The same as the page's style sheet has it on telephones. */
    private static final double LETTER_ON_PHONES = 20;
    /** How high its digits are. */
    private static final double DIGIT = 0.75 * LETTER_ON_PHONES;
    /** How far a number may reach below the sky. */
    private static final double BELOW = 4;
    private static final double CLOUD_DEPTH = 20;
    private static final double BAR_TOP = StripScale.SKY_TOP + StripScale.SKY_HEIGHT + 8;
    private static final double WORDS_TOP = StripScale.HOURS_TOP + 32;
    private static final double LINE = 16;

    private final Markup svg = new Markup();
    private final PlanReport.PlannedNightRow night;
    private final StripScale scale;
    private final LabelPlaces places;

    private NightStrip(PlanReport.PlannedNightRow night, double top) {
        this.night = night;
        this.scale = StripScale.of(night, top);
        this.places = new LabelPlaces(StripScale.LEFT, scale.y(90), StripScale.LEFT + StripScale.PLOT,
                scale.y(0) + BELOW, LETTER);
    }

    /** All nights that have one, one below the other. */
    static String of(PlanReport plan, String made) {
        return drawn(plan.title(), plan.nights().stream().filter(night -> !night.course().isEmpty()).toList(),
                true, made);
    }

    /** One night without its words, which a page sets beneath; empty where the Sun does not set. */
    static String of(PlanReport.PlannedNightRow night, String made) {
        return night.course().isEmpty() ? "" : drawn(title(night), List.of(night), false, made);
    }

    private static String drawn(String title, List<PlanReport.PlannedNightRow> nights, boolean full,
            String made) {
        Markup strips = new Markup();
        double top = 0;
        for (PlanReport.PlannedNightRow night : nights) {
            List<String> words = full ? StripWords.of(night) : List.of();
            strips.add(new NightStrip(night, top).strip(words));
            top += WORDS_TOP + LINE * words.size();
        }
        Drawing all = new Drawing(Drawing.Unit.PX, StripScale.WIDTH, top + LINE, LETTER, title,
                "Brightness of the sky, height of the Moon and of what each sheet aims at, and the windows.");
        all.add(strips.toString());
        return all.finished(StripScale.LEFT, made);
    }

    private static String title(PlanReport.PlannedNightRow night) {
        return night.times().dates() + ", " + night.site();
    }

    private String strip(List<String> words) {
        svg.label(StripScale.LEFT, scale.top() + 16, title(night) + " (" + night.zone() + ")");
        sky();
        new StripAxes(night, scale, svg).draw();
        moon();
        cloud();
        curve(night.course().stream().map(sky -> at(sky, 90 * SkyGrey.light(sky.zenithMagArcsec2())))
                .toList(), "curve");
        aims();
        windows();
        for (int line = 0; line < words.size(); line++) {
            svg.label(StripScale.LEFT, scale.top() + WORDS_TOP - LINE / 2 + line * LINE, words.get(line),
                    "class", "fine");
        }
        return svg.toString();
    }

    /** The zenith's brightness as grey, a strip for each sample. */
    private void sky() {
        svg.open("g", "class", "sky");
        List<PlanReport.SkyRow> course = night.course();
        for (int i = 0; i + 1 < course.size(); i++) {
            double left = scale.x(course.get(i).at());
            double light = SkyGrey.light(course.get(i).zenithMagArcsec2());
            svg.empty("rect", "x", left, "y", scale.y(90), "width",
                    scale.x(course.get(i + 1).at()) - left + 0.5, "height", StripScale.SKY_HEIGHT, "fill",
                    SkyGrey.colour(light), "style", "--light:" + Markup.number(light));
        }
        svg.close("g");
    }

    /** The Moon's heights, a curve for each time that it is up. */
    private void moon() {
        List<double[]> up = new ArrayList<>();
        for (PlanReport.SkyRow sky : night.course()) {
            if (sky.moonAltitudeDeg() >= 0) {
                up.add(at(sky, sky.moonAltitudeDeg()));
            } else {
                curve(up, "moon");
                up.clear();
            }
        }
        curve(up, "moon");
    }

    private double[] at(PlanReport.SkyRow sky, double heightDeg) {
        return new double[] {scale.x(sky.at()), scale.y(heightDeg)};
    }

    private void curve(List<double[]> points, String style) {
        for (int i = 0; i + 1 < points.size(); i++) {
            places.keepOff(points.get(i)[0], points.get(i)[1], points.get(i + 1)[0], points.get(i + 1)[1]);
        }
        if (!points.isEmpty()) {
            svg.empty("polyline", "points", points.stream().map(point -> Markup.number(point[0]) + ","
                    + Markup.number(point[1])).collect(Collectors.joining(" ")), "class", style);
        }
    }

    /**
     * What each sheet aims at, at its height while the shutter is open; its number above, beside or below,
     * where it first covers nothing, with room for the letters of telephones.
     */
    private void aims() {
        List<double[]> spans = night.windows().stream().map(window -> new double[] {scale.x(window.openAt()),
            Math.max(scale.x(window.openAt()) + 3, scale.x(window.closeAt())),
            scale.y(window.altitudeDeg())}).toList();
        spans.forEach(span -> places.keepOff(span[0], span[2], span[1], span[2]));
        for (int i = 0; i < spans.size(); i++) {
            double left = spans.get(i)[0];
            double right = spans.get(i)[1];
            double y = spans.get(i)[2];
            svg.empty("path", "d", "M" + Markup.number(left) + " " + Markup.number(y) + "H"
                    + Markup.number(right), "class", "aim");
            String number = "" + night.windows().get(i).sheet();
            double wide = LETTER_ON_PHONES * Drawing.LETTER_WIDE * number.length();
            double middle = (left + right) / 2;
            double[] place = places.takeMiddle(wide, DIGIT, List.of(new double[] {middle, y - 4 - DIGIT / 2},
                    new double[] {right + 4 + wide / 2, y}, new double[] {left - 4 - wide / 2, y},
                    new double[] {middle, y + 4 + DIGIT / 2}));
            svg.label(place[0], place[1] + (place[1] == y ? 0.4 * DIGIT : DIGIT / 2), number, "class",
                    "aim middle");
        }
    }

    /** The forecast's cloud, which hangs down from the sky's upper edge: by its full depth where overcast. */
    private void cloud() {
        List<CloudRow> forecast = night.forecast();
        if (forecast.isEmpty()) {
            return;
        }
        String edge = Markup.number(scale.y(90));
        StringBuilder points = new StringBuilder(Markup.number(scale.x(forecast.get(0).at())) + "," + edge);
        forecast.forEach(row -> points.append(' ' + Markup.number(scale.x(row.at())) + ","
                + Markup.number(scale.y(90) + CLOUD_DEPTH * row.cloudFraction())));
        points.append(' ' + Markup.number(scale.x(forecast.get(forecast.size() - 1).at())) + "," + edge);
        svg.open("g").words("title", CloudRow.words(forecast))
                .empty("polygon", "points", points, "class", "cloud").close("g");
    }

    private void windows() {
        List<String> cameras = night.windows().stream().map(PlanReport.WindowRow::camera).distinct().toList();
        double high = StripScale.BAR_HEIGHT / cameras.size();
        for (PlanReport.WindowRow window : night.windows()) {
            double over = scale.top() + BAR_TOP + high * cameras.indexOf(window.camera());
            double left = scale.x(window.openAt());
            double width = Math.max(3, scale.x(window.closeAt()) - left);
            svg.open("g").words("title", window.wish() + ", " + night.times().exposure(
                    window.openAt().toInstant(), window.closeAt().toInstant()));
            svg.empty("path", "class", "line", "d", "M"
                    + Markup.number(scale.x(window.slack().openEarliestAt())) + " "
                    + Markup.number(over + high / 2) + "H"
                    + Markup.number(scale.x(window.slack().closeLatestAt())));
            svg.empty("rect", "x", left, "y", over, "width", width, "height", high, "class", "box");
            number(window.sheet(), left + width / 2, over + high / 2 + 5, width);
            svg.close("g");
        }
    }

    /** A sheet's number where its window is broad enough for it; at its aim it always stands. */
    private void number(int sheet, double x, double y, double width) {
        double wide = Drawing.LETTER_WIDE * TextWidth.of("" + sheet);
        if (wide * LETTER <= width) {
            svg.label(x, y, "" + sheet, "class", wide * LETTER_ON_PHONES <= width ? "middle" : "middle fine");
        }
    }
}
