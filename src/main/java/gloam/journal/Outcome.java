package gloam.journal;

import gloam.units.Range;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a sheet came out, as far as that is known.
 *
 * @param verdict     the sky's tone as noted
 * @param faintestMag V magnitude of the faintest star or planet seen in the trails
 * @param kept        whether the sheet is a keeper
 * @param spoiledBy   what spoiled it, each once; empty for a sound sheet
 * @param reading     what a scan of it showed, the last one read
 */
public record Outcome(Optional<Verdict> verdict, OptionalDouble faintestMag, Optional<Boolean> kept,
                      List<Spoiler> spoiledBy, Optional<ScanReading> reading) {

    /** Allowed magnitudes. */
    public static final Range MAGNITUDE = new Range("magnitude", -14, 20, "mag");

    /**
     * Removes duplicate spoilers; refuses a magnitude outside its range with {@link gloam.units.BadInput}.
     */
    public Outcome {
        faintestMag.ifPresent(MAGNITUDE::check);
        spoiledBy = spoiledBy.stream().distinct().toList();
    }

    /** How a sheet came out that was not scanned. */
    public Outcome(Optional<Verdict> verdict, OptionalDouble faintestMag, Optional<Boolean> kept,
            List<Spoiler> spoiledBy) {
        this(verdict, faintestMag, kept, spoiledBy, Optional.empty());
    }

    /** The same with what a scan showed. */
    public Outcome read(Optional<ScanReading> scan) {
        return new Outcome(verdict, faintestMag, kept, spoiledBy, scan);
    }

    /**
     * The tone that counts: one noted in stops, else the one that a scan showed, else a word, else a bound
     * that a scan showed.
     */
    public Optional<Verdict> tone() {
        Optional<Verdict.OfScan> shown = reading.map(scan -> new Verdict.OfScan(scan.tone()));
        return verdict.filter(Verdict.InStops.class::isInstance)
                .or(() -> shown.filter(scan -> scan.tone().bound() == ScanReading.Bound.NONE))
                .or(() -> verdict).or(() -> shown);
    }

    /** The faintest trail that a scan showed, with its error. */
    public Optional<Estimate> limitMag() {
        return reading.flatMap(ScanReading::trails).flatMap(ScanReading.Trails::limitMag);
    }

    /** Whether it says anything about the film. */
    public boolean judged() {
        return tone().isPresent() || faintestMag.isPresent();
    }
}
