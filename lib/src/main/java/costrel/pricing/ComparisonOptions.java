package costrel.pricing;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What counts as the same item on two sheets, and how foreign money moved.
 *
 * @param sameAs for items that took another's place, such as a new hop lot: the item on the second sheet to the one on
 *     the first. Their difference is then one of price and usage, not one going out and another coming in
 * @param currencies the foreign currencies that moved; an item stands under one of them at most
 */
public record ComparisonOptions(Map<String, String> sameAs, List<CurrencyMove> currencies) {

    public ComparisonOptions {
        sameAs = Map.copyOf(sameAs);
        currencies = List.copyOf(currencies);
        Set<String> seen = new HashSet<>();
        for (CurrencyMove move : currencies) {
            for (String item : move.items()) {
                if (!seen.add(folded(item))) {
                    throw new IllegalArgumentException(item + ": expected one currency, found more");
                }
            }
        }
    }

    /**
     * Items are the same where they are called the same, and no foreign money is looked at.
     *
     * @return the options
     */
    public static ComparisonOptions plain() {
        return new ComparisonOptions(Map.of(), List.of());
    }

    /** What an item of the second sheet is called on the first. */
    String nameBefore(String itemAfter) {
        for (Map.Entry<String, String> pair : sameAs.entrySet()) {
            if (folded(pair.getKey()).equals(folded(itemAfter))) {
                return pair.getValue();
            }
        }
        return itemAfter;
    }

    Optional<CurrencyMove> currencyOf(String item) {
        return currencies.stream()
                .filter(move ->
                        move.items().stream().anyMatch(name -> folded(name).equals(folded(item))))
                .findFirst();
    }

    static String folded(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }
}
