package costrel.pricing;

import costrel.figures.Figures;
import org.joda.money.Money;

/**
 * A price that a brewery sells at, by name: what a list of its own prices holds.
 *
 * @param beer the beer
 * @param container the container
 * @param price the price of one without value added tax, more than 0
 * @param plant the plant that the beer is brewed on
 * @param litres cold wort that a gyle of it collects, more than 0
 * @param sold how many of the container are sold in a year, 0 or more
 */
public record ListPrice(String beer, String container, Money price, String plant, double litres, int sold) {

    public ListPrice {
        Figures.named("beer", beer);
        Figures.named("container", container);
        Figures.overZero("price", price.getAmount(), " " + price.getCurrencyUnit());
        Figures.named("plant", plant);
        if (!(litres > 0 && litres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("brew length: expected over 0 L, found " + litres + " L");
        }
        if (sold < 0) {
            throw new IllegalArgumentException("sold: expected 0 containers or more, found " + sold);
        }
    }
}
