package costrel.pricing;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * All beers in all their containers in one table: what each costs, sells for and leaves, how many are sold, and which earn
 * their tank time. Money of a row is rounded to the penny once, and the totals are the sums of the rows as printed. Variable
 * cost is revenue less contribution, so that each row adds up too. Money is without value added tax, duty is in the cost.
 *
 * @param currency what the money is in
 * @param rows a row for each beer and container, in the order given
 * @param total their sums
 */
public record RangeView(CurrencyUnit currency, List<Row> rows, Total total) {

    /**
     * What is sold of one beer in one container.
     *
     * @param price its price and cost
     * @param containers how many are sold in the period, 0 or more
     */
    public record Sold(Price price, int containers) {
        public Sold {
            if (containers < 0) {
                throw new IllegalArgumentException(
                        price.cost().name() + ": expected 0 containers or more, found " + containers);
            }
        }
    }

    /**
     * A row of the table. Unrounded figures of one container, hectolitre or tank-day are asked of its price.
     *
     * @param sold what is sold
     * @param hl beer that can be sold from it, hL
     * @param tankDays tank-days that it takes; empty where not known
     * @param mixShare its share of the hectolitres of the range; 0 where nothing is sold at all
     * @param revenue containers × price
     * @param variableCost revenue less contribution
     * @param contribution contribution, rounded halves up
     * @param rankPerHl its place by contribution per hL, the best 1; equals share a place
     * @param rankPerTankDay its place by contribution per tank-day; empty where the days are not known or none
     */
    public record Row(
            Sold sold,
            BigDecimal hl,
            Optional<BigDecimal> tankDays,
            BigDecimal mixShare,
            Money revenue,
            Money variableCost,
            Money contribution,
            int rankPerHl,
            OptionalInt rankPerTankDay) {}

    /**
     * The sums of the rows.
     *
     * @param containers containers sold
     * @param hl beer that can be sold, hL
     * @param tankDays tank-days; empty where those of a row that is sold are not known
     * @param revenue revenue
     * @param variableCost variable cost with duty
     * @param contribution contribution
     * @param contributionPerHl contribution over hectolitres, unrounded; empty where nothing is sold
     * @param contributionPerTankDay contribution over tank-days, unrounded; empty where they are not known or none
     */
    public record Total(
            long containers,
            BigDecimal hl,
            Optional<BigDecimal> tankDays,
            Money revenue,
            Money variableCost,
            Money contribution,
            Optional<BigDecimal> contributionPerHl,
            Optional<BigDecimal> contributionPerTankDay) {

        /**
         * What is left when the fixed cost of the period is paid.
         *
         * @param fixed the fixed cost, 0 or more
         * @return the profit, below 0 for a loss
         */
        public Money profitAfter(Money fixed) {
            Figures.zeroOrMore("fixed cost", fixed.getAmount(), "");
            return contribution.minus(fixed);
        }
    }

    public RangeView {
        rows = List.copyOf(rows);
    }

    /**
     * Puts a range into one table.
     *
     * @param range what is sold of each beer in each container; each beer and container once
     * @return the table
     * @throws IllegalArgumentException when there is nothing, something stands twice, or the currencies differ
     */
    public static RangeView of(List<Sold> range) {
        if (range.isEmpty()) {
            throw new IllegalArgumentException("range: expected a beer or more, found none");
        }
        CurrencyUnit currency = range.get(0).price().cost().currency();
        List<String> names = new ArrayList<>();
        for (Sold sold : range) {
            UnitCost cost = sold.price().cost();
            Figures.same("range: " + cost.name(), currency, cost.currency());
            String name = ComparisonOptions.folded(cost.name());
            if (names.contains(name)) {
                throw new IllegalArgumentException(
                        "range: expected each beer and container once, found " + cost.name() + " twice");
            }
            names.add(name);
        }
        BigDecimal allHl = Pints.sum(range.stream().map(RangeView::hl).toList());
        List<Row> rows =
                range.stream().map(sold -> row(currency, sold, range, allHl)).toList();
        return new RangeView(currency, rows, total(currency, rows, allHl));
    }

    private static BigDecimal hl(Sold sold) {
        return sold.price().cost().saleableHl().multiply(BigDecimal.valueOf(sold.containers()));
    }

    private static Row row(CurrencyUnit currency, Sold sold, List<Sold> range, BigDecimal allHl) {
        Price price = sold.price();
        BigDecimal count = BigDecimal.valueOf(sold.containers());
        Money revenue = price.net().multipliedBy(count, RoundingMode.UNNECESSARY);
        Money contribution = Figures.rounded(currency, price.contribution().multiply(count));
        return new Row(
                sold,
                hl(sold),
                price.cost().tankDays().map(days -> days.multiply(count)),
                allHl.signum() == 0 ? BigDecimal.ZERO : hl(sold).divide(allHl, Figures.SHOWN),
                revenue,
                revenue.minus(contribution),
                contribution,
                rank(price, range, other -> Optional.of(other.contributionPerHl()))
                        .orElse(1),
                rank(price, range, Price::contributionPerTankDay));
    }

    /** One more than the number that do better. */
    private static OptionalInt rank(Price price, List<Sold> range, Function<Price, Optional<BigDecimal>> figure) {
        Optional<BigDecimal> own = figure.apply(price);
        if (own.isEmpty()) {
            return OptionalInt.empty();
        }
        long better = range.stream()
                .map(sold -> figure.apply(sold.price()))
                .flatMap(Optional::stream)
                .filter(other -> other.compareTo(own.get()) > 0)
                .count();
        return OptionalInt.of(1 + (int) better);
    }

    private static Total total(CurrencyUnit currency, List<Row> rows, BigDecimal allHl) {
        long containers = 0;
        Money revenue = Money.zero(currency);
        Money variableCost = Money.zero(currency);
        Money contribution = Money.zero(currency);
        BigDecimal days = BigDecimal.ZERO;
        boolean allKnown = true;
        for (Row row : rows) {
            containers += row.sold().containers();
            revenue = revenue.plus(row.revenue());
            variableCost = variableCost.plus(row.variableCost());
            contribution = contribution.plus(row.contribution());
            days = days.add(row.tankDays().orElse(BigDecimal.ZERO));
            allKnown &= row.tankDays().isPresent() || row.sold().containers() == 0;
        }
        Optional<BigDecimal> tankDays = allKnown ? Optional.of(days) : Optional.empty();
        BigDecimal money = contribution.getAmount();
        return new Total(
                containers,
                allHl,
                tankDays,
                revenue,
                variableCost,
                contribution,
                per(money, allHl),
                tankDays.flatMap(known -> per(money, known)));
    }

    private static Optional<BigDecimal> per(BigDecimal money, BigDecimal amount) {
        return amount.signum() > 0 ? Optional.of(money.divide(amount, Figures.SHOWN)) : Optional.empty();
    }
}
