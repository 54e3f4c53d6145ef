package costrel.pricing;

import costrel.cost.ContainerCost;
import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.figures.Figures;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * What one container of a beer costs, unrounded, as prices are reckoned from it. All money is without value added tax.
 *
 * @param name what is sold, such as the beer and its container
 * @param currency what the money is in
 * @param cost all of its cost with duty, 0 or more
 * @param fixed the part that is there however much is brewed
 * @param duty the part that is duty, 0 or more
 * @param saleablePints imperial pints that can be sold from it, more than 0
 * @param tankDays days of one tank that it takes up; empty where not known
 */
public record UnitCost(
        String name,
        CurrencyUnit currency,
        BigDecimal cost,
        BigDecimal fixed,
        BigDecimal duty,
        BigDecimal saleablePints,
        Optional<BigDecimal> tankDays) {

    public UnitCost {
        name = Figures.named("unit cost", name);
        Figures.zeroOrMore(name + ": cost", cost, " " + currency);
        Figures.zeroOrMore(name + ": duty", duty, " " + currency);
        Figures.overZero(name + ": saleable pints", saleablePints, "");
        String days = name + ": tank-days";
        tankDays.ifPresent(value -> Figures.zeroOrMore(days, value, ""));
    }

    /**
     * One container of a cost sheet. Its fixed part is its own fixed lines and its share of the gyle's; what the sheet
     * rounded away stays in the variable part, so that the two are the sheet's cost.
     *
     * @param sheet the sheet
     * @param container one of its containers
     * @return the container's cost, unrounded
     * @throws IllegalArgumentException when the container is not of that sheet
     */
    public static UnitCost of(CostSheet sheet, ContainerCost container) {
        String name = sheet.batch().beer() + ", " + container.container().name();
        if (!sheet.containers().contains(container)) {
            throw new IllegalArgumentException(name + ": expected a container of the sheet");
        }
        BigDecimal count = BigDecimal.valueOf(container.count());
        BigDecimal fixed = fixed(sheet.gyleLines()).multiply(container.share()).add(fixed(container.lines()));
        BigDecimal duty = container.lines().stream()
                .filter(line -> line.group() == CostGroup.DUTY)
                .map(line -> line.value().getAmount())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        Optional<BigDecimal> tankDays = sheet.batch().tankDays().isEmpty()
                ? Optional.empty()
                : Optional.of(BigDecimal.valueOf(sheet.batch().tankDays().getAsDouble())
                        .multiply(container.share())
                        .divide(count, Figures.SHOWN));
        return new UnitCost(
                name,
                sheet.total().getCurrencyUnit(),
                container.unroundedPerContainer(),
                fixed.divide(count, Figures.SHOWN),
                duty.divide(count, Figures.SHOWN),
                container.saleablePints().divide(count, Figures.SHOWN),
                tankDays);
    }

    private static BigDecimal fixed(List<CostLine> lines) {
        return lines.stream()
                .filter(CostLine::fixed)
                .map(line -> line.value().getAmount())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * What one more of them costs, with duty.
     *
     * @return the cost less its fixed part
     */
    public BigDecimal variable() {
        return cost.subtract(fixed);
    }

    /**
     * Beer that can be sold from it.
     *
     * @return hectolitres
     */
    public BigDecimal saleableHl() {
        return Pints.hl(saleablePints);
    }
}
