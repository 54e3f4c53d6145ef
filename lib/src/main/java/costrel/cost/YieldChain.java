package costrel.cost;

import java.math.BigDecimal;
import java.util.List;

/**
 * From the fermenting vessel to what can be sold, in litres at 20 °C: each step is the one before less its loss.
 *
 * @param collectedL cold wort collected
 * @param rackedL beer racked; the rest stays in FV, tank and dry hops
 * @param fillLossL lost in filling
 * @param leftL left after the smallest container of the plan
 * @param packagedL in full containers
 * @param sedimentL in them, but can't be sold
 */
public record YieldChain(
        BigDecimal collectedL,
        BigDecimal rackedL,
        BigDecimal fillLossL,
        BigDecimal leftL,
        BigDecimal packagedL,
        BigDecimal sedimentL) {

    /**
     * One step of the chain.
     *
     * @param label what is there after the step
     * @param litres how much of it
     * @param lossL what was lost on the way from the step before
     * @param lostIn where it was lost, or empty
     */
    public record Step(String label, BigDecimal litres, BigDecimal lossL, String lostIn) {}

    static YieldChain of(Batch batch, PackagingRun run) {
        BigDecimal sedimentL =
                run.filled().stream().map(PackagingRun.Filled::sedimentL).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new YieldChain(
                BigDecimal.valueOf(batch.collectedL()),
                run.rackedL(),
                run.fillLossL(),
                run.leftL(),
                run.packagedL(),
                sedimentL);
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
     * The chain, step by step.
     *
     * @return from collected to saleable
     */
    public List<Step> steps() {
        return List.of(
                new Step("collected", collectedL, BigDecimal.ZERO, ""),
                new Step("racked", rackedL, collectedL.subtract(rackedL), "FV, tank and dry hops"),
                new Step("filled", rackedL.subtract(fillLossL), fillLossL, "filling"),
                new Step("packaged", packagedL, leftL, "left after the smallest container"),
                new Step("saleable", saleableL(), sedimentL, "sediment"));
    }
}
