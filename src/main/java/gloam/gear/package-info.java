/**
 * What stands on the ground: the site with its skyline, the camera with its lens and frame.
 * Knows nothing of film, sky or time.
 */
package gloam.gear;
