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
 * What one f-number asks for and gives; times are empty that are not reached by the end of the night, or in a
 * year where the light stays as it is.
 *
 * @param fNumber            the f-number as marked
 * @param meteredS           time without reciprocity failure
 * @param correctedS         time to give
 * @param correctedLowS      time if sky and film are faster than taken by one standard deviation
 * @param correctedHighS     time if slower
 * @param closeAt            when to close the shutter, if it is known when it opens
 * @param reciprocityStops   what reciprocity failure costs
 * @param contrast           stops of tone that a stop of difference in the scene makes
 * @param extrapolated       whether the film's law is continued beyond its source
 * @param neverFinishes      whether the tone is not reached
 * @param skyToneStops       tone of the sky
 * @param skyToneSpreadStops standard deviation of it
 * @param groundToneStops    tone of the ground, where that is exposed for
 * @param layers             tones of what is exposed for in each layer of colour film
 * @param cast               the colour that comes of them, with its colour-correction value
 * @param trailLimitMag      faintest V magnitude that leaves a visible trail
 * @param tNumber            the f-number that a lens without loss of light would have
 * @param spot               what a star's image measures
 * @param bracket            times for several sheets, where they are asked for and each finishes
 * @param notes              what else to know, a sentence each
 */
public record ExposureRow(double fNumber, OptionalDouble meteredS,
                          OptionalDouble correctedS, OptionalDouble correctedLowS,
                          OptionalDouble correctedHighS,
                          Optional<OffsetDateTime> closeAt, OptionalDouble reciprocityStops, double contrast,
                          boolean extrapolated, boolean neverFinishes, double skyToneStops, double skyToneSpreadStops,
                          OptionalDouble groundToneStops, List<Layer> layers, Optional<String> cast,
                          OptionalDouble trailLimitMag, double tNumber, SpotWidths spot, Optional<Sheets> bracket,
                          List<String> notes) {

    private static final double LONGEST_NIGHT_S = 16 * 3600;

    /**
     * A layer of the film.
     *
     * @param name      what it is sensitive to
     * @param toneStops its tone
     */
    public record Layer(String name, double toneStops) {
    }

    /**
     * Times for several sheets.
     *
     * @param exposuresS     shortest first
     * @param togetherS      their sum; null where it is more than a year
     * @param chanceOfOneHit chance that one comes within half a stop of the tone
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
                        ? Finite.of(exposure.toneStops()) : OptionalDouble.empty(), layers(question.film(), row),
                row.colourShift().cast(), Finite.of(row.trailLimitMag()), at.tNumber(), at.spot(),
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
