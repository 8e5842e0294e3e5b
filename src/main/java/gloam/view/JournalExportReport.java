package gloam.view;

import gloam.journal.Entry;
import java.lang.reflect.RecordComponent;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * The sheets of the journal for other programs; as text, a table of comma-separated values.
 *
 * @param generatedAt when the report was made
 * @param sheets      the sheets in the order in which they were first written
 */
public record JournalExportReport(OffsetDateTime generatedAt, List<SheetRow> sheets) implements Report {

    private static final List<RecordComponent> FIELDS = List.of(SheetRow.class.getRecordComponents());

    /** Exports sheets. */
    public static JournalExportReport of(List<Entry> sheets, Instant now) {
        return new JournalExportReport(new SiteClock(ZoneOffset.UTC).at(now),
                sheets.stream().map(SheetRow::of).toList());
    }

    @Override
    public boolean empty() {
        return sheets.isEmpty();
    }

    @Override
    public Document document() {
        Table table = new Table(FIELDS.stream().map(JournalExportReport::column)
                .toArray(Table.Column[]::new));
        sheets().forEach(sheet -> table.row(FIELDS.stream()
                .map(field -> cell(field.getName(), value(field, sheet))).toArray(String[]::new)));
        return Document.forPrograms("Sheets of the journal").add(table);
    }

    private static Table.Column column(RecordComponent field) {
        boolean number = field.getType() == OptionalDouble.class || field.getType().isPrimitive();
        return number ? Table.numbers(field.getName()) : Table.words(field.getName());
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
        if (value instanceof OffsetDateTime at) {
            return Accuracy.of(Accuracy.name(SheetRow.class), name).of(at).toString();
        }
        if (value instanceof List<?> list) {
            return list.stream().map(String::valueOf).collect(Collectors.joining(" "));
        }
        if (value instanceof ScanReadingRow scan) {
            return scan.text();
        }
        return String.valueOf(value);
    }

    private static Object value(RecordComponent field, SheetRow sheet) {
        try {
            return field.getAccessor().invoke(sheet);
        } catch (ReflectiveOperationException cannotHappen) {
            throw new IllegalStateException(cannotHappen);
        }
    }
}
