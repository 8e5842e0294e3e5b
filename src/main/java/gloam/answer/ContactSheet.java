package gloam.answer;

import gloam.answer.ExposureQuestion.ToneAfter;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.exposure.ExposedSheet;
import gloam.exposure.Exposure;
import gloam.exposure.TrailLimit;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.proof.ExposedFrame;
import gloam.proof.Picture;
import gloam.proof.Proof;
import gloam.proof.Raster;
import gloam.proof.StarCount;
import gloam.sheet.Setting;
import gloam.sheet.Sheet;
import gloam.trail.FramedTrails;
import gloam.trail.TrailEstimator;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Proofs of one picture side by side, to choose by eye: at several f-numbers and times, and as its tone comes
 * out if sky and film are one standard deviation darker or lighter than taken.
 *
 * @param sheet   the sheet asked about
 * @param settings proofs at each f-number, widest first, for half the time, the time and twice it
 * @param spread  proofs of the sheet itself, one standard deviation darker, as computed, and as much lighter
 * @param spreadStops that deviation, in stops of tone
 */
public record ContactSheet(Sheet sheet, List<Frame> settings, List<Frame> spread, double spreadStops) {

    /** Times that stand side by side, as shares of the one asked about. */
    public static final List<Double> TIMES = List.of(0.5, 1.0, 2.0);

    private static final int MOST_F_NUMBERS = 5;
    private static final int LONG_SIDE_PX = 160;

    /** Copies the lists. */
    public ContactSheet {
        settings = List.copyOf(settings);
        spread = List.copyOf(spread);
    }

    /**
     * One proof.
     *
     * @param deviations by how many standard deviations it is lighter than computed
     * @param toneStops  tone of the sky at the frame's centre, away from a Moon in the frame, in stops from
     *                   the mid-tone
     * @param stars      the stars that mark it
     */
    public record Frame(FNumber fNumber, Duration lasts, int deviations, double toneStops, StarCount stars,
                        Picture picture) {
    }

    /**
     * Computes the proofs of a sheet with black land, negatives as their prints.
     *
     * @param fNumbers the f-numbers to compare, widest first
     * @throws BadInput if there are too many, or the sheet is opened more than once
     */
    public static ContactSheet of(Ephemeris ephemeris, Sheet sheet, List<FNumber> fNumbers,
            List<Star> stars) {
        if (fNumbers.size() > MOST_F_NUMBERS) {
            throw new BadInput(fNumbers.size() + " f-numbers are too many for a contact sheet; name 1 to "
                    + MOST_F_NUMBERS + " with --f-number N,…");
        }
        if (sheet.first().openings().size() > 1) {
            throw new BadInput("a contact sheet is of one opening; give --from and --lasts without --open");
        }
        Exposure exposure = exposure(ephemeris, sheet);
        List<Frame> settings = fNumbers.stream().flatMap(fNumber -> TIMES.stream().map(share ->
                        at(sheet, fNumber, share))).toList().parallelStream()
                .map(one -> frame(ephemeris, one, 0, stars)).toList();
        double shiftStops = exposure.spreadStops() / exposure.contrast();
        List<Frame> spread = Stream.of(-1, 0, 1).toList().parallelStream().map(deviations ->
                frame(ephemeris, faster(sheet, deviations * shiftStops), deviations, stars)).toList();
        return new ContactSheet(sheet, settings, spread, exposure.spreadStops());
    }

    private static Sheet at(Sheet sheet, FNumber fNumber, double share) {
        Setting first = sheet.first();
        Interval open = first.openings().get(0);
        Duration lasts = Duration.ofMillis(Math.round(share * open.lasts().toMillis()));
        return new Sheet(sheet.site(), sheet.film(), List.of(new Setting(first.framing(), fNumber,
                List.of(Interval.lasting(open.start(), lasts)))));
    }

    /** The same sheet of a film so much faster, which comes to as much more light. */
    private static Sheet faster(Sheet sheet, double stops) {
        FilmStock film = sheet.film();
        double offsetStops = Math.max(FilmStock.SPEED_OFFSET.least(), Math.min(FilmStock.SPEED_OFFSET.most(),
                film.speedOffsetStops() - stops));
        return new Sheet(sheet.site(), new FilmStock(film.name(), film.iso(), film.kind(), film.layers(),
                film.tone(), offsetStops, film.source(), film.fittedToSheets()), sheet.settings());
    }

    private static Exposure exposure(Ephemeris ephemeris, Sheet sheet) {
        Setting set = sheet.first();
        Lens lens = set.lens().with(List.of(set.fNumber()));
        return Exposures.of(() -> ephemeris, new ExposureQuestion(sheet.film(), lens,
                Optional.of(sheet.frame()), List.of(new KnownSky.Computed(sheet.site(), set.framing().aim(),
                set.whole().start(), false)), OptionalDouble.empty(), List.of(),
                TrailLimit.LEAST_DIFFERENCE_DENSITY, new ToneAfter(set.whole().lasts())))
                .exposures().get(0).row().exposure();
    }

    private static Frame frame(Ephemeris ephemeris, Sheet sheet, int deviations, List<Star> stars) {
        Setting set = sheet.first();
        ExposedFrame exposed = new ExposedFrame(ephemeris, sheet);
        ExposedSheet judged = exposed.awayFromMoon().orElseGet(exposed::centre);
        FramedTrails trails = new FramedTrails(new TrailEstimator(ephemeris, sheet.site()),
                sheet.site().skyline(), set.framing(), set.openings());
        Picture picture = Proof.of(ephemeris, sheet, OptionalDouble.empty(), stars,
                Raster.of(sheet.frame(), LONG_SIDE_PX)).picture(FilmStock.Kind.POSITIVE);
        return new Frame(set.fNumber(), set.whole().lasts(), deviations, judged.skyToneStops(),
                StarCount.of(stars, trails, exposed), picture);
    }
}
