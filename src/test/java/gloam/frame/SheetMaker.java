package gloam.frame;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.ephemeris.StarCatalogue;
import gloam.gear.Site;
import gloam.support.AnalyticEphemeris;
import java.awt.image.BufferedImage;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Makes scans of spent sheets, seeded: stars by the formulas of {@link AnalyticEphemeris}, all else by its
 * own, which share nothing with the program.
 *
 * <p>A print: density from 1.8 (black) to 0.12 (white) over stops of exposure, 0.74 at the mid-tone. A star
 * adds to the sky's exposure as {@link #doublesMag} has it, fainter and brighter ones by Schwarzschild's law
 * of reciprocity failure (1900). Grain as noise of density, blur as a wide line, fall-off towards the
 * corners, dust, a border, the scanner's lid, perspective (Heckbert 1989, "Fundamentals of Texture Mapping
 * and Image Warping", 2.2.3), the scanner's own curve, JPEG.
 */
public final class SheetMaker {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    private static final double STEP_S = 60;

    /** When the shutter was open. */
    public record Open(Instant from, Instant to) {
    }

    public Site site;
    public List<Open> openings = List.of(new Open(Instant.parse("2027-02-08T20:00:00Z"),
            Instant.parse("2027-02-08T21:30:00Z")));
    public double azimuthDeg = 170;
    public double altitudeDeg = 40;
    public double rollDeg;
    public double focalMm = 120;
    public double widthMm = 80;
    public double heightMm = 80;
    public int width = 1100;
    public int height = 1250;
    /** 0 to 3: quarters of a turn; 4 to 7: mirrored besides. */
    public int way;
    public double turnDeg;
    public double perspective;
    public double skyStops = -2.5;
    public double slopeStops = 0.4;
    public double cornerStops = 0.5;
    /** Magnitude of a star on the celestial equator that doubles the exposure of the sky under its spot. */
    public double doublesMag = 4.8;
    /** Schwarzschild's exponent: in a light twice as strong the film works 2 to this times as fast. */
    public double failure = 1.2;
    /** Width of a star's spot, which blur spreads. */
    public double spotMm = 0.04;
    public double landShare;
    public double blurPx = 0.8;
    public double grain = 0.03;
    public int dust = 150;
    public double border = 0.85;
    public double lid = 0.25;
    public double gamma = 2.2;
    /** The film itself: what is dark on the print is light on it. */
    public boolean negative;
    public boolean framed = true;
    /** Densities of a step wedge below the sheet, dark ones to the left: 2 % of the scan high, 80 % wide. */
    public double[] wedge = {};
    /** Stars are hidden meanwhile, in minutes from the first opening. */
    public double cloudFromMin;
    public double cloudToMin;
    /** The camera is moved then, in minutes from the first opening. */
    public double bumpMin = Double.POSITIVE_INFINITY;
    public double bumpAzimuthDeg;
    public double bumpAltitudeDeg;
    public double bumpRollDeg;
    public long seed = 1;

    private double[] stars;
    private double[][] toScan;

    /** A sheet exposed at a site. */
    public SheetMaker(Site site) {
        this.site = site;
    }

    /**
     * The corners of the picture on the scan: upper left, upper right, lower right, lower left of the
     * picture.
     */
    public double[][] corners() {
        return corners(framed ? 0.16 : 0.0);
    }

    private double[][] corners(double margin) {
        double[][] square = new double[4][];
        boolean sideways = way % 2 == 0 == way >= 4;
        double shape = sideways ? widthMm / heightMm : heightMm / widthMm;
        double wide = Math.min(1.0, (double) height / width / shape) * width * (1 - 2 * margin);
        for (int i = 0; i < 4; i++) {
            double x = (i == 1 || i == 2 ? 0.5 : -0.5) * wide;
            double y = (i >= 2 ? 0.5 : -0.5) * wide * shape;
            double a = Math.toRadians(turnDeg);
            double depth = 1 + perspective * y / height;
            square[i] = new double[] {width / 2.0 + (x * Math.cos(a) - y * Math.sin(a)) / depth,
                height / 2.0 + (x * Math.sin(a) + y * Math.cos(a)) / depth};
        }
        double[][] corners = new double[4][];
        for (int i = 0; i < 4; i++) {
            corners[i] = square[((way < 4 ? i + way : 8 + way - i) % 4 + 4) % 4];
        }
        return corners;
    }

