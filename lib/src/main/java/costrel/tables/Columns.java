package costrel.tables;

import java.util.ArrayList;
import java.util.List;

/**
 * The columns a kind of table has. Their order in a file is free, and a column "note" or "source" is always allowed.
 *
 * @param required columns that must be there
 * @param optional columns that may be there
 */
record Columns(List<String> required, List<String> optional) {

    private static final List<String> ALWAYS = List.of("note", "source");

    Columns {
        required = List.copyOf(required);
        optional = List.copyOf(optional);
    }

    static Columns required(String... names) {
        return new Columns(List.of(names), List.of());
    }

    Columns optional(String... names) {
        return new Columns(required, List.of(names));
    }

    /** Every heading that a file may have. */
    List<String> known() {
        List<String> known = new ArrayList<>(required);
        known.addAll(optional);
        for (String name : ALWAYS) {
            if (!known.contains(name)) {
                known.add(name);
            }
        }
        return known;
    }
}
