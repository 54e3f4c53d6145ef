package costrel.report;

import costrel.brewery.BarPrices;
import costrel.brewery.SellingPrices;
import costrel.brewery.VolumeNeeded;
import costrel.cost.ContainerCost;
import costrel.cost.CostSheet;
import costrel.explain.CostFinding;
import costrel.packaging.Container;
import costrel.pricing.BreakEven;
import costrel.pricing.DiscountLadder;
import costrel.pricing.Price;
import costrel.pricing.PubPrice;
import costrel.pricing.UnitCost;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Prices set out: what each container costs, what it is sold for and what that leaves, to the trade and on the bar. */
public final class PricingText {

    private PricingText() {}

    /**
     * What each container costs and, where it is priced, what the price leaves, as text.
     *
     * @param prices the containers
     * @return lines of text
     */
    public static String of(SellingPrices prices) {
        return TextForm.of(sheet(prices));
    }

    /**
     * What each container costs and, where it is priced, what the price leaves.
     *
     * @param prices the containers
     * @return a sheet of the kind "prices"
     */
    public static Sheet sheet(SellingPrices prices) {
        CostSheet sheet = prices.sheet();
        List<Block> blocks = new ArrayList<>();
        blocks.add(costs(prices));
        if (sheet.containers().stream()
                .anyMatch(container -> prices.price(container).isPresent())) {
            blocks.add(left(prices));
            blocks.add(contributions(prices));
        }
        for (CostFinding finding : sheet.findings()) {
            blocks.add(Block.Note.of(Block.Note.Kind.FINDING, finding.text()));
        }
        if (!sheet.leftOut().isEmpty()) {
            blocks.add(new Block.Note(
                    Block.Note.Kind.LEFT_OUT, "left out of the cost", String.join("; ", sheet.leftOut())));
        }
        blocks.add(MoneyWords.care());
        String title = sheet.batch().beer() + ", prices from the cost of "
                + sheet.batch().costedOn() + ", duty point " + sheet.batch().dutyOn()
                + ", without VAT but where it is named";
        return new Sheet("prices", title, CostText.about(sheet), blocks);
    }

    private static Table costs(SellingPrices prices) {
        CurrencyUnit currency = prices.sheet().total().getCurrencyUnit();
        TextTable table = TextTable.keyed(
                "costs",
                "what one of each costs",
                Column.words("container", "one of"),
                MoneyWords.column("cost", "costs", currency),
                MoneyWords.column("duty", "of it duty", currency),
                MoneyWords.column("fixed", "fixed", currency),
                MoneyWords.column("variable", "variable", currency),
                Column.figures("pints", "pints", "pint"),
                MoneyWords.perPint("perPint", currency));
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
        return table.table();
    }

    private static Table left(SellingPrices prices) {
        CurrencyUnit currency = prices.sheet().total().getCurrencyUnit();
        TextTable table = TextTable.keyed(
                "prices",
                "what one of each sells for",
                Column.words("container", "one of"),
                MoneyWords.column("price", "price", currency),
                MoneyWords.column("vat", "VAT", currency),
                MoneyWords.column("withVat", "with VAT", currency),
                MoneyWords.column("profit", "profit", currency),
                Column.figures("margin", "margin %", "%"),
                Column.figures("marginWithoutDuty", "margin without duty %", "%"),
                Column.figures("markUp", "mark-up %", "%"),
                Column.words("byTheCase", "by the case"));
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
        return table.table();
    }

    private static String byTheCase(SellingPrices prices, Container container, Money net) {
        OptionalInt count = prices.caseOf(container);
        return count.isEmpty() ? "" : count.getAsInt() + " for " + MoneyWords.said(net.multipliedBy(count.getAsInt()));
    }

    private static Table contributions(SellingPrices prices) {
        CurrencyUnit currency = prices.sheet().total().getCurrencyUnit();
        boolean tanks = prices.costs().stream().anyMatch(cost -> cost.tankDays().isPresent());
        TextTable table = TextTable.keyed(
                "contributions",
                "what one of each contributes",
                Column.words("container", "contribution of one"),
                MoneyWords.column("each", "each", currency),
                MoneyWords.perPint("perPint", "a pint in " + MoneyWords.coins(currency), currency),
                MoneyWords.columnBy("perHl", currency, "hL"),
                tanks
                        ? MoneyWords.columnBy("perTankDay", currency, "tank-day")
                        : Column.words("perTankDay", "tank time"));
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
        return table.table();
    }

    /** The price less the variable cost as both are printed. */
    private static String each(CurrencyUnit currency, Price price) {
        return price.net()
                .getAmount()
                .subtract(coins(currency, price.cost().variable()))
                .toPlainString();
    }

    /**
     * Prices on the bar, as text.
     *
     * @param bar the prices
     * @return lines of text
     */
    public static String of(BarPrices bar) {
        return TextForm.of(sheet(bar));
    }

