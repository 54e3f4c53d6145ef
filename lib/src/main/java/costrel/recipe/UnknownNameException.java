package costrel.recipe;

import java.util.List;

/** A name that nothing in the brewery carries. The message offers the nearest. */
public final class UnknownNameException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final List<String> nearest;

    /**
     * Names what was looked for.
     *
     * @param what the kind of thing, such as "plant"
     * @param name the name as written
     * @param nearest known names that are near, may be empty
     */
    public UnknownNameException(String what, String name, List<String> nearest) {
        super(what + ": no " + what + " is called '" + name + "'"
                + (nearest.isEmpty() ? "" : "; nearest: " + String.join(", ", nearest)));
        this.nearest = List.copyOf(nearest);
    }

    /**
     * The known names that are near.
     *
     * @return nearest first, may be empty
     */
    public List<String> nearest() {
        return nearest;
    }
}
