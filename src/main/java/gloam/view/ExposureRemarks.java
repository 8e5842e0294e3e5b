package gloam.view;

import gloam.answer.LightFound;
import gloam.view.FilmExposures.SharpnessTrade;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** What to make of an exposure table, in sentences. */
final class ExposureRemarks {

    /** Up to which two readings of one sky count as agreeing: the honesty of any of them. */
    private static final double AGREES_STOPS = 0.5;

    /** Below which a sky comes out blue on daylight film, B−V: between moonlight and starlight. */
    private static final double BLUE_BV = 0.4;

    private static final String LONGER = "A longer exposure lengthens a trail and lightens the sky; it never "
            + "brightens the trail. A wider aperture and a sharper spot do.";

    private static final double WORTH_A_WORD_STOPS = 0.1;

    /** Widths of a spot within this factor look alike. */
    private static final double AS_GOOD_AS = 1.1;

    private final Situation situation;
    private final List<ExposureRow> rows;

    private ExposureRemarks(Situation situation, List<ExposureRow> rows) {
        this.situation = situation;
        this.rows = rows;
    }

    static List<String> of(FilmExposures film, boolean colourFilm) {
        ExposureRemarks remarks = new ExposureRemarks(film.situation(), film.exposures());
        List<String> all = new ArrayList<>();
        remarks.disagreement().ifPresent(all::add);
        film.trade().map(remarks::trade).or(remarks::noTrade).ifPresent(all::add);
        all.add(LONGER);
        remarks.ofLight(all, colourFilm);
        return all;
    }

    /** What to make of several films side by side, one of them for colours or none. */
    static List<String> ofFilms(List<FilmExposures> films, boolean colourFilm) {
        ExposureRemarks remarks = new ExposureRemarks(films.get(0).situation(),
                films.stream().flatMap(film -> film.exposures().stream()).toList());
        List<String> all = new ArrayList<>();
        remarks.disagreement().ifPresent(all::add);
        if (remarks.situation.lastsS().isEmpty()) {
            ahead(films, row -> row.correctedS().orElse(Double.POSITIVE_INFINITY)).ifPresent(film ->
                    all.add("The shortest exposure at every f-number: " + film + "."));
        }
        ahead(films, row -> -row.trailLimitMag().orElse(Double.NEGATIVE_INFINITY)).ifPresent(film ->
                all.add("The faintest stars at every f-number: " + film + "."));
        all.add(LONGER);
        remarks.ofLight(all, colourFilm);
        return all;
    }

    /** The film of which something is least at every f-number, if it is one. */
    private static Optional<String> ahead(List<FilmExposures> films, ToDoubleFunction<ExposureRow> what) {
        return films.stream().filter(film -> films.stream().filter(other -> other != film)
                .allMatch(other -> IntStream.range(0, film.exposures().size()).allMatch(i ->
                        what.applyAsDouble(film.exposures().get(i))
                        < what.applyAsDouble(other.exposures().get(i)))))
                .map(film -> film.situation().film()).findFirst();
    }

    private void ofLight(List<String> all, boolean colourFilm) {
        if (!situation.earlier().isEmpty()) {
            all.add("Assumes no fading of the latent image between exposures.");
        }
        situation.ground().ifPresent(ground ->
                all.add("The exposure is for level open ground; what stands in shade or "
                + "slopes from the light comes out darker."));
        if (colourFilm) {
            cast().ifPresent(all::add);
            situation.skyColour().ifPresent(colour -> all.add(skyColour(colour)));
        }
        corners().ifPresent(all::add);
    }

    private String trade(SharpnessTrade trade) {
        if (trade.recordingUm() < AS_GOOD_AS * trade.sharpestUm()) {
            return "Most stars leave a trail at " + Wording.fNumber(trade.recordingFNumber())
                    + ", where they are as good as sharpest.";
        }
        return "Opening from " + Wording.fNumber(trade.sharpestFNumber()) + ", where stars are sharpest, to "
                + Wording.fNumber(trade.recordingFNumber()) + " gains " + Wording.number(trade.gainedMag(), 1)
                + " mag of stars and costs sharpness: their spots are " + um(trade.recordingUm())
                + " wide, not " + um(trade.sharpestUm()) + "."
                + difference(row(trade.sharpestFNumber()), row(trade.recordingFNumber()));
    }

