package gloam.store;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes beside each key of a trip in YAML what it means, with its unit, range and default. */
final class KeyComments {

    private static final Pattern KEY = Pattern.compile("( *)(?:- )?([a-z0-9-]+):(.*)");
    private static final Pattern TOKEN = Pattern.compile("([a-z0-9-]+):|[{}\\[]");
    private static final String DEFAULT = "default ";
    private static final String REQUIRED = "required";
    /** Kinds of value that the example shows. */
    private static final Set<String> PLAIN = Set.of("text", "date", "section", "time zone", "time of day",
            "name of a file",
            "name of a star, or section", "name of a film, or section", "width x height, or section",
            "true or false", "name of a site, or a list of them", "name of a camera, or a list of them",
            "name of a body or star, or a list of them");
    private static final String OWN_COMMENT = "\t";
    private static final int COLUMN = 40;
    private static final int WIDTH = 110;
    private static final int LONGEST_BESIDE = 58;

    private final Map<String, TripKey> keys =
            TripKeys.all().stream().collect(Collectors.toMap(TripKey::path, Function.identity()));
    private final Deque<Place> open = new ArrayDeque<>();

    /** A key that others may stand below. */
    private record Place(int indent, String path) {
    }

    /** The text with a comment for each key; one that stands behind a tab in a line goes before. */
    String beside(String text) {
        return text.lines().flatMap(line -> commented(line).stream())
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private List<String> commented(String line) {
        String[] parts = line.split(OWN_COMMENT, 2);
        Matcher key = KEY.matcher(parts[0].replace("# ", ""));
        if (!key.matches()) {
            return List.of(line);
        }
        String path = path(parts[0].replace("# ", "").indexOf(key.group(2)), key.group(2));
        boolean used = !parts[0].contains("# ");
        String rules = used && (parts.length > 1 || key(path).without().endsWith(REQUIRED)) ? ""
                : rules(path, key.group(3));
        return laidOut(parts[0], Stream.of(parts.length > 1 ? parts[1] : meaning(path), rules)
                .filter(part -> !part.isEmpty()).collect(Collectors.joining("; ")));
    }

    private String path(int indent, String name) {
        while (!open.isEmpty() && open.peek().indent >= indent) {
            open.pop();
        }
        String path = open.isEmpty() ? name : below(open.peek().path, name);
        open.push(new Place(indent, path));
        return path;
    }

    private String below(String parent, String name) {
        String inSection = parent + "." + name;
        return TripKeys.general(keys.containsKey(inSection) ? inSection : parent + "[]." + name);
    }

    private TripKey key(String path) {
        return Optional.ofNullable(keys.get(path))
                .orElseThrow(() -> new IllegalStateException("no key " + path));
    }

    private String meaning(String path) {
        String meaning = key(path).shortMeaning();
        return meaning.matches("[A-Z][a-z ].*") ? meaning.substring(0, 1).toLowerCase(Locale.ROOT)
                + meaning.substring(1) : meaning;
    }

    /** What a value may be; of a section written in one line, what those in it may be. */
    private String rules(String path, String value) {
        TripKey key = key(path);
        if (!value.contains("{")) {
            return rules(key, true);
        }
        boolean ownDefault = key.without().startsWith(DEFAULT);
        Map<String, List<String>> names = inside(path, value).stream().collect(Collectors.groupingBy(
                leaf -> rules(leaf, !ownDefault), LinkedHashMap::new,
                Collectors.mapping(KeyComments::label, Collectors.toList())));
        names.remove("");
        String rules = names.size() == 1 ? names.keySet().iterator().next() : names.entrySet().stream()
                .map(one -> String.join(", ", one.getValue().stream().distinct().toList()) + " ("
                + one.getKey() + ")")
                .collect(Collectors.joining(", "));
        return ownDefault ? rules + "; " + key.without() : rules;
    }

    /** The keys in a section that is written in one line, but for those that hold a section again. */
    private List<TripKey> inside(String path, String value) {
        List<TripKey> leaves = new ArrayList<>();
        Deque<String> sections = new ArrayDeque<>();
        String last = path;
        Matcher tokens = TOKEN.matcher(value);
        while (tokens.find()) {
            if (tokens.group(1) != null) {
                last = (sections.peek() + "." + tokens.group(1)).replaceFirst("\\.(red|green|blue)\\.", ".");
                Optional.ofNullable(keys.get(last)).ifPresent(leaves::add);
            } else if (tokens.group().equals("{")) {
                sections.push(last);
            } else if (tokens.group().equals("[")) {
                last += "[]";
            } else if (tokens.group().equals("}")) {
                last = sections.pop();
            }
        }
        return leaves.stream().filter(leaf -> !leaf.name().equals("model")).distinct().toList();
    }

    /** A bound goes by the name of what it bounds. */
    private static String label(TripKey leaf) {
        return leaf.path().replaceFirst("\\.(least|most)$", "").replaceFirst(".*\\.", "");
    }

    private static String rules(TripKey key, boolean withDefault) {
        String kind = PLAIN.contains(key.kind()) ? "" : key.kind();
        String otherwise = withDefault && key.without().startsWith(DEFAULT) ? key.without() : "";
        return kind.isEmpty() || otherwise.isEmpty() ? kind + otherwise : kind + "; " + otherwise;
    }

    private static List<String> laidOut(String line, String comment) {
        if (comment.isEmpty()) {
            return List.of(line);
        }
        List<String> lines = new ArrayList<>();
        boolean above = line.length() > LONGEST_BESIDE;
        String start = above ? line.substring(0, line.indexOf(line.replaceFirst("^[ #-]*", "")))
                .replaceFirst("# $", "") : " ".repeat(COLUMN);
        for (String piece : wrapped(comment,
                WIDTH - 2 - Math.max(start.length(), above ? 0 : line.length() + 2))) {
            lines.add(above || !lines.isEmpty() ? start + "# " + piece
                    : String.format(Locale.ROOT, "%-" + (COLUMN - 2) + "s  # %s", line, piece));
        }
        if (above) {
            lines.add(line);
        }
        return lines;
    }

    private static List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        for (String word : text.split("(?<!…) (?!…)")) {
            int last = lines.size() - 1;
            if (last >= 0 && lines.get(last).length() + 1 + word.length() <= width) {
                lines.set(last, lines.get(last) + " " + word);
            } else {
                lines.add(word);
            }
        }
        return lines;
    }
}
