package costrel.stock;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Values that a ledger carries on, and how they are rounded at last. */
final class Carried {

    /** Far more digits than any ledger needs. */
    static final MathContext CARRIED = new MathContext(60, RoundingMode.HALF_EVEN);

    /** Where the digits that {@link #CARRIED} cut off are gone for good, so that an exact half penny is still a half. */
    private static final int NOISE_PLACES = 30;

    private Carried() {}

    /** To the penny, halves up. */
    static Money money(CurrencyUnit currency, BigDecimal unrounded) {
        return Money.of(currency, unrounded.setScale(NOISE_PLACES, RoundingMode.HALF_UP), RoundingMode.HALF_UP);
    }

    /** A decimal for reading: six places, halves up, without idle zeros. */
    static String shown(BigDecimal value) {
        return Figures.rounded(value, 6);
    }
}
