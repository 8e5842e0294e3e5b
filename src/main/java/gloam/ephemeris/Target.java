package gloam.ephemeris;

/** Something in the sky whose place can be asked for. */
public sealed interface Target permits Body, Star {
}
