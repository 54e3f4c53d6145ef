package costrel.pricing;

import costrel.cost.ContainerCost;
import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.figures.Figures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The cost of a pint as a sum of lines, ready to be multiplied: what a risk is drawn over. It sums to the unrounded cost of a
 * pint on its sheet.
 *
 * @param name what is costed
 * @param lines the lines
 */
public record CostVector(String name, List<Line> lines) {

    /**
     * What a line puts into a pint.
     *
     * @param group the part of the sheet
     * @param item what it pays for
     * @param ofGyle whether the gyle bears it, so that it is spread over what is left of the beer; else a container does
     * @param perPint money per saleable pint
     */
    public record Line(CostGroup group, String item, boolean ofGyle, double perPint) {}

    public CostVector {
        name = Figures.named("cost", name);
        lines = List.copyOf(lines);
    }

    /**
     * A pint of the whole mix of containers.
     *
     * @param sheet the sheet
     * @return its lines
     */
    public static CostVector of(CostSheet sheet) {
        BigDecimal pints = sheet.yieldChain().saleablePints();
        List<Line> lines = new ArrayList<>();
        add(lines, sheet.gyleLines(), true, BigDecimal.ONE, pints);
        sheet.containers().forEach(container -> add(lines, container.lines(), false, BigDecimal.ONE, pints));
        return new CostVector(sheet.batch().beer(), lines);
    }

    /**
     * A pint from one type of container.
     *
     * @param sheet the sheet
     * @param container one of its containers
     * @return its lines and its share of the gyle's
     * @throws IllegalArgumentException when the container is not of that sheet
     */
    public static CostVector of(CostSheet sheet, ContainerCost container) {
        UnitCost unit = UnitCost.of(sheet, container);
        BigDecimal pints = container.saleablePints();
        List<Line> lines = new ArrayList<>();
        add(lines, sheet.gyleLines(), true, container.share(), pints);
        // The shares are rounded to the penny: what that moved is carried here, so that the sum is the sheet's.
        BigDecimal moved = container
                .gyleShare()
                .getAmount()
                .subtract(sheet.gyleCost().getAmount().multiply(container.share()));
        lines.add(new Line(
                CostGroup.LOSSES,
                "rounding of the gyle's share",
                true,
                moved.divide(pints, Figures.SHOWN).doubleValue()));
        add(lines, container.lines(), false, BigDecimal.ONE, pints);
        return new CostVector(unit.name(), lines);
    }

    private static void add(
            List<Line> lines, List<CostLine> ofSheet, boolean ofGyle, BigDecimal share, BigDecimal pints) {
        for (CostLine line : ofSheet) {
            if (line.value().isZero()) {
                continue;
            }
            double perPint = line.value()
                    .getAmount()
                    .multiply(share)
                    .divide(pints, Figures.SHOWN)
                    .doubleValue();
            lines.add(new Line(line.group(), line.item(), ofGyle, perPint));
        }
    }

    /**
     * What a pint costs.
     *
     * @return money per saleable pint
     */
    public double perPint() {
        return lines.stream().mapToDouble(Line::perPint).sum();
    }
}
