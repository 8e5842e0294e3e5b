package gloam.frame;

/**
 * A point of light in a frame, perhaps a star.
 *
 * @param x    its middle in pixels from the left edge; the middle of the first pixel is 0.5
 * @param y    its middle in pixels from the upper edge
 * @param flux its light over the sky's, in pixels of white
 */
public record Detection(double x, double y, double flux) {
}
