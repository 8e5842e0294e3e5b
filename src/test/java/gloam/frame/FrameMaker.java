package gloam.frame;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Star;
import gloam.ephemeris.StarCatalogue;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.support.AnalyticEphemeris;
import gloam.units.Angle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/**
 * Makes frames of a digital camera, seeded: stars by the formulas of {@link AnalyticEphemeris}, all else by
 * its own, which share nothing with the program.
 *
 * <p>Light: E = π/4 τ L cos⁴θ / N² of the sky, 2.54e-6 lx · 10^(−0.4 m) through the pupil of a star; level
 * 118 of 255 at 10/S lx s (ISO 12232), coded as sRGB (IEC 61966-2-1); a curve of the camera's own, blur,
 * noise, faulty pixels, dust, the mount's fall-off and JPEG over it.
 */
public final class FrameMaker {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    private static final double TRANSMITTANCE = 0.9;

    public Site site;
    public Instant openedAt = Instant.parse("2027-02-08T21:30:00Z");
    public double exposureS = 10;
    public double fNumber = 2.8284271247461903;
    public double iso = 3200;
    public double focalMm = 24;
    public double widthMm = 36;
    public int width = 1500;
    public int height = 1000;
    public double azimuthDeg = 170;
    public double altitudeDeg = 40;
    public double rollDeg;
    public ToDoubleFunction<Direction> skyMag = direction -> 21;
    public double landDeg = -90;
    public double fasterStops;
    public double cornerStops;
    public double distortion;
    public double contrast;
    public double noise = 1;
    public int hotPixels = 30;
    public int dust = 3;
    public double blurPx = 0.9;
    public double faintestMag = 6;
    public long seed = 1;

    private double[] light;
    private double[][] axes;

    /** A frame of a site. */
    public FrameMaker(Site site) {
        this.site = site;
    }

    /**
     * The frame among the demo's files: the pond's sky to the south, a town behind the hills in the
     * south-east.
     */
    public static FrameMaker demo() {
        FrameMaker demo = new FrameMaker(new Site("Charca Quieta", Angle.ofDegrees(41.05),
                Angle.ofDegrees(-2.15), 1080, ZoneId.of("Europe/Madrid"), 21.4, 0.32, Skyline.FLAT));
        demo.azimuthDeg = 166;
        demo.altitudeDeg = 38;
        demo.rollDeg = 1.5;
        demo.iso = 1600;
        demo.exposureS = 15;
        demo.skyMag = seen -> {
            double low = Math.pow(seen.altitude().cos(), 4);
            double town = 0.9 * low * Math.exp(-Math.pow(Math.toDegrees(Math.abs(seen.azimuth().radians()
                    - Math.toRadians(135))) / 25, 2));
            return 21.35 - 0.35 * low - town;
        };
        return demo;
    }

    private double heightMm() {
        return widthMm * height / width;
    }

    private double halfDiagonalMm() {
        return Math.hypot(widthMm, heightMm()) / 2;
    }

