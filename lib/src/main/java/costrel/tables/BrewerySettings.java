package costrel.tables;

import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;

/**
 * What holds for a whole brewery.
 *
 * @param name the brewery
 * @param currency what its sheets are in
 * @param country whose duty tables apply
 * @param vat value added tax as a fraction, 0 or more; 0.2 for 20 %
 * @param costing how its cost sheets are made
 */
public record BrewerySettings(
        String name, CurrencyUnit currency, String country, BigDecimal vat, CostSettings costing) {

    public BrewerySettings {
        if (vat.signum() < 0 || vat.compareTo(BigDecimal.ONE) > 0) {
            throw new IllegalArgumentException(
                    "VAT: expected 0 % to 100 %, found " + CsvOut.number(vat.movePointRight(2)) + " %");
        }
    }
}
