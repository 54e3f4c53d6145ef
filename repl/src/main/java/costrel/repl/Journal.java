package costrel.repl;

import java.lang.ref.SoftReference;
import java.lang.reflect.Array;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was typed and answered, and what the names stood for before. A value before is held only as long as there is memory
 * to spare, and a long list of numbers not at all.
 */
final class Journal {

    private static final int INPUTS_KEPT = 100;
    private static final int LONGEST_LIST_HELD = 10_000;

    private final List<Line> lines = new ArrayList<>();
    private final Deque<List<Change>> inputs = new ArrayDeque<>();
    private List<Change> changes = new ArrayList<>();

    /** A line that was answered. Two lines of the same text are two lines. */
    static final class Line {
        private final String text;

        Line(String text) {
            this.text = text;
        }
    }

    /**
     * What a name stood for.
     *
     * @param type the type of the variable
     * @param value the value, as long as it is held
     * @param nothing whether the value was none
     */
    record Held(String type, SoftReference<Object> value, boolean nothing) {

        static Held of(String type, @Nullable Object value) {
            boolean large = value != null && value.getClass().isArray() && Array.getLength(value) > LONGEST_LIST_HELD;
            return new Held(type, new SoftReference<>(large ? null : value), value == null);
        }
    }

    /**
     * A name that was given something to stand for.
     *
     * @param name the name
     * @param before what it stood for, if it did
     * @param line the line that did it
     */
    record Change(String name, Optional<Held> before, Line line) {}

    /** Begins a new input. */
    void begin() {
        if (!changes.isEmpty()) {
            inputs.addLast(changes);
            changes = new ArrayList<>();
        }
        if (inputs.size() > INPUTS_KEPT) {
            inputs.removeFirst();
        }
    }

    /** Forgets everything. */
    void forget() {
        lines.clear();
        inputs.clear();
        changes = new ArrayList<>();
    }

    /** Notes a line that was answered. */
    Line answered(String text) {
        Line line = new Line(text);
        lines.add(line);
        return line;
    }

    /** Notes that the line gave a name something else to stand for. */
    void changed(String name, Optional<Held> before, Line line) {
        changes.add(new Change(name, before, line));
    }

    /** Takes the latest input with changes out, its changes last first; empty if there is none. */
    List<Change> takeLatest() {
        begin();
        List<Change> latest = inputs.isEmpty() ? List.of() : inputs.removeLast();
        List<Change> backwards = new ArrayList<>(latest);
        java.util.Collections.reverse(backwards);
        backwards.forEach(change -> lines.remove(change.line()));
        return backwards;
    }

    /** What was answered and not taken back, in order. */
    List<String> lines() {
        return lines.stream().map(line -> line.text).toList();
    }
}
