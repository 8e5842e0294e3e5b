/** A sheet as it is exposed. */
package gloam.sheet;
