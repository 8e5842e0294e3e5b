package gloam.cli;

import gloam.units.BadInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Asks on a terminal for options, one at a time; an empty answer leaves the option out. */
final class Questions {

    /**
     * Something to ask.
     *
     * @param option the option the answer is for
     * @param text   what the terminal shows
     * @param check  refuses, with {@link BadInput}, an answer that the option would refuse
     */
    record Question(String option, String text, Consumer<String> check) {

        /** A question whose answer is looked at later, with the others. */
        Question(String option, String text) {
            this(option, text, answer -> { });
        }
    }

    private final Function<String, String> terminal;
    private final List<String> options = new ArrayList<>();

    /** Questions to a terminal, which gives an answer or, at its end, null. */
    Questions(Function<String, String> terminal) {
        this.terminal = terminal;
    }

    /** Asks until the answer will do, and tells whether there was one. */
    boolean ask(Question question) {
        String text = question.text;
        while (true) {
            Optional<String> answer = answer(text);
            try {
                answer.ifPresent(question.check);
                answer.ifPresent(given -> options.add(question.option + "=" + given));
                return answer.isPresent();
            } catch (BadInput bad) {
                text = bad.getMessage() + System.lineSeparator() + question.text;
            }
        }
    }

    /** Asks whether something is so; nothing is taken from an empty answer. */
    void askWhether(String text, String yes, String no) {
        answer(text).map(answer -> answer.startsWith("y") ? yes : no).ifPresent(options::add);
    }

    /** The answers as options. */
    List<String> options() {
        return List.copyOf(options);
    }

    private Optional<String> answer(String question) {
        return Optional.ofNullable(terminal.apply(question)).map(String::strip).filter(answer -> !answer.isEmpty());
    }
}
