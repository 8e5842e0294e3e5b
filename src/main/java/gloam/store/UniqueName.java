package gloam.store;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Function;

/** Reads a name that no other item of the same list may bear. */
final class UniqueName implements Function<Item, String> {

    private final Set<String> taken = new HashSet<>();

    @Override
    public String apply(Item item) {
        return unique(item.text(), item);
    }

    /** A name that is given at an item. */
    String unique(String name, Item item) {
        if (!taken.add(name)) {
            throw item.fault("the name " + Shown.quoted(name) + " is used twice. Give each its own.");
        }
        return name;
    }
}
