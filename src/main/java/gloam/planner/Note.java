package gloam.planner;

import gloam.ephemeris.Night;
import gloam.field.Forecast;
import gloam.field.WindChill;
import gloam.units.Interval;
import java.time.Instant;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;

/** What those who stand in a night should know of it. */
public sealed interface Note {

    /** The clocks of the site are put forward or back. */
    record ClocksChange(ZoneOffsetTransition change) implements Note { }

    /**
     * Dew threatens the lens.
     *
     * @param from   from when
     * @param spareC degrees Celsius by which the air is above its dew point then
     */
    record Dew(Instant from, double spareC) implements Note { }

    /**
     * The coldest moment.
     *
     * @param at           when
     * @param temperatureC temperature of the air in degrees Celsius
     * @param windKmH      wind in km/h
     * @param feltC        what it feels like in degrees Celsius
     * @param freezesSkin  whether bare skin can freeze within half an hour
     */
    record Cold(Instant at, double temperatureC, double windKmH, double feltC,
            boolean freezesSkin) implements Note { }

    /** The notes of a night; those of the weather while the Sun is down, none without a forecast. */
    static List<Note> of(Trip trip, Night night) {
        List<Note> notes = new ArrayList<>();
        ClockChange.of(night).ifPresent(change -> notes.add(new ClocksChange(change)));
        if (!night.sunDown().isEmpty()) {
            Interval down = new Interval(night.sunDown().get(0).start(),
                    night.sunDown().get(night.sunDown().size() - 1).endExclusive());
            trip.forecast().at(night.site()).ifPresent(weather -> addWeather(notes, weather, down));
        }
        return notes;
    }

    private static void addWeather(List<Note> notes, Forecast weather, Interval down) {
        weather.firstDew(down).ifPresent(dew -> notes.add(new Dew(dew.at(), dew.spareC())));
        weather.coldest(down).ifPresent(cold -> notes.add(of(cold)));
    }

    private static Note of(WindChill cold) {
        return new Cold(cold.at(), cold.temperatureC(), cold.windKmH(), cold.feltC(), cold.freezesSkin());
    }
}
