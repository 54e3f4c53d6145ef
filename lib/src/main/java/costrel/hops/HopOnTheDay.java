package costrel.hops;

import java.util.OptionalDouble;

/**
 * A hop lot as it stands on the brewing day: what the copper sees.
 *
 * @param lot lot number, or the variety's name where a recipe states alpha itself
 * @param variety name of the variety
 * @param form leaf, pellets or extract
 * @param alpha alpha acid, mass fraction as is, on the day
 * @param method the method behind the alpha figure
 * @param oilMlPer100g total oil, mL per 100 g; empty where unknown
 * @param route how the alpha of the day was found, in words
 */
public record HopOnTheDay(
        String lot,
        String variety,
        HopForm form,
        double alpha,
        AlphaMethod method,
        OptionalDouble oilMlPer100g,
        String route) {

    public HopOnTheDay {
        alpha = Limits.shareUnderOne("alpha acid of " + lot, alpha);
        if (oilMlPer100g.isPresent()) {
            Limits.within("oil of " + lot, oilMlPer100g.getAsDouble(), 0, 20, " mL/100 g");
        }
    }
}
