package gloam.cli;

import gloam.ephemeris.Body;
import gloam.gear.Projection;
import gloam.journal.Spoiler;
import gloam.journal.ToneWord;
import gloam.report.OutputFormat;
import gloam.store.FilmFile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Words that a shell offers to complete the value of an option; each list is made anew when picocli asks for it. */
abstract class Candidates extends ArrayList<String> {

    private static final long serialVersionUID = 1L;

    private Candidates(List<String> words) {
        super(words);
    }

    /** The words by which options name constants: lower case with hyphens. */
    static List<String> words(Enum<?>... constants) {
        return Arrays.stream(constants)
                .map(constant -> constant.name().toLowerCase(Locale.ROOT).replace('_', '-')).toList();
    }

    /** The built-in films. */
    static final class Films extends Candidates {

        private static final long serialVersionUID = 1L;

        Films() {
            super(FilmFile.names());
        }
    }

    /** Formats of standard output. */
    static final class Formats extends Candidates {

        private static final long serialVersionUID = 1L;

        Formats() {
            super(Arrays.stream(OutputFormat.values()).filter(OutputFormat::text).map(OutputFormat::label).toList());
        }
    }

    /** Projections of lenses. */
    static final class Projections extends Candidates {

        private static final long serialVersionUID = 1L;

        Projections() {
            super(words(Projection.values()));
        }
    }

    /** Words for a tone. */
    static final class Tones extends Candidates {

        private static final long serialVersionUID = 1L;

        Tones() {
            super(words(ToneWord.values()));
        }
    }

    /** What spoils a sheet. */
    static final class Spoilers extends Candidates {

        private static final long serialVersionUID = 1L;

        Spoilers() {
            super(words(Spoiler.values()));
        }
    }

    /** Moon and planets. */
    static final class Bodies extends Candidates {

        private static final long serialVersionUID = 1L;

        Bodies() {
            super(Arrays.stream(Body.values()).filter(body -> body != Body.SUN).map(Body::label).toList());
        }
    }
}