    /**
     * Prices on the bar.
     *
     * @param bar the prices
     * @return a sheet of the kind "bar prices"
     */
    public static Sheet sheet(BarPrices bar) {
        CurrencyUnit currency = bar.lines().isEmpty()
                ? CurrencyUnit.GBP
                : bar.lines().get(0).price().container().getCurrencyUnit();
        TextTable table = TextTable.keyed(
                "bar",
                "what the pub makes of one of each",
                Column.words("container", "one of"),
                MoneyWords.column("price", "price", currency),
                Column.figures("sells", "sells", ""),
                Column.words("soldBy", "by the"),
                MoneyWords.column("costsThePub", "costs the pub", currency),
                MoneyWords.column("grossProfit", "gross profit", currency),
                MoneyWords.column("withoutVat", "= without VAT", currency),
                MoneyWords.column("vat", "VAT", currency),
                MoneyWords.column("onTheBar", "on the bar", currency),
                Column.figures("grossProfitShare", "gross profit %", "%"));
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
        return new Sheet(
                "bar prices",
                bar.beer() + " on the bar",
                List.of(Fact.words("beer", "beer", bar.beer()), Fact.words("currency", "currency", currency.getCode())),
                List.of(
                        table.table(),
                        Block.Note.how(
                                "the gross profit hangs on the pints that are really sold: ullage and beer pulled"
                                        + " off take from it"),
                        MoneyWords.care()));
    }

    /**
     * The volume that pays, as text.
     *
     * @param volume the volume
     * @return lines of text
     */
    public static String of(VolumeNeeded volume) {
        return TextForm.of(sheet(volume));
    }

    /**
     * The volume that pays.
     *
     * @param volume the volume
     * @return a sheet of the kind "break-even"
     */
    public static Sheet sheet(VolumeNeeded volume) {
        UnitCost cost = volume.price().cost();
        CurrencyUnit currency = cost.currency();
        BreakEven needed = volume.breakEven();
        BigDecimal hl =
                cost.saleableHl().multiply(new BigDecimal(needed.containers())).setScale(1, RoundingMode.HALF_UP);
        String title = cost.name() + " at " + MoneyWords.said(volume.price().net()) + ": " + needed.containers()
                + " of them pay for " + MoneyWords.said(currency, needed.fixed())
                + (needed.profit().signum() > 0 ? " and leave " + MoneyWords.said(currency, needed.profit()) : "");
        List<Fact> about = List.of(
                Fact.words("item", "one of", cost.name()),
                money("price", "price", currency, volume.price().net().getAmount()),
                Fact.figure("containers", "needed", String.valueOf(needed.containers()), ""),
                Fact.figure("volume", "in all", hl.toPlainString(), "hL"),
                money("fixed", "fixed cost", currency, needed.fixed()),
                money("profit", "profit wanted", currency, needed.profit()),
                money("contribution", "contribution of one", currency, needed.contribution()),
                money("variable", "variable cost of one", currency, cost.variable()));
        return new Sheet(
                "break-even",
                title,
                about,
                List.of(
                        Block.Note.how("each leaves " + MoneyWords.said(currency, needed.contribution())
                                + " over its variable cost of " + MoneyWords.said(currency, cost.variable())
                                + ", duty included; " + hl.toPlainString() + " hL in all"),
                        Block.Note.how(
                                "the fixed cost is all that the period has: the fixed lines of the cost sheet are"
                                        + " not in the variable cost"),
                        MoneyWords.care()));
    }

    private static Fact money(String key, String label, CurrencyUnit currency, BigDecimal amount) {
        return Fact.figure(key, label, MoneyWords.figure(currency, amount), currency.getCode());
    }

    /**
     * A discount ladder as text.
     *
     * @param ladder the ladder
     * @return lines of text
     */
    public static String of(DiscountLadder ladder) {
        return TextForm.of(sheet(ladder));
    }

    /**
     * A discount ladder.
     *
     * @param ladder the ladder
     * @return a sheet of the kind "discounts"
     */
    public static Sheet sheet(DiscountLadder ladder) {
        CurrencyUnit currency = ladder.list().getCurrencyUnit();
        TextTable table = TextTable.keyed(
                "discounts",
                "what each discount leaves",
                Column.figures("from", "from", ""),
                Column.figures("discount", "discount %", "%"),
                MoneyWords.column("price", "price", currency),
                Column.figures("margin", "margin %", "%"),
                MoneyWords.column("contribution", "contribution each", currency),
                MoneyWords.columnBy("perHl", currency, "hL"));
        for (DiscountLadder.Rung rung : ladder.rungs()) {
            Price price = rung.price();
            table.row(
                    String.valueOf(rung.step().from()),
                    MoneyWords.stated(rung.step().discount()).replace(" %", ""),
                    MoneyWords.figure(price.net()),
                    MoneyWords.percent(price.margin()),
                    each(currency, price),
                    MoneyWords.figure(currency, price.contributionPerHl()));
        }
        String item = ladder.rungs().get(0).price().cost().name();
        return new Sheet(
                "discounts",
                item + ", list price " + MoneyWords.said(ladder.list()) + " without VAT, discounts for larger orders",
                List.of(
                        Fact.words("item", "one of", item),
                        money("list", "list price", currency, ladder.list().getAmount())),
                List.of(table.table(), MoneyWords.care()));
    }

    private static BigDecimal coins(CurrencyUnit currency, BigDecimal amount) {
        return amount.setScale(currency.getDecimalPlaces(), RoundingMode.HALF_UP);
    }
}
