package gloam.answer;

import java.time.ZonedDateTime;

/** What is odd about a sheet for the journal and may be a slip of the pen. */
public sealed interface SheetDoubt {

    /**
     * The Sun is up while the shutter is open.
     *
     * @param from from when on, by the site's clocks
     */
    record SunUp(ZonedDateTime from) implements SheetDoubt { }

    /** Doubts that need no number. */
    enum Plain implements SheetDoubt {
        /** The camera points below the horizon. */
        AIM_BELOW_HORIZON,
        /** The shutter opens later than now. */
        OPENS_LATER_THAN_NOW
    }
}
