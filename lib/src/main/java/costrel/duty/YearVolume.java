package costrel.duty;

import costrel.figures.Figures;
import java.math.BigDecimal;

/**
 * Beer of a brewery in a year, for duty that goes by it. Breweries that belong together are added.
 *
 * @param annualHl what it makes in the year that the law of the country looks at, hL of beer, more than 0
 * @param alreadyHl what it has released so far in the year of the duty point, hL, 0 or more and no more than the annual
 */
public record YearVolume(BigDecimal annualHl, BigDecimal alreadyHl) {

    public YearVolume {
        Figures.overZero("beer made in the year", annualHl, " hL");
        Figures.zeroOrMore("beer released so far in the year", alreadyHl, " hL");
        if (alreadyHl.compareTo(annualHl) > 0) {
            throw new IllegalArgumentException("beer released so far in the year: expected no more than the "
                    + Figures.plain(annualHl) + " hL made, found " + Figures.plain(alreadyHl));
        }
    }
}
