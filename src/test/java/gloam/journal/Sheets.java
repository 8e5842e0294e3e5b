package gloam.journal;

import gloam.ephemeris.Direction;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Vignetting;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Journal entries for tests. */
public final class Sheets {

    private static final Instant OPEN_AT = Instant.parse("2027-02-08T20:00:00Z");

    private Sheets() {
    }

    /** A film fitted to its sheets: that of their pack if they are from one, else of a new pack. */
    static FilmFit fit(FilmStock published, List<Entry> sheets) {
        return FilmFit.of(published, sheets, FilmFit.onlyPack(sheets), Optional.empty());
    }

    /** A sheet of a film in a steady light that it meters at that many s, open for so long. */
    public static Entry steady(String id, FilmStock film, double meteredS, double openS, Outcome outcome) {
        Interval open = Interval.lasting(OPEN_AT, Duration.ofNanos(Math.round(openS * 1e9)));
        return entry(id, exposed(film.name(),
                List.of(new Opening(open, List.of(film.midToneLxS() / meteredS)))), outcome);
    }

    /** The same sheet from a pack, exposed so many nights later. */
    public static Entry moved(Entry entry, String pack, int nights) {
        Exposed was = entry.exposed();
        List<Opening> openings = was.openings().stream().map(opening -> new Opening(Interval.lasting(
                opening.open().start().plus(Duration.ofDays(nights)), opening.open().lasts()),
                opening.illuminancesLx())).toList();
        return entry(entry.id(), new Exposed(was.film(), pack, was.place(), was.aim(), was.lens(), openings,
                was.measured(), was.stars(), was.temperatureC()), entry.outcome());
    }

    /** The same sheet at a temperature. */
    public static Entry at(double temperatureC, Entry entry) {
        Exposed was = entry.exposed();
        return entry(entry.id(), new Exposed(was.film(), was.batch(), was.place(), was.aim(), was.lens(),
                was.openings(), was.measured(), was.stars(), OptionalDouble.of(temperatureC)),
                entry.outcome());
    }

    /** An entry written when nobody looks. */
    public static Entry entry(String id, Exposed exposed, Outcome outcome) {
        return new Entry(Instant.EPOCH, exposed, outcome, "", Optional.empty()).named(id);
    }

    /** A sheet at f/8 under a northern sky. */
    public static Exposed exposed(String film, List<Opening> openings) {
        Lens lens = new Lens(120, List.of(FNumber.exact(8)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
                Projection.RECTILINEAR,
                Vignetting.NONE);
        return new Exposed(film, "", Optional.of(new Place("Meadow", Angle.ofDegrees(41), ZoneOffset.UTC)),
                Optional.of(Direction.ofDegrees(0, 41)), lens, openings, false,
                new Exposed.Stars(0.00875, 0.3), OptionalDouble.empty());
    }

    /** A sound sheet judged in a word. */
    public static Outcome judged(ToneWord word) {
        return outcome(new Verdict.InWords(word));
    }

    /** A sound sheet of a measured tone. */
    public static Outcome measured(double stops, double spreadStops) {
        return outcome(new Verdict.InStops(stops, spreadStops));
    }

    /** A sound sheet of which a scan was read. */
    public static Outcome scanned(ScanReading.Tone tone, Optional<Estimate> limitMag) {
        return new Outcome(Optional.empty(), OptionalDouble.empty(), Optional.empty(), List.of(),
                Optional.of(new ScanReading("scan.png", "0123456789abcdef".repeat(4), tone, Optional.of(
                new ScanReading.Trails(Direction.ofDegrees(0.5, 41.25), Angle.ofDegrees(-1.5), 119.5,
                List.of(new ScanReading.Ends(OptionalDouble.of(12), OptionalDouble.of(4),
                OptionalDouble.empty(), OptionalDouble.empty())), 40, 31, limitMag,
                List.of(Interval.lasting(OPEN_AT, Duration.ofMinutes(3))), Optional.of(new ScanReading.Bump(
                OPEN_AT.plusSeconds(1500), Direction.ofDegrees(0.75, 41))))))));
    }

    private static Outcome outcome(Verdict verdict) {
        return new Outcome(Optional.of(verdict), OptionalDouble.empty(), Optional.empty(), List.of());
    }
}
