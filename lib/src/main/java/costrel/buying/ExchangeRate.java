package costrel.buying;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.joda.money.CurrencyUnit;

/**
 * A rate of exchange of one day.
 *
 * @param from the currency that is turned
 * @param to the currency that it is turned into
 * @param day the day it was quoted for
 * @param rate units of the second currency for one unit of the first, more than 0
 * @param origin where the row stands
 */
public record ExchangeRate(CurrencyUnit from, CurrencyUnit to, LocalDate day, BigDecimal rate, String origin) {

    public ExchangeRate {
        if (from.equals(to)) {
            throw new IllegalArgumentException(
                    origin + ": rate of exchange: expected two currencies, found " + from + " twice");
        }
        Figures.overZero(origin + ": rate of exchange from " + from + " to " + to, rate, "");
    }
}
