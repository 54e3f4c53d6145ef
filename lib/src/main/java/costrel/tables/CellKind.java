package costrel.tables;

import costrel.recipe.Names;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a cell must hold: the words for it, with an example, and how it is read.
 *
 * @param <T> what it becomes
 * @param expected such as "a date such as 2026-11-25"
 * @param parser reads the stripped text; refuses with an IllegalArgumentException
 * @param free whether any text is right, so that the mark against formulas is taken off
 */
record CellKind<T>(String expected, Function<String, T> parser, boolean free) {

    /** Names and other words. They stand in one line. */
    static final CellKind<String> TEXT = new CellKind<>("text in one line", CellKind::oneLine, true);

    static <T> CellKind<T> of(String expected, Function<String, T> parser) {
        return new CellKind<>(expected, parser, false);
    }

    /** One of a few words, without regard to case and spaces. The nearest are offered for any other. */
    static <T> CellKind<T> oneOf(T[] choices, Function<T, String> label) {
        Map<String, T> byLabel = new LinkedHashMap<>();
        Arrays.stream(choices).forEach(choice -> byLabel.put(label.apply(choice), choice));
        String expected = (byLabel.size() > 1 ? "one of " : "") + String.join(", ", byLabel.keySet());
        return of(
                expected,
                cell -> Names.find(byLabel, cell)
                        .orElseThrow(() -> new IllegalArgumentException("expected " + expected + ", found "
                                + TableProblem.quoted(cell) + nearest(byLabel.keySet(), cell))));
    }

    /** The name of something that is known. The nearest are offered for any other. */
    static <T> CellKind<T> known(String expected, Map<String, T> things) {
        return new CellKind<>(
                expected,
                cell -> Names.find(things, cell)
                        .orElseThrow(() -> new IllegalArgumentException("expected " + expected + ", found "
                                + TableProblem.quoted(cell) + nearest(things.keySet(), cell))),
                true);
    }

    /** One of many words: too many to list, so that only the nearest are offered. */
    static CellKind<String> word(String expected, List<String> words) {
        Map<String, String> byWord = new LinkedHashMap<>();
        words.forEach(word -> byWord.put(word, word));
        return known(expected, byWord);
    }

    /** The known names near to an unknown one, in brackets; nothing where none is near. */
    static String nearest(Collection<String> known, String name) {
        List<String> nearest = Names.nearest(known, name);
        return nearest.isEmpty() ? "" : " (nearest: " + String.join(", ", nearest) + ")";
    }

    /** What a cell means; the mark against formulas is taken off where any text is right. */
    T read(String cell) {
        return parser.apply(free && CsvOut.isGuarded(cell) ? cell.substring(1) : cell);
    }

    /** A value that this kind made before. */
    @SuppressWarnings("unchecked") // only values of this kind's own parser are kept under it
    Optional<T> cast(Optional<Object> value) {
        return (Optional<T>) (Optional<?>) value;
    }

    /** The problem of a cell that was refused: in the parser's words where it says what it found, else in ours. */
    TableProblem refusal(String file, long line, String column, String cell, IllegalArgumentException refusal) {
        String message = String.valueOf(refusal.getMessage());
        TableProblem told = TableProblem.from(file, line, column, message);
        return told.found().isEmpty()
                ? new TableProblem(file, line, column, TableProblem.quoted(cell), expected)
                : told;
    }

    private static String oneLine(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c == '\n' || c == '\r' || c == '\t') {
                throw new IllegalArgumentException("a line break or a tab");
            }
        }
        return cell;
    }
}
