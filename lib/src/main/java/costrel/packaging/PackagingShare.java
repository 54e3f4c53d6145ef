package costrel.packaging;

/**
 * How much of what is racked goes into one type of container.
 *
 * @param container the container
 * @param share the share of the racked beer, more than 0 to 1; the shares of a plan sum to 1
 * @param fillLossShare the share of that beer that is lost in filling, 0 to less than 1
 */
public record PackagingShare(Container container, double share, double fillLossShare) {

    public PackagingShare {
        if (!(share > 0 && share <= 1 + 1e-9)) {
            throw new IllegalArgumentException(
                    container.name() + ": share of what is racked: expected more than 0 to 1, found " + share);
        }
        if (!(fillLossShare >= 0 && fillLossShare < 1)) {
            throw new IllegalArgumentException(
                    container.name() + ": fill loss: expected 0 to less than 1, found " + fillLossShare);
        }
    }
}
