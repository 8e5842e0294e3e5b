package gloam.view;

import gloam.planner.Plan;
import gloam.planner.Wish;
import java.util.List;

/**
 * The trail at the centre of a sheet in words.
 *
 * @param lengthMm     its length
 * @param directionDeg which way it goes, from the right upwards
 * @param arcDeg       how far the sky turns
 * @param records      whether anything leaves a trail on the sheet
 */
record TrailWords(double lengthMm, double directionDeg, double arcDeg, boolean records) {

    /** A shorter trail at the centre while the sky turns by more means that the pole stands there. */
    private static final double WHEEL_BELOW_MM = 2;
    private static final double WHEEL_FROM_DEG = 10;
    /** A shorter trail has no direction worth giving. */
    private static final double LEAST_MM = 1;
    private static final String ARROWS = "\u2192\u2197\u2191\u2196\u2190\u2199\u2193\u2198";
    private static final List<String> WAYS = List.of("to the right", "up and right", "up", "up and left",
            "to the left", "down and left", "down", "down and right");

    static TrailWords of(Plan.Window window) {
        return new TrailWords(window.trailLengthMm(), window.trailDirection().degrees(), window.turnDeg(),
                window.stars().recorded() > 0 || window.wish().records() instanceof Wish.Records.These);
    }

    static TrailWords of(PlanReport.WindowRow window) {
        return new TrailWords(window.trailLengthMm(), window.trailDirectionDeg(), window.arcDeg(),
                window.recordedStars() > 0 || !window.mustRecord().isEmpty());
    }

    /** For a cell under "trail", such as "32 mm ↗" or "45° arcs"; a dash where none records. */
    String cell() {
        return !records ? "\u2013" : wheel() ? arcs() : mm() + (lengthMm < LEAST_MM ? "" : " " + arrow());
    }

    /** For a card, such as "32 mm at the centre ↗ up and right" or "wheel of 45° arcs". */
    String figure() {
        return !records ? "none records" : wheel() ? "wheel of " + arcs() : mm() + " at the centre" + way();
    }

    /** For a sentence, such as "trail 32 mm ↗ up and right" or "wheel of 45° arcs". */
    String sentence() {
        return !records ? "no trail records" : wheel() ? "wheel of " + arcs() : "trail " + mm() + way();
    }

    private boolean wheel() {
        return lengthMm < WHEEL_BELOW_MM && arcDeg >= WHEEL_FROM_DEG;
    }

    private String arcs() {
        return Wording.number(arcDeg, 0) + "\u00b0 arcs";
    }

    private String mm() {
        return Wording.number(lengthMm, 0) + " mm";
    }

    private String way() {
        return lengthMm < LEAST_MM ? "" : " " + arrow() + " " + WAYS.get(eighth());
    }

    private char arrow() {
        return ARROWS.charAt(eighth());
    }

    private int eighth() {
        return (int) Math.floorMod(Math.round(directionDeg / 45), (long) WAYS.size());
    }
}
