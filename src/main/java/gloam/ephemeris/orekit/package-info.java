/**
 * The only door to Orekit: positions from the ephemeris in the jar, with an explicit data context.
 * Knows nothing of film, planning or reports.
 */
package gloam.ephemeris.orekit;
