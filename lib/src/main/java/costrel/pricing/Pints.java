package costrel.pricing;

import costrel.figures.Figures;
import costrel.packaging.Container;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/** Pints and hectolitres, and the digits that sums of them are worked with. */
final class Pints {
    /** For sums of many products of quotients, so that 34 of their digits are right. */
    static final MathContext WORKING = new MathContext(50, RoundingMode.HALF_EVEN);

    private static final BigDecimal L_PER_HL = BigDecimal.valueOf(100);

    private Pints() {}

    static BigDecimal hl(BigDecimal pints) {
        return pints.multiply(Container.PINT_L).divide(L_PER_HL);
    }

    static BigDecimal pints(BigDecimal hl) {
        return hl.multiply(L_PER_HL).divide(Container.PINT_L, Figures.SHOWN);
    }

    static BigDecimal sum(List<BigDecimal> values) {
        return values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
