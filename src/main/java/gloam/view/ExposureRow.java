package gloam.view;

import gloam.answer.ExposureQuestion;
import gloam.answer.Exposures;
import gloam.answer.SpotWidths;
import gloam.exposure.Bracket;
import gloam.exposure.Exposure;
import gloam.exposure.ExposureTable;
import gloam.film.FilmStock;
import gloam.units.Finite;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Exposure and result at one f-number. A time is absent if the tone is not reached by the end of the night,
 * or within a year under steady light.
 *
 * @param fNumber            the f-number as marked
 * @param meteredS           time without reciprocity failure, in seconds
 * @param correctedS         exposure time with reciprocity failure, in seconds
 * @param correctedLowS      the same if sky and film are faster by one standard deviation
 * @param correctedHighS     the same if they are slower by one
 * @param closeAt            when to close the shutter; absent if its opening is not known
 * @param reciprocityStops   loss to reciprocity failure, in stops, 0 or more
 * @param contrast           stops of tone for each stop of difference in the scene
 * @param extrapolated       whether the film's law is extended beyond the range of its source
 * @param neverFinishes      whether the tone is never reached
 * @param skyToneStops       tone of the sky in stops from the mid-tone, plus is lighter
 * @param skyToneSpreadStops its standard deviation, in stops
 * @param groundToneStops    tone of the ground, if the exposure is for the ground
 * @param layers             tone in each layer of colour film; empty for other film
 * @param cast               the resulting colour cast with its colour-correction value
 * @param filter             the filter that takes it away in the same time, with its colour-correction value
 * @param trailLimitMag      faintest V magnitude that leaves a visible trail; absent if no star does
 * @param tNumber            f-number of a lossless lens that passes as much light
 * @param spot               size of a star's image
 * @param bracket            times for several sheets, if asked for and if all of them end
 * @param notes              notes, a sentence each
 */
public record ExposureRow(double fNumber, OptionalDouble meteredS,
                          OptionalDouble correctedS, OptionalDouble correctedLowS,
                          OptionalDouble correctedHighS,
                          Optional<OffsetDateTime> closeAt, OptionalDouble reciprocityStops, double contrast,
                          boolean extrapolated, boolean neverFinishes, double skyToneStops,
                          double skyToneSpreadStops,
                          OptionalDouble groundToneStops, List<Layer> layers, Optional<String> cast,
                          Optional<String> filter,
                          OptionalDouble trailLimitMag, double tNumber, SpotWidths spot,
                          Optional<Sheets> bracket, List<String> notes) {

    private static final double LONGEST_NIGHT_S = 16 * 3600;

    /**
     * A layer of the film.
     *
     * @param name      the colour to which it is sensitive
     * @param toneStops its tone in stops from the mid-tone
     */
    public record Layer(String name, double toneStops) {
    }

    /**
     * Times for several sheets.
     *
     * @param exposuresS     exposure times in seconds, shortest first
     * @param togetherS      their sum in seconds; absent if it exceeds a year
     * @param chanceOfOneHit probability, 0 to 1, that one of them comes within half a stop of the tone
     */
    public record Sheets(List<Double> exposuresS, OptionalDouble togetherS, double chanceOfOneHit) {

        static Sheets of(Bracket bracket) {
            double togetherS = bracket.exposuresS().stream().mapToDouble(Double::doubleValue).sum();
            return new Sheets(bracket.exposuresS(),
                    togetherS > Exposure.LONGEST_S ? OptionalDouble.empty() : OptionalDouble.of(togetherS),
                    bracket.chanceOfOneHit());
        }
    }

    static ExposureRow of(Exposures answer, Exposures.AtFNumber at, SiteClock clock) {
        ExposureTable.Row row = at.row();
        Exposure exposure = row.exposure();
        ExposureQuestion question = answer.question();
        return new ExposureRow(row.fNumber().marked(), Finite.of(exposure.meteredS()),
                Finite.of(exposure.correctedS()), Finite.of(exposure.lowS()), Finite.of(exposure.highS()),
                at.closeAt().map(clock::at), Finite.of(exposure.reciprocityStops()),
                exposure.contrast(), exposure.extrapolated(), exposure.neverFinishes(),
                row.skyToneStops(), exposure.spreadStops(), question.groundReflectance().isPresent()
                        ? Finite.of(exposure.toneStops()) : OptionalDouble.empty(),
                        layers(question.film(), row),
                row.colourShift().cast(), row.filter().map(filter -> filter.hue() + ", CC "
                + Math.round(filter.cc())), Finite.of(row.trailLimitMag()), at.tNumber(), at.spot(),
                at.bracket().map(Sheets::of), notes(row, answer.night().isPresent()));
    }

    private static List<Layer> layers(FilmStock film, ExposureTable.Row row) {
        return !film.colour() ? List.of() : IntStream.range(0, row.layerToneStops().size())
                .mapToObj(i -> new Layer(film.layers().get(i).name(), row.layerToneStops().get(i)))
                .toList();
    }

    private static List<String> notes(ExposureTable.Row row, boolean lightChanges) {
        List<String> notes = new ArrayList<>();
        Exposure exposure = row.exposure();
        if (exposure.neverFinishes()) {
            notes.add((lightChanges ? "never finishes: the night ends first" : "more than a year")
                    + "; the tone is what it comes to by then");
        } else if (exposure.correctedS() > LONGEST_NIGHT_S) {
            notes.add("longer than a night");
        } else if (exposure.correctedS() == 0) {
            notes.add("the earlier openings have made the tone already");
        }
        if (exposure.extrapolated()) {
            notes.add("guessed: the film's reciprocity law is continued beyond what it was measured for");
        }
        if (Double.isInfinite(row.trailLimitMag())) {
            notes.add("no star leaves a trail");
        }
        return notes;
    }
}
