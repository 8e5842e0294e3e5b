/** What a digital frame of the night sky measures: light, direction by direction, and where it pointed. */
package gloam.frame;
