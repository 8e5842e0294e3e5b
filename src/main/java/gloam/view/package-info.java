/**
 * Results as people and programs read them: the zone applied once, laid out as text or handed on as JSON.
 * Knows nothing of files and options.
 */
package gloam.view;
