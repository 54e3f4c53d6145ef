package costrel.stock;

import java.math.BigDecimal;
import org.joda.money.Money;

/**
 * What an issue costs.
 *
 * @param issue the issue
 * @param unrounded its cost before rounding
 * @param value its cost to the penny: rounded halves up, with what the roundings left on the last issue of the item
 * @param residue how much of the value is left from roundings; 0.00 but for the last issue
 */
public record IssueCost(Movement.Issue issue, BigDecimal unrounded, Money value, Money residue) {}
