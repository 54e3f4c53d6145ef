package costrel.report;

import costrel.brewery.BarPrices;
import costrel.brewery.SellingPrices;
import costrel.brewery.VolumeNeeded;
import costrel.cost.Container;
import costrel.cost.ContainerCost;
import costrel.cost.CostFinding;
import costrel.cost.CostSheet;
import costrel.pricing.BreakEven;
import costrel.pricing.DiscountLadder;
import costrel.pricing.Price;
import costrel.pricing.PubPrice;
import costrel.pricing.UnitCost;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Prices as text: what each container costs, what it is sold for and what that leaves, to the trade and on the bar. */
public final class PricingText {

    private static final int WIDTH = 110;

    private PricingText() {}

    /**
     * What each container costs and, where it is priced, what the price leaves.
     *
     * @param prices the containers
     * @return lines of text
     */
    public static String of(SellingPrices prices) {
        CostSheet sheet = prices.sheet();
        StringBuilder text = new StringBuilder();
        text.append(sheet.batch().beer())
                .append(", prices from the cost of ")
                .append(sheet.batch().costedOn())
                .append(", duty point ")
                .append(sheet.batch().dutyOn())
                .append(", without VAT but where it is named\n")
                .append(costs(prices));
        if (sheet.containers().stream()
                .anyMatch(container -> prices.price(container).isPresent())) {
            text.append(left(prices)).append(contributions(prices));
        }
        for (CostFinding finding : sheet.findings()) {
            text.append(Figures.folded("finding: " + finding.text(), 2, WIDTH));
        }
        if (!sheet.leftOut().isEmpty()) {
            text.append(Figures.folded("left out of the cost: " + String.join("; ", sheet.leftOut()), 2, WIDTH));
        }
        return text.append(care()).toString();
    }

    private static String costs(SellingPrices prices) {
        CurrencyUnit currency = prices.sheet().total().getCurrencyUnit();
        String sign = MoneyWords.sign(currency);
        TextTable table = TextTable.of(
                "one of",
                "#costs " + sign,
                "#of it duty " + sign,
                "#fixed " + sign,
                "#variable " + sign,
                "#pints",
                "#" + MoneyWords.coins(currency) + " a pint");
        List<UnitCost> costs = prices.costs();
        for (int i = 0; i < costs.size(); i++) {
            UnitCost cost = costs.get(i);
            ContainerCost container = prices.sheet().containers().get(i);
            BigDecimal all = coins(currency, cost.cost());
            BigDecimal variable = coins(currency, cost.variable());
            table.row(
                    container.container().name(),
                    all.toPlainString(),
                    MoneyWords.figure(currency, cost.duty()),
                    all.subtract(variable).toPlainString(),
                    variable.toPlainString(),
                    cost.saleablePints().setScale(2, RoundingMode.HALF_UP).toPlainString(),
                    container.pencePerPint().toPlainString());
        }
        return table.text(2);
    }

    private static String left(SellingPrices prices) {
        CurrencyUnit currency = prices.sheet().total().getCurrencyUnit();
        String sign = MoneyWords.sign(currency);
        TextTable table = TextTable.of(
                "one of",
                "#price " + sign,
                "#VAT " + sign,
                "#with VAT " + sign,
                "#profit " + sign,
                "#margin %",
                "#margin without duty %",
                "#mark-up %",
                "by the case");
        for (ContainerCost container : prices.sheet().containers()) {
            Optional<Price> asked = prices.price(container);
            if (asked.isEmpty()) {
                continue;
            }
            Price price = asked.get();
            BigDecimal net = price.net().getAmount();
            BigDecimal vat = coins(currency, net.multiply(prices.vat()));
            table.row(
                    container.container().name(),
                    net.toPlainString(),
                    vat.toPlainString(),
                    net.add(vat).toPlainString(),
                    net.subtract(coins(currency, price.cost().cost())).toPlainString(),
                    MoneyWords.percent(price.margin()),
                    price.marginExDuty().map(MoneyWords::percent).orElse(""),
                    price.markUp().map(MoneyWords::percent).orElse(""),
                    byTheCase(prices, container.container(), price.net()));
        }
        return table.text(2);
    }

    private static String byTheCase(SellingPrices prices, Container container, Money net) {
        OptionalInt count = prices.caseOf(container);
        return count.isEmpty() ? "" : count.getAsInt() + " for " + MoneyWords.said(net.multipliedBy(count.getAsInt()));
    }

    private static String contributions(SellingPrices prices) {
        CurrencyUnit currency = prices.sheet().total().getCurrencyUnit();
        String sign = MoneyWords.sign(currency);
        boolean tanks = prices.costs().stream().anyMatch(cost -> cost.tankDays().isPresent());
        TextTable table = TextTable.of(
                "contribution of one",
                "#each " + sign,
                "#a pint in " + MoneyWords.coins(currency),
                "#" + sign + " a hL",
                tanks ? "#" + sign + " a tank-day" : "tank time");
        for (ContainerCost container : prices.sheet().containers()) {
            prices.price(container)
                    .ifPresent(price -> table.row(
                            container.container().name(),
                            each(currency, price),
                            MoneyWords.coinsOf(currency, price.contributionPerPint()),
                            MoneyWords.figure(currency, price.contributionPerHl()),
                            price.contributionPerTankDay()
                                    .map(money -> MoneyWords.figure(currency, money))
                                    .orElse(tanks ? "" : "not in the recipe")));
        }
        return table.text(2);
    }

