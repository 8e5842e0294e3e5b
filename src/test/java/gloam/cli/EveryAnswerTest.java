package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.cli.Answers.Answer;
import gloam.view.JournalExportReport;
import java.io.IOException;
import java.util.List;
import java.util.TreeMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every kind of answer, on paper of every width. */
class EveryAnswerTest {

    private static final int[] WIDTHS = {40, 60, 80, 100, 200};
    /** Words and figures; what stands round them may change with the layout. */
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");

    private static List<Answer> answers;

    @BeforeAll
    static void ask() throws IOException {
        answers = Answers.all();
        assertTrue(answers.size() > 30, "answers");
        assertEquals(17, answers.stream().map(answer -> answer.report().getClass()).distinct().count(),
                "every kind but what is added to a journal");
    }

    @Test
    void noLineIsWiderThanThePaper() {
        for (Answer answer : answers) {
            if (answer.report() instanceof JournalExportReport) {
                continue;
            }
            for (int width : WIDTHS) {
                answer.text(width).lines().forEach(line -> assertTrue(line.length() <= width || line.strip().indexOf(' ') < 0,
                        () -> answer + " at " + width + ": " + line));
            }
        }
    }

    /** Columns may leave their table; what they say does not. */
    @Test
    void nothingIsLostOnNarrowPaper() {
        for (Answer answer : answers) {
            Map<String, Integer> wide = words(answer.text(200));
            for (int width : WIDTHS) {
                Map<String, Integer> narrow = words(answer.text(width));
                wide.forEach((word, times) -> assertTrue(narrow.getOrDefault(word, 0) >= times,
                        () -> answer + " at " + width + " says " + word + " " + narrow.get(word) + " of " + times + " times"));
            }
        }
    }

    private static Map<String, Integer> words(String text) {
        Map<String, Integer> words = new TreeMap<>();
        WORD.matcher(text).results().forEach(word -> words.merge(word.group(), 1, Integer::sum));
        return words;
    }
}
