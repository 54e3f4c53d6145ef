package costrel.cost;

import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.packaging.PackagingRun;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * From the fermenting vessel to what is sold, in litres at 20 °C: each step is the one before less its loss.
 *
 * @param collectedL cold wort collected
 * @param rackedL beer racked; the rest stays in FV, tank and dry hops
 * @param fillLossL lost in filling
 * @param leftL left after the smallest container of the plan
 * @param packagedL in full containers
 * @param sedimentL in them, but can't be sold
 * @param unsoldL can be sold, but never is
 */
public record YieldChain(
        BigDecimal collectedL,
        BigDecimal rackedL,
        BigDecimal fillLossL,
        BigDecimal leftL,
        BigDecimal packagedL,
        BigDecimal sedimentL,
        BigDecimal unsoldL) {

    /**
     * One step of the chain.
     *
     * @param label what is there after the step
     * @param litres how much of it
     * @param lossL what was lost on the way from the step before
     * @param lostIn where it was lost, or empty
     */
    public record Step(String label, BigDecimal litres, BigDecimal lossL, String lostIn) {}

    static YieldChain of(BigDecimal collectedL, PackagingRun run, BigDecimal unsoldShare) {
        BigDecimal packagedL = run.packagedL();
        BigDecimal sedimentL = run.sedimentL();
        return new YieldChain(
                collectedL,
                run.rackedL(),
                run.fillLossL(),
                run.leftL(),
                packagedL,
                sedimentL,
                packagedL.subtract(sedimentL).multiply(unsoldShare));
    }

    /**
     * Beer that can be sold.
     *
     * @return litres
     */
    public BigDecimal saleableL() {
        return packagedL.subtract(sedimentL);
    }

    /**
     * Pints that can be sold.
     *
     * @return imperial pints, to 34 digits
     */
    public BigDecimal saleablePints() {
        return saleableL().divide(Container.PINT_L, Figures.SHOWN);
    }

    /**
     * Beer that is sold.
     *
     * @return litres: what can be sold less what never is
     */
    public BigDecimal soldL() {
        return saleableL().subtract(unsoldL);
    }

    /**
     * The chain, step by step.
     *
     * @return from collected to saleable, and to sold where some of it never is
     */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>(List.of(
                new Step("collected", collectedL, BigDecimal.ZERO, ""),
                new Step("racked", rackedL, collectedL.subtract(rackedL), "FV, tank and dry hops"),
                new Step("filled", rackedL.subtract(fillLossL), fillLossL, "filling"),
                new Step("packaged", packagedL, leftL, "left after the smallest container"),
                new Step("saleable", saleableL(), sedimentL, "sediment")));
        if (unsoldL.signum() > 0) {
            steps.add(new Step("sold", soldL(), unsoldL, "returned, given away or out of date"));
        }
        return List.copyOf(steps);
    }
}
