package costrel.tables;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The cells of a column by their texts. Price lists repeat few texts often, and rows that follow each other often have the same:
 * such a cell is found in the line itself, without a string being made for it.
 */
final class ColumnCells {

    /** Bound on the distinct cells that are kept. */
    private static final int MOST = 50_000;

    private static final int LONGEST = 100;

    /** A text that isn't found within so many places isn't kept, so that no choice of texts makes the search long. */
    private static final int FARTHEST = 16;

    private static final int SPREAD = 0x9E3779B9; // 2^32 over the golden ratio

    private @Nullable Cell[] table = new Cell[16];
    private int count;
    private @Nullable Cell last;

    /** The cell of a piece of a line. */
    Cell of(char[] line, int from, int to) {
        Cell before = last;
        if (before != null && before.is(line, from, to)) {
            return before;
        }
        if (to - from > LONGEST) {
            return new Cell(new String(line, from, to - from));
        }
        int hash = 0;
        for (int i = from; i < to; i++) {
            hash = 31 * hash + line[i];
        }
        hash *= SPREAD;
        hash ^= hash >>> 15;
        hash *= SPREAD;
        Cell found = search(line, from, to, hash);
        last = found;
        return found;
    }

    private Cell search(char[] line, int from, int to, int hash) {
        for (int step = 0; step < FARTHEST; step++) {
            int place = place(hash, step);
            Cell kept = table[place];
            if (kept == null) {
                Cell added = new Cell(Arrays.copyOfRange(line, from, to), hash);
                if (count < MOST) {
                    count++;
                    table[place] = added;
                    if (2 * count > table.length) {
                        grow();
                    }
                }
                return added;
            }
            if (kept.hash() == hash && kept.is(line, from, to)) {
                return kept;
            }
        }
        return new Cell(Arrays.copyOfRange(line, from, to), hash);
    }

    /** The upper bits of a product depend on all bits of its factors, the lower ones don't. */
    private int place(int hash, int step) {
        return ((hash >>> (Integer.numberOfLeadingZeros(table.length) + 1)) + step) & (table.length - 1);
    }

    private void grow() {
        @Nullable Cell[] before = table;
        table = new Cell[2 * before.length];
        for (Cell kept : before) {
            for (int step = 0; kept != null && step < FARTHEST; step++) {
                int place = place(kept.hash(), step);
                if (table[place] == null) {
                    table[place] = kept;
                    break;
                }
            }
        }
    }
}
