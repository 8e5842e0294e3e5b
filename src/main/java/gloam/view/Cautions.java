package gloam.view;

import java.util.List;

/** The cautions printed with every timetable. */
final class Cautions {

    static final List<String> ALL = List.of(
            "Field work at night: tell someone where you are and when you will be back; scout the place by "
            + "day; mind "
                    + "cold and wind chill, wild animals, water, cliffs and the tired drive home; check "
                    + "access and local rules.",
            "The Sun: never point an unfiltered lens at it or look through one at it. No window opens "
            + "before sunset "
                    + "or closes after sunrise.",
            "Film: the developer paste of instant sheets is caustic; keep it off skin and eyes.",
            "Times and tones are estimates, honest to about half a stop at best. Local codes and licensed "
                    + "professionals rank above anything printed here.");

    private Cautions() {
    }
}
