package gloam.ephemeris.orekit;

import gloam.units.BadInput;
import gloam.units.PlainText;
import gloam.units.Range;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A day of the IERS's finals2000A, values of Bulletin A (the file's own readme.finals2000A).
 *
 * @param mjd          its modified Julian date
 * @param xPoleArcsec  the pole's place along the meridian of Greenwich
 * @param yPoleArcsec  and along 90° west
 * @param ut1MinusUtcS UT1 − UTC
 */
record FinalsLine(int mjd, double xPoleArcsec, double yPoleArcsec, double ut1MinusUtcS) {

    private static final Column MJD = new Column(8, 15, new Range("modified Julian date", 30_000, 100_000, ""));
    private static final Column X_POLE = new Column(19, 27, new Range("x of the pole", -2, 2, "arcsec"));
    private static final Column Y_POLE = new Column(38, 46, new Range("y of the pole", -2, 2, "arcsec"));
    /** UTC keeps within 0.9 s of UT1. */
    private static final Column UT1 = new Column(59, 68, new Range("UT1 - UTC", -1, 1, "s"));
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]{0,9}\\.?[0-9]{0,9}");
    private static final int MOST_PROBLEMS = 20;

    /**
     * The days of a text up to the first without UT1, two or more without gaps.
     *
     * @throws BadInput with every line that is damaged
     */
    static List<FinalsLine> of(Path file, String text) {
        List<FinalsLine> days = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        int number = 0;
        for (String line : text.lines().takeWhile(UT1::filled).toList()) {
            number++;
            try {
                days.add(day(file + ":" + number, line, days));
            } catch (BadInput damaged) {
                problems.addAll(damaged.problems());
            }
        }
        if (number < 2) {
            throw new BadInput("Earth orientation \"" + file
                    + "\" cannot be read: it does not hold two or more days. Give a finals2000A file of the IERS.");
        }
        if (!problems.isEmpty()) {
            throw new BadInput(problems.subList(0, Math.min(MOST_PROBLEMS, problems.size())));
        }
        return days;
    }

    private static FinalsLine day(String where, String line, List<FinalsLine> before) {
        FinalsLine day = new FinalsLine((int) MJD.value(where, line), X_POLE.value(where, line),
                Y_POLE.value(where, line), UT1.value(where, line));
        if (!before.isEmpty() && day.mjd != before.get(before.size() - 1).mjd + 1) {
            throw new BadInput(where + ":" + MJD.first + ": day " + day.mjd + " does not follow "
                    + before.get(before.size() - 1).mjd + ". Give a finals2000A file without gaps.");
        }
        return day;
    }

    /** Columns counted from 1, both included. */
    private record Column(int first, int last, Range range) {

        boolean filled(String line) {
            return !text(line).isBlank();
        }

        double value(String where, String line) {
            String text = text(line).strip();
            if (!NUMBER.matcher(text).matches() || text.chars().noneMatch(Character::isDigit)) {
                throw new BadInput(where + ":" + first + ": expected " + range.what() + ", found \""
                        + PlainText.of(text) + "\". Give a finals2000A file of the IERS.");
            }
            try {
                return range.check(Double.parseDouble(text));
            } catch (BadInput outside) {
                throw new BadInput(where + ":" + first + ": " + outside.getMessage());
            }
        }

        private String text(String line) {
            return line.length() < last ? "" : line.substring(first - 1, last);
        }
    }
}
