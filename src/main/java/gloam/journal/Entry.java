package gloam.journal;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A sheet of the journal, as last corrected.
 *
 * @param id               its short name for people, given when the journal is read; empty before
 * @param identity         its name in the file, which no other sheet in any journal has; empty before
 * @param writtenAt        when the last word on it was written
 * @param withdrawn        whether the sheet is withdrawn
 * @param exposed          how the sheet was exposed
 * @param outcome          how it came out
 * @param note             any remark, often empty
 * @param wish             the wish of a trip that it serves, by its name, if noted
 * @param plannedToneStops the sky's tone that the plan expected, in stops from the mid-tone, if it was
 *                         planned
 * @param picture          a photo of the sheet: its path from the journal's folder, if noted
 */
public record Entry(String id, String identity, Instant writtenAt, boolean withdrawn, Exposed exposed,
                    Outcome outcome, String note, Optional<String> wish, OptionalDouble plannedToneStops,
                    Optional<String> picture) {

    /** A sheet that no journal has yet. */
    public Entry(Instant writtenAt, Exposed exposed, Outcome outcome, String note, Optional<String> wish) {
        this("", "", writtenAt, false, exposed, outcome, note, wish, OptionalDouble.empty(),
                Optional.empty());
    }

    /** Whether it is a picture as it was wished, as far as is known: nothing spoiled it, and it was kept. */
    public boolean serves() {
        return outcome.kept().orElse(true) && outcome.spoiledBy().isEmpty();
    }

    /**
     * By how many stops the sky came out lighter than planned, a word standing for its middle; empty unless
     * both are known.
     */
    public OptionalDouble offPlanStops() {
        return outcome.tone().isEmpty() || plannedToneStops.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(outcome.tone().get().typicalStops() - plannedToneStops.getAsDouble());
    }

    /** The same sheet under another short name. */
    public Entry named(String newId) {
        return new Entry(newId, identity, writtenAt, withdrawn, exposed, outcome, note, wish,
                plannedToneStops, picture);
    }

    /** The same sheet under another name in the file. */
    public Entry identified(String newIdentity) {
        return new Entry(id, newIdentity, writtenAt, withdrawn, exposed, outcome, note, wish,
                plannedToneStops, picture);
    }

    /** The same sheet exposed otherwise. */
    public Entry exposed(Exposed otherwise) {
        return new Entry(id, identity, writtenAt, withdrawn, otherwise, outcome, note, wish,
                plannedToneStops, picture);
    }

    /** The same sheet come out otherwise. */
    public Entry cameOut(Outcome otherwise) {
        return new Entry(id, identity, writtenAt, withdrawn, exposed, otherwise, note, wish,
                plannedToneStops, picture);
    }

    /** The same sheet with other remarks. */
    public Entry remarked(String otherNote, Optional<String> otherWish, Optional<String> otherPicture) {
        return new Entry(id, identity, writtenAt, withdrawn, exposed, outcome, otherNote, otherWish,
                plannedToneStops, otherPicture);
    }

    /** The same sheet withdrawn or not. */
    public Entry withdrawn(boolean isWithdrawn) {
        return new Entry(id, identity, writtenAt, isWithdrawn, exposed, outcome, note, wish,
                plannedToneStops, picture);
    }

    /** The same sheet as it was written at another time. */
    public Entry writtenAt(Instant at) {
        return new Entry(id, identity, at, withdrawn, exposed, outcome, note, wish, plannedToneStops,
                picture);
    }
}
