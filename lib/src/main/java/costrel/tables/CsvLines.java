package costrel.tables;

import java.io.IOException;
import java.util.Arrays;

/**
 * The lines of a text one after another, each with the places of its commas. A line stands in one buffer with others and is
 * gone when the next is asked for.
 */
final class CsvLines {

    private static final int BUFFER = 16_384;

    private final GuardedText text;
    private char[] chars = new char[BUFFER];
    private int filled;
    private boolean ended;

    private int start;
    private int length;
    private int lengthWithEnd;
    private int[] commas = new int[32];
    private int commaCount;
    private boolean quoted;
    private long number;

    CsvLines(GuardedText text) {
        this.text = text;
    }

    /** Goes to the next line; false where there is none. */
    boolean next() throws IOException {
        start += lengthWithEnd;
        lengthWithEnd = 0;
        commaCount = 0;
        quoted = false;
        int looked = lookFrom(0);
        while (!ended && !isWhole(looked)) {
            more();
            looked = lookFrom(looked);
        }
        if (start + looked == filled && looked == 0) {
            return false;
        }
        length = looked;
        lengthWithEnd = looked + endLength(start + looked);
        number++;
        return true;
    }

    /** The number of the line, counted from 1. */
    long number() {
        return number;
    }

    /** The number of a line of which only a part could be read; else of the last one. */
    long numberUnderWay() {
        return filled > start ? number + 1 : number;
    }

    /** The buffer that the line stands in. */
    char[] chars() {
        return chars;
    }

    /** Where the line begins in the buffer. */
    int start() {
        return start;
    }

    /** How long the line is without what ends it. */
    int length() {
        return length;
    }

    int lengthWithEnd() {
        return lengthWithEnd;
    }

    /** Whether a carriage return alone ends the line. */
    boolean endsInReturn() {
        return lengthWithEnd == length + 1 && chars[start + length] == '\r';
    }

    /** Whether a quote stands anywhere in the line. */
    boolean isQuoted() {
        return quoted;
    }

    int commaCount() {
        return commaCount;
    }

    /** Where a comma stands, counted from the line's first character. */
    int comma(int index) {
        return commas[index];
    }

    /** Notes commas and quotes from a place on, up to the end of the line or of what was read. */
    private int lookFrom(int place) {
        char[] line = chars;
        int end = filled;
        int at = start + place;
        for (; at < end; at++) {
            char c = line[at];
            if (c > ',') {
                continue; // as most are: letters, digits, stops, dashes
            }
            if (c == ',') {
                if (commaCount == commas.length) {
                    commas = Arrays.copyOf(commas, 2 * commaCount);
                }
                commas[commaCount++] = at - start;
            } else if (c == '"') {
                quoted = true;
            } else if (c == '\n' || c == '\r') {
                break;
            }
        }
        return at - start;
    }

    /** Whether the end of the line was read: after a carriage return what follows says so. */
    private boolean isWhole(int looked) {
        int at = start + looked;
        return at + 1 < filled || (at < filled && chars[at] == '\n');
    }

    private int endLength(int at) {
        if (at == filled) {
            return 0;
        }
        return chars[at] == '\r' && at + 1 < filled && chars[at + 1] == '\n' ? 2 : 1;
    }

    /** Reads on behind what is there of the line, which moves to the front. */
    private void more() throws IOException {
        System.arraycopy(chars, start, chars, 0, filled - start);
        filled -= start;
        start = 0;
        if (filled == chars.length) {
            chars = Arrays.copyOf(chars, 2 * filled);
        }
        int count = text.read(chars, filled, chars.length - filled);
        if (count < 0) {
            ended = true;
        } else {
            filled += count;
        }
    }
}
