package costrel.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rounds figures so that they sum to a rounded total: each is cut down, and what is missing goes, a unit each, to those
 * that lost most. Ties go to the earlier one.
 */
final class LargestRemainder {

    private LargestRemainder() {}

    /**
     * Rounds figures to a total.
     *
     * @param exact the figures, in an order that doesn't hang on how they were given
     * @param total what the rounded figures are to sum to, with no more places
     * @param places the decimals that are kept
     * @return the rounded figures; none where there are none
     */
    static List<BigDecimal> round(List<BigDecimal> exact, BigDecimal total, int places) {
        if (exact.isEmpty()) {
            return List.of();
        }
        // The mirror image of a comparison rounds to the mirror image: a fall is rounded as the rise that undoes it.
        boolean falls = total.signum() < 0 || (total.signum() == 0 && firstIsBelowZero(exact));
        List<BigDecimal> rises = falls ? exact.stream().map(BigDecimal::negate).toList() : exact;
        BigDecimal target = falls ? total.negate() : total;

        List<BigDecimal> cut = new ArrayList<>(rises.stream()
                .map(value -> value.setScale(places, RoundingMode.FLOOR))
                .toList());
        List<Integer> lostMostFirst = IntStream.range(0, rises.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> rises.get(i).subtract(cut.get(i)))
                        .reversed()
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        BigDecimal unit = BigDecimal.ONE.movePointLeft(places);
        int missing = target.subtract(Pints.sum(cut)).divide(unit).intValueExact();
        for (int i = 0; i < Math.abs(missing); i++) {
            int at = i % rises.size();
            int which = lostMostFirst.get(missing > 0 ? at : rises.size() - 1 - at);
            cut.set(
                    which,
                    missing > 0 ? cut.get(which).add(unit) : cut.get(which).subtract(unit));
        }
        return falls ? cut.stream().map(BigDecimal::negate).toList() : List.copyOf(cut);
    }

    private static boolean firstIsBelowZero(List<BigDecimal> values) {
        return values.stream()
                .filter(value -> value.signum() != 0)
                .findFirst()
                .filter(value -> value.signum() < 0)
                .isPresent();
    }
}
