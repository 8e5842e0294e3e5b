package gloam.cli;

import gloam.cli.Questions.Question;
import gloam.gear.Site;
import gloam.journal.Exposed;
import gloam.journal.Outcome;
import gloam.journal.ToneWord;
import gloam.store.PlanFile.PlannedNight;
import gloam.store.PlanFile.PlannedSheet;
import gloam.units.BadInput;
import gloam.units.Label;
import gloam.units.Quantity;
import gloam.units.Range;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Walks through the sheets of a planned night, asking what came of each. An empty answer takes what the plan
 * says, or for pack and temperature the answer before. A sheet is in the journal once its last question is
 * answered, so that the input may end at any time.
 */
final class NightWalk {

    /** What is shown before the first question. */
    private static final String HELP =
            "Enter takes what stands in [ ], . the rest of the sheet too; the end of the "
            + "input (Ctrl-D) ends it.";

    private static final String REST = ".";
    private static final String NONE = "-";
    private static final String HOUR = "(?:[01]?\\d|2[0-3]):[0-5]\\d";
    private static final Pattern CLOCK = Pattern.compile("(" + HOUR + ")\\s*/\\s*(.+)");
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);
    private static final String FURTHER = "Another opening [none]: ";

    private final Terminal terminal;
    private final OptionGroup options;
    private final SheetOptions sheets;
    private final Map<String, String> carried = new HashMap<>();
    private UnaryOperator<String> reading = UnaryOperator.identity();
    private String answered = "";
    private boolean rest;
    private boolean left;
    private boolean ended;
    private boolean helped;

    /** A walk at a terminal; answers go to these options, those of the sheet among them. */
    NightWalk(Terminal terminal, OptionGroup options, SheetOptions sheets) {
        this.terminal = terminal;
        this.options = options;
        this.sheets = sheets;
    }

    /** What came of a walk: what was made of the sheets, those not exposed, and what went wrong. */
    record Walked<T>(Map<PlannedSheet, T> added, List<PlannedSheet> left, List<String> problems) {
    }

    /** The planned sheets of the night of a date, else of the last that has begun, else of the first. */
    static List<PlannedSheet> night(List<PlannedNight> nights, Optional<LocalDate> date, Instant now) {
        List<PlannedNight> meant = nights.stream().filter(night -> date.isPresent()
                ? night.night().equals(date.get())
                : !night.sheets().get(0).open().start().isAfter(now) || night == nights.get(0)).toList();
        if (meant.isEmpty()) {
            throw new BadInput("the plan exposes no sheet on that night; it does on " + (nights.isEmpty()
                    ? "none" : nights.stream().map(night -> night.night().toString())
                    .collect(Collectors.joining(", "))) + " (--plan, --night)");
        }
        return meant.get(meant.size() - 1).sheets();
    }

    /** Asks for one sheet after the other; each is added once it is answered. */
    <T> Walked<T> through(List<PlannedSheet> planned, Supplier<T> adding) {
        Map<PlannedSheet, T> added = new LinkedHashMap<>();
        List<PlannedSheet> notExposed = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        for (PlannedSheet sheet : planned) {
            Questions questions = new Questions(this::answer, options);
            options.named("--sheet").orElseThrow().answer(String.valueOf(sheet.sheet()));
            try {
                ask(questions, sheet);
                if (left) {
                    notExposed.add(sheet);
                } else {
                    added.put(sheet, questions.result(adding));
                }
            } catch (BadInput refused) {
                problems.add("sheet " + sheet.sheet() + " is not in the journal"
                        + (ended ? ", since the input ended" : ": " + refused.problems().get(0)));
                refused.problems().stream().skip(1).forEach(problems::add);
            }
            questions.forget();
            if (ended) {
                break;
            }
        }
        options.named("--sheet").orElseThrow().put(Optional.empty());
        return new Walked<>(added, notExposed, problems);
    }

    private void ask(Questions questions, PlannedSheet sheet) {
        rest = false;
        left = false;
        LocalDateTime opens = local(sheet, sheet.open().start());
        reading = answer -> opened(answer, opens);
        questions.askAll(new Question("--open", "Sheet " + sheet.sheet() + ", " + sheet.wish() + ": open ["
                + sheet.openings().stream().map(opening -> TIME.format(local(sheet, opening.open().start()))
                + "/" + TIME.format(local(sheet, opening.open().endExclusive())))
                .collect(Collectors.joining(" ")) + "], " + NONE + " if not exposed: ",
                answer -> sheets.checkOpenings()));
        if (left) {
            return;
        }
        ask(questions, new Question("--f-number", "  F-number ["
                + BigDecimal.valueOf(sheet.fNumber().marked()).stripTrailingZeros().toPlainString() + "]: "));
        reading = NightWalk::tone;
        questions.ask(new Question("--tone", "  Tone: " + String.join(", ",
                Label.all(List.of(ToneWord.values()))) + " [not known yet]: "));
        ask(questions, new Question("--kept", "  Kept: yes, no [not known yet]: "));
        ask(questions, new Question("--spoiled-by", "  Spoiled by [nothing]: "));
        ask(questions, number("--faintest", "  Faintest star, mag [not seen]: ", Outcome.MAGNITUDE));
        carry(questions, new Question("--batch", "  Pack or batch [" + carried.getOrDefault("--batch", NONE)
                + "]: "));
        carry(questions, number("--temperature", "  Temperature, °C ["
                + carried.getOrDefault("--temperature", NONE) + "]: ", Exposed.TEMPERATURE));
        ask(questions, new Question("--note", "  Note [none]: "));
        reading = UnaryOperator.identity();
        rest = false;
    }

    private void ask(Questions questions, Question question) {
        reading = UnaryOperator.identity();
        questions.ask(question);
    }

    /** Asks for what is the same for the next sheet unless it is answered anew. */
    private void carry(Questions questions, Question question) {
        String option = question.option();
        if (options.anyGiven(option)) {
            return;
        }
        reading = answer -> answer.isEmpty() ? carried.getOrDefault(option, "")
                : answer.equals(NONE) ? "" : answer;
        questions.ask(question);
        if (options.anyGiven(option)) {
            carried.put(option, answered);
        } else {
            carried.remove(option);
        }
    }

    private static Question number(String option, String text, Range range) {
        return new Question(option, text, answer -> new Quantity(answer).in(range));
    }

    private Optional<String> answer(String text) {
        String question = options.anyGiven("--open") ? text.replaceFirst("(?m)^Sheet .*: $", FURTHER) : text;
        String shown = (helped ? "" : HELP + System.lineSeparator()) + question;
        helped = true;
        Optional<String> answer = rest ? Optional.of("") : terminal.answer(shown).map(String::strip);
        ended = answer.isEmpty();
        if (answer.filter(REST::equals).isPresent()) {
            rest = true;
            answer = Optional.of("");
        }
        answered = answer.map(reading).orElse("");
        return answer.map(given -> answered);
    }

    /** A word of the tones by any beginning that no other has. */
    private static String tone(String answer) {
        List<String> meant = Label.all(List.of(ToneWord.values())).stream()
                .filter(word -> !answer.isEmpty() && word.startsWith(answer.toLowerCase(Locale.ROOT)))
                .toList();
        return meant.size() == 1 ? meant.get(0) : answer;
    }

    /** An opening by the clock, such as 21:40/1:15 or 21:40/3h, with the dates nearest to the plan's. */
    private String opened(String answer, LocalDateTime planned) {
        left = answer.equals(NONE) && !options.anyGiven("--open");
        Matcher clock = CLOCK.matcher(answer);
        if (!clock.matches()) {
            return answer.equals(NONE) ? "" : answer;
        }
        LocalTime time = LocalTime.parse(clock.group(1), TIME);
        LocalDateTime opens = Stream.of(-1, 0, 1)
                .map(days -> planned.toLocalDate().plusDays(days).atTime(time))
                .min(Comparator.comparing(at -> Duration.between(planned, at).abs())).orElseThrow();
        if (!clock.group(2).matches(HOUR)) {
            return opens + "/" + clock.group(2);
        }
        LocalDateTime closes = opens.toLocalDate().atTime(LocalTime.parse(clock.group(2), TIME));
        return opens + "/" + (closes.isAfter(opens) ? closes : closes.plusDays(1));
    }

    private LocalDateTime local(PlannedSheet sheet, Instant at) {
        List<Site> sites = sheets.trip().sites();
        return LocalDateTime.ofInstant(at, sites.stream().filter(site -> site.name().equals(sheet.site()))
                .findFirst().orElse(sites.get(0)).zone());
    }
}
