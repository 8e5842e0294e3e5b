/**
 * What tests of several packages share: reference tables, seeded samples, named places, a low-precision
 * ephemeris. Knows nothing of any single test.
 */
package gloam.support;
