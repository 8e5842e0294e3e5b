/**
 * How long to expose and what comes out: light at the film, the film's progress, tones and the trail limit.
 * Knows nothing of framings, wishes and files.
 */
package gloam.exposure;
