package costrel.duty;

import costrel.explain.CostFinding;
import costrel.explain.Explanation;
import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.wort.StrengthForDuty;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;

/**
 * The duty on a run of one type of container, with every step that led to it. An estimate for costing, not a return.
 *
 * @param input the run, the beer and the days
 * @param schedule the tables it was worked out by
 * @param expected the strength by fall of gravity: difference, factor, unrounded, cut
 * @param strength what duty is charged on, per cent by volume cut down to one decimal
 * @param rule which strength that is
 * @param dutiableL litres that duty is charged on, all containers together
 * @param pureAlcoholL litres of pure alcohol in them, exact
 * @param rate the full rate, with its first day and its Act
 * @param relief the small producer's discount, or why there is none
 * @param payableRate full rate less discount, never under 0
 * @param unrounded the duty before rounding, exact: what one container or pint bears is reckoned from it
 * @param duty the duty rounded down to the penny, once for the run
 * @param findings what a person must put right or know
 * @param multiplier what a volume is multiplied by beside the rate: per cent by volume, degrees Plato, or 1
 * @param slices the parts of the run, each with its rate; one unless duty goes by the beer of a year
 */
public record DutyFigure(
        DutyInput input,
        DutySchedule schedule,
        StrengthForDuty.Result expected,
        BigDecimal strength,
        StrengthRule rule,
        BigDecimal dutiableL,
        BigDecimal pureAlcoholL,
        DutyRate rate,
        ReliefFigure relief,
        BigDecimal payableRate,
        BigDecimal unrounded,
        Money duty,
        List<CostFinding> findings,
        BigDecimal multiplier,
        List<DutySlice> slices) {

    public DutyFigure {
        findings = List.copyOf(findings);
        slices = List.copyOf(slices);
    }

    /**
     * The container.
     *
     * @return its type
     */
    public Container container() {
        return input.container();
    }

    /**
     * How many of them.
     *
     * @return the count, 1 or more
     */
    public int count() {
        return input.count();
    }

    /**
     * What duty is charged by and where it was rounded.
     *
     * @return the basis of the country
     */
    public DutyBasis basis() {
        return schedule.basis();
    }

    /**
     * What to confirm before relying on it; put into words when it is asked for.
     *
     * @return each caution, the rates in force first
     */
    public List<CostFinding> cautions() {
        return DutyCautions.of(this);
    }

    /**
     * The beer of the run, in hL, or barrels where duty is charged by the barrel.
     *
     * @return the volume of all slices
     */
    public BigDecimal volume() {
        return slices.stream().map(DutySlice::volume).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * What one container bears, unrounded.
     *
     * @return the unrounded duty over the count
     */
    public BigDecimal unroundedPerContainer() {
        return unrounded.divide(BigDecimal.valueOf(count()), Figures.SHOWN);
    }

    /**
     * What a saleable pint bears, unrounded.
     *
     * @return the unrounded duty over the pints that can be sold
     */
    public BigDecimal unroundedPerSaleablePint() {
        return unrounded
                .multiply(Container.PINT_L)
                .divide(
                        container().nominalL().subtract(container().sedimentL()).multiply(BigDecimal.valueOf(count())),
                        Figures.SHOWN);
    }

    /**
     * How the duty came about, step by step.
     *
     * @return the tree
     */
    public Explanation explanation() {
        return DutyExplained.duty(this);
    }
}
