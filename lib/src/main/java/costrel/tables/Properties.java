package costrel.tables;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * Rows of "property, value" that together make one thing. Values are read when all rows are in; what is wrong with one is
 * a problem on its own line.
 */
final class Properties {

    private final CsvTable table;
    private final String nameColumn;
    private final String valueColumn;
    private final long firstLine;
    private final Map<String, Value> values = new LinkedHashMap<>();
    private boolean sound = true;

    /** A value as written, and the line it stands on. */
    private record Value(long line, String text) {}

    /**
     * Starts without rows.
     *
     * @param nameColumn the column that names the property
     * @param valueColumn the column that holds its value
     * @param firstLine where a property that is missing is reported
     */
    Properties(CsvTable table, String nameColumn, String valueColumn, long firstLine) {
        this.table = table;
        this.nameColumn = nameColumn;
        this.valueColumn = valueColumn;
        this.firstLine = firstLine;
    }

    /** Adds the row of a property, whose value must be filled. A second one is a problem. */
    void put(CsvRow row, String property) {
        String text = row.cell(valueColumn);
        Value before = values.get(property);
        if (text.isEmpty()) {
            row.problem(valueColumn, "nothing", "a value for " + property);
        } else if (before != null) {
            row.problem(
                    nameColumn, "'" + property + "' again, after line " + before.line(), "one row for each property");
        }
        if (!row.sound()) {
            sound = false;
        }
        values.putIfAbsent(property, new Value(row.line(), text));
    }

    /** Marks the whole as unfit: a row of it had a problem of its own. */
    void spoil() {
        sound = false;
    }

    boolean sound() {
        return sound;
    }

    boolean has(String property) {
        return values.containsKey(property);
    }

    /** The names of the properties that were given, in the order of the file. */
    Iterable<String> names() {
        return values.keySet();
    }

    <T> Optional<T> need(String property, CellKind<T> kind) {
        if (!values.containsKey(property)) {
            missing(property, kind.expected());
            return Optional.empty();
        }
        return may(property, kind);
    }

    <T> Optional<T> may(String property, CellKind<T> kind) {
        Value value = values.get(property);
        if (value == null || value.text().isEmpty() || value.text().indexOf(GuardedText.REPLACEMENT) >= 0) {
            return Optional.empty();
        }
        try {
            return Optional.of(kind.read(value.text()));
        } catch (IllegalArgumentException e) {
            TableProblem told = kind.refusal(file(), value.line(), valueColumn, value.text(), e);
            problem(value.line(), valueColumn, told.found(), told.expected() + " for " + property);
            return Optional.empty();
        }
    }

    OptionalDouble needFigure(String property, CellKind<Double> kind) {
        return figure(need(property, kind));
    }

    OptionalDouble mayFigure(String property, CellKind<Double> kind) {
        return figure(may(property, kind));
    }

    /** A figure with a default, which is named where it is used. */
    double orAssume(String owner, String property, CellKind<Double> kind, double otherwise, String words) {
        if (!values.containsKey(property)) {
            assume(owner, property, words);
            return otherwise;
        }
        return mayFigure(property, kind).orElse(otherwise);
    }

    /** Names a default. */
    void assume(String owner, String property, String words) {
        table.assume(firstLine, owner + ": " + property + ": " + words + ", not stated");
    }

    void missing(String property, String expected) {
        problem(firstLine, nameColumn, "no such row", "a row '" + property + "' with " + expected);
    }

    /** A problem with the value of a property. */
    void problem(String property, String found, String expected) {
        Value value = values.get(property);
        problem(value == null ? firstLine : value.line(), valueColumn, found, expected);
    }

    /** The value of a property as a message shows it. */
    String shown(String property) {
        Value value = values.get(property);
        return TableProblem.quoted(value == null ? "" : value.text());
    }

    /**
     * Makes a thing of some of the values, unless one that it needs was wrong. A refusal that names a property is a
     * problem on its line.
     */
    <T> Optional<T> build(Supplier<T> thing) {
        try {
            return Optional.of(thing.get());
        } catch (NoSuchElementException e) {
            if (sound) {
                throw e;
            }
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            String message = String.valueOf(e.getMessage());
            int colon = message.indexOf(':');
            Value named = colon < 0 ? null : values.get(message.substring(0, colon));
            sound = false;
            TableProblem told =
                    TableProblem.from(file(), named == null ? firstLine : named.line(), valueColumn, message);
            table.problems()
                    .add(
                            named == null
                                    ? told
                                    : new TableProblem(
                                            told.file(),
                                            told.line(),
                                            valueColumn,
                                            told.found(),
                                            told.expected() + " for " + message.substring(0, colon)));
            return Optional.empty();
        }
    }

    private void problem(long line, String column, String found, String expected) {
        sound = false;
        table.problems().add(line, column, found, expected);
    }

    private String file() {
        return table.problems().file();
    }

    private static OptionalDouble figure(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
