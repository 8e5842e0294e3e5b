package gloam.store;

import gloam.journal.Entry;
import gloam.units.BadInput;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.annotation.JsonNaming;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A correction as it stands in a line of the journal. It names what it changes, as a JSON merge patch
 * (RFC 7386) of the sheet's keys: a value replaces the former one, null takes it back, the rest is kept. Of
 * openings it names when they were and how the camera was set ({@code times}), and their light ({@code
 * sky-cd-m2}) apart, so that a correction of one and of the other at once both hold.
 *
 * @param gloamJournal version of the form of a line
 * @param id           name of the line, which no other has
 * @param written      when it was written; of two that name the same key the later holds
 * @param corrects     the sheet
 * @param change       the keys that change
 * @param lightFor     site, aim and times for which its light was computed; empty if it computed none
 */
@JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
record JournalChange(int gloamJournal, String id, Instant written, String corrects, ObjectNode change,
        Optional<ObjectNode> lightFor) {

    /** Keys that mean something together only. */
    private static final List<List<String>> TOGETHER = List.of(
            List.of("tone", "tone-stops", "tone-spread-stops"), List.of("azimuth-deg", "altitude-deg"),
            List.of("reading"));
    private static final String OPENINGS = "openings";
    private static final String TIMES = "times";
    private static final String SKY = "sky-cd-m2";
    private static final String LIGHT = "light";
    /** What an opening says, or else the sheet. */
    private static final List<String> SET = List.of("azimuth-deg", "altitude-deg", "f-number");
    /** What the light hangs on besides the times. */
    private static final List<String> OF_LIGHT = List.of("site", "azimuth-deg", "altitude-deg");
    private static final List<String> OF_STARS = List.of("site", "azimuth-deg", "altitude-deg", "lens");
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
        change.remove(OPENINGS);
        if (!times(is).equals(times(was))) {
            change.set(TIMES, times(is));
        }
        boolean computed = !after.exposed().measured();
        if (!sky(is).equals(sky(was)) || change.has(LIGHT)
                || computed && (change.has(TIMES) || OF_LIGHT.stream().anyMatch(change::has))) {
            change.set(SKY, sky(is));
            change.set(LIGHT, is.get(LIGHT));
        }
        return new JournalChange(JournalLine.VERSION, id, after.writtenAt(), before.identity(), change,
                computed && change.has(SKY) ? Optional.of(lightFor(is)) : Optional.empty());
    }

    private static ArrayNode times(ObjectNode sheet) {
        ArrayNode times = sheet.arrayNode();
        sheet.get(OPENINGS).forEach(opening -> times.add(((ObjectNode) opening.deepCopy()).remove(
                List.of(SKY))));
        return times;
    }

    private static ArrayNode sky(ObjectNode sheet) {
        ArrayNode sky = sheet.arrayNode();
        sheet.get(OPENINGS).forEach(opening -> sky.add(opening.get(SKY)));
        return sky;
    }

    /** What the light of a sheet hangs on. */
    private static ObjectNode lightFor(ObjectNode sheet) {
        ObjectNode what = sheet.deepCopy().retain(OF_LIGHT);
        what.set(TIMES, times(sheet));
        return what;
    }

    /** Whether the light that it says is computed for what a sheet says; so it is if it computed none. */
    boolean lights(ObjectNode sheet) {
        return lightFor.filter(what -> !what.equals(lightFor(sheet))).isEmpty();
    }

    /** Whether it says what the light is, measured or computed. */
    boolean saysLight() {
        return change.has(SKY) || change.has(OPENINGS);
    }

    /** Whether it changes how fast stars run over the sheet. */
    boolean movesStars() {
        return OF_STARS.stream().anyMatch(change::has);
    }

    /** Whether it changes nothing. */
    boolean nothing() {
        return change.isEmpty();
    }

    /** The keys of a sheet as they are after the change. */
    ObjectNode of(ObjectNode sheet) {
        ObjectNode after = (ObjectNode) merged(sheet, change);
        after.put("written", written.toString());
        if (after.get(TIMES) instanceof ArrayNode times && !times.isEmpty()) {
            ArrayNode openings = after.arrayNode();
            times.forEach(time -> openings.add(merged(((ObjectNode) nearest(after.get(OPENINGS),
                    openings.size())).deepCopy().remove(SET), time)));
            after.set(OPENINGS, openings);
            after.remove(TIMES);
        }
        if (after.get(SKY) instanceof ArrayNode sky && !sky.isEmpty()) {
            ArrayNode openings = after.arrayNode();
            after.get(OPENINGS).forEach(opening -> openings.add(merged(opening, after.objectNode()
                    .set(SKY, nearest(sky, openings.size())))));
            after.set(OPENINGS, openings);
            after.remove(SKY);
        }
        return after;
    }

    /** The part of that number, or the last. */
    private static JsonNode nearest(JsonNode parts, int number) {
        return parts.path(Math.min(number, parts.size() - 1));
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

    private static JsonNode merged(JsonNode target, JsonNode patch) {
        if (!(patch instanceof ObjectNode keys)) {
            return patch;
        }
        ObjectNode after = target instanceof ObjectNode inside ? inside.deepCopy() : keys.objectNode();
        for (Map.Entry<String, JsonNode> key : keys.properties()) {
            if (key.getValue().isNull()) {
                after.remove(key.getKey());
            } else {
                after.set(key.getKey(), merged(after.path(key.getKey()), key.getValue()));
            }
        }
        return after;
    }
}
