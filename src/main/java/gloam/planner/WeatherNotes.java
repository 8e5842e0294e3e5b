package gloam.planner;

import gloam.ephemeris.Night;
import gloam.field.Forecast;
import gloam.field.WindChill;
import gloam.units.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Puts into lines what a forecast says of a night for those who stand in it: dew on the lens and cold. */
final class WeatherNotes {

    private WeatherNotes() {
    }

    /** The notes of a night while the Sun is down; none without a forecast. */
    static List<String> of(Trip trip, Night night) {
        List<String> notes = new ArrayList<>();
        if (!night.sunDown().isEmpty()) {
            Interval down = Interval.span(night.sunDown());
            trip.forecast().ifPresent(weather -> add(notes, weather, down, night));
        }
        return notes;
    }

    private static void add(List<String> notes, Forecast weather, Interval down, Night night) {
        weather.firstDew(down).ifPresent(dew -> notes.add(String.format(Locale.ROOT,
                "dew threatens the lens from %s: the air is %.1f °C above its dew point",
                NightTimes.of(night).time(dew.at()), dew.spareC())));
        weather.coldest(down).ifPresent(cold -> notes.add(words(cold, night)));
    }

    private static String words(WindChill cold, Night night) {
        String felt = String.format(Locale.ROOT, "coldest at %s: %.0f °C, with a wind of %.0f km/h like %.0f °C",
                NightTimes.of(night).time(cold.at()), cold.temperatureC(), cold.windKmH(), cold.feltC()).replace("-", "−");
        return cold.freezesSkin() ? felt + "; bare skin can freeze within half an hour" : felt;
    }
}
