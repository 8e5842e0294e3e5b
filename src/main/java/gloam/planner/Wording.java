package gloam.planner;

import gloam.gear.FNumber;
import java.util.Locale;

/** Numbers as reasons write them. */
final class Wording {

    private static final int HOUR_MIN = 60;

    private Wording() {
    }

    /** A number of stops with its sign, such as −1.8. */
    static String stops(double stops) {
        return signed(String.format(Locale.ROOT, "%.1f", stops));
    }

    private static String signed(String number) {
        boolean zero = Double.parseDouble(number) == 0;
        return zero ? "0.0" : number.startsWith("-") ? "−" + number.substring(1) : "+" + number;
    }

    /** A tone wanted. */
    static String tone(Wish.Tone tone) {
        return tone instanceof Wish.Tone.Near near ? "tone " + stops(near.stops())
                : tone instanceof Wish.Tone.AtMost most ? "tone at most " + stops(most.stops()) : "any tone";
    }

    /** An f-number as it is engraved. */
    static String fNumber(FNumber fNumber) {
        return fNumber.number();
    }

    /** A length on the sheet in whole millimetres. */
    static String mm(double mm) {
        return String.format(Locale.ROOT, "%.0f mm", mm);
    }

    /** A choice in lower case. */
    static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }

    /** An angle in whole degrees. */
    static String degrees(double deg) {
        return String.format(Locale.ROOT, "%.0f°", deg);
    }

    /** Minutes as hours and minutes, such as 3 h 10 min. */
    static String duration(int minutes) {
        int hours = minutes / HOUR_MIN;
        int left = minutes % HOUR_MIN;
        return hours == 0 ? left + " min" : left == 0 ? hours + " h" : hours + " h " + left + " min";
    }
}
