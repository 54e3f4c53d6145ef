package costrel.buying;

import java.util.List;

/** One price or more that can't be told: no row names the item, none applies, or two do. */
public final class NoPriceException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> faults;

    /**
     * Names what is amiss.
     *
     * @param faults each with its item, the day and what to supply; one or more
     */
    public NoPriceException(List<String> faults) {
        super(String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    /**
     * What is amiss, one fault an entry.
     *
     * @return the faults
     */
    public List<String> faults() {
        return faults;
    }
}
