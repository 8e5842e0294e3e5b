package gloam.answer;

import gloam.frame.TrailRise;
import gloam.units.Stops;

/**
 * A star's trail on a scan, the star being a lamp of known light.
 *
 * @param brighterMag by how much the star is brighter than the limit predicted where it runs
 * @param timesSky    light that its trail is predicted to add to the sky's, which is one
 * @param skyDensity  density of the sky beside it over the sheet's border, on the scan
 * @param density     what the trail adds to that where it is highest, on the scan
 * @param seen        whether it can be told from the sky
 */
record Lamp(double brighterMag, double timesSky, double skyDensity, double density, boolean seen) {

    /**
     * A trail as predicted and as it rises on a scan.
     *
     * @param border   light of the border as a share of the scan's white
     * @param negative whether the scan shows a negative
     */
    static Lamp of(Trails.Track track, TrailRise rise, double border, boolean negative) {
        Trails.Mark mark = track.mark().orElseThrow();
        return new Lamp(mark.limitMag() - track.magnitude(), Stops.factor(mark.stopsOverSky()) - 1,
                rise.skyDensity(border, negative), rise.density(negative), rise.seen());
    }
}
