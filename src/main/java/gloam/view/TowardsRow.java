package gloam.view;

import gloam.answer.InstantSky;
import gloam.ephemeris.Direction;
import gloam.light.LightSource;
import gloam.units.Label;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The light of one direction of the sky.
 *
 * @param direction   the direction
 * @param magArcsec2  its brightness
 * @param spreadStops its standard deviation in stops
 * @param sources     what each source has of it, in the order in which they are added up
 */
record TowardsRow(Direction direction, double magArcsec2, double spreadStops, List<SourceRow> sources) {

    private static final double LEAST_SHOWN = 0.005;

    /**
     * What one source gives.
     *
     * @param source     its name
     * @param cdM2       its luminance
     * @param lightShare its share of the light, 0 to 1
     */
    record SourceRow(String source, double cdM2, double lightShare) {
    }

    static TowardsRow of(InstantSky.Towards towards) {
        double allCdM2 = towards.light().total().cdM2();
        return new TowardsRow(towards.direction(), towards.light().total().magArcsec2(),
                towards.light().spreadStops(), Arrays.stream(LightSource.values()).map(source ->
                new SourceRow(Label.of(source), towards.light().of(source).cdM2(),
                towards.light().of(source).cdM2() / allCdM2)).toList());
    }

    /** Its brightness, how well that is known, and the sources that count. */
    String words() {
        return Wording.bearing(direction.azimuth().degrees()) + " "
                + Wording.number(direction.azimuth().degrees(), 0) + "°, altitude "
                + Wording.number(direction.altitude().degrees(), 0) + "°: "
                + Wording.number(magArcsec2, 2) + " mag/arcsec² ± " + Wording.number(spreadStops, 2)
                + " stops: " + shares();
    }

    /** The shares of the sources that count. */
    String shares() {
        return Arrays.stream(LightSource.values()).filter(source -> share(source) >= LEAST_SHOWN)
                .map(source -> InstantReport.words(source) + " "
                + Wording.number(100 * share(source), 0) + " %")
                .collect(Collectors.joining(", "));
    }

    private double share(LightSource source) {
        return sources.get(source.ordinal()).lightShare();
    }
}
