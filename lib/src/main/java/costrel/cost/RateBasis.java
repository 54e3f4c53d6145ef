package costrel.cost;

import costrel.packaging.ContainerKind;
import java.util.Optional;

/** What a rate is charged by. */
public enum RateBasis {
    /** Once a gyle. */
    PER_GYLE("per gyle", "gyle"),
    /** By hectolitres of cold wort collected. */
    PER_HL_COLLECTED("per hL collected", "hL"),
    /** By hectolitres of beer racked. */
    PER_HL_RACKED("per hL racked", "hL"),
    /** By containers filled, of every kind. */
    PER_CONTAINER("per container", "container"),
    /** By casks filled. */
    PER_CASK("per cask", "container", ContainerKind.CASK),
    /** By kegs filled. */
    PER_KEG("per keg", "container", ContainerKind.KEG),
    /** By bottles filled. */
    PER_BOTTLE("per bottle", "container", ContainerKind.BOTTLE),
    /** By cans filled. */
    PER_CAN("per can", "container", ContainerKind.CAN),
    /** By days that the gyle holds a tank. */
    PER_TANK_DAY("per tank-day", "tank-day"),
    /** By kilograms of grist. */
    PER_KG_OF_GRIST("per kg of grist", "kg");

    private final String label;
    private final String unit;
    private final Optional<ContainerKind> kind;

    RateBasis(String label, String unit) {
        this.label = label;
        this.unit = unit;
        this.kind = Optional.empty();
    }

    RateBasis(String label, String unit, ContainerKind kind) {
        this.label = label;
        this.unit = unit;
        this.kind = Optional.of(kind);
    }

    /**
     * The words used in tables.
     *
     * @return the label
     */
    public String label() {
        return label;
    }

    /**
     * What one of it is.
     *
     * @return the unit of the amount on a cost line
     */
    public String unit() {
        return unit;
    }

    /**
     * Whether the rate goes with containers rather than with the gyle.
     *
     * @return true for every basis that counts containers
     */
    public boolean countsContainers() {
        return this == PER_CONTAINER || kind.isPresent();
    }

    /**
     * Whether the rate goes with containers of a kind.
     *
     * @param containerKind the kind of container
     * @return true when each such container bears it
     */
    public boolean covers(ContainerKind containerKind) {
        return this == PER_CONTAINER || (kind.isPresent() && kind.get() == containerKind);
    }
}
