package gloam.view;

import gloam.units.PlainText;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Sheets as comma-separated values (RFC 4180), a line each, under a header of the fields' names.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe before it, as OWASP advises against CSV
 * injection; line ends within a text become blanks, so that a sheet stays one line.
 */
final class SheetCsv {

    /** The last four are the full-width forms, which some spreadsheets take for the others. */
    private static final String FORMULA_STARTS = "=+-@\t\r\uFF1D\uFF0B\uFF0D\uFF20";
    private static final RecordComponent[] FIELDS = SheetRow.class.getRecordComponents();

    private SheetCsv() {
    }

    static List<String> lines(List<SheetRow> sheets) {
        List<String> lines = new ArrayList<>();
        lines.add(Arrays.stream(FIELDS).map(RecordComponent::getName).collect(Collectors.joining(",")));
        sheets.forEach(sheet -> lines.add(Arrays.stream(FIELDS).map(field -> cell(field.getName(), value(field, sheet)))
                .collect(Collectors.joining(","))));
        return lines;
    }

    private static String cell(String name, Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(there -> cell(name, there)).orElse("");
        }
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? cell(name, optional.getAsDouble()) : "";
        }
        if (value instanceof Double number) {
            return Accuracy.of(name).of(number).stripTrailingZeros().toPlainString();
        }
        if (value instanceof List<?> list) {
            return text(list.stream().map(String::valueOf).collect(Collectors.joining(" ")));
        }
        return value instanceof String text ? text(text) : String.valueOf(value);
    }

    /** A text in quotes where it needs them, harmless to spreadsheets. */
    static String text(String text) {
        String line = text.replaceAll("\\R", " ");
        String words = PlainText.of(line.strip());
        boolean formula = !line.isEmpty() && FORMULA_STARTS.indexOf(line.charAt(0)) >= 0
                || !words.isEmpty() && FORMULA_STARTS.indexOf(words.charAt(0)) >= 0;
        String harmless = formula ? "'" + words : words;
        return harmless.matches(".*[,\"'\\s].*") ? '"' + harmless.replace("\"", "\"\"") + '"' : harmless;
    }

    private static Object value(RecordComponent field, SheetRow sheet) {
        try {
            return field.getAccessor().invoke(sheet);
        } catch (ReflectiveOperationException cannotHappen) {
            throw new IllegalStateException(cannotHappen);
        }
    }
}