    /** The price less the variable cost as both are printed. */
    private static String each(CurrencyUnit currency, Price price) {
        return price.net()
                .getAmount()
                .subtract(coins(currency, price.cost().variable()))
                .toPlainString();
    }

    /**
     * Prices on the bar.
     *
     * @param bar the prices
     * @return lines of text
     */
    public static String of(BarPrices bar) {
        CurrencyUnit currency = bar.lines().isEmpty()
                ? CurrencyUnit.GBP
                : bar.lines().get(0).price().container().getCurrencyUnit();
        String sign = MoneyWords.sign(currency);
        TextTable table = TextTable.of(
                "one of",
                "#price " + sign,
                "#sells",
                "by the",
                "#costs the pub " + sign,
                "#gross profit " + sign,
                "#= without VAT " + sign,
                "#VAT " + sign,
                "#on the bar " + sign,
                "#gross profit %");
        for (BarPrices.Line line : bar.lines()) {
            PubPrice pub = line.price();
            // What a customer pays is exact; of its parts the pub's cost and the tax are rounded and the profit is the
            // rest.
            BigDecimal pump = pub.pump().getAmount();
            BigDecimal vat = coins(currency, pub.vatPerPint());
            BigDecimal net = pump.subtract(vat);
            BigDecimal cost = coins(currency, pub.costPerPint());
            table.row(
                    line.container().name(),
                    MoneyWords.figure(pub.container()),
                    pub.saleablePints().setScale(1, RoundingMode.HALF_UP).toPlainString(),
                    line.soldBy(),
                    cost.toPlainString(),
                    net.subtract(cost).toPlainString(),
                    net.toPlainString(),
                    vat.toPlainString(),
                    pump.toPlainString(),
                    MoneyWords.percent(pub.grossProfit()));
        }
        return bar.beer() + " on the bar\n" + table.text(2)
                + Figures.folded(
                        "the gross profit hangs on the pints that are really sold: ullage and beer pulled off take from it",
                        2,
                        WIDTH)
                + care();
    }

    /**
     * The volume that pays.
     *
     * @param volume the volume
     * @return lines of text
     */
    public static String of(VolumeNeeded volume) {
        CurrencyUnit currency = volume.price().cost().currency();
        BreakEven needed = volume.breakEven();
        String text = volume.price().cost().name() + " at "
                + MoneyWords.said(volume.price().net()) + ": "
                + needed.containers() + " of them pay for "
                + MoneyWords.said(currency, needed.fixed());
        if (needed.profit().signum() > 0) {
            text += " and leave " + MoneyWords.said(currency, needed.profit());
        }
        BigDecimal hl = volume.price().cost().saleableHl().multiply(new BigDecimal(needed.containers()));
        return Figures.folded(text, 0, WIDTH)
                + Figures.folded(
                        "each leaves " + MoneyWords.said(currency, needed.contribution())
                                + " over its variable cost of "
                                + MoneyWords.said(
                                        currency, volume.price().cost().variable()) + ", duty included; "
                                + hl.setScale(1, RoundingMode.HALF_UP).toPlainString() + " hL in all",
                        2,
                        WIDTH)
                + Figures.folded(
                        "the fixed cost is all that the period has: the fixed lines of the cost sheet are not in the variable"
                                + " cost",
                        2,
                        WIDTH)
                + care();
    }

    /**
     * A discount ladder.
     *
     * @param ladder the ladder
     * @return lines of text
     */
    public static String of(DiscountLadder ladder) {
        CurrencyUnit currency = ladder.list().getCurrencyUnit();
        String sign = MoneyWords.sign(currency);
        TextTable table = TextTable.of(
                "from", "discount", "#price " + sign, "#margin %", "#contribution each " + sign, "#" + sign + " a hL");
        for (DiscountLadder.Rung rung : ladder.rungs()) {
            Price price = rung.price();
            table.row(
                    String.valueOf(rung.step().from()),
                    MoneyWords.stated(rung.step().discount()),
                    MoneyWords.figure(price.net()),
                    MoneyWords.percent(price.margin()),
                    each(currency, price),
                    MoneyWords.figure(currency, price.contributionPerHl()));
        }
        return ladder.rungs().get(0).price().cost().name() + ", list price "
                + MoneyWords.said(ladder.list()) + " without VAT, discounts for larger orders\n"
                + table.text(2) + care();
    }

    static String care() {
        return Figures.folded(MoneyWords.CARE, 2, WIDTH);
    }

    private static BigDecimal coins(CurrencyUnit currency, BigDecimal amount) {
        return amount.setScale(currency.getDecimalPlaces(), RoundingMode.HALF_UP);
    }
}
