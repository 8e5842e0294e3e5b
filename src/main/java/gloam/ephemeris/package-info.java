/**
 * Where things stand in the sky and when they rise, set and darken.
 * Knows the questions and the events; how positions are computed is behind {@link gloam.ephemeris.Ephemeris}.
 */
package gloam.ephemeris;
