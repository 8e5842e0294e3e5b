package gloam.store;

import gloam.journal.Pack;
import gloam.units.BadInput;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.annotation.JsonNaming;

/**
 * A pack as it stands in a line of the journal. Of several lines about one pack the last written holds.
 *
 * @param gloamJournal version of the form of a line
 * @param id           name of the line, which no other has
 * @param written      when it was written
 * @param pack         the pack
 */
@JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
record JournalPack(int gloamJournal, String id, Instant written, PackKeys pack) {

    private static final Comparator<JournalPack> OF_TIME =
            Comparator.comparing(JournalPack::written).thenComparing(JournalPack::id);

    /** Refuses a form out of range with {@link BadInput}. */
    JournalPack {
        JournalLine.VERSIONS.check(gloamJournal);
    }

    /** A pack noted under a new name. */
    static JournalPack of(Pack pack, String id, Instant written) {
        return new JournalPack(JournalLine.VERSION, id, written, new PackKeys(pack.film(), pack.batch(),
                pack.sheets(), pack.price().isEmpty() ? Optional.empty()
                        : Optional.of(BigDecimal.valueOf(pack.price().getAsDouble()))));
    }

    /** The last word on each pack, by film and name. */
    static List<JournalPack> lastWords(JournalText text) {
        List<JournalPack> lastWords = new ArrayList<>();
        text.lines().stream().flatMap(line -> line.pack().stream()).sorted(OF_TIME).forEach(word -> {
            int before = lastWords.stream().map(last -> last.pack.pack().same(word.pack.pack())).toList()
                    .indexOf(true);
            if (before < 0) {
                lastWords.add(word);
            } else {
                lastWords.set(before, word);
            }
        });
        lastWords.sort(Comparator.<JournalPack, String>comparing(word -> word.pack.film)
                .thenComparing(word -> word.pack.batch));
        return lastWords;
    }

    /** The keys of a pack. */
    @JsonNaming(PropertyNamingStrategies.KebabCaseStrategy.class)
    record PackKeys(String film, String batch, int sheets, Optional<BigDecimal> price) {

        /** Refuses what no pack can be with {@link BadInput}. */
        PackKeys {
            pack(film, batch, sheets, price);
        }

        Pack pack() {
            return pack(film, batch, sheets, price);
        }

        private static Pack pack(String film, String batch, int sheets, Optional<BigDecimal> price) {
            return new Pack(film, batch, sheets, price.map(amount -> OptionalDouble.of(amount.doubleValue()))
                    .orElse(OptionalDouble.empty()));
        }
    }
}
