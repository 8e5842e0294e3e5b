package gloam.answer;

import gloam.journal.Entry;
import gloam.journal.Tally;
import java.util.List;

/**
 * Numbers of keepers and the causes that spoil sheets.
 *
 * @param all     all sheets together
 * @param packs   each pack noted
 * @param films   each film
 * @param seasons each season, winter first
 */
public record Keepers(Tally all, List<Tally> packs, List<Tally> films, List<Tally> seasons) {

    /** Copies the lists. */
    public Keepers {
        packs = List.copyOf(packs);
        films = List.copyOf(films);
        seasons = List.copyOf(seasons);
    }

    /** Counts the keepers among some sheets. */
    public static Keepers of(List<Entry> sheets) {
        return new Keepers(Tally.all(sheets), Tally.byPack(sheets), Tally.byFilm(sheets),
                Tally.bySeason(sheets));
    }
}
