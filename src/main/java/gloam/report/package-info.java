/**
 * Results as people and programs read them: rounded once, the zone applied once, then laid out.
 * Knows nothing of files and options.
 */
package gloam.report;
