/**
 * How bright the sky and the ground are: dark sky, moonlight and twilight added as luminances.
 * Knows nothing of film and lenses.
 */
package gloam.light;
