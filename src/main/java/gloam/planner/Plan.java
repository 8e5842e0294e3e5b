package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.ephemeris.EarthTurn;
import gloam.ephemeris.Night;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import gloam.light.SkyBrightness;
import gloam.proof.StarCount;
import gloam.sheet.Setting;
import gloam.units.Angle;
import gloam.units.Finite;
import gloam.units.Interval;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a trip comes to: a timetable for each night and what could not be had.
 *
 * @param trip     the trip planned
 * @param nights   its nights in order, each at the site chosen for it
 * @param cautions what this timetable leaves open or takes for granted; often none
 * @param otherwise what to do when the sky does not keep to it
 */
public record Plan(Trip trip, List<NightPlan> nights, List<Caution> cautions,
                   Alternatives otherwise) {

    /** Copies the lists. */
    public Plan {
        nights = List.copyOf(nights);
        cautions = List.copyOf(cautions);
    }

    /** How many sheets are exposed. */
    public int sheetsUsed() {
        return nights.stream().mapToInt(night -> night.windows().size()).sum();
    }

    /** How many sheets are left over. */
    public int sheetsLeft() {
        return trip.sheets() - trip.spent() - sheetsUsed();
    }

    /**
     * One night's part.
     *
     * @param night   the night and its site
     * @param windows exposures in order of time, those of one camera without overlaps
     * @param refused wishes not served on this night, with the reason, in the trip's order
     * @param notes   what to know of it: clocks that change, dew and cold
     * @param course  the sky from before sunset to after sunrise, every quarter of an hour
     */
    public record NightPlan(Night night, List<Window> windows, List<Refusal> refused, List<Note> notes,
                            List<SkySample> course) {

        /** Copies the lists. */
        public NightPlan {
            windows = List.copyOf(windows);
            refused = List.copyOf(refused);
            notes = List.copyOf(notes);
            course = List.copyOf(course);
        }
    }

    /**
     * The sky at an instant.
     *
     * @param at           when
     * @param sunAltitude  altitude of the Sun's centre without air
     * @param moonAltitude apparent altitude of the Moon's centre
     * @param zenith       brightness of the zenith
     * @param cloudFraction share of the sky that the forecast has cloudy, 0 to 1; empty where it does not
     *                     reach
     */
    public record SkySample(Instant at, Angle sunAltitude, Angle moonAltitude, SkyBrightness zenith,
            OptionalDouble cloudFraction) {
    }

    /**
     * One exposure on one sheet.
     *
     * @param sheet              number of the sheet in the pack, from 1
     * @param wish               the wish it serves
     * @param camera             the camera
     * @param film               the film in it
     * @param open               from opening to closing the shutter, the first time of several
     * @param aim                where the frame's centre looks
     * @param fNumber            the f-number to set
     * @param later              how the camera is set for what is exposed on the same sheet after that, in
     *                           order of time; often nothing
     * @param meteredS           time the same light would need without reciprocity failure, in s
     * @param correctedS         time the shutter is open, in s
     * @param skyToneStops       expected tone of the sky at the frame's centre, of all openings
     * @param skyToneSpreadStops standard deviation of that tone
     * @param trailLimitMag      faintest V magnitude that leaves a trail, as {@link
     *                           gloam.exposure.ExposureTable.PassingStars} tells it
     * @param stars              how many stars mark the sheet, those of each opening counted
     * @param trailLengthMm      trail length at the frame's centre
     * @param trailDirection     direction of motion at the frame's centre, from +x towards +y
     * @param moon               the Moon half-way through
     * @param cloud              the cloud forecast over it; empty without a forecast
     * @param score              expected worth: worth times the chance that it comes out as wished, cloud
     *                           included
     * @param misses             by how much it misses parts of its wish
     * @param sky                the sky in which it stands
     * @param slack              how exactly its times are to be kept
     */
    public record Window(int sheet, Wish wish, Camera camera, FilmStock film, Interval open, Direction aim,
            FNumber fNumber,
                         List<Setting> later, double meteredS, double correctedS, double skyToneStops,
                         double skyToneSpreadStops, double trailLimitMag, StarCount stars,
                         double trailLengthMm,
                         Angle trailDirection, MoonView moon, Optional<CloudCover> cloud, double score,
                         List<Miss> misses, WindowSky sky, Slack slack) {

        /** Copies the list; refuses numbers that are not finite where they must be. */
        public Window {
            misses = List.copyOf(misses);
            later = List.copyOf(later);
            Finite.check(meteredS, "metered time in s");
            Finite.check(correctedS, "exposure in s");
            Finite.check(skyToneStops, "tone in stops");
            Finite.check(skyToneSpreadStops, "spread in stops");
            Finite.check(trailLengthMm, "length in mm");
            Finite.check(score, "score");
        }

        /** From the first opening to the last closing. */
        public Interval whole() {
            return later.isEmpty() ? open
                    : new Interval(open.start(), later.get(later.size() - 1).whole().endExclusive());
        }

        /** By how many degrees the sky turns while the shutter is open, the first time of several. */
        public double turnDeg() {
            return EarthTurn.degrees(open.seconds());
        }
    }

    /**
     * The Moon as a window meets it.
     *
     * @param position            where it stands
     * @param illuminatedFraction lit share of its disc
     * @param fromAim             angle between the Moon and the frame's centre
     */
    public record MoonView(gloam.ephemeris.SkyPosition position, double illuminatedFraction, Angle fromAim) {
    }

    /**
     * A wish not served on a night.
     *
     * @param wish   which
     * @param reason what closed it
     * @param remedy what would open it, where it is closed and something would
     */
    public record Refusal(Wish wish, Reason reason, Optional<Remedy> remedy) {
    }
}
