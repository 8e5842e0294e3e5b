package gloam.ephemeris;

import gloam.units.Label;

/** The bodies of the solar system that can matter on a sheet, in the order in which they are listed. */
public enum Body implements Target {
    SUN, MOON, MERCURY, VENUS, MARS, JUPITER, SATURN, URANUS, NEPTUNE;

    private final String label = Label.of(this);

    /** The name in lower case, as options, files and reports write it. */
    public String label() {
        return label;
    }

    /** The name as a sentence has it: Mars, but the Moon. */
    public String properName() {
        String name = name().charAt(0) + label.substring(1);
        return this == SUN || this == MOON ? "the " + name : name;
    }
}
