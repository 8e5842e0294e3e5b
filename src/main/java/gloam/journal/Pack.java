package gloam.journal;

import gloam.units.BadInput;
import gloam.units.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A pack of film as it was bought.
 *
 * @param film   the film's name
 * @param batch  the name of the pack or batch
 * @param sheets how many sheets were in it
 * @param price  what it cost, in any currency, if noted
 */
public record Pack(String film, String batch, int sheets, OptionalDouble price) {

    /** Allowed numbers of sheets. */
    public static final Range SHEETS = new Range("number of sheets in a pack", 1, 1000, "");
    /** Allowed prices. */
    public static final Range PRICE = new Range("price of a pack", 0, 1e6, "");

    /** Refuses what no pack can be with {@link BadInput}. */
    public Pack {
        SHEETS.check(sheets);
        price.ifPresent(PRICE::check);
        batch = Exposed.batch(batch);
        if (film.isBlank() || batch.isEmpty()) {
            throw new BadInput("a pack needs a film and a name; give both");
        }
    }

    /** The packs that sheets are from, as far as it was noted, all of one size and price. */
    public static List<Pack> of(List<Entry> sheets, int size, OptionalDouble price) {
        List<Pack> packs = new ArrayList<>();
        for (Exposed exposed : sheets.stream().map(Entry::exposed).toList()) {
            if (!exposed.batch().isEmpty() && packs.stream().noneMatch(pack -> pack.holds(exposed))) {
                packs.add(new Pack(exposed.film(), exposed.batch(), size, price));
            }
        }
        return packs;
    }

    /** Whether it is the same pack, whatever is said of it. */
    public boolean same(Pack other) {
        return is(other.film, other.batch);
    }

    /** Whether a sheet was exposed that is from it. */
    public boolean holds(Exposed exposed) {
        return is(exposed.film(), exposed.batch());
    }

    private boolean is(String ofFilm, String named) {
        return film.equalsIgnoreCase(ofFilm) && batch.equalsIgnoreCase(named);
    }
}
