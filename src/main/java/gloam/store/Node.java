package gloam.store;

import java.util.List;
import java.util.Optional;

/** A piece of a YAML or JSON file that knows where it stands. */
sealed interface Node {

    /** Line on which it begins, from 1. */
    int line();

    /** Column at which it begins, from 1. */
    int column();

    /**
     * Keys and their values, every key once.
     *
     * @param entries in the order of the file
     */
    record Section(List<Entry> entries, int line, int column) implements Node {

        /** Copies the entries. */
        public Section {
            entries = List.copyOf(entries);
        }

        /** The entry of a key. */
        Optional<Entry> entry(String key) {
            return entries.stream().filter(entry -> entry.key().equals(key)).findFirst();
        }
    }

    /**
     * A row of values.
     *
     * @param items in the order of the file
     */
    record Row(List<Node> items, int line, int column) implements Node {

        /** Copies the items. */
        public Row {
            items = List.copyOf(items);
        }
    }

    /**
     * A single value.
     *
     * @param text what the file says, quotes taken off
     * @param kind what the file's language takes it for
     */
    record Scalar(String text, Kind kind, int line, int column) implements Node {
    }

    /** What is there but not read; its problem has been noted. */
    record Gap(int line, int column) implements Node {
    }

    /** A key and its value; the place is the key's. */
    record Entry(String key, int line, int column, Node value) {
    }

    /** What a single value is in YAML and JSON. */
    enum Kind { TEXT, NUMBER, TRUTH, NOTHING }
}
