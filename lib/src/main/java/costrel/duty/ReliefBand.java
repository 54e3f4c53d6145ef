package costrel.duty;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A band of the small producer's discount: for a yearly production A in hectolitres of pure alcohol, over the band's
 * start S, the discount per litre of pure alcohol is (cumulative + marginal × (A − S)) / A. The marginal amount is
 * already per litre; the cumulative one is printed in the Acts and isn't the running sum of the printed marginal ones.
 *
 * @param validFrom the first day of duty points it applies to
 * @param validUntil the last such day, that day included; empty where no end is known
 * @param strengthFrom the least strength in per cent by volume, itself included
 * @param strengthUnder the strength where it ends, itself not included
 * @param draught whether it is for draught beer
 * @param overHl the production the band starts over, itself not included
 * @param upToHl the production the band ends with, itself included
 * @param marginal the marginal discount M, in money per litre; below 0 where relief tapers off
 * @param cumulative the cumulative discount C, 0 or more
 * @param source the Act
 */
public record ReliefBand(
        LocalDate validFrom,
        Optional<LocalDate> validUntil,
        BigDecimal strengthFrom,
        BigDecimal strengthUnder,
        boolean draught,
        BigDecimal overHl,
        BigDecimal upToHl,
        BigDecimal marginal,
        BigDecimal cumulative,
        String source) {

    public ReliefBand {
        Figures.ordered("relief band", validFrom, validUntil);
        Figures.zeroOrMore("relief band: strength from", strengthFrom, " %");
        if (strengthUnder.compareTo(strengthFrom) <= 0) {
            throw new IllegalArgumentException("relief band: strength under: expected more than "
                    + Figures.plain(strengthFrom) + " %, found " + Figures.plain(strengthUnder) + " %");
        }
        Figures.zeroOrMore("relief band: over", overHl, " hL of pure alcohol");
        if (upToHl.compareTo(overHl) <= 0) {
            throw new IllegalArgumentException("relief band: up to: expected more than " + Figures.plain(overHl)
                    + " hL of pure alcohol, found " + Figures.plain(upToHl));
        }
        Figures.zeroOrMore("relief band: cumulative", cumulative, "");
        source = Figures.named("relief band: source", source);
    }

    boolean holdsOn(LocalDate day) {
        return Figures.holds(validFrom, validUntil, day);
    }

    boolean holds(BigDecimal strength, boolean draughtBeer) {
        return draught == draughtBeer && strength.compareTo(strengthFrom) >= 0 && strength.compareTo(strengthUnder) < 0;
    }

    boolean holdsProduction(BigDecimal productionHl) {
        return productionHl.compareTo(overHl) > 0 && productionHl.compareTo(upToHl) <= 0;
    }
}
