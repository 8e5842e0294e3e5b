/**
 * What the light falls on: film stocks, their speed, layers, reciprocity law and tone curve.
 * Knows nothing of sky, lens or files.
 */
package gloam.film;
