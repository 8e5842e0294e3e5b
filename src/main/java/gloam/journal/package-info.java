/**
 * What was exposed and how it came out, what that tells of the film, and what to expose next.
 * Knows nothing of files, of plans or of how results are laid out.
 */
package gloam.journal;
