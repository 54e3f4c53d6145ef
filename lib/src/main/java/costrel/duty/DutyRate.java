package costrel.duty;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A rate of duty: money per litre of pure alcohol, or per unit of the country's basis, in a band of strength, for a time. The band is tested with the
 * strength cut down to one decimal.
 *
 * @param validFrom the first day of duty points it applies to
 * @param validUntil the last such day, that day included; empty where no end is known
 * @param strengthFrom the least strength of the band in per cent by volume, itself included
 * @param strengthUnder the strength where the band ends, itself not included; empty for the uppermost band
 * @param draught which beer it is for
 * @param ratePerLpa money per litre of pure alcohol at 20 °C, or per unit of the country's basis, 0 or more
 * @param tier the beer of a year that it is for; empty for all beer, and then it is the full rate
 * @param source the Act
 */
public record DutyRate(
        LocalDate validFrom,
        Optional<LocalDate> validUntil,
        BigDecimal strengthFrom,
        Optional<BigDecimal> strengthUnder,
        DraughtRule draught,
        BigDecimal ratePerLpa,
        Optional<YearTier> tier,
        String source) {

    public DutyRate {
        Figures.ordered("duty rate", validFrom, validUntil);
        Figures.zeroOrMore("duty rate: strength from", strengthFrom, " %");
        if (strengthUnder.isPresent() && strengthUnder.get().compareTo(strengthFrom) <= 0) {
            throw new IllegalArgumentException("duty rate: strength under: expected more than "
                    + Figures.plain(strengthFrom) + " %, found " + Figures.plain(strengthUnder.get()) + " %");
        }
        Figures.zeroOrMore("duty rate", ratePerLpa, " per litre of pure alcohol");
        source = Figures.named("duty rate: source", source);
    }

    /**
     * A full rate, for all beer of the year.
     *
     * @param validFrom the first day of duty points it applies to
     * @param validUntil the last such day; empty where no end is known
     * @param strengthFrom the least strength of the band, itself included
     * @param strengthUnder the strength where the band ends; empty for the uppermost band
     * @param draught which beer it is for
     * @param ratePerLpa money per litre of pure alcohol, or per unit of the country's basis
     * @param source the Act
     */
    public DutyRate(
            LocalDate validFrom,
            Optional<LocalDate> validUntil,
            BigDecimal strengthFrom,
            Optional<BigDecimal> strengthUnder,
            DraughtRule draught,
            BigDecimal ratePerLpa,
            String source) {
        this(validFrom, validUntil, strengthFrom, strengthUnder, draught, ratePerLpa, Optional.empty(), source);
    }

    boolean holdsOn(LocalDate day) {
        return Figures.holds(validFrom, validUntil, day);
    }

    boolean holds(BigDecimal strength) {
        return strength.compareTo(strengthFrom) >= 0
                && (strengthUnder.isEmpty() || strength.compareTo(strengthUnder.get()) < 0);
    }
}
