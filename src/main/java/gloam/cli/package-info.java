/**
 * The command line: options become values, a command asks for a report, the report is printed.
 * Knows nothing of physics.
 */
package gloam.cli;
