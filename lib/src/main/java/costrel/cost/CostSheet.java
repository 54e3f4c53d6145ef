package costrel.cost;

import costrel.explain.CostFinding;
import costrel.explain.Explanation;
import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.packaging.PackagingRun;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What a gyle costs, line by line, and what each container and pint of it costs. Every total is the sum of its printed
 * lines; unrounded figures stand beside for what is reckoned from them. An estimate: see the cautions.
 *
 * @param batch what was costed
 * @param run the containers that were filled
 * @param yieldChain from collected to sold
 * @param gyleLines the lines before packaging, in the order of {@link CostGroup}
 * @param gyleCost their sum
 * @param containers each container type that was filled, in the plan's order; their gyle shares sum to the gyle's cost
 * @param total everything: the sum of the containers' totals
 * @param findings what a person must put right or know
 * @param leftOut parts of the cost that were not given, in words
 * @param defaultsUsed what was taken for figures that were not given, in words
 */
public record CostSheet(
        Batch batch,
        PackagingRun run,
        YieldChain yieldChain,
        List<CostLine> gyleLines,
        Money gyleCost,
        List<ContainerCost> containers,
        Money total,
        List<CostFinding> findings,
        List<String> leftOut,
        List<String> defaultsUsed) {

    public CostSheet {
        gyleLines = List.copyOf(gyleLines);
        containers = List.copyOf(containers);
        findings = List.copyOf(findings);
        leftOut = List.copyOf(leftOut);
        defaultsUsed = List.copyOf(defaultsUsed);
    }

    /**
     * What to confirm before relying on the sheet; put into words when it is asked for.
     *
     * @return each caution once
     */
    public List<CostFinding> cautions() {
        return SheetNotes.cautions(batch, containers);
    }

    /**
     * What the beer must declare.
     *
     * @return declarable allergens, in words
     */
    public List<String> allergens() {
        return SheetNotes.allergens(batch);
    }

    /**
     * Every line of the sheet.
     *
     * @return the gyle's lines, then each container's; their values sum to the total
     */
    public List<CostLine> lines() {
        List<CostLine> lines = new ArrayList<>(gyleLines);
        containers.forEach(container -> lines.addAll(container.lines()));
        return lines;
    }

    /**
     * What a part of the sheet comes to.
     *
     * @param group the part
     * @return the sum of its lines
     */
    public Money sumOf(CostGroup group) {
        Money sum = Money.zero(total.getCurrencyUnit());
        for (CostLine line : lines()) {
            if (line.group() == group) {
                sum = sum.plus(line.value());
            }
        }
        return sum;
    }

    /**
     * What a saleable pint of the whole mix of containers costs, unrounded.
     *
     * @return money, to 34 digits
     */
    public BigDecimal unroundedPerPint() {
        return total.getAmount().multiply(Container.PINT_L).divide(yieldChain.saleableL(), Figures.SHOWN);
    }

    /**
     * What a saleable pint of the whole mix of containers costs, for reading.
     *
     * @return pence (the currency's smallest unit) to two decimals, halves up
     */
    public BigDecimal pencePerPint() {
        return pence(unroundedPerPint(), total.getCurrencyUnit());
    }

    /**
     * What a pint that is sold bears: the same as a saleable pint unless some of those are never sold. Unrounded.
     *
     * @return money, to 34 digits
     */
    public BigDecimal unroundedPerPintSold() {
        return total.getAmount().multiply(Container.PINT_L).divide(yieldChain.soldL(), Figures.SHOWN);
    }

    /**
     * How the total came about, down to the rows of price lists and the Acts.
     *
     * @return the tree
     */
    public Explanation explanation() {
        return CostExplained.sheet(this);
    }

    static BigDecimal pence(BigDecimal money, CurrencyUnit currency) {
        return money.movePointRight(currency.getDecimalPlaces()).setScale(2, RoundingMode.HALF_UP);
    }
}
