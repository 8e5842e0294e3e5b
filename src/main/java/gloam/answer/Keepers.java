package gloam.answer;

import gloam.journal.Entry;
import gloam.journal.Pack;
import gloam.journal.Tally;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Numbers of keepers and the causes that spoil sheets.
 *
 * @param all     all sheets together
 * @param packs   each pack noted
 * @param films   each film
 * @param seasons each season, winter first
 * @param wishes  each wish noted
 * @param stock   what is left of each pack and what its keepers cost, if packs are known
 */
public record Keepers(Tally all, List<Tally> packs, List<Tally> films, List<Tally> seasons,
        List<Tally> wishes, List<Stock> stock) {

    /**
     * What is left of a pack.
     *
     * @param pack        film and pack
     * @param sheetsLeft  sheets that the journal has not seen; below 0 if it has seen more than there were
     * @param keeperPrice what a keeper of it cost, in the currency of the pack's price; empty without keepers
     *                    or a price
     */
    public record Stock(String pack, int sheetsLeft, OptionalDouble keeperPrice) {

        /** What is left of a pack after all the sheets of a journal. */
        public static Stock of(Pack pack, List<Entry> sheets) {
            Tally used = Tally.all(sheets.stream().filter(entry -> pack.holds(entry.exposed())).toList());
            return new Stock(pack.film() + ", " + pack.batch(), pack.sheets() - used.sheets(),
                    pack.price().isEmpty() || used.kept() == 0 ? OptionalDouble.empty()
                    : OptionalDouble.of(pack.price().getAsDouble() * used.sheets() / pack.sheets()
                    / used.kept()));
        }
    }

    /** Copies the lists. */
    public Keepers {
        packs = List.copyOf(packs);
        films = List.copyOf(films);
        seasons = List.copyOf(seasons);
        wishes = List.copyOf(wishes);
        stock = List.copyOf(stock);
    }

    /** Counts the keepers among some sheets. */
    public static Keepers of(List<Entry> sheets) {
        return new Keepers(Tally.all(sheets), Tally.byPack(sheets), Tally.byFilm(sheets),
                Tally.bySeason(sheets), Tally.byWish(sheets), List.of());
    }

    /** The same with what is left of packs after all the sheets of a journal. */
    public Keepers withStock(List<Pack> known, List<Entry> sheets) {
        return new Keepers(all, packs, films, seasons, wishes,
                known.stream().map(pack -> Stock.of(pack, sheets)).toList());
    }
}
