package costrel.brewery;

import costrel.packaging.Container;
import costrel.pricing.PubPrice;
import java.util.List;

/**
 * What prices to the trade mean on the bar. Cask and keg beer is sold by the pint, a bottle or a can as it is.
 *
 * @param beer the beer
 * @param lines a line for each container
 */
public record BarPrices(String beer, List<Line> lines) {

    /**
     * A container on the bar.
     *
     * @param container the container
     * @param price the pub's price of what it sells from it
     */
    public record Line(Container container, PubPrice price) {

        /**
         * What the pub sells it by.
         *
         * @return "pint" for cask and keg, else the kind of container
         */
        public String soldBy() {
            return byThePint(container) ? "pint" : container.kind().label();
        }
    }

    public BarPrices {
        lines = List.copyOf(lines);
    }

    static boolean byThePint(Container container) {
        return switch (container.kind()) {
            case CASK, KEG -> true;
            case BOTTLE, CAN -> false;
        };
    }
}
