package costrel.duty;

import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What the duty on a run of one type of container depends on.
 *
 * @param container the container, with its label volume and whether draught relief is claimed
 * @param count how many of them, 1 or more
 * @param og original gravity
 * @param pg present gravity after all condition is gained, as reasonably expected when the beer is sold
 * @param declaredStrength strength on labels and papers in per cent by volume; empty where none is declared
 * @param brewedOn the day of brewing; it picks the production year
 * @param dutyOn the day the beer passes the duty point; it picks the rates
 * @param costedOn the day the sum is made for
 * @param production pure alcohol made, by production year
 * @param claimRelief whether Small Producer Relief is claimed
 * @param statedDiscount a discount per litre of pure alcohol that the user supplies, for days whose relief tables aren't
 *     here; empty to work it out
 * @param yearVolume beer of the brewery in the year, for countries where duty goes by it; empty where not known
 */
public record DutyInput(
        Container container,
        int count,
        Gravity og,
        Gravity pg,
        Optional<BigDecimal> declaredStrength,
        LocalDate brewedOn,
        LocalDate dutyOn,
        LocalDate costedOn,
        ProductionYears production,
        boolean claimRelief,
        Optional<BigDecimal> statedDiscount,
        Optional<YearVolume> yearVolume) {

    public DutyInput {
        if (count < 1) {
            throw new IllegalArgumentException(container.name() + ": expected 1 container or more, found " + count);
        }
        declaredStrength.ifPresent(DutyInput::requireStrength);
        statedDiscount.ifPresent(
                discount -> Figures.zeroOrMore("stated discount", discount, " per litre of pure alcohol"));
        if (dutyOn.isBefore(brewedOn)) {
            throw new IllegalArgumentException(
                    "duty point: expected a day not before the brewing on " + brewedOn + ", found " + dutyOn);
        }
    }

    /**
     * A run in a country where duty does not go by the beer of the year.
     *
     * @param container the container
     * @param count how many of them, 1 or more
     * @param og original gravity
     * @param pg present gravity after all condition is gained
     * @param declaredStrength strength on labels and papers; empty where none is declared
     * @param brewedOn the day of brewing
     * @param dutyOn the day the beer passes the duty point
     * @param costedOn the day the sum is made for
     * @param production pure alcohol made, by production year
     * @param claimRelief whether Small Producer Relief is claimed
     * @param statedDiscount a discount that the user supplies; empty to work it out
     */
    public DutyInput(
            Container container,
            int count,
            Gravity og,
            Gravity pg,
            Optional<BigDecimal> declaredStrength,
            LocalDate brewedOn,
            LocalDate dutyOn,
            LocalDate costedOn,
            ProductionYears production,
            boolean claimRelief,
            Optional<BigDecimal> statedDiscount) {
        this(
                container,
                count,
                og,
                pg,
                declaredStrength,
                brewedOn,
                dutyOn,
                costedOn,
                production,
                claimRelief,
                statedDiscount,
                Optional.empty());
    }

    /**
     * Refuses a declared strength that is none.
     *
     * @param percent per cent by volume
     * @throws IllegalArgumentException outside 0 to 100 %
     */
    public static void requireStrength(BigDecimal percent) {
        if (percent.signum() < 0 || percent.compareTo(Figures.HUNDRED) > 0) {
            throw new IllegalArgumentException(
                    "declared strength: expected 0 to 100 %, found " + Figures.plain(percent));
        }
    }
}
