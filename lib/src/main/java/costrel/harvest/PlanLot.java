package costrel.harvest;

import costrel.hops.AlphaMethod;
import costrel.hops.HopForm;
import java.time.LocalDate;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A hop lot on hand or on its way, with its alpha acid on each brewing day.
 *
 * @param id lot number
 * @param variety the variety
 * @param form leaf, pellets or extract
 * @param cropYear the year of its harvest
 * @param availableFrom the first day on which it can be brewed with: it is there, and a certificate is
 * @param method the laboratory method behind its alpha figures
 * @param alphaByGyle alpha acid on the day of each gyle by the gyle's id, mass fraction as is; a gyle that is missing has no
 *     figure, so the lot can't go into it
 * @param oilMlPer100g total oil, mL per 100 g; empty where unknown
 * @param stockKg kilograms on hand, 0 or more
 * @param wholePackKg weight of a pack that has to be used up once it is open, kg; empty where an open pack keeps
 * @param pricePerKg price of a kilogram, 0 or more, in the currency of the brewery; empty where unknown
 */
public record PlanLot(
        String id,
        String variety,
        HopForm form,
        int cropYear,
        LocalDate availableFrom,
        AlphaMethod method,
        Map<String, Double> alphaByGyle,
        OptionalDouble oilMlPer100g,
        double stockKg,
        OptionalDouble wholePackKg,
        OptionalDouble pricePerKg) {

    public PlanLot {
        Figures.named("hop lot", id);
        Figures.named("variety of lot " + id, variety);
        if (!(cropYear >= 1900 && cropYear <= 2200)) {
            throw new IllegalArgumentException(
                    "hop lot " + id + ": expected a crop year such as 2026, found " + cropYear);
        }
        alphaByGyle = Map.copyOf(alphaByGyle);
        String alphaOf = "alpha acid of lot " + id;
        alphaByGyle.values().forEach(alpha -> Figures.shareUnderOne(alphaOf, alpha));
        String oilOf = "oil of lot " + id;
        oilMlPer100g.ifPresent(oil -> Figures.notNegative(oilOf, oil, " mL/100 g"));
        stockKg = Figures.notNegative("stock of lot " + id, stockKg, " kg");
        String packOf = "pack of lot " + id;
        wholePackKg.ifPresent(pack -> Figures.positive(packOf, pack, " kg"));
        String priceOf = "price of lot " + id;
        pricePerKg.ifPresent(price -> Figures.notNegative(priceOf, price, " a kg"));
    }

    /** Alpha acid on the day of a gyle, or empty where the lot isn't there or has no figure. */
    OptionalDouble alphaFor(PlanGyle gyle) {
        Double alpha = alphaByGyle.get(gyle.id());
        return alpha == null || gyle.day().isBefore(availableFrom) ? OptionalDouble.empty() : OptionalDouble.of(alpha);
    }

    /** The lot in words: variety and number. */
    String words() {
        return variety + " lot " + id;
    }
}
