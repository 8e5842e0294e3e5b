package gloam.cli;

import gloam.ephemeris.Body;
import gloam.film.FilmStock;
import gloam.gear.Projection;
import gloam.journal.Spoiler;
import gloam.journal.ToneWord;
import gloam.view.OutputFormat;
import gloam.store.FilmFile;
import gloam.units.Label;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;

/** Words that a shell offers to complete the value of an option, gathered only when they are asked for. */
abstract class Candidates implements Iterable<String> {

    abstract List<String> all();

    @Override
    public final Iterator<String> iterator() {
        return all().iterator();
    }

    /** The built-in films. */
    static final class Films extends Candidates {

        @Override
        List<String> all() {
            return FilmFile.names();
        }
    }

    /** Formats of standard output. */
    static final class Formats extends Candidates {

        @Override
        List<String> all() {
            return Arrays.stream(OutputFormat.values()).filter(OutputFormat::text).map(OutputFormat::label)
                    .toList();
        }
    }

    /** Projections of lenses. */
    static final class Projections extends Candidates {

        @Override
        List<String> all() {
            return Label.all(List.of(Projection.values()));
        }
    }

    /** Kinds of films. */
    static final class FilmKinds extends Candidates {

        @Override
        List<String> all() {
            return Label.all(List.of(FilmStock.Kind.values()));
        }
    }

    /** Words for a tone. */
    static final class Tones extends Candidates {

        @Override
        List<String> all() {
            return Label.all(List.of(ToneWord.values()));
        }
    }

    /** What spoils a sheet. */
    static final class Spoilers extends Candidates {

        @Override
        List<String> all() {
            return Label.all(List.of(Spoiler.values()));
        }
    }

    /** Moon and planets. */
    static final class Bodies extends Candidates {

        @Override
        List<String> all() {
            return Arrays.stream(Body.values()).filter(body -> body != Body.SUN).map(Body::label).toList();
        }
    }
}
