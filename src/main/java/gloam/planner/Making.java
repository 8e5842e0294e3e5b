package gloam.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedList;
import java.util.List;
import java.util.function.Function;

/**
 * Gives the exposures of a timetable on one night the times that people can keep. For one thread at a time.
 */
final class Making {

    private final Trip trip;
    private final NightSky sky;
    private final Function<Timetable.Exposed, WishNight> nights;

    /**
     * Makes exposures on a night.
     *
     * @param nights of an exposure its wish on the night
     */
    Making(Trip trip, NightSky sky, Function<Timetable.Exposed, WishNight> nights) {
        this.trip = trip;
        this.sky = sky;
        this.nights = nights;
    }

    /** The exposures chosen, as they are made, in order of time. */
    List<Made> made(List<Timetable.Exposed> chosen) {
        return chosen.stream().map(Timetable.Exposed::camera).distinct().flatMap(camera -> madeBy(chosen
                .stream().filter(one -> one.camera() == camera).toList()).stream()).sorted(Comparator
                .comparingInt((Made made) -> made.exposure().openMin()).thenComparingInt(made ->
                made.chosen().camera())).toList();
    }

    /** Those of one camera. */
    private List<Made> madeBy(List<Timetable.Exposed> chosen) {
        List<WishNight> asked = chosen.stream().map(nights).toList();
        List<MinuteRun> times = new ArrayList<>(chosen.stream()
                .map(one -> new MinuteRun(one.openMin(), one.closeMin())).toList());
        int changeoverMin = trip.changeoverMin(chosen.get(0).camera());
        for (int number = 0; number < chosen.size(); number++) {
            if (!asked.get(number).sequel().none()) {
                continue;
            }
            MinuteRun free = free(times, number, changeoverMin);
            int openMin = times.get(number).first();
            MinuteRun open = new MinuteRun(openMin, ExposureSearch.closeNearestToTone(asked.get(number),
                    openMin, times.get(number).last(), free.last()));
            times.set(number, new SlackSearch(asked.get(number), sky.clock(), open, free).rounded());
        }
        LinkedList<Made> made = new LinkedList<>();
        for (int number = chosen.size() - 1; number >= 0; number--) {
            Timetable.Exposed one = chosen.get(number);
            WishNight night = asked.get(number);
            MinuteRun open = times.get(number);
            int nextMin = made.isEmpty() ? 0 : made.getFirst().slack().mostLateMin();
            made.addFirst(night.sequel().none()
                    ? new Made(one, ExposureChoice.of(night, open.first(), open.last()),
                    new SlackSearch(night, sky.clock(), open, free(times, number, changeoverMin))
                    .slack(nextMin))
                    : new Made(one, ExposureChoice.of(night, open.first(), open.first() + one.firstMin()),
                    Slack.none(sky.clock().span(open.first(), open.last()))));
        }
        return made;
    }

    /** From when to when the camera is free for an exposure between the others. */
    private MinuteRun free(List<MinuteRun> times, int number, int changeoverMin) {
        return new MinuteRun(number == 0 ? 0 : times.get(number - 1).last() + changeoverMin,
                number + 1 == times.size() ? sky.clock().minutes()
                : times.get(number + 1).first() - changeoverMin);
    }
}
