package gloam.view;

import gloam.journal.FilmFit;
import gloam.journal.FitWarning;

/** What to look into before a fit is trusted, in words. */
final class FitWords {

    private FitWords() {
    }

    /** A warning in one sentence. */
    static String of(FitWarning warning) {
        if (warning instanceof FitWarning.MostDoubted most) {
            return "what is noted of " + most.doubted() + " of the " + Wording.count(most.sheets(), "sheet")
                    + " fits no such film, so that it was left aside; check film, f-number, times and light "
                    + "of these entries";
        } else if (warning instanceof FitWarning.FarFromPublished far) {
            return "the sheets came out " + stops(far.stops()) + (far.stops() > 0 ? " lighter" : " darker")
                    + " than the published film would: words alone cannot show whether the film is "
                    + (far.stops() > 0 ? "faster" : "slower") + " or judged too "
                    + (far.stops() > 0 ? "light" : "dark") + "; measure the tone of a sheet of each night "
                    + "(--tone-stops), or read its scan (gloam journal read)";
        } else if (warning instanceof FitWarning.HeldBack held) {
            return "the sheets alone would make the film " + stops(held.stops())
                    + (held.stops() > 0 ? " slower" : " faster")
                    + " still; judge more of them, or give the film the speed you found in a file of its own";
        } else if (warning instanceof FitWarning.LightOff off) {
            FilmFit.NightLight night = off.night();
            return "the light of the night of " + night.evening()
                    + (night.site().isEmpty() ? "" : " at " + night.site()) + " was probably "
                    + stops(night.lightStops().mean())
                    + (night.lightStops().mean() > 0 ? " brighter" : " darker")
                    + " than recorded; check haze, town and measurement of its "
                    + Wording.count(night.sheets(), "sheet");
        } else if (warning instanceof FitWarning.JudgeOff judge) {
            return "tones in words are probably " + stops(judge.stops())
                    + (judge.stops() > 0 ? " too light" : " too dark")
                    + ", by the measured tones and the stars; compare a sheet with gloam journal guide";
        }
        FitWarning.PacksApart apart = (FitWarning.PacksApart) warning;
        return "packs differ by " + stops(apart.stops()) + ": " + name(apart.slowest()) + " is slower than "
                + name(apart.fastest()) + "; use --batch to fit the one in the camera";
    }

    private static String name(FilmFit.PackSpeed pack) {
        return pack.pack().isEmpty() ? "the pack that was not noted" : "\"" + pack.pack() + "\"";
    }

    private static String stops(double stops) {
        return Wording.number(Math.abs(stops), 1) + " stop" + (Math.abs(stops) < 1.05 ? "" : "s");
    }
}
