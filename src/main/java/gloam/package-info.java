/** The program's entry; the only place that touches the standard streams. */
package gloam;
