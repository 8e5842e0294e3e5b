/**
 * Values every other package is built from: angles, spans of time, stops, smooth curves, allowed ranges and
 * the one user error. Knows nothing of sky, film or files.
 */
package gloam.units;
