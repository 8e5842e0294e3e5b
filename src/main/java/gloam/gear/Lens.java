package gloam.gear;

import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Range;
import gloam.units.Stops;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.Locale;

/**
 * A lens as it stands on the camera.
 *
 * @param focalLengthMm  focal length f in mm, 5 to 2000
 * @param fNumbers       the f-numbers it can be set to, growing, one at least
 * @param transmittance  share of light that passes the glass on axis, 0.2 to 1
 * @param focusM         distance from the lens it is focused at, in m, {@link #focus 1.1 f} or more; infinite
 *                       for the stars
 * @param spotUm         width of a star's spot from the lens's own faults and the film, without defocus and
 *                       diffraction, in µm, 1 to 1000
 * @param filterStops    light taken by a filter, in stops, 0 to 20
 * @param projection     how it maps angle to distance from the centre
 * @param vignetting     what its mount takes away from the axis
 */
public record Lens(double focalLengthMm, List<FNumber> fNumbers, double transmittance, double focusM,
                   double spotUm, double filterStops, Projection projection, Vignetting vignetting) {

    /** Allowed focal lengths. */
    public static final Range FOCAL_LENGTH = new Range("focal length", 5, 2000, "mm");
    /** Allowed transmittances. */
    public static final Range TRANSMITTANCE = new Range("transmittance", 0.2, 1, "");
    /** Allowed T-numbers. */
    public static final Range T_NUMBER = new Range("T-number", 0.7, 1200, "");
    /** Allowed focus distances of any lens; infinity is said by leaving the focus out. */
    public static final Range FOCUS = new Range("focus distance", 0.1, Double.POSITIVE_INFINITY, "m");
    /** The longest image distance, in focal lengths: ten times life size; common practice, no source. */
    public static final double MOST_EXTENSION = 11;
    /** Allowed widths of a spot. */
    public static final Range SPOT = new Range("spot", 1, 1000, "um");
    /** Allowed diameters of a pinhole. */
    public static final Range PINHOLE = new Range("pinhole", 0.05, 1, "mm");
    /** Allowed filter stops. */
    public static final Range FILTER = new Range("filter", 0, 20, "stops");

    private static final double DIFFRACTION_WAVELENGTH_MM = 550e-6;

    /** Refuses a number outside its range with {@link gloam.units.BadInput}. */
    public Lens {
        FOCAL_LENGTH.check(focalLengthMm);
        TRANSMITTANCE.check(transmittance);
        focus(focalLengthMm).check(focusM);
        SPOT.check(spotUm);
        FILTER.check(filterStops);
        fNumbers = List.copyOf(new TreeSet<>(fNumbers));
        if (fNumbers.isEmpty()) {
            throw new BadInput("a lens needs an f-number; give at least one");
        }
    }

    /** Allowed focus distances of a lens of that focal length, to a micrometre. */
    public static Range focus(double focalLengthMm) {
        double nearestMm = focalLengthMm * MOST_EXTENSION / (MOST_EXTENSION - 1);
        double nearestM = Math.max(FOCUS.least(), Math.round(nearestMm * 1000) / 1e6);
        return new Range(FOCUS.what(), nearestM, FOCUS.most(), FOCUS.unit());
    }

    /** The same lens with other f-numbers to choose from. */
    public Lens with(List<FNumber> others) {
        return new Lens(focalLengthMm, others, transmittance, focusM, spotUm, filterStops, projection,
                vignetting);
    }

    /** Image distance over focal length, 1 at infinity: thin lens, s/(s−f) for a focus at s. */
    public double extension() {
        double focusMm = focusM * 1000;
        return Double.isInfinite(focusMm) ? 1 : focusMm / (focusMm - focalLengthMm);
    }

    /** Distance of the film from the lens in mm, which sets the picture's scale: f at infinity, else more. */
    public double imageDistanceMm() {
        return focalLengthMm * extension();
    }

    /** Share of the light that passes glass and filter, on axis. */
    public double transmission() {
        return transmittance * Stops.factor(-filterStops);
    }

    /** T-number of an f-number: the f-number at which a lens without loss of light passes as much, N/√τ. */
    public double tNumber(FNumber fNumber) {
        return fNumber.exact() / Math.sqrt(transmittance);
    }

    /**
     * The transmittance of a lens known by the T-number of one of its f-numbers: (N/T)².
     *
     * @throws BadInput when the T-number is below the f-number, or so far above that the share is not allowed
     */
    public static double transmittanceOf(FNumber fNumber, double tNumber) {
        if (tNumber < fNumber.exact()) {
            throw new BadInput(String.format(Locale.ROOT,
                    "T-number %.4g is below the f-number %.4g, markings taken "
                    + "exactly; a lens passes no more light than comes in, so its T-number is the f-number "
                    + "or more", tNumber, fNumber.exact()));
        }
        return TRANSMITTANCE.check(square(fNumber.exact() / tNumber));
    }

    /** Share of a wide sky's light left by glass, filter and bellows; 1 for a clear lens at infinity. */
    public double throughput() {
        return transmission() / square(extension());
    }

    /** A wide sky's light at an angle off the axis as a share of that on it, at an f-number. */
    public double relativeIllumination(Angle offAxis, FNumber fNumber) {
        return projection.relativeIllumination(offAxis) * mountShare(offAxis, fNumber);
    }

    /** Share of light at an angle off the axis that the mount lets by, at an f-number. */
    public double mountShare(Angle offAxis, FNumber fNumber) {
        return vignetting.share(projection.radius(offAxis) * imageDistanceMm(), fNumber);
    }

    /** Nearest focus in m that still draws infinity within a spot of that width: f²/(N c) + f. */
    public double hyperfocalM(FNumber fNumber, double spotMm) {
        return (square(focalLengthMm) / (fNumber.exact() * spotMm) + focalLengthMm) / 1000;
    }

    /** The one of its f-numbers at which a star's spot is narrowest. */
    public FNumber sharpestFNumber() {
        return fNumbers.stream().min(Comparator.comparingDouble(this::spotMm)).orElseThrow();
    }

    /** Width of a star's disc from defocus alone, in mm: f²/(N(s−f)), exact for a thin lens. */
    public double defocusMm(FNumber fNumber) {
        return focalLengthMm * (extension() - 1) / fNumber.exact();
    }

    /** Diameter of the first dark ring of diffraction at 550 nm, in mm: 2.44 λ N. */
    public double diffractionMm(FNumber fNumber) {
        return 2.44 * DIFFRACTION_WAVELENGTH_MM * fNumber.exact();
    }

    /** Width of a star's spot in mm: defocus, diffraction and spot of lens and film in quadrature. */
    public double spotMm(FNumber fNumber) {
        return Math.sqrt(square(defocusMm(fNumber)) + square(diffractionMm(fNumber)) + square(spotUm / 1000));
    }

    private static double square(double value) {
        return value * value;
    }
}
