package gloam.store;

import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.journal.Outcome;
import gloam.journal.Pack;
import gloam.journal.SheetLight;
import gloam.units.BadInput;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import tools.jackson.databind.node.ObjectNode;

/**
 * The sheets of a journal, put together from its lines.
 *
 * <p>A line that comes again, and a sheet that says the same as another, are there once: so journals may be
 * joined by putting one behind the other. Corrections hold in the order in which they were written,
 * wherever they stand. Short names count the sheets; a line added changes none of them.
 */
final class JournalSheets {

    private static final String WHOLE_NUMBER = "[1-9][0-9]{0,8}";
    private static final int MOST_SHOWN = 50;

    private final List<Sheet> sheets = new ArrayList<>();
    private final Map<String, Sheet> byLine = new HashMap<>();
    private final Map<String, Sheet> byNumber = new HashMap<>();
    private final Map<Brief, List<Sheet>> byBrief = new HashMap<>();
    private final FirstForm firstForm = new FirstForm();
    private final List<String> damages = new ArrayList<>();
    private List<Pack> packs = List.of();
    private int highest;

    /** A sheet: its lines, all of which say the same, and corrections of it, both in order of time. */
    private static final class Sheet {

        private final String number;
        private final SortedMap<Order, Entry> entries = new TreeMap<>(Order.OF_TIME);
        private final SortedMap<Order, Placed> changes = new TreeMap<>(Order.OF_TIME);

        Sheet(String number) {
            this.number = number;
        }

        void put(Entry entry) {
            entries.put(new Order(entry.writtenAt(), entry.identity()), entry);
        }

        Entry first() {
            return entries.get(entries.firstKey());
        }
    }

    /** When a line was written, and its name. */
    private record Order(Instant written, String id) {

        private static final Comparator<Order> OF_TIME =
                Comparator.comparing(Order::written).thenComparing(Order::id);
    }

    /** Some of what a sheet says, at hand without writing its line. */
    private record Brief(Instant opened, String film, String note, Optional<String> wish, Outcome outcome) {

        static Brief of(Entry entry) {
            return new Brief(entry.exposed().whole().start(), entry.exposed().film(), entry.note(),
                    entry.wish(), entry.outcome());
        }
    }

    /** A correction and where it stands; without one the sheet was said again. */
    private record Placed(String where, Optional<JournalChange> change) {
    }

    /** The sheets of a journal's lines. */
    static JournalSheets of(JournalText text) {
        JournalSheets sheets = new JournalSheets();
        List<JournalText.Line> changes = new ArrayList<>();
        for (JournalText.Line line : text.lines()) {
            sheets.damages.addAll(line.problems());
            if (!line.read()) {
                sheets.highest += line.text().contains("\"corrects\"") ? 0 : 1;
            } else if (line.first()) {
                sheets.addFirst(line);
            } else if (line.change().isPresent()) {
                changes.add(line);
            } else {
                line.sheet().ifPresent(sheet -> sheets.add(line.where(), sheet, Optional.empty()));
            }
        }
        sheets.packs = JournalPack.lastWords(text).stream().map(word -> word.pack().pack()).toList();
        changes.forEach(line -> sheets.change(line.where(), line.change().orElseThrow()));
        return sheets;
    }

    private void addFirst(JournalText.Line line) {
        try {
            FirstForm.Read read = firstForm.read(line);
            if (read.change().isPresent()) {
                change(line.where(), read.change().get());
                byNumber.putIfAbsent(read.number(), byLine.get(read.change().get().corrects()));
                highest = Math.max(highest, whole(read.number()));
            } else {
                add(line.where(), read.sheet(), Optional.of(read.number()));
            }
        } catch (BadInput misfit) {
            damages.addAll(misfit.problems());
        }
    }

    private static int whole(String number) {
        return number.matches(WHOLE_NUMBER) ? Integer.parseInt(number) : 0;
    }

    private void add(String where, Entry entry, Optional<String> number) {
        Sheet before = byLine.get(entry.identity());
        if (before != null) {
            if (!says(before.first(), entry)) {
                damages.add(where + ": a sheet of that id says something else before. It is left out.");
            }
            return;
        }
        Sheet sheet = firstSaid(entry).orElseGet(() -> counted(entry, number));
        sheet.put(entry);
        byLine.put(entry.identity(), sheet);
        number.ifPresent(name -> byNumber.putIfAbsent(name, sheet));
    }

    /** The sheet that said the same when it was first written. */
    private Optional<Sheet> firstSaid(Entry entry) {
        return byBrief.getOrDefault(Brief.of(entry), List.of()).stream()
                .filter(sheet -> says(sheet.first(), entry)).findFirst();
    }

    private static boolean says(Entry one, Entry other) {
        return Brief.of(one).equals(Brief.of(other))
                && JournalLine.of(one).saying().equals(JournalLine.of(other).saying());
    }

