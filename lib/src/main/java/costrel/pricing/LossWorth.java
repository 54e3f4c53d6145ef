package costrel.pricing;

import costrel.cost.CostSheet;
import costrel.cost.YieldChain;
import costrel.figures.Figures;
import costrel.packaging.Container;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one point of loss is worth at one step of the yield chain: one per cent of what comes into the step. The gyle is made
 * and paid for whatever is lost of it. Packaging and duty go with the beer that is put into containers, so that they are
 * spread anew only over what sediment leaves and what is sold. Beer is reckoned by the litre here, not by whole containers.
 *
 * @param lostIn where the beer is lost
 * @param lossShare what is lost there now, as a share of what comes in
 * @param onePointMorePerPint how much dearer a pint that is sold is with one point more of loss, money, unrounded
 * @param onePointLessPerPint how much cheaper a pint is with one point less, money, unrounded; empty where less than one
 *     point is lost
 */
public record LossWorth(
        String lostIn, BigDecimal lossShare, BigDecimal onePointMorePerPint, Optional<BigDecimal> onePointLessPerPint) {

    private static final BigDecimal POINT = new BigDecimal("0.01");

    /**
     * What a point of each loss is worth.
     *
     * @param sheet a cost sheet
     * @return a row for each step of the yield chain, from the fermenting vessel to what is sold
     * @throws IllegalArgumentException when a step leaves no more than a point of the beer
     */
    public static List<LossWorth> of(CostSheet sheet) {
        List<YieldChain.Step> steps = sheet.yieldChain().steps();
        List<LossWorth> rows = new ArrayList<>();
        for (int i = 1; i < steps.size(); i++) {
            boolean packaged = steps.get(i - 1).label().equals("packaged")
                    || steps.get(i - 1).label().equals("saleable");
            BigDecimal spread = packaged
                    ? sheet.unroundedPerPintSold()
                    : sheet.gyleCost()
                            .getAmount()
                            .multiply(Container.PINT_L)
                            .divide(sheet.yieldChain().soldL(), Pints.WORKING);
            rows.add(row(
                    steps.get(i).lostIn(),
                    steps.get(i - 1).litres(),
                    steps.get(i).litres(),
                    spread));
        }
        return List.copyOf(rows);
    }

    private static LossWorth row(String lostIn, BigDecimal inL, BigDecimal outL, BigDecimal spreadPerPint) {
        BigDecimal kept = outL.divide(inL, Pints.WORKING);
        BigDecimal loss = BigDecimal.ONE.subtract(kept);
        if (kept.compareTo(POINT) <= 0) {
            throw new IllegalArgumentException(lostIn + ": expected more than a point of the beer to be left, found "
                    + Figures.plain(outL) + " L of " + Figures.plain(inL) + " L");
        }
        // Cost per pint goes as 1 / kept: c · kept / (kept − 0.01) − c = c · 0.01 / (kept − 0.01).
        BigDecimal more = spreadPerPint.multiply(POINT).divide(kept.subtract(POINT), Figures.SHOWN);
        Optional<BigDecimal> less = loss.compareTo(POINT) < 0
                ? Optional.empty()
                : Optional.of(spreadPerPint.multiply(POINT).divide(kept.add(POINT), Figures.SHOWN));
        return new LossWorth(lostIn, loss.round(Figures.SHOWN), more, less);
    }

    /**
     * What one point more of it costs on the beer of a year.
     *
     * @param saleableHl beer sold in the year, hL, 0 or more
     * @return money, unrounded
     */
    public BigDecimal onePointMoreOn(BigDecimal saleableHl) {
        return onePointMorePerPint.multiply(pints(saleableHl));
    }

    /**
     * What one point less of it saves on the beer of a year.
     *
     * @param saleableHl beer sold in the year, hL, 0 or more
     * @return money, unrounded; empty where less than one point is lost
     */
    public Optional<BigDecimal> onePointLessOn(BigDecimal saleableHl) {
        BigDecimal pints = pints(saleableHl);
        return onePointLessPerPint.map(worth -> worth.multiply(pints));
    }

    private static BigDecimal pints(BigDecimal saleableHl) {
        return Pints.pints(Figures.zeroOrMore("beer sold in the year", saleableHl, " hL"));
    }
}
