package gloam.gear;

import gloam.units.Angle;

/**
 * How a lens maps the angle θ from its axis to the distance r from the frame's centre.
 *
 * <p>f is the focal length, or the image distance of a lens focused nearer than infinity. The light at an
 * angle follows from the mapping alone: a round stop seen at θ gives cos θ of the flux, spread over the area
 * that the mapping makes of a piece of sky. For the rectilinear lens this is the cos⁴ law.
 */
public enum Projection {
    /** r = f tan θ: straight lines stay straight; sees less than 90° from its axis. */
    RECTILINEAR {
        @Override
        public double radius(Angle offAxis) {
            return offAxis.radians() < Math.PI / 2 ? Math.tan(offAxis.radians()) : Double.POSITIVE_INFINITY;
        }

        @Override
        public Angle offAxis(double radius) {
            return Angle.ofRadians(Math.atan(radius));
        }

        @Override
        double relativeIllumination(Angle offAxis) {
            return Math.pow(Math.max(0, offAxis.cos()), 4);
        }
    },
    /** r = f θ: a fisheye whose scale is even along the radius. */
    EQUIDISTANT {
        @Override
        public double radius(Angle offAxis) {
            return offAxis.radians();
        }

        @Override
        public Angle offAxis(double radius) {
            return Angle.ofRadians(Math.min(radius, Math.PI));
        }

        @Override
        double relativeIllumination(Angle offAxis) {
            double angleRad = Math.abs(offAxis.radians());
            return angleRad == 0 ? 1 : Math.max(0, Math.cos(angleRad)) * Math.sin(angleRad) / angleRad;
        }
    },
    /** r = 2 f sin(θ/2): a fisheye that keeps areas. */
    EQUISOLID {
        @Override
        public double radius(Angle offAxis) {
            return 2 * Math.sin(offAxis.radians() / 2);
        }

        @Override
        public Angle offAxis(double radius) {
            return Angle.ofRadians(2 * Math.asin(Math.min(radius / 2, 1)));
        }

        @Override
        double relativeIllumination(Angle offAxis) {
            return Math.max(0, offAxis.cos());
        }
    };

    /**
     * Distance from the frame's centre in units of f.
     *
     * @param offAxis angle from the axis, 0° to 180°
     * @return infinity where the lens does not see
     */
    public abstract double radius(Angle offAxis);

    /**
     * Angle from the axis, the inverse of {@link #radius(Angle)}.
     *
     * @param radius distance from the frame's centre in units of f, not negative; beyond the image circle of
     *               a fisheye the answer stays at 180°
     */
    public abstract Angle offAxis(double radius);

    /** Light at an angle from the axis as a share of that on it, 0 from 90° on. */
    abstract double relativeIllumination(Angle offAxis);
}
