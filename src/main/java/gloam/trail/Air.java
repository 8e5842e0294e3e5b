package gloam.trail;

import gloam.ephemeris.Refraction;

/**
 * The air a camera looks through.
 *
 * @param refraction how far it lifts what is seen, nothing at zero pressure
 */
record Air(Refraction refraction) {

    static final Air NONE = new Air(new Refraction(0, 0));

    static Air at(double heightM) {
        return new Air(Refraction.ofHeight(heightM));
    }

    /** Where that is seen which stands in a direction without air. */
    SkyVector lifted(SkyVector airless) {
        return refraction.pressureHPa() == 0 ? airless
                : airless.atAltitude(refraction.apparent(airless.altitude()));
    }

    /** The direction without air of what is seen in a direction. */
    SkyVector lowered(SkyVector seen) {
        return refraction.pressureHPa() == 0 ? seen : seen.atAltitude(refraction.airless(seen.altitude()));
    }
}
