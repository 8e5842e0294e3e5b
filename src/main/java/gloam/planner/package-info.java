/**
 * Sets sky, exposure and trails against each other: wishes, windows and the timetable.
 * Knows nothing of files, reports and the clock.
 */
package gloam.planner;