    private String difference(ExposureRow from, ExposureRow to) {
        if (situation.lastsS().isPresent()) {
            return " The sky comes out " + Wording.number(to.skyToneStops() - from.skyToneStops(), 1)
                    + " stops lighter.";
        }
        OptionalDouble shortS = to.correctedS();
        return shortS.orElse(0) == 0 ? "" : " It takes " + Wording.exposure(shortS.getAsDouble())
                + (from.correctedS().isEmpty() ? "; the other " + (situation.latestCloseAt().isPresent()
                        ? "never finishes." : "takes " + situation.never() + ".")
                        : ", not " + Wording.exposure(from.correctedS().getAsDouble()) + ".");
    }

    private ExposureRow row(double fNumber) {
        return rows.stream().filter(row -> row.fNumber() == fNumber).findFirst().orElseThrow();
    }

    private static String um(double um) {
        return Wording.number(um / 1000, 2) + " mm";
    }

    private Optional<String> noTrade() {
        ExposureRow sharpest = rows.stream()
                .min(Comparator.comparingDouble(row -> row.spot().togetherUm())).orElseThrow();
        if (rows.size() == 1 || rows.stream().allMatch(row -> row.trailLimitMag().isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(sharpest.trailLimitMag().isEmpty()
                ? "At " + Wording.fNumber(sharpest.fNumber())
                + ", where stars are sharpest, none leaves a trail."
                : "Stars are sharpest, and most of them leave a trail, at "
                        + Wording.fNumber(sharpest.fNumber()) + ".");
    }

    private Optional<String> disagreement() {
        double most = situation.otherSkies().stream().mapToDouble(other -> Math.abs(other.brighterStops()))
                .max()
                .orElse(0);
        return most <= AGREES_STOPS ? Optional.empty() : Optional.of("The readings of the sky lie "
                + Wording.number(most, 1)
                + " stops apart, more than each is honest to. Look for the Moon, twilight, "
                + "cloud or a wrong setting; else spread several sheets over the difference.");
    }

    private Optional<String> cast() {
        return rows.stream().anyMatch(row -> row.cast().isPresent())
                ? Optional.of("Cast: the colour that the light and unequal loss of speed in the layers "
                        + "leave, with its colour-correction value. Filter: the "
                        + "colour-correction filter that takes it away in "
                        + "the same time, computed with the filter on.")
                : Optional.empty();
    }

    private static String skyColour(LightFound.Colour colour) {
        String kelvin = Wording.plain(100 * Math.rint(colour.temperatureK() / 100)) + " K, B−V "
                + Wording.number(colour.bv(), 2);
        return colour.bv() < BLUE_BV
                ? "This sky comes out blue on daylight film (" + kelvin + "), bluer than the eye sees it."
                : "This sky is no bluer than daylight (" + kelvin
                + "): dull brown to green on daylight film, and the "
                        + "colour of lamps where there are any.";
    }

    private Optional<String> corners() {
        String wide = Wording.number(-situation.cornerStops().orElse(0), 1);
        String stopped = Wording.number(-situation.cornerStopsStopped().orElse(0), 1);
        return -situation.cornerStops().orElse(0) > WORTH_A_WORD_STOPS
                ? Optional.of("The corners of the frame get " + wide + " stops less light than its centre"
                        + (wide.equals(stopped) ? "" : " at " + Wording.fNumber(rows.get(0).fNumber())
                        + " and "
                                + stopped + " at " + Wording.fNumber(rows.get(rows.size() - 1).fNumber()))
                        + ", and still less tone where the film loses speed.")
                : Optional.empty();
    }
}