    private Sheet counted(Entry entry, Optional<String> number) {
        String free = number.filter(name -> !byNumber.containsKey(name)).orElse(nextNumber());
        highest = Math.max(highest, whole(free));
        Sheet sheet = new Sheet(free);
        sheets.add(sheet);
        byBrief.computeIfAbsent(Brief.of(entry), brief -> new ArrayList<>()).add(sheet);
        byNumber.put(free, sheet);
        return sheet;
    }

    private void change(String where, JournalChange change) {
        Sheet sheet = byLine.get(change.corrects());
        if (sheet == null) {
            damages.add(where + ": corrects a sheet " + Shown.quoted(change.corrects())
                    + " that is not there. The line is left out.");
            return;
        }
        byLine.putIfAbsent(change.id(), sheet);
        sheet.changes.putIfAbsent(new Order(change.written(), change.id()), new Placed(where,
                Optional.of(change)));
    }

    /** The short name of the next sheet. */
    String nextNumber() {
        return String.valueOf(highest + 1);
    }

    /** The sheet that says what an entry says, as first written or as last corrected. */
    Optional<Entry> alike(Entry entry) {
        return sheets.stream().filter(sheet -> !sheet.changes.isEmpty()).map(this::lastWord)
                .filter(sheet -> !sheet.withdrawn() && says(sheet, entry)).findFirst()
                .or(() -> firstSaid(entry).map(this::lastWord));
    }

    /** The journal. */
    Journal journal() {
        List<Entry> lastWords = sheets.stream().map(this::lastWord).toList();
        Map<String, String> names = new HashMap<>();
        byLine.forEach((name, sheet) -> names.put(name, sheet.number));
        byNumber.forEach((name, sheet) -> names.put(name, sheet.number));
        return new Journal(lastWords, shown(damages), names, packs);
    }

    /** The sheet after all that was said of it; said again after it was withdrawn, it is as said again. */
    private Entry lastWord(Sheet sheet) {
        Entry first = sheet.first();
        SortedMap<Order, Placed> later = new TreeMap<>(sheet.changes);
        sheet.entries.keySet().stream().skip(1)
                .forEach(again -> later.put(again, new Placed("", Optional.empty())));
        Entry entry = first;
        Optional<Placed> light = Optional.empty();
        for (Map.Entry<Order, Placed> event : later.entrySet()) {
            Optional<JournalChange> change = event.getValue().change;
            if (change.isPresent()) {
                Entry now = changed(entry, change.get(), event.getValue().where);
                light = now != entry && change.get().saysLight() ? Optional.of(event.getValue()) : light;
                entry = now;
            } else if (entry.withdrawn()) {
                entry = first.writtenAt(event.getKey().written);
                light = Optional.empty();
            }
        }
        Entry named = entry.named(sheet.number);
        light.ifPresent(said -> checkLight(named, said));
        return named;
    }

    /** Says where two corrections at once left a sheet with the light of another aim, site or time. */
    private void checkLight(Entry entry, Placed said) {
        if (!entry.withdrawn() && !entry.exposed().measured()
                && !said.change.orElseThrow().lights(Bound.keys(JournalLine.of(entry)))) {
            damages.add(said.where + ": the light of entry " + entry.id() + " was computed here for another "
                    + "site, aim or time than was corrected elsewhere. Correct the entry once more with "
                    + "its site (--corrects " + entry.id() + " and --trip, or --place and --zone), which "
                    + "computes it anew.");
        }
    }

    private Entry changed(Entry entry, JournalChange change, String where) {
        Tree.Text text = new Tree.Text("", 1, change.of(Bound.keys(JournalLine.of(entry))).toString());
        try {
            Entry after = (change.gloamJournal() > JournalLine.VERSION
                    ? Bound.readNewer(text, JournalLine.class) : Bound.read(text, JournalLine.class)).entry();
            return change.movesStars() ? after.exposed(SheetLight.withStars(after.exposed())) : after;
        } catch (BadInput refused) {
            damages.addAll(refused.problems().stream().map(problem -> where + ":"
                    + problem.replaceFirst("^:1:\\d+:?", "") + " The correction is left out.").toList());
            return entry;
        }
    }

    /** The entry as it will be read again once a line is added; refused where it could not be. */
    static Entry readAgain(Path file, Entry entry) {
        return JournalText.readAgain(file, JournalLine.of(entry)).sheet().orElseThrow();
    }

    private static List<String> shown(List<String> damages) {
        List<String> shown = new ArrayList<>(damages.subList(0, Math.min(MOST_SHOWN, damages.size())));
        if (damages.size() > MOST_SHOWN) {
            shown.add("and " + (damages.size() - MOST_SHOWN) + " more");
        }
        return shown;
    }
}
