package gloam.store;

import gloam.frame.Calibration;
import gloam.units.BadInput;

/** A camera's calibration in a file of its own. */
public final class CalibrationFile {

    private static final String FORM = "gloam-calibration/1";

    private CalibrationFile() {
    }

    /**
     * What stands in the file.
     *
     * @param form      the form of the file
     * @param camera    the camera's name for itself
     * @param offsetMag what is to be added to a sky that its frames measure
     * @param errorMag  one standard deviation of that
     */
    private record Kept(String form, String camera, double offsetMag, double errorMag) {

        private Kept {
            if (!form.equals(FORM)) {
                throw new BadInput("the form is " + Shown.quoted(form) + ", not " + FORM
                        + "; give a file that gloam measure --calibrate wrote");
            }
            Calibration.OFFSET.check(offsetMag);
            Calibration.ERROR.check(errorMag);
        }
    }

    /**
     * Reads one.
     *
     * @throws BadInput with the place of what is wrong
     */
    public static Calibration read(Input input) {
        Kept kept = Bound.read(new Tree.Text(input.shown(), 1, input.text()), Kept.class);
        return new Calibration(kept.camera(), kept.offsetMag(), kept.errorMag(), true);
    }

    /** The text of such a file. */
    public static String text(Calibration calibration) {
        return Bound.line(new Kept(FORM, calibration.camera(), rounded(calibration.offsetMag()),
                rounded(calibration.errorMag()))) + "\n";
    }

    private static double rounded(double mag) {
        return Math.round(mag * 1000) / 1000.0;
    }
}
