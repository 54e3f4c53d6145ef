package costrel.report;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One cell of a table, or the value of a fact.
 *
 * @param text what is printed; empty for a blank cell
 * @param number the number that is printed, with exactly the digits that are printed; empty for words and for a blank
 */
public record Cell(String text, Optional<BigDecimal> number) {

    /** A cell with nothing in it. */
    public static final Cell BLANK = new Cell("", Optional.empty());

    private static final Pattern FIGURE = Pattern.compile("[+-]?\\d+(\\.\\d+)?");

    /**
     * A cell.
     *
     * @param text what is printed, on one line
     * @param number the number, if it is one
     * @throws IllegalArgumentException if the text isn't that number, or has more than one line
     */
    public Cell {
        if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
            throw new IllegalArgumentException("cell: expected one line, found several");
        }
        if (number.isPresent() && !(FIGURE.matcher(text).matches() && isExactly(new BigDecimal(text), number.get()))) {
            throw new IllegalArgumentException("cell: expected the digits of " + number.get() + ", found " + text);
        }
    }

    /** The same number with the same decimals. */
    private static boolean isExactly(BigDecimal printed, BigDecimal number) {
        return printed.compareTo(number) == 0 && printed.scale() == number.scale();
    }

    /**
     * A cell of words. Line breaks become blanks.
     *
     * @param text the words, which may look like a number, as the name of a lot may
     * @return the cell
     */
    public static Cell words(String text) {
        return text.isEmpty() ? BLANK : new Cell(text.replaceAll("[\\r\\n]+", " "), Optional.empty());
    }

    /**
     * A cell of a figure, as it is printed.
     *
     * @param text digits, with a sign or a decimal point where there are; anything else is kept as words
     * @return the cell
     */
    public static Cell figure(String text) {
        return FIGURE.matcher(text).matches() ? new Cell(text, Optional.of(new BigDecimal(text))) : words(text);
    }

    /**
     * A cell of an exact number.
     *
     * @param value the number, with the decimals that are to be printed
     * @return the cell
     */
    public static Cell of(BigDecimal value) {
        BigDecimal plain = value.scale() < 0 ? value.setScale(0) : value;
        return new Cell(plain.toPlainString(), Optional.of(plain));
    }

    /**
     * Whether there is nothing in it.
     *
     * @return true for a blank cell
     */
    public boolean isBlank() {
        return text.isEmpty();
    }
}
