package costrel.cost;

import costrel.duty.DutyFigure;
import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.packaging.PackagingRun;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * What one container type of a gyle costs.
 *
 * @param filled the containers that were filled
 * @param share the share of the gyle's cost that it bears
 * @param gyleShare that share in money
 * @param lines packaging, then what is charged by the container, then duty
 * @param duty the duty with its steps
 * @param total the gyle's share and the lines
 */
public record ContainerCost(
        PackagingRun.Filled filled,
        BigDecimal share,
        Money gyleShare,
        List<CostLine> lines,
        DutyFigure duty,
        Money total) {

    public ContainerCost {
        lines = List.copyOf(lines);
    }

    static ContainerCost of(
            PackagingRun.Filled filled, BigDecimal share, Money gyleShare, List<CostLine> packaging, DutyFigure duty) {
        List<CostLine> lines = new ArrayList<>(packaging);
        lines.add(CostLine.duty(duty));
        Money total = gyleShare;
        for (CostLine line : lines) {
            total = total.plus(line.value());
        }
        return new ContainerCost(filled, share, gyleShare, lines, duty, total);
    }

    /**
     * The container.
     *
     * @return its type
     */
    public Container container() {
        return filled.plan().container();
    }

    /**
     * How many were filled.
     *
     * @return the count, 1 or more
     */
    public int count() {
        return filled.count();
    }

    /**
     * Pints that can be sold from all of them.
     *
     * @return imperial pints, to 34 digits
     */
    public BigDecimal saleablePints() {
        return saleableL().divide(Container.PINT_L, Figures.SHOWN);
    }

    private BigDecimal saleableL() {
        return filled.packagedL().subtract(filled.sedimentL());
    }

    /**
     * What one of them costs, unrounded.
     *
     * @return money, to 34 digits
     */
    public BigDecimal unroundedPerContainer() {
        return total.getAmount().divide(BigDecimal.valueOf(count()), Figures.SHOWN);
    }

    /**
     * What one of them costs, for reading.
     *
     * @return money, rounded to the penny, halves up
     */
    public Money perContainer() {
        return Money.of(total.getCurrencyUnit(), unroundedPerContainer(), RoundingMode.HALF_UP);
    }

    /**
     * What a pint that can be sold costs, unrounded.
     *
     * @return money, to 34 digits
     */
    public BigDecimal unroundedPerPint() {
        return total.getAmount().multiply(Container.PINT_L).divide(saleableL(), Figures.SHOWN);
    }

    /**
     * What a pint that can be sold costs, for reading.
     *
     * @return pence (the currency's smallest unit) to two decimals, halves up
     */
    public BigDecimal pencePerPint() {
        return CostSheet.pence(unroundedPerPint(), total.getCurrencyUnit());
    }
}