    /** From the unit square to four corners. */
    private static double[][] projective(double[][] c) {
        double sx = c[0][0] - c[1][0] + c[2][0] - c[3][0];
        double sy = c[0][1] - c[1][1] + c[2][1] - c[3][1];
        double dx1 = c[1][0] - c[2][0];
        double dx2 = c[3][0] - c[2][0];
        double dy1 = c[1][1] - c[2][1];
        double dy2 = c[3][1] - c[2][1];
        double det = dx1 * dy2 - dx2 * dy1;
        double g = (sx * dy2 - dx2 * sy) / det;
        double h = (dx1 * sy - sx * dy1) / det;
        return new double[][] {{c[1][0] - c[0][0] + g * c[1][0], c[3][0] - c[0][0] + h * c[3][0], c[0][0]},
            {c[1][1] - c[0][1] + g * c[1][1], c[3][1] - c[0][1] + h * c[3][1], c[0][1]}, {g, h, 1}};
    }

    private static double[][] inverse(double[][] m) {
        double[][] adjugate = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                adjugate[j][i] = m[(i + 1) % 3][(j + 1) % 3] * m[(i + 2) % 3][(j + 2) % 3]
                        - m[(i + 1) % 3][(j + 2) % 3] * m[(i + 2) % 3][(j + 1) % 3];
            }
        }
        return adjugate;
    }

    private static double[] map(double[][] m, double u, double v) {
        double w = m[2][0] * u + m[2][1] * v + m[2][2];
        return new double[] {(m[0][0] * u + m[0][1] * v + m[0][2]) / w,
            (m[1][0] * u + m[1][1] * v + m[1][2]) / w};
    }

    /** The place of a direction on the sheet in mm to the right and up; null behind the camera. */
    private double[] onSheet(Direction seen, boolean bumped) {
        double a = Math.toRadians(azimuthDeg + (bumped ? bumpAzimuthDeg : 0));
        double h = Math.toRadians(altitudeDeg + (bumped ? bumpAltitudeDeg : 0));
        double r = Math.toRadians(rollDeg + (bumped ? bumpRollDeg : 0));
        double east = Math.cos(seen.altitude().radians()) * Math.sin(seen.azimuth().radians());
        double north = Math.cos(seen.altitude().radians()) * Math.cos(seen.azimuth().radians());
        double zenith = Math.sin(seen.altitude().radians());
        double ahead = east * Math.cos(h) * Math.sin(a) + north * Math.cos(h) * Math.cos(a)
                + zenith * Math.sin(h);
        if (ahead < 0.3 || zenith < 0.005) {
            return null;
        }
        double right = east * Math.cos(a) - north * Math.sin(a);
        double up = -east * Math.sin(h) * Math.sin(a) - north * Math.sin(h) * Math.cos(a)
                + zenith * Math.cos(h);
        return new double[] {focalMm * (right * Math.cos(r) - up * Math.sin(r)) / ahead,
            focalMm * (up * Math.cos(r) + right * Math.sin(r)) / ahead};
    }

    private void expose() {
        stars = new double[width * height];
        toScan = projective(corners());
        for (Star star : StarCatalogue.builtIn().stars()) {
            if (star.magnitude() < doublesMag + 1.5) {
                openings.forEach(open -> trail(star, open));
            }
        }
    }

    private void trail(Star star, Open open) {
        double lastS = (open.to.toEpochMilli() - open.from.toEpochMilli()) / 1000.0;
        int steps = (int) Math.ceil(lastS / STEP_S);
        double sinceFirstMin = (open.from.toEpochMilli() - openings.get(0).from.toEpochMilli()) / 60_000.0;
        List<Direction> seen = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            seen.add(EPHEMERIS.position(star, site, open.from.plusMillis(Math.round(1000 * lastS * i
                    / steps))).apparentDirection());
        }
        for (int i = 0; i < steps; i++) {
            boolean bumped = sinceFirstMin + i * lastS / steps / 60 >= bumpMin;
            double[] from = onSheet(seen.get(i), bumped);
            double[] to = onSheet(seen.get(i + 1), bumped);
            if (from == null || to == null || Math.max(Math.abs(from[0]), Math.abs(from[1])) > 1.2
                    * Math.max(widthMm, heightMm)) {
                continue;
            }
            double sine = Math.sin(seen.get(i).altitude().radians());
            double airmass = 1 / (sine + 0.025 * Math.exp(-11 * sine));
            double mag = star.magnitude() + site.extinctionMag() * airmass;
            double lengthMm = Math.hypot(to[0] - from[0], to[1] - from[1]);
            // exposure under a star goes with the time that its spot dwells
            double slower = focalMm * 7.292e-5 * lastS / steps / Math.max(1e-6, lengthMm);
            double added = Math.pow(2, skyStops) * Math.pow(10, 0.4 * failure * (doublesMag - mag))
                    * slower;
            double pxAMm = (double) width / widthMm;
            int parts = (int) Math.max(1, Math.ceil(2 * lengthMm * pxAMm));
            for (int part = 0; part < parts; part++) {
                double share = (part + 0.5) / parts;
                double minute = sinceFirstMin + (i + share) * lastS / steps / 60;
                if (minute >= cloudFromMin && minute < cloudToMin) {
                    continue;
                }
                double x = from[0] + share * (to[0] - from[0]);
                double y = from[1] + share * (to[1] - from[1]);
                if (Math.abs(x) < widthMm / 2 && Math.abs(y) < heightMm / 2) {
                    double[] at = map(toScan, x / widthMm + 0.5, 0.5 - y / heightMm);
                    double spacingPx = lengthMm / parts * scalePx();
                    double wide = blurPx * Math.sqrt(2 * Math.PI);
                    spot(at[0], at[1], added * spotMm * scalePx() / wide * spacingPx / wide);
                }
            }
        }
    }

    private double scalePx() {
        double[][] c = corners();
        return Math.hypot(c[1][0] - c[0][0], c[1][1] - c[0][1]) / widthMm;
    }

    private void spot(double x, double y, double whole) {
        int reach = (int) Math.ceil(4 * blurPx);
        for (int row = (int) y - reach; row <= y + reach; row++) {
            for (int column = (int) x - reach; column <= x + reach; column++) {
                if (row >= 0 && row < height && column >= 0 && column < width) {
                    double square = Math.pow(column + 0.5 - x, 2) + Math.pow(row + 0.5 - y, 2);
                    stars[row * width + column] += whole * Math.exp(-square / (2 * blurPx * blurPx));
                }
            }
        }
    }

    /**
     * The magnitude, the air included, of a star on the equator that adds a tenth to the density of its spot.
     */
    public double limitMag() {
        double sky = Math.pow(2, skyStops);
        double least = 0;
        double most = 100;
        for (int i = 0; i < 60; i++) {
            double share = (least + most) / 2;
            boolean shows = density(sky) - density(sky * (1 + share)) > 0.1;
            least = shows ? least : share;
            most = shows ? share : most;
        }
        return doublesMag - 2.5 * Math.log10(least) / failure;
    }

    /** Density of the print after an exposure in mid-tones: a logistic curve of its logarithm. */
    static double density(double exposure) {
        double mid = (0.74 - 0.12) / (1.8 - 0.12);
        double power = 1.4 / ((1.8 - 0.12) * mid * (1 - mid)) / Math.log(10);
        return 0.12 + (1.8 - 0.12) / (1 + Math.pow(exposure, power) * (1 - mid) / mid);
    }

    /** The scan. */
    public BufferedImage picture() {
        expose();
        Random random = new Random(seed);
        double[][] toSheet = inverse(toScan);
        double[][] toPaper = inverse(projective(corners(framed ? 0.09 : 0)));
        BufferedImage scan = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double[] at = map(toSheet, x + 0.5, y + 0.5);
                double[] paper = map(toPaper, x + 0.5, y + 0.5);
                double share = inside(at) ? Math.pow(10, -(density(exposure(at, stars[y * width + x]))
                        + grain * random.nextGaussian())) : inside(paper) ? border : lid;
                double level = Math.pow(Math.max(0, Math.min(1, share)), 1 / gamma)
                        + 0.006 * random.nextGaussian();
                int eight = (int) Math.round(255 * Math.max(0, Math.min(1, negative && inside(at) ? 1 - level
                        : level)));
                scan.setRGB(x, y, eight << 16 | eight << 8 | eight);
            }
        }
        for (int x = width / 10; wedge.length > 0 && x < width * 9 / 10; x++) {
            int step = wedge.length - 1 - (x - width / 10) * wedge.length / (width * 8 / 10);
            double level = Math.pow(Math.pow(10, -wedge[Math.max(0, step)]), 1 / gamma);
            for (int y = height * 97 / 100; y < height * 99 / 100; y++) {
                int eight = (int) Math.round(255 * level + 1.5 * random.nextGaussian());
                scan.setRGB(x, y, Math.max(0, Math.min(255, eight)) * 0x10101);
            }
        }
        for (int i = 0; i < dust; i++) {
            int x = random.nextInt(width - 4);
            int y = random.nextInt(height - 4);
            for (int j = 0; j < 9; j++) {
                scan.setRGB(x + j % 3, y + j / 3, 0xe0e0e0);
            }
        }
        return scan;
    }

    private static boolean inside(double[] at) {
        return at[0] >= 0 && at[0] <= 1 && at[1] >= 0 && at[1] <= 1;
    }

    private double exposure(double[] at, double star) {
        if (at[1] > 1 - landShare) {
            return Math.pow(2, skyStops - 3);
        }
        double out = Math.hypot(at[0] - 0.5, at[1] - 0.5) / Math.sqrt(0.5);
        double fallOff = Math.pow(2, -cornerStops * Math.pow(out, 4));
        return (Math.pow(2, skyStops + slopeStops * (at[1] - 0.5)) + star) * fallOff;
    }

    /** The scan as JPEG. */
    public byte[] jpeg() {
        return FrameMaker.jpeg(picture(), 0.88f);
    }
}
