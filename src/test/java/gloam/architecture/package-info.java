/**
 * The design as tests: layers, walls and habits of the code.
 * Knows nothing of what the code computes.
 */
package gloam.architecture;
