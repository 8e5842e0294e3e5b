package gloam.journal;

/** What can spoil a sheet, so that it says nothing about the film. */
public enum Spoiler {
    CLOUD, DEW, FROST, BUMP, WIND, LIGHT_LEAK, STRAY_LIGHT, LATE_OPEN, LATE_CLOSE, EARLY_CLOSE,
            DOUBLE_EXPOSURE,
    DEVELOPMENT, OLD_FILM, OTHER
}
