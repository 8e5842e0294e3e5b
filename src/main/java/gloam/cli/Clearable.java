package gloam.cli;

import java.util.List;

/** What a correction can take back, and the options that say it. */
enum Clearable {
    TONE("--tone", "--tone-stops", "--tone-spread"),
    FAINTEST("--faintest"),
    KEPT("--kept"),
    SPOILED_BY("--spoiled-by"),
    NOTE("--note"),
    WISH("--wish"),
    PICTURE("--picture"),
    BATCH("--batch"),
    TEMPERATURE("--temperature"),
    AIM("--azimuth", "--altitude", "--plan"),
    SITE("--trip", "--site", "--place", "--lat", "--lon", "--height", "--zone"),
    SKY("--sky-mag-arcsec2"),
    WITHDRAW("--withdraw");

    private final List<String> options;

    Clearable(String... options) {
        this.options = List.of(options);
    }

    /** The options that say it. */
    List<String> options() {
        return options;
    }
}
