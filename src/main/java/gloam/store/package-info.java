/**
 * Files in: trips, films and skylines read with the place of every value, so that errors can name it.
 * Knows nothing of how anything is computed.
 */
package gloam.store;
