/**
 * The picture that a sheet will carry, computed point by point: sky, trails and skyline on film.
 * Knows nothing of file formats and of words.
 */
package gloam.proof;
