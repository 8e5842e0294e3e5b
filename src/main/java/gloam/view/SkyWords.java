package gloam.view;

import gloam.planner.SkyKind;
import gloam.planner.WindowSky;

/** Puts kinds of sky into words. */
final class SkyWords {

    private SkyWords() {
    }

    /** What a window stands in, how long that lasts, and where the Moon is, where that matters. */
    static String of(WindowSky sky, String span, String moon) {
        return switch (sky.kind()) {
            case DARK -> sky.moonless() ? "moonless and dark " + span : "dark " + span + ", " + moon;
            case MOONLIT -> moon + ", dark " + span;
            case DUSK -> "opens in dusk, Sun down " + span;
            case DAWN -> "closes in dawn, Sun down " + span;
            case ANY -> "Sun down " + span;
        };
    }

    /** What is required, in words that can stand before "only 20:10–21:30". */
    static String what(SkyKind.Part part) {
        return switch (part) {
            case DARK -> "dark";
            case NO_MOONLIGHT -> "free of moonlight";
            case MOON_UP -> "Moon up";
            case DUSK -> "dusk";
            case DAWN -> "dawn";
        };
    }

    /** Why it is so at no minute of a night. */
    static String never(SkyKind.Part part) {
        return switch (part) {
            case DARK -> "the Sun does not go below -18°";
            case NO_MOONLIGHT -> "moonlight all night";
            case MOON_UP -> "the Moon does not rise";
            case DUSK -> "no evening twilight";
            case DAWN -> "no morning twilight";
        };
    }
}
