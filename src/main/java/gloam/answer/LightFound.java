package gloam.answer;

import gloam.ephemeris.Ephemeris;
import gloam.exposure.ExposureTable.PassingStars;
import gloam.exposure.FilmPlane;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.Atmosphere;
import gloam.light.GroundLight;
import gloam.light.SkyBrightness;
import gloam.light.SkyColour;
import gloam.light.SkyLight;
import gloam.planner.Preview;
import gloam.units.Angle;
import gloam.units.Stops;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * The light that a sheet is exposed for; of a changing sky, the light when the shutter opens.
 *
 * @param sky                brightness of the sky at the frame's centre
 * @param otherSkies         other readings of the same sky
 * @param colour             colour of the sky, if computed
 * @param ground             the ground, if the exposure is for the ground
 * @param cornerStops        light in the frame's corners relative to its centre at the widest f-number, in
 *                           stops; minus is less; empty if the frame is not known or no light falls there
 * @param cornerStopsStopped the same at the smallest aperture
 * @param aimDeclination     declination of the star at the frame's centre
 * @param starDeclination    declination of the stars whose trail limit is given; another one near a pole
 * @param stars              how these stars cross the frame
 * @param awayFromMoon       whether the Moon is in the frame, and the sky is that 8° from it or more
 */
public record LightFound(SkyBrightness sky, List<OtherSky> otherSkies, Optional<Colour> colour,
                         Optional<Ground> ground, OptionalDouble cornerStops,
                         OptionalDouble cornerStopsStopped,
                         Angle aimDeclination, Angle starDeclination, PassingStars stars,
                         boolean awayFromMoon) {

    /** Copies the list. */
    public LightFound {
        otherSkies = List.copyOf(otherSkies);
    }

    /**
     * Another reading of the same sky.
     *
     * @param known         where it comes from
     * @param brightness    what it says
     * @param brighterStops by how many stops it is brighter than the sky exposed for; minus is darker
     */
    public record OtherSky(KnownSky known, SkyBrightness brightness, double brighterStops) {
    }

    /**
     * Colour of a sky.
     *
     * @param bv           colour index B−V
     * @param temperatureK temperature of the black body of that colour, in K
     */
    public record Colour(double bv, double temperatureK) {
    }

    /**
     * Level ground under the sky.
     *
     * @param reflectance share of the light it reflects, 0 to 1
     * @param lux         illuminance on it, in lx
     * @param cdM2        its luminance, in cd/m²
     */
    public record Ground(double reflectance, double lux, double cdM2) {
    }

    /** The light of a question; the ephemeris is asked for only when it is to be computed. */
    static LightFound of(Supplier<Ephemeris> ephemeris, ExposureQuestion question) {
        Lens lens = question.lens();
        SkyBrightness sky = brightness(ephemeris, question, question.sky());
        Optional<KnownSky.Computed> computed = question.computed();
        Angle aimed = computed.map(known -> known.aim().declination(known.site().latitude()))
                .orElse(Angle.ZERO);
        Angle told = PassingStars.told(lens, question.frame(), aimed);
        return new LightFound(sky, question.skies().stream().skip(1).map(other ->
                otherSky(sky, other, brightness(ephemeris, question, other))).toList(),
                computed.map(known -> colour(parts(ephemeris.get(), question, known))),
                computed.flatMap(known -> ground(ephemeris.get(), known, question.groundReflectance())),
                cornerStops(question, lens.fNumbers().get(0)),
                cornerStops(question, lens.fNumbers().get(lens.fNumbers().size() - 1)), aimed, told,
                PassingStars.of(lens, told.degrees(), lossMag(computed))
                .seenBy(question.leastDifferenceDensity()),
                computed.filter(known -> SkySeen.of(ephemeris.get(), question, known).awayFromMoon())
                        .isPresent());
    }

    private static OtherSky otherSky(SkyBrightness used, KnownSky known, SkyBrightness other) {
        return new OtherSky(known, other, Stops.between(used.cdM2(), other.cdM2()));
    }

    private static SkyBrightness brightness(Supplier<Ephemeris> ephemeris, ExposureQuestion question,
            KnownSky sky) {
        if (sky instanceof KnownSky.Metered metered) {
            Preview frame = metered.preview();
            return FilmPlane.luminanceOfFrame(question.lens(), frame.fNumber(), frame.iso(),
                    metered.exposureS());
        }
        return sky instanceof KnownSky.Computed computed ? parts(ephemeris.get(), question, computed).total()
                : ((KnownSky.Measured) sky).brightness();
    }

    private static SkyLight.Sample parts(Ephemeris ephemeris, ExposureQuestion question,
            KnownSky.Computed computed) {
        return SkySeen.of(ephemeris, question, computed).at().apply(computed.openAt());
    }

    private static Colour colour(SkyLight.Sample sky) {
        double bv = sky.colourBv();
        return new Colour(bv, SkyColour.temperatureK(bv));
    }

    private static Optional<Ground> ground(Ephemeris ephemeris, KnownSky.Computed known,
            OptionalDouble reflectance) {
        if (reflectance.isEmpty()) {
            return Optional.empty();
        }
        GroundLight light = new GroundLight(ephemeris, known.site());
        return Optional.of(new Ground(reflectance.getAsDouble(), light.lux(known.openAt()),
                light.landscape(reflectance.getAsDouble(), known.openAt()).cdM2()));
    }

    private static OptionalDouble cornerStops(ExposureQuestion question, FNumber fNumber) {
        if (question.frame().isEmpty()) {
            return OptionalDouble.empty();
        }
        Lens lens = question.lens();
        double cornerMm = question.frame().orElseThrow().halfDiagonalMm();
        Angle corner = lens.projection().offAxis(cornerMm / lens.imageDistanceMm());
        double share = lens.relativeIllumination(corner, fNumber);
        return share > 0 ? OptionalDouble.of(Stops.between(1, share)) : OptionalDouble.empty();
    }

    private static double lossMag(Optional<KnownSky.Computed> computed) {
        return computed.map(known -> Atmosphere.lossMag(known.site().extinctionMag(), known.aim().altitude()))
                .orElse(Atmosphere.usualLossMag());
    }
}
