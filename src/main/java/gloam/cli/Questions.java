package gloam.cli;

import gloam.units.BadInput;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Asks on a terminal for options of a command, one at a time; an empty answer leaves the option out, and an
 * option that was given is not asked for. Whatever goes wrong, no answer is lost: what was said wrongly is
 * asked again, and where that is given up the answers are shown as options.
 */
final class Questions {

    private static final Pattern OPTION = Pattern.compile("(?<![\\w-])--[a-z][a-z0-9-]+");

    /**
     * Something to ask.
     *
     * @param option the option the answer is for
     * @param text   what the terminal shows
     * @param check  refuses, with {@link BadInput}, an answer that the command would refuse; the option has
     *               it by then
     */
    record Question(String option, String text, Consumer<String> check) {

        /** A question whose answer need only be read. */
        Question(String option, String text) {
            this(option, text, answer -> { });
        }
    }

    private final Terminal terminal;
    private final OptionGroup options;
    private final Map<String, Question> known = new LinkedHashMap<>();
    private final Set<String> repeated = new HashSet<>();
    private final Map<String, List<String>> answers = new LinkedHashMap<>();

    /** Questions to a terminal for some of these options. */
    Questions(Terminal terminal, OptionGroup options) {
        this.terminal = terminal;
        this.options = options;
    }

    /** Asks unless the option was given. */
    void ask(Question question) {
        known.put(question.option, question);
        if (!options.anyGiven(question.option)) {
            askUntilRight(question, question.text);
        }
    }

    /** The same for an option that may be given more than once: until an answer is empty. */
    void askAll(Question question) {
        known.put(question.option, question);
        repeated.add(question.option);
        boolean more = !options.anyGiven(question.option);
        while (more) {
            more = askUntilRight(question, question.text);
        }
    }

    /**
     * What comes of the answers; where they do not go together, the options that the refusal names are asked
     * again.
     */
    <T> T result(Supplier<T> attempt) {
        while (true) {
            try {
                return attempt.get();
            } catch (BadInput refusal) {
                if (!askedAgain(refusal)) {
                    throw withAnswers(refusal.problems());
                }
            }
        }
    }

    /** Asks for the options that a refusal names; whether any of them is another now. */
    private boolean askedAgain(BadInput refusal) {
        Set<String> named = new LinkedHashSet<>();
        OPTION.matcher(refusal.getMessage()).results().map(found -> found.group())
                .filter(name -> options.named(name).isPresent()).forEach(named::add);
        boolean changed = false;
        String before = refusal.getMessage() + System.lineSeparator();
        for (String name : named) {
            Question question = known.getOrDefault(name, new Question(name, name + ": "));
            changed |= askedAnew(options.named(name).orElseThrow(), question, before + question.text);
            before = "";
        }
        return changed;
    }

    private <V> boolean askedAnew(Option<V> option, Question question, String text) {
        Optional<V> was = option.value();
        option.put(Optional.empty());
        answers.remove(question.option);
        boolean more = askUntilRight(question, text) && repeated.contains(question.option);
        while (more) {
            more = askUntilRight(question, question.text);
        }
        if (!option.given()) {
            option.leaveOut(was);
        }
        return !option.value().equals(was);
    }

    /** Asks until the answer will do; whether there was one. */
    private boolean askUntilRight(Question question, String text) {
        String shown = text;
        while (true) {
            String answer = answer(shown);
            if (answer.isEmpty()) {
                return false;
            }
            try {
                take(options.named(question.option).orElseThrow(), question, answer);
                return true;
            } catch (BadInput bad) {
                shown = bad.getMessage() + System.lineSeparator() + question.text;
            }
        }
    }

    private <V> void take(Option<V> option, Question question, String answer) {
        Optional<V> was = option.value();
        try {
            option.answer(answer);
            question.check.accept(answer);
            answers.computeIfAbsent(question.option, name -> new ArrayList<>())
                    .add(option.written(question.option, answer));
        } catch (BadInput bad) {
            option.put(was);
            throw bad;
        }
    }

    private String answer(String text) {
        return terminal.answer(text).map(String::strip).orElseThrow(() ->
                withAnswers(List.of("the input ended before the last question; nothing was written")));
    }

    /** Takes away what was answered, so that the same can be asked of something else. */
    void forget() {
        answers.keySet().forEach(name -> forget(options.named(name).orElseThrow()));
        answers.clear();
    }

    private static <V> void forget(Option<V> option) {
        option.leaveOut(Optional.empty());
    }

    /** A refusal that gives the answers back, as options of a command line. */
    private BadInput withAnswers(List<String> problems) {
        List<String> all = new ArrayList<>(problems);
        if (!answers.isEmpty()) {
            all.add("your answers as options: " + answers.values().stream().flatMap(List::stream)
                    .collect(Collectors.joining(" ")));
        }
        return new BadInput(all);
    }
}
