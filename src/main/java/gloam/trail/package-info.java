/**
 * How things in the sky run across the frame: framing, trails, their length, direction and bend.
 * Knows nothing of film and exposure.
 */
package gloam.trail;
