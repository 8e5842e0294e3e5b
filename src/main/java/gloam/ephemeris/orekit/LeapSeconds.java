package gloam.ephemeris.orekit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.orekit.time.DateComponents;
import org.orekit.time.OffsetModel;

/**
 * From the instants of civil time to the even time of the ephemeris.
 *
 * <p>Seconds count from J2000.0, 2000-01-01 12:00 of the scale named. The last known leap second holds for
 * ever: none is announced, and none can be foreseen.
 */
final class LeapSeconds {

    /** J2000.0, were it of UTC. */
    static final Instant NOON_2000 = Instant.ofEpochSecond(946_728_000);
    private static final double TT_MINUS_TAI_S = 32.184;

    private final long[] fromEpochS;
    private final int[] taiMinusUtcS;

    private LeapSeconds(TreeMap<Long, Integer> table) {
        this.fromEpochS = new long[table.size()];
        this.taiMinusUtcS = new int[table.size()];
        int entry = 0;
        for (Map.Entry<Long, Integer> row : table.entrySet()) {
            fromEpochS[entry] = row.getKey();
            taiMinusUtcS[entry++] = row.getValue();
        }
    }

    /** Reads lines of a day and the TAI − UTC that holds from it on; lines that begin with # are notes. */
    static LeapSeconds read(InputStream in) throws IOException {
        TreeMap<Long, Integer> table = new TreeMap<>();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.startsWith("#")) {
                    String[] fields = line.split("\t");
                    table.put(epochS(fields[0]), Integer.valueOf(fields[1]));
                }
            }
        }
        return new LeapSeconds(table);
    }

    /** Seconds of coordinated universal time (UTC) from J2000.0, leap seconds not counted. */
    static double utcS(Instant at) {
        return at.getEpochSecond() - NOON_2000.getEpochSecond() + at.getNano() * 1e-9;
    }

    /** Terrestrial time less UTC, in seconds. */
    double ttMinusUtcS(Instant at) {
        return taiMinusUtcS(at) + TT_MINUS_TAI_S;
    }

    /** International atomic time less UTC, in seconds. */
    double taiMinusUtcS(Instant at) {
        int entry = taiMinusUtcS.length - 1;
        while (entry > 0 && at.getEpochSecond() < fromEpochS[entry]) {
            entry--;
        }
        return taiMinusUtcS[entry];
    }

    /** The same table for Orekit. */
    List<OffsetModel> offsets() {
        return IntStream.range(0, fromEpochS.length).mapToObj(i -> {
            LocalDate day = Instant.ofEpochSecond(fromEpochS[i]).atOffset(ZoneOffset.UTC).toLocalDate();
            return new OffsetModel(new DateComponents(day.getYear(), day.getDayOfYear()),
                    taiMinusUtcS[i]);
        }).toList();
    }

    /** The start of a day written as 1972-01-01; read by hand, since the formats of Java take ten times as long to load. */
    private static long epochS(String day) {
        return LocalDate.of(Integer.parseInt(day.substring(0, 4)), Integer.parseInt(day.substring(5, 7)),
                Integer.parseInt(day.substring(8))).toEpochDay() * 86_400;
    }
}
