package costrel.duty;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Small Producer Relief on a litre of pure alcohol and how it came about.
 *
 * @param productionYear first day of the production year whose output counts; empty where the discount was stated or none
 *     is given
 * @param productionHl pure alcohol made in that year, hL; empty likewise
 * @param band the band that holds that production; empty likewise
 * @param statedDiscount the discount that was stated, before rounding; 0 where none was
 * @param discount the discount rounded up to the penny, never under 0
 * @param why how it was found, or why there is none
 */
public record ReliefFigure(
        Optional<LocalDate> productionYear,
        Optional<BigDecimal> productionHl,
        Optional<ReliefBand> band,
        BigDecimal statedDiscount,
        BigDecimal discount,
        String why) {

    /**
     * The discount before rounding; reckoned when it is asked for.
     *
     * @return to 34 digits; it may be a little under 0 at the end of the taper
     */
    public BigDecimal unroundedDiscount() {
        return band.isPresent() && productionHl.isPresent()
                ? SmallProducerRelief.unrounded(band.get(), productionHl.get())
                : statedDiscount;
    }

    static ReliefFigure none(String why) {
        return new ReliefFigure(
                Optional.empty(), Optional.empty(), Optional.empty(), BigDecimal.ZERO, BigDecimal.ZERO, why);
    }
}