    /** The camera's right, up and ahead in east, north and up. */
    private static double[][] axes(double azimuthDeg, double altitudeDeg, double rollDeg) {
        double a = Math.toRadians(azimuthDeg);
        double h = Math.toRadians(altitudeDeg);
        double r = Math.toRadians(rollDeg);
        double[] right = {Math.cos(a), -Math.sin(a), 0};
        double[] up = {-Math.sin(h) * Math.sin(a), -Math.sin(h) * Math.cos(a), Math.cos(h)};
        double[] ahead = {Math.cos(h) * Math.sin(a), Math.cos(h) * Math.cos(a), Math.sin(h)};
        double[] turnedRight = new double[3];
        double[] turnedUp = new double[3];
        for (int i = 0; i < 3; i++) {
            turnedRight[i] = Math.cos(r) * right[i] - Math.sin(r) * up[i];
            turnedUp[i] = Math.cos(r) * up[i] + Math.sin(r) * right[i];
        }
        return new double[][] {turnedRight, turnedUp, ahead};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    /** Light on the sensor, before the camera makes levels of it, as a share of white. */
    private void expose() {
        axes = axes(azimuthDeg, altitudeDeg, rollDeg);
        light = new double[width * height];
        double pixelMm = widthMm / width;
        double lxSToShare = linear(118 / 255.0) / (10 / iso) * Math.pow(2, fasterStops);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double xMm = (x + 0.5 - width / 2.0) * pixelMm;
                double yMm = (height / 2.0 - y - 0.5) * pixelMm;
                double out = Math.hypot(xMm, yMm);
                double ideal = undistorted(out);
                double theta = Math.atan(ideal / focalMm);
                double[] seen = new double[3];
                for (int i = 0; i < 3; i++) {
                    seen[i] = Math.cos(theta) * axes[2][i] + (out == 0 ? 0 : Math.sin(theta) / out
                            * (xMm * axes[0][i] + yMm * axes[1][i]));
                }
                double altitude = Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, seen[2]))));
                double mag = altitude < landDeg ? 24.5 : skyMag.applyAsDouble(Direction.ofDegrees(
                        (Math.toDegrees(Math.atan2(seen[0], seen[1])) + 360) % 360, altitude));
                double luminance = 1.08e5 * Math.pow(10, -0.4 * mag);
                double lx = Math.PI / 4 * TRANSMITTANCE * luminance / (fNumber * fNumber)
                        * Math.pow(Math.cos(theta), 4) * mount(ideal);
                light[y * width + x] += lx * exposureS * lxSToShare;
            }
        }
        for (Star star : StarCatalogue.builtIn().stars()) {
            if (star.magnitude() <= faintestMag) {
                draw(star, pixelMm, lxSToShare);
            }
        }
    }

    private double mount(double radiusMm) {
        return Math.pow(2, -cornerStops * Math.pow(radiusMm / halfDiagonalMm(), 4));
    }

    private double undistorted(double outMm) {
        double ideal = outMm;
        for (int i = 0; i < 20; i++) {
            ideal = outMm / (1 + distortion * Math.pow(ideal / halfDiagonalMm(), 2));
        }
        return ideal;
    }

    private void draw(Star star, double pixelMm, double lxSToShare) {
        int steps = 24;
        for (int step = 0; step < steps; step++) {
            Instant at = openedAt.plusNanos((long) ((step + 0.5) / steps * exposureS * 1e9));
            Direction seen = EPHEMERIS.position(star, site, at).apparentDirection();
            double az = seen.azimuth().radians();
            double alt = seen.altitude().radians();
            if (Math.toDegrees(alt) < Math.max(0.2, landDeg)) {
                return;
            }
            double[] to = {Math.cos(alt) * Math.sin(az), Math.cos(alt) * Math.cos(az), Math.sin(alt)};
            double ahead = dot(to, axes[2]);
            if (ahead < 0.3) {
                return;
            }
            double xMm = focalMm * dot(to, axes[0]) / ahead;
            double yMm = focalMm * dot(to, axes[1]) / ahead;
            double ideal = Math.hypot(xMm, yMm);
            double stretch = 1 + distortion * Math.pow(ideal / halfDiagonalMm(), 2);
            double x = width / 2.0 + stretch * xMm / pixelMm;
            double y = height / 2.0 - stretch * yMm / pixelMm;
            double airmass = 1 / (Math.sin(alt) + 0.025 * Math.exp(-11 * Math.sin(alt)));
            double starLx = 2.54e-6 * Math.pow(10,
                    -0.4 * (star.magnitude() + site.extinctionMag() * airmass));
            double pupilMm = focalMm / fNumber;
            double whole = starLx * TRANSMITTANCE * Math.PI / 4 * pupilMm * pupilMm * ahead * exposureS
                    / (pixelMm * pixelMm) * lxSToShare * mount(ideal) / steps;
            spot(x, y, whole);
        }
    }

    private void spot(double x, double y, double whole) {
        int reach = (int) Math.ceil(4 * blurPx);
        for (int row = (int) y - reach; row <= y + reach; row++) {
            for (int column = (int) x - reach; column <= x + reach; column++) {
                if (row >= 0 && row < height && column >= 0 && column < width) {
                    double square = Math.pow(column + 0.5 - x, 2) + Math.pow(row + 0.5 - y, 2);
                    light[row * width + column] += whole * Math.exp(-square / (2 * blurPx * blurPx))
                            / (2 * Math.PI * blurPx * blurPx);
                }
            }
        }
    }

    /** sRGB, IEC 61966-2-1. */
    static double linear(double level) {
        return level <= 0.04045 ? level / 12.92 : Math.pow((level + 0.055) / 1.055, 2.4);
    }

    private double level(double share) {
        double code = share <= 0.0031308 ? 12.92 * share : 1.055 * Math.pow(share, 1 / 2.4) - 0.055;
        // a curve of the camera's own about level 118, which stays
        return code + contrast * code * (1 - code) * (code - 118 / 255.0);
    }

    /** The picture with levels of 8 or 16 bits. */
    public BufferedImage picture() {
        expose();
        Random random = new Random(seed);
        for (int i = 0; i < dust; i++) {
            dust(random);
        }
        for (int i = 0; i < light.length; i++) {
            light[i] = Math.max(0, light[i] + noise * Math.sqrt(2e-5 * light[i] + 1e-6)
                    * random.nextGaussian());
        }
        for (int i = 0; i < hotPixels; i++) {
            light[random.nextInt(light.length)] += 0.2 + random.nextDouble();
        }
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double share = light[y * width + x];
                // a warm sky of the same luminance
                int red = eight(share * 1.10);
                int blue = eight(share * 0.85);
                int green = eight(share * (1 - 0.2126 * 1.10 - 0.0722 * 0.85) / 0.7152);
                picture.setRGB(x, y, red << 16 | green << 8 | blue);
            }
        }
        return picture;
    }

    /** A grain of dust on the sensor takes a tenth of the light of a round patch. */
    private void dust(Random random) {
        double x = random.nextDouble() * width;
        double y = random.nextDouble() * height;
        for (int row = Math.max(0, (int) y - 15); row < Math.min(height, y + 15); row++) {
            for (int column = Math.max(0, (int) x - 15); column < Math.min(width, x + 15); column++) {
                if (Math.hypot(row - y, column - x) < 12) {
                    light[row * width + column] *= 0.9;
                }
            }
        }
    }

    private int eight(double share) {
        return (int) Math.round(255 * Math.max(0, Math.min(1, level(Math.min(1, share)))));
    }

    /** The tags of the frame. */
    public ExifTags tags() {
        return new ExifTags().camera("Testkamera").exposureS(exposureS)
                .fNumber(Math.round(fNumber * 10) / 10.0).iso((int) iso)
                .openedAt(openedAt).focalMm(focalMm)
                .sameAs35Mm((int) Math.round(focalMm * 43.2666 / (2 * halfDiagonalMm())));
    }

    /** The frame as a camera writes it. */
    public byte[] jpeg() {
        return tags().into(jpeg(picture(), 0.92f));
    }

    /** A picture as JPEG without tags. */
    public static byte[] jpeg(BufferedImage picture, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(quality);
            writer.write(null, new IIOImage(picture, null, null), how);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
