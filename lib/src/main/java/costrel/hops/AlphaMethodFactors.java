package costrel.hops;

import java.util.List;

/**
 * Stated factors between alpha-acid figures of two laboratory methods. Without a factor figures of two methods never meet: no
 * ratio of general use is published, so a brewery states its own, from lots analysed both ways.
 *
 * @param factors the factors, at most one for a pair of methods
 */
public record AlphaMethodFactors(List<Factor> factors) {

    /** No factor at all: every method stands by itself. */
    public static final AlphaMethodFactors NONE = new AlphaMethodFactors(List.of());

    /**
     * One factor; its inverse leads back.
     *
     * @param from the method of the figure at hand
     * @param to the method wanted, another one
     * @param factor what the figure is multiplied by, over 0 to 10
     * @param source where the factor comes from
     */
    public record Factor(AlphaMethod from, AlphaMethod to, double factor, String source) {
        public Factor {
            if (from == to) {
                throw new IllegalArgumentException(
                        "factor between methods: expected two methods, found " + from.label() + " twice");
            }
            Limits.over("factor from " + from.label() + " to " + to.label(), factor, 0, 10, "");
            if (source.isBlank()) {
                throw new IllegalArgumentException(
                        "factor from " + from.label() + " to " + to.label() + ": expected its source, found nothing");
            }
        }

        private boolean joins(AlphaMethod one, AlphaMethod other) {
            return (from == one && to == other) || (from == other && to == one);
        }
    }

    public AlphaMethodFactors {
        factors = List.copyOf(factors);
        for (int i = 0; i < factors.size(); i++) {
            Factor later = factors.get(i);
            if (factors.subList(0, i).stream().anyMatch(earlier -> earlier.joins(later.from(), later.to()))) {
                throw new IllegalArgumentException("factor from " + later.from().label() + " to "
                        + later.to().label() + ": expected one for the pair, found two");
            }
        }
    }

    /**
     * An alpha figure as another method would give it. Two figures whose method isn't stated count as of one method.
     *
     * @param alpha mass fraction, 0 to under 1
     * @param from its method
     * @param to the method wanted
     * @return mass fraction by that method
     * @throws IllegalArgumentException if the methods differ and no factor joins them, or if the result isn't under 100 %
     */
    public double convert(double alpha, AlphaMethod from, AlphaMethod to) {
        Limits.shareUnderOne("alpha acid", alpha);
        if (from == to) {
            return alpha;
        }
        Factor factor = factors.stream()
                .filter(candidate -> candidate.joins(from, to))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("alpha acid by " + named(from) + " and by " + named(to)
                        + ": expected a stated factor between the two methods, found none"));
        double converted = factor.from() == from ? alpha * factor.factor() : alpha / factor.factor();
        return Limits.shareUnderOne("alpha acid by " + named(to), converted);
    }

    private static String named(AlphaMethod method) {
        return method == AlphaMethod.UNSTATED ? "an unstated method" : method.label();
    }
}
