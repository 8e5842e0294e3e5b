package gloam.store;

import gloam.journal.Entry;
import gloam.units.BadInput;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.annotation.JsonNaming;
import tools.jackson.databind.node.ObjectNode;

/**
 * A correction as it stands in a line of the journal. It names what it changes, as a JSON merge patch
 * (RFC 7386) of the sheet's keys: a value replaces the former one, null takes it back, the rest is kept.
 *
 * @param gloamJournal version of the form of a line
 * @param id           name of the line, which no other has
 * @param written      when it was written; of two that name the same key the later holds
 * @param corrects     the sheet
 * @param change       the keys that change
 */
@JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
record JournalChange(int gloamJournal, String id, Instant written, String corrects, ObjectNode change) {

    /** Keys that mean something together only. */
    private static final List<List<String>> TOGETHER = List.of(
            List.of("tone", "tone-stops", "tone-spread-stops"), List.of("azimuth-deg", "altitude-deg"),
            List.of("openings", "light"));
    private static final List<String> NAMES = List.of("gloam-journal", "id", "written", "corrects");

    /** Refuses a form out of range, and a change of a name, with {@link BadInput}. */
    JournalChange {
        JournalLine.VERSIONS.check(gloamJournal);
        for (String name : NAMES) {
            if (change.has(name)) {
                throw new BadInput("change names " + name
                        + ", which no correction can change. Leave it out.");
            }
        }
    }

    /** What makes one sheet say what another does. */
    static JournalChange between(Entry before, Entry after, String id) {
        ObjectNode was = Bound.keys(JournalLine.of(before));
        ObjectNode is = Bound.keys(JournalLine.of(after));
        NAMES.forEach(was::remove);
        NAMES.forEach(is::remove);
        ObjectNode change = difference(was, is);
        for (List<String> keys : TOGETHER) {
            if (keys.stream().anyMatch(change::has)) {
                keys.forEach(change::remove);
                keys.forEach(key -> change.set(key, is.has(key) ? is.get(key) : is.nullNode()));
            }
        }
        return new JournalChange(JournalLine.VERSION, id, after.writtenAt(), before.identity(), change);
    }

    /** Whether it changes nothing. */
    boolean nothing() {
        return change.isEmpty();
    }

    /** The keys of a sheet as they are after the change. */
    ObjectNode of(ObjectNode sheet) {
        ObjectNode after = merged(sheet, change);
        after.put("written", written.toString());
        return after;
    }

    private static ObjectNode difference(ObjectNode was, ObjectNode is) {
        ObjectNode change = is.objectNode();
        was.propertyNames().stream().filter(key -> !is.has(key)).forEach(change::putNull);
        for (Map.Entry<String, JsonNode> now : is.properties()) {
            JsonNode before = was.path(now.getKey());
            if (before instanceof ObjectNode inside && now.getValue() instanceof ObjectNode inner) {
                ObjectNode deeper = difference(inside, inner);
                if (!deeper.isEmpty()) {
                    change.set(now.getKey(), deeper);
                }
            } else if (!before.equals(now.getValue())) {
                change.set(now.getKey(), now.getValue());
            }
        }
        return change;
    }

    private static ObjectNode merged(ObjectNode target, ObjectNode patch) {
        ObjectNode after = target.deepCopy();
        for (Map.Entry<String, JsonNode> key : patch.properties()) {
            if (key.getValue().isNull()) {
                after.remove(key.getKey());
            } else if (key.getValue() instanceof ObjectNode inner) {
                after.set(key.getKey(), merged(after.get(key.getKey()) instanceof ObjectNode inside ? inside
                        : after.objectNode(), inner));
            } else {
                after.set(key.getKey(), key.getValue());
            }
        }
        return after;
    }
}
