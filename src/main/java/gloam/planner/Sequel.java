package gloam.planner;

import gloam.gear.FNumber;
import gloam.units.Stops;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The later openings of a wish's sheet on a night, which follow from when the first one closes. For one
 * thread at a time.
 */
final class Sequel {

    private final List<Part> parts;
    private final int minutes;
    private final int openMin;
    private final Map<Integer, Optional<List<MinuteRun>>> byClose = new HashMap<>();

    /**
     * A later opening on the night.
     *
     * @param night  its wish at the moments that are good for it; empty where none is
     * @param closed why none is
     */
    private record Part(LaterOpening wanted, Optional<WishNight> night, Optional<Reason> closed) {

        /** The first minute from one on at which it can be opened; negative for none. */
        int opens(int fromMin, int minutes) {
            int lastsMin = (int) wanted.lasts().toMinutes();
            WishNight at = night.orElseThrow();
            int openMin = at.moments().throughout().nextSetBit(fromMin);
            while (openMin >= 0 && openMin + lastsMin <= minutes && !at.allows(openMin, openMin + lastsMin)) {
                openMin = at.moments().throughout().nextSetBit(openMin + 1);
            }
            return openMin + lastsMin <= minutes ? openMin : -1;
        }

        /** The place of its f-number among those it is looked at through. */
        int number(int first) {
            return wanted.fNumber().isPresent() ? 0 : first;
        }
    }

    private Sequel(List<Part> parts, int minutes) {
        this.parts = parts;
        this.minutes = minutes;
        this.openMin = parts.stream().mapToInt(part -> (int) part.wanted.lasts().toMinutes()).sum();
    }

    /** The later openings of a wish, of which there are often none. */
    static Sequel of(Wish wish, Equipment with, NightSky sky, StarField stars, ClearSky clear,
            Shortfalls shortfalls) {
        return new Sequel(wish.later().stream().map(later -> {
            Wish alone = later.alone(wish);
            Equipment kit = later.fNumber().map(own -> with.through(List.of(own))).orElse(with);
            Aiming aiming = new Aiming(later.aim(), sky, with.camera());
            List<Condition> conditions = Conditions.of(alone, sky, aiming);
            Optional<Moments> moments = Moments.of(conditions, sky.sunDown());
            return new Part(later, moments.map(good ->
                    new WishNight(alone, kit, sky, aiming, good, stars, clear, shortfalls)),
                    moments.isPresent() ? Optional.empty() : Optional.of(Reasons.closed(conditions, sky)));
        }).toList(), sky.clock().minutes());
    }

    /** Whether there is none. */
    boolean none() {
        return parts.isEmpty();
    }

    /** Whether there is time for all of them after a first opening that closes at a minute. */
    boolean fits(int closeMin) {
        return none() || runs(closeMin).isPresent();
    }

    /** When the last of them closes; the minute itself where there is none, or no time for them. */
    int lastMin(int closeMin) {
        return none() ? closeMin : runs(closeMin).map(runs -> runs.get(runs.size() - 1).last())
                .orElse(closeMin);
    }

    /** How long the shutter is open in them, in minutes. */
    int openMin() {
        return openMin;
    }

    /**
     * Progress of the film in them after a first opening that closes at a minute, through an f-number that is
     * given by its place among those to choose from; 0 where there is no time for them.
     */
    double progress(int number, int closeMin) {
        List<MinuteRun> runs = runs(closeMin).orElse(List.of());
        double sum = 0;
        for (int part = 0; part < runs.size(); part++) {
            MinuteRun run = runs.get(part);
            sum += Stops.factor(parts.get(part).night.orElseThrow().light()
                    .toneStops(parts.get(part).number(number), run.first(), run.last()));
        }
        return sum;
    }

    /** The same openings as they are to be made. */
    List<ExposureChoice.Later> chosen(int number, int closeMin) {
        List<ExposureChoice.Later> chosen = new ArrayList<>();
        List<MinuteRun> runs = runs(closeMin).orElse(List.of());
        for (int part = 0; part < runs.size(); part++) {
            MinuteRun run = runs.get(part);
            WishNight night = parts.get(part).night.orElseThrow();
            FNumber fNumber = night.with().fNumbers().get(parts.get(part).number(number));
            chosen.add(new ExposureChoice.Later(night.wish(),
                    night.aiming().framing(run.first() + (run.last() - run.first()) / 2), run.first(),
                    run.last(), fNumber));
        }
        return chosen;
    }

    /**
     * Why there is no time for them whenever a first opening closes, from one minute on; empty where there
     * is, or where there is none of them.
     */
    Optional<Reason> closed(int fromMin) {
        for (int part = 0; part < parts.size(); part++) {
            if (parts.get(part).closed.isPresent()) {
                return Optional.of(new Reason.LaterClosed(part + 2, parts.get(part).closed.get()));
            }
        }
        return fits(fromMin) ? Optional.empty()
                : Optional.of(new Reason.LaterClosed(2, Reason.Plain.NO_START));
    }

    private Optional<List<MinuteRun>> runs(int closeMin) {
        return byClose.computeIfAbsent(closeMin, this::after);
    }

    private Optional<List<MinuteRun>> after(int closeMin) {
        List<MinuteRun> runs = new ArrayList<>();
        int freeMin = closeMin;
        for (Part part : parts) {
            int openMin = part.night.isEmpty() ? -1
                    : part.opens(freeMin + (int) part.wanted.gap().toMinutes(), minutes);
            if (openMin < 0) {
                return Optional.empty();
            }
            freeMin = openMin + (int) part.wanted.lasts().toMinutes();
            runs.add(new MinuteRun(openMin, freeMin));
        }
        return Optional.of(List.copyOf(runs));
    }
}
