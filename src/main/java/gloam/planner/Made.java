package gloam.planner;

/**
 * An exposure as it is made.
 *
 * @param chosen   what it is in the timetable
 * @param exposure how it is exposed
 * @param slack    how exactly its times are to be kept
 */
record Made(Timetable.Exposed chosen, ExposureChoice exposure, Slack slack) {
}
