package costrel.tables;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The text of a cell and what is known of it. Equal cells of a column are one object, so that a text is looked through and read
 * once for all the rows that have it.
 */
final class Cell {

    private static final char[] NONE = {};
    private static final char LAST_CONTROL = 0x1F;

    /** Up to this one the characters after the controls are plain. */
    private static final char LAST_PLAIN = 0x7E;

    private final char[] chars;
    private final int hash;
    private final String raw;
    private final String text;
    private final boolean blank;
    private final int lineBreaks;
    private final boolean damaged;
    private final boolean controls;

    private @Nullable CellKind<?> kind;
    private Optional<Object> value = Optional.empty();

    /** A cell that isn't looked for again. */
    Cell(String raw) {
        this(raw, NONE, 0);
    }

    /**
     * A cell that is found again by its characters.
     *
     * @param chars its characters, which compare faster than a string with a piece of a line
     * @param hash what {@link ColumnCells} makes of them
     */
    Cell(char[] chars, int hash) {
        this(new String(chars), chars, hash);
    }

    private Cell(String raw, char[] chars, int hash) {
        int breaks = 0;
        boolean anyDamage = false;
        boolean anyControl = false;
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            if (c > LAST_CONTROL && c <= LAST_PLAIN) {
                continue;
            }
            anyDamage |= c == GuardedText.REPLACEMENT;
            anyControl |= isControl(c);
            if (c == '\r' || (c == '\n' && (i == 0 || raw.charAt(i - 1) != '\r'))) {
                breaks++;
            }
        }
        this.chars = chars;
        this.hash = hash;
        this.raw = raw;
        this.text = stripped(raw);
        this.blank = text.isEmpty();
        this.lineBreaks = breaks;
        this.damaged = anyDamage;
        this.controls = anyControl;
    }

    /** Whether the cell is that of a piece of a line. */
    boolean is(char[] line, int from, int to) {
        return Arrays.equals(chars, 0, chars.length, line, from, to);
    }

    int hash() {
        return hash;
    }

    /** The text without blanks at its ends; empty where nothing else is in it. */
    String text() {
        return text;
    }

    /** The text as the file has it. */
    String raw() {
        return raw;
    }

    boolean isBlank() {
        return blank;
    }

    int lineBreaks() {
        return lineBreaks;
    }

    /** Whether bytes that are no UTF-8 stood in it. */
    boolean isDamaged() {
        return damaged;
    }

    boolean hasControlCharacter() {
        return controls;
    }

    /**
     * What the cell means. Asked by the same kind again it gives the same object.
     *
     * @throws IllegalArgumentException if it isn't of the kind
     */
    <T> Optional<T> read(CellKind<T> asked) {
        if (!asked.equals(kind)) {
            value = Optional.of(Objects.requireNonNull(asked.read(text)));
            kind = asked;
        }
        return asked.cast(value);
    }

    /** Blanks at the ends go, those that no keyboard shows too. */
    private static String stripped(String cell) {
        int start = 0;
        int end = cell.length();
        while (start < end && blank(cell.charAt(start))) {
            start++;
        }
        while (end > start && blank(cell.charAt(end - 1))) {
            end--;
        }
        return cell.substring(start, end);
    }

    private static boolean blank(char c) {
        return Character.isWhitespace(c) || c == '\u00a0' || c == '\u202f' || c == '\ufeff';
    }

    private static boolean isControl(char c) {
        return Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r';
    }
}
