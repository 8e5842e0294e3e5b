package gloam.ephemeris.orekit;

import gloam.ephemeris.orekit.JplEphemeris.Item;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;

/**
 * What the two header records of a file in JPL's binary form say of the records that follow.
 *
 * @param recordDoubles  numbers in a record, its first and last day included
 * @param recordDays     days a record spans
 * @param earthMoonRatio mass of the Earth over that of the Moon
 * @param series         where each {@link Item}'s coefficients stand
 */
record JplHeader(int recordDoubles, double recordDays, double earthMoonRatio, List<Series> series) {

    /** The header fills that many records. */
    static final int RECORDS = 2;

    private static final int STEP_OFFSET = 2668;
    private static final int EARTH_MOON_RATIO_OFFSET = 2688;
    private static final int POINTERS_OFFSET = 2696;
    private static final int POINTER_BYTES = 12;
    private static final int NUMBER_OFFSET = 2840;
    private static final int GREATEST_NUMBER = 9999;
    private static final int LEAST_BYTES = 2856;
    /**
     * Later files hold more items than the header's fixed part tells of: up to so many more numbers a record.
     */
    private static final int MOST_MORE_DOUBLES = 1000;
    /** The Earth's mass over the Moon's is 81.30. */
    private static final double LEAST_RATIO = 81;
    private static final double GREATEST_RATIO = 82;
    private static final double MOST_DAYS = 1000;
    /** Julian dates of some 20,000 years. */
    private static final double MOST_JD = 1e7;

    JplHeader {
        series = List.copyOf(series);
    }

    /** Reads the header and sets the bytes' order. */
    static JplHeader of(ByteBuffer bytes) throws IOException {
        if (bytes.capacity() < LEAST_BYTES || !foundOrder(bytes)) {
            throw new IOException("it is not in JPL's binary form");
        }
        List<Series> series = new ArrayList<>();
        int end = 2;
        for (Item item : Item.values()) {
            Series of = Series.at(bytes, POINTERS_OFFSET + POINTER_BYTES * item.ordinal());
            if (item != Item.PLUTO && !of.sound()) {
                throw new IOException("it lacks " + item.label());
            }
            series.add(of);
            end = of.sound() ? Math.max(end, of.end()) : end;
        }
        double days = bytes.getDouble(STEP_OFFSET);
        double ratio = bytes.getDouble(EARTH_MOON_RATIO_OFFSET);
        if (!(ratio > LEAST_RATIO && ratio < GREATEST_RATIO && days <= MOST_DAYS)) {
            throw new IOException("its header is damaged");
        }
        return new JplHeader(recordDoubles(bytes, end, days), days, ratio, series);
    }

    private static boolean foundOrder(ByteBuffer bytes) {
        for (ByteOrder order : List.of(ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN)) {
            int number = bytes.order(order).getInt(NUMBER_OFFSET);
            if (number > 0 && number <= GREATEST_NUMBER) {
                return true;
            }
        }
        return false;
    }

    /** The least length that lets one record end where the next begins, from the second data record on. */
    private static int recordDoubles(ByteBuffer bytes, int least, double days) throws IOException {
        for (int length = least; length <= least + MOST_MORE_DOUBLES; length++) {
            int first = RECORDS * length * Double.BYTES;
            int second = first + length * Double.BYTES;
            if (second + 2 * Double.BYTES <= bytes.capacity() && days > 0
                    && Math.abs(bytes.getDouble(first)) < MOST_JD
                    && bytes.getDouble(first + Double.BYTES) - bytes.getDouble(first) == days
                    && bytes.getDouble(second) == bytes.getDouble(first + Double.BYTES)) {
                return length;
            }
        }
        throw new IOException("its records do not follow one another");
    }

    /**
     * An item's coefficients.
     *
     * @param start    where they begin in a record, from 0
     * @param size     how many a component has
     * @param granules into how many parts the record's span is cut
     */
    record Series(int start, int size, int granules) {

        private static final int COMPONENTS = 3;
        private static final int MOST_START = 10_000;
        private static final int MOST_SIZE = 100;

        boolean sound() {
            return start >= 2 && start <= MOST_START && size >= 2 && size <= MOST_SIZE && granules >= 1
                    && granules <= MOST_SIZE;
        }

        static Series at(ByteBuffer bytes, int offset) {
            return new Series(bytes.getInt(offset) - 1, bytes.getInt(offset + 4), bytes.getInt(offset + 8));
        }

        int end() {
            return start + size * granules * COMPONENTS;
        }
    }
}
