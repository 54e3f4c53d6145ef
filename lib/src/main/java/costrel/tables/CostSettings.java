package costrel.tables;

import costrel.cost.CostBasis;
import costrel.duty.YearVolume;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a brewery wants its cost sheets made.
 *
 * @param basis what goods are costed at
 * @param claimRelief whether Small Producer Relief, or what the country has in its place, is claimed
 * @param normalLossShare the share of what is collected that normally doesn't reach the racking; empty to let the beer
 *     that is sold carry all losses
 * @param unsoldShare the share of what can be sold that never is: returned, given away, out of date
 * @param yearVolume beer of the brewery in the year, for countries where duty goes by it; empty where not known
 * @param exchangeRateAgeDays how old a rate of exchange may be on the day it is used, days; empty for any age
 */
public record CostSettings(
        CostBasis basis,
        boolean claimRelief,
        Optional<BigDecimal> normalLossShare,
        BigDecimal unsoldShare,
        Optional<YearVolume> yearVolume,
        OptionalInt exchangeRateAgeDays) {

    /** By the price lists of the day, with relief claimed and no more said. */
    public static final CostSettings USUAL = new CostSettings(
            CostBasis.REPLACEMENT, true, Optional.empty(), BigDecimal.ZERO, Optional.empty(), OptionalInt.empty());

    public CostSettings {
        normalLossShare.ifPresent(share -> underOne("normal loss", share));
        underOne("unsold", unsoldShare);
    }

    private static void underOne(String what, BigDecimal share) {
        if (share.signum() < 0 || share.compareTo(BigDecimal.ONE) >= 0) {
            throw new IllegalArgumentException(
                    what + ": expected 0 % to less than 100 %, found " + CsvOut.number(share.movePointRight(2)) + " %");
        }
    }
}
