package costrel.cost;

import costrel.buying.PackUnit;
import costrel.figures.Figures;
import java.math.BigDecimal;

/**
 * One of the things that containers take: a shive to each cask, a carton to every twelve bottles.
 *
 * @param container the container's name
 * @param item what it takes, as the price lists call it
 * @param quantity how much of it, more than 0
 * @param forContainers how many containers that quantity is for: 12 for a carton of twelve, else 1
 * @param unit what the quantity is counted in
 */
public record PackageItem(String container, String item, BigDecimal quantity, BigDecimal forContainers, PackUnit unit) {

    public PackageItem {
        container = Figures.named("package: container", container);
        item = Figures.named("package of " + container + ": item", item);
        Figures.overZero("package of " + container + ": " + item, quantity, " " + unit.label());
        Figures.overZero("package of " + container + ": " + item + ": containers", forContainers, "");
    }
}
