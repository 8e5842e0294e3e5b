package gloam.view;

import gloam.answer.SheetDoubt;
import java.time.temporal.ChronoUnit;

/** Doubts about a sheet for the journal in words, with the option to look at. */
public final class SheetDoubtWords {

    private SheetDoubtWords() {
    }

    /** Such as "the shutter opens later than now; check --open". */
    public static String of(SheetDoubt doubt) {
        if (doubt instanceof SheetDoubt.SunUp up) {
            return "the Sun is up while the shutter is open, from "
                    + up.from().toLocalDateTime().truncatedTo(ChronoUnit.MINUTES) + " on; check --open";
        }
        return switch ((SheetDoubt.Plain) doubt) {
            case AIM_BELOW_HORIZON -> "the camera points below the horizon; check --altitude";
            case OPENS_LATER_THAN_NOW -> "the shutter opens later than now; check --open";
        };
    }
}
