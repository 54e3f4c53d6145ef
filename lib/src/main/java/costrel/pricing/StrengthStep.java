package costrel.pricing;

import costrel.cost.ContainerCost;
import costrel.cost.CostSheet;
import costrel.duty.DutyRate;
import costrel.figures.Figures;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What a new beer costs at each strength it might have. Where the rate of duty changes between two strengths, the last tenth
 * of a per cent under the step and the step itself are put in, so that it shows as a step and not as a slope. An estimate:
 * rates may change, and duty goes by what the beer is.
 */
public final class StrengthStep {
    private static final BigDecimal TENTH = new BigDecimal("0.1");

    /**
     * The beer at one strength.
     *
     * @param strength per cent by volume
     * @param sheet its cost
     * @param dutyPerPint the duty in it, money per saleable pint, unrounded
     * @param stepPerPint where the rate of duty changed since the row before: how much more a pint costs than in that
     *     row, unrounded; empty elsewhere
     */
    public record Row(BigDecimal strength, CostSheet sheet, BigDecimal dutyPerPint, Optional<BigDecimal> stepPerPint) {

        /**
         * What a pint costs.
         *
         * @return money per saleable pint of the whole mix, with duty, unrounded
         */
        public BigDecimal costPerPint() {
            return sheet.unroundedPerPint();
        }

        /**
         * What a pint costs without duty.
         *
         * @return money per saleable pint of the whole mix, unrounded
         */
        public BigDecimal costPerPintExDuty() {
            return costPerPint().subtract(dutyPerPint);
        }
    }

    private StrengthStep() {}

    /**
     * The beer at each of some strengths, and on both sides of each step between them.
     *
     * @param strengths per cent by volume, one or more, in any order
     * @param costed the beer made to a strength and costed; the duty on its sheet must go by that strength
     * @return a row for each strength, weakest first
     * @throws IllegalArgumentException when there are no strengths, or as the costing of one throws
     */
    public static List<Row> table(List<BigDecimal> strengths, Function<BigDecimal, CostSheet> costed) {
        if (strengths.isEmpty()) {
            throw new IllegalArgumentException("strengths: expected one or more, found none");
        }
        NavigableMap<BigDecimal, CostSheet> sheets = new TreeMap<>();
        strengths.forEach(strength -> sheets.computeIfAbsent(strength, costed));
        for (BigDecimal strength : steps(sheets)) {
            sheets.computeIfAbsent(strength, costed);
        }
        List<Row> rows = new ArrayList<>();
        sheets.forEach((strength, sheet) -> {
            Optional<BigDecimal> step = Optional.empty();
            if (!rows.isEmpty()) {
                Row before = rows.get(rows.size() - 1);
                if (!bandsOf(before.sheet()).equals(bandsOf(sheet))) {
                    step = Optional.of(sheet.unroundedPerPint().subtract(before.costPerPint()));
                }
            }
            rows.add(new Row(strength, sheet, dutyPerPint(sheet), step));
        });
        return List.copyOf(rows);
    }

    /** Both sides of every step that lies between two of the strengths. */
    private static List<BigDecimal> steps(NavigableMap<BigDecimal, CostSheet> sheets) {
        TreeSet<BigDecimal> edges = new TreeSet<>();
        for (CostSheet sheet : sheets.values()) {
            for (ContainerCost container : sheet.containers()) {
                DutyRate rate = container.duty().rate();
                edges.add(rate.strengthFrom());
                rate.strengthUnder().ifPresent(edges::add);
            }
        }
        List<BigDecimal> sides = new ArrayList<>();
        for (BigDecimal edge : edges) {
            if (edge.compareTo(sheets.firstKey()) > 0 && edge.compareTo(sheets.lastKey()) <= 0) {
                sides.add(edge);
                BigDecimal under = edge.setScale(1, RoundingMode.UP).subtract(TENTH);
                if (under.compareTo(sheets.firstKey()) > 0) {
                    sides.add(under);
                }
            }
        }
        return sides;
    }

    private static List<BigDecimal> bandsOf(CostSheet sheet) {
        return sheet.containers().stream()
                .map(container -> container.duty().rate().strengthFrom().stripTrailingZeros())
                .toList();
    }

    private static BigDecimal dutyPerPint(CostSheet sheet) {
        BigDecimal duty = BigDecimal.ZERO;
        for (ContainerCost container : sheet.containers()) {
            duty = duty.add(container.duty().duty().getAmount());
        }
        return duty.divide(sheet.yieldChain().saleablePints(), Figures.SHOWN);
    }
}
