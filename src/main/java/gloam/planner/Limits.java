package gloam.planner;

import gloam.gear.Camera;
import gloam.gear.Site;
import gloam.units.Range;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What narrows a wish beyond the kind of its sky, each part left open where it does not matter.
 *
 * @param moonAltitudeDeg apparent altitude of the Moon as long as the shutter is open
 * @param moonLitPercent  lit part of the Moon's disc at mid exposure
 * @param moonSide        on which side of the camera the Moon stands at mid exposure
 * @param sunDepthDeg     how deep the Sun's centre is below the horizon when a dusk picture opens, a dawn
 *                        picture closes, any other is half done
 * @param time            the time of night, by the site's clocks
 * @param twilightMin     minutes of the exposure in twilight, Sun above -18°
 * @param twilightPercent share of the sky's tone that is made in twilight
 * @param arcDeg          how far the sky turns during the exposure
 * @param sites           names of the sites where it may be taken; empty for all of the trip
 * @param cameras         names of the cameras that may take it; empty for all of the trip
 * @param moonFrame       whether the Moon is in the frame; empty for out of it, unless the picture is of the
 *                        Moon
 */
public record Limits(Between moonAltitudeDeg, Between moonLitPercent, Optional<Side> moonSide,
        Between sunDepthDeg,
                     Optional<TimeOfNight> time, Between twilightMin, Between twilightPercent,
                     Between arcDeg, List<String> sites, List<String> cameras,
                     Optional<MoonFrame> moonFrame) {

    /** Copies the lists. */
    public Limits {
        sites = List.copyOf(sites);
        cameras = List.copyOf(cameras);
    }

    /** The same at any site, with any camera, without a word about the Moon in the frame. */
    public Limits(Between moonAltitudeDeg, Between moonLitPercent, Optional<Side> moonSide,
            Between sunDepthDeg, Optional<TimeOfNight> time, Between twilightMin, Between twilightPercent,
            Between arcDeg) {
        this(moonAltitudeDeg, moonLitPercent, moonSide, sunDepthDeg, time, twilightMin, twilightPercent,
                arcDeg, List.of(), List.of(), Optional.empty());
    }

    /** The same at some sites alone. */
    Limits at(List<String> names) {
        return new Limits(moonAltitudeDeg, moonLitPercent, moonSide, sunDepthDeg, time, twilightMin,
                twilightPercent, arcDeg, names, cameras, moonFrame);
    }

    /** The same with some cameras alone. */
    Limits by(List<String> names) {
        return new Limits(moonAltitudeDeg, moonLitPercent, moonSide, sunDepthDeg, time, twilightMin,
                twilightPercent, arcDeg, sites, names, moonFrame);
    }

    /** The same with the Moon in the frame or out of it. */
    Limits with(MoonFrame frame) {
        return new Limits(moonAltitudeDeg, moonLitPercent, moonSide, sunDepthDeg, time, twilightMin,
                twilightPercent, arcDeg, sites, cameras, Optional.of(frame));
    }

    /** Whether it may be taken at a site. */
    boolean allow(Site site) {
        return sites.isEmpty() || sites.contains(site.name());
    }

    /** Whether a camera may take it. */
    boolean allow(Camera camera) {
        return cameras.isEmpty() || cameras.contains(camera.name());
    }

    /** Nothing narrowed. */
    public static final Limits NONE = new Limits(Between.ANY, Between.ANY, Optional.empty(), Between.ANY,
            Optional.empty(), Between.ANY, Between.ANY, Between.ANY);

    /** Allowed altitudes of the Moon. */
    public static final Range MOON_ALTITUDE = new Range("altitude of the Moon", -90, 90, "deg");
    /** Allowed shares. */
    public static final Range PERCENT = new Range("share", 0, 100, "%");
    /** Allowed depths of the Sun: never a picture before sunset. */
    public static final Range SUN_DEPTH = new Range("depth of the Sun", 3, 90, "deg");
    /** Allowed minutes in twilight. */
    public static final Range TWILIGHT = new Range("minutes in twilight", 0, 1440, "min");
    /** Allowed arcs. */
    public static final Range ARC = new Range("arc", 0.25, 360, "deg");

    /** Whether the share of twilight is bounded. */
    boolean blends() {
        return !twilightMin.any() || !twilightPercent.any();
    }

    /** Where the Moon is to the frame. */
    public enum MoonFrame {
        /** In it at mid exposure. */
        IN_FRAME,
        /** Out of it as long as the shutter is open. */
        OUT_OF_FRAME
    }

    /** The quarters of the horizon around the camera, each 90° wide. */
    public enum Side {
        /** Within 45° of the aim's azimuth. */
        AHEAD(0),
        /** Around 90° clockwise of it. */
        RIGHT(90),
        /** Around the opposite azimuth. */
        BEHIND(180),
        /** Around 90° counterclockwise of it. */
        LEFT(-90);

        private static final double HALF_DEG = 45;

        private final double middleDeg;

        Side(double middleDeg) {
            this.middleDeg = middleDeg;
        }

        /** The quarter in which an azimuth lies, counted from the aim's. */
        public static Side at(double fromAimDeg) {
            return Arrays.stream(values()).max(Comparator.comparingDouble(side -> side.marginDeg(fromAimDeg)))
                    .orElseThrow();
        }

        /** How far inside the quarter an azimuth is, counted from the aim's; negative outside. */
        double marginDeg(double fromAimDeg) {
            return HALF_DEG - Math.abs(Math.IEEEremainder(fromAimDeg - middleDeg, 360));
        }
    }

    /**
     * A part of the night by the clock; over midnight where it ends before it starts.
     *
     * @param from its start
     * @param to   its end
     */
    public record TimeOfNight(LocalTime from, LocalTime to) {

        /** Whether a time lies in it, its ends included. */
        boolean holds(LocalTime time) {
            boolean after = !time.isBefore(from);
            boolean before = !time.isAfter(to);
            return from.isAfter(to) ? after || before : after && before;
        }
    }
}
