package gloam.ephemeris.orekit;

import gloam.units.BadInput;
import gloam.units.Interval;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.time.Instant;
import org.orekit.bodies.CelestialBodies;
import org.orekit.time.AbsoluteDate;
import org.orekit.utils.Constants;

/** Sun, Moon and planets by a file of the user's in JPL's binary form. */
final class JplFile implements PlanetSource {

    private static final int LEAST_BYTES = 2856;
    private static final int START_OFFSET = 2652;
    private static final int END_OFFSET = 2660;
    private static final int NUMBER_OFFSET = 2840;
    private static final int GREATEST_NUMBER = 9999;
    /** Number of the files of another institute, whose records Orekit reads by another head. */
    private static final int FOREIGN_NUMBER = 100;
    /** Three ints for each item: where it begins, coefficients, parts of a record. */
    private static final int POINTERS_OFFSET = 2696;
    private static final int POINTERS_BYTES = 12;
    private static final int ITEMS = 13;
    /** More coefficients or parts no file has; a damaged header could ask for more memory than there is. */
    private static final int MOST = 100;
    private static final double J2000_JD = 2451545;
    /** Julian dates of some 20,000 years. */
    private static final double MOST_JD = 1e7;
    private static final double UNIX_EPOCH_JD = 2440587.5;
    /** Before 1972 UTC ran at another rate than the seconds of atomic time. */
    private static final Instant FIRST_UTC = Instant.parse("1972-01-01T00:00:00Z");
    private static final Instant LAST = Instant.parse("2500-01-01T00:00:00Z");
    /** Left out at both ends, for light on its way and for the difference of time scales. */
    private static final long MARGIN_S = 86_400;

    private final UserFile file;
    private final EarthOrientation earthOrientation;
    private final double originS;
    private final Interval covers;
    private final CelestialBodies bodies;

    private JplFile(UserFile file, EarthOrientation earthOrientation, byte[] content) throws IOException {
        ByteBuffer header = header(content);
        this.file = file;
        this.earthOrientation = earthOrientation;
        double startJd = header.getDouble(START_OFFSET);
        this.originS = (startJd - J2000_JD) * Constants.JULIAN_DAY;
        this.covers = covers(startJd, header.getDouble(END_OFFSET));
        this.bodies = earthOrientation.bodies(new DataFile(file.path().getFileName().toString(), content));
    }

    /**
     * Opens a file.
     *
     * @throws BadInput when it cannot be read or is no such file
     */
    static JplFile read(Path path, EarthOrientation earthOrientation) {
        UserFile file = new UserFile("ephemeris", path,
                "Give a file in JPL's binary form, such as unxp2000.405.");
        try {
            return new JplFile(file, earthOrientation, file.bytes());
        } catch (IOException e) {
            throw file.unreadable(e);
        }
    }

    @Override
    public Interval covers() {
        return covers;
    }

    @Override
    public double originS() {
        return originS;
    }

    @Override
    public CelestialBodies at(AbsoluteDate date) {
        return bodies;
    }

    @Override
    public RuntimeException lacking(String body, AbsoluteDate date) {
        return file.unreadable("by its head it covers " + covers.start() + " … " + covers.endExclusive()
                + ", but it holds no sound place of " + body + " for "
                + date.getComponents(earthOrientation.scales().getUTC()).getDate());
    }

    private static ByteBuffer header(byte[] content) throws IOException {
        ByteBuffer header = ByteBuffer.wrap(content);
        if (content.length < LEAST_BYTES
                || !numbered(header) && !numbered(header.order(ByteOrder.LITTLE_ENDIAN))) {
            throw new IOException("it is not in JPL's binary form");
        }
        for (int item = 0; item < ITEMS; item++) {
            int at = POINTERS_OFFSET + item * POINTERS_BYTES + (item == ITEMS - 1 ? Integer.BYTES : 0);
            if (!sound(header.getInt(at + Integer.BYTES)) || !sound(header.getInt(at + 2 * Integer.BYTES))) {
                throw new IOException("its header is damaged");
            }
        }
        return header;
    }

    private static boolean numbered(ByteBuffer header) {
        int number = header.getInt(NUMBER_OFFSET);
        return number > 0 && number <= GREATEST_NUMBER && number != FOREIGN_NUMBER;
    }

    private static boolean sound(int amount) {
        return amount >= 0 && amount <= MOST;
    }

    private static Instant instant(double julianDate) {
        return Instant.ofEpochSecond(Math.round((julianDate - UNIX_EPOCH_JD) * Constants.JULIAN_DAY));
    }

    private static Interval covers(double startJd, double endJd) throws IOException {
        if (!(startJd >= 0 && endJd <= MOST_JD && startJd + 2 < endJd)) {
            throw new IOException("its header is damaged: it has no first and last date");
        }
        Instant first = instant(startJd).plusSeconds(MARGIN_S);
        Instant last = instant(endJd).minusSeconds(MARGIN_S);
        Instant from = first.isBefore(FIRST_UTC) ? FIRST_UTC : first;
        Instant to = last.isAfter(LAST) ? LAST : last;
        if (!from.isBefore(to)) {
            throw new IOException("it covers no date from 1972 to 2500");
        }
        return new Interval(from, to);
    }
}
