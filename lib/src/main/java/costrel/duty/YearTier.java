package costrel.duty;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Which beer of a year a rate is for. Volumes are hL, or barrels where duty is charged by the barrel.
 *
 * @param producerUpTo the yearly output up to which a brewery may claim the rate, itself included; empty for any brewery
 * @param over the volume released in the year that the tier starts over
 * @param upTo the volume released in the year that it ends with; empty for no end
 * @param share the share of the printed rate that is paid, more than 0 to 1
 */
public record YearTier(
        Optional<BigDecimal> producerUpTo, BigDecimal over, Optional<BigDecimal> upTo, BigDecimal share) {

    public YearTier {
        producerUpTo.ifPresent(most -> Figures.overZero("duty tier: output of the brewery", most, ""));
        Figures.zeroOrMore("duty tier: over", over, "");
        if (upTo.isPresent() && upTo.get().compareTo(over) <= 0) {
            throw new IllegalArgumentException("duty tier: up to: expected more than " + Figures.plain(over)
                    + ", found " + Figures.plain(upTo.get()));
        }
        Figures.overZero("duty tier: share of the rate", share, "");
        if (share.compareTo(BigDecimal.ONE) > 0) {
            throw new IllegalArgumentException(
                    "duty tier: share of the rate: expected no more than 1, found " + Figures.plain(share));
        }
    }

    boolean holds(BigDecimal start, BigDecimal end) {
        return start.compareTo(over) >= 0 && (upTo.isEmpty() || end.compareTo(upTo.get()) <= 0);
    }

    boolean overlaps(YearTier other) {
        return (upTo.isEmpty() || other.over.compareTo(upTo.get()) < 0)
                && (other.upTo.isEmpty() || over.compareTo(other.upTo.get()) < 0);
    }
}
