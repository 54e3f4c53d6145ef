package costrel.report;

import costrel.brewery.PricedRange;
import costrel.pricing.Price;
import costrel.pricing.RangeView;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;

/** A range as text: what one of each costs, sells for and leaves, and what a year of them comes to. */
public final class RangeText {

    private static final int WIDTH = 110;

    private RangeText() {}

    /**
     * The range.
     *
     * @param range the range
     * @return lines of text
     */
    public static String of(PricedRange range) {
        StringBuilder text = new StringBuilder("The range at the costs and duty of " + range.day() + ", without VAT\n");
        text.append(each(range.view())).append(year(range.view()));
        range.remarks().forEach(remark -> text.append(Figures.folded("finding: " + remark, 2, WIDTH)));
        return text.append(PricingText.care()).toString();
    }

    private static String each(RangeView view) {
        CurrencyUnit currency = view.currency();
        String sign = MoneyWords.sign(currency);
        TextTable table = TextTable.of(
                "one of",
                "#costs " + sign,
                "#variable " + sign,
                "#price " + sign,
                "#contribution " + sign,
                "#margin %",
                "#" + sign + " a hL",
                "#rank",
                "#" + sign + " a tank-day",
                "#rank");
        for (RangeView.Row row : view.rows()) {
            Price price = row.sold().price();
            BigDecimal variable = price.cost().variable().setScale(currency.getDecimalPlaces(), RoundingMode.HALF_UP);
            table.row(
                    price.cost().name(),
                    MoneyWords.figure(currency, price.cost().cost()),
                    variable.toPlainString(),
                    MoneyWords.figure(price.net()),
                    price.net().getAmount().subtract(variable).toPlainString(),
                    MoneyWords.percent(price.margin()),
                    MoneyWords.figure(currency, price.contributionPerHl()),
                    String.valueOf(row.rankPerHl()),
                    price.contributionPerTankDay()
                            .map(money -> MoneyWords.figure(currency, money))
                            .orElse(""),
                    rank(row.rankPerTankDay()));
        }
        return table.text(2);
    }

    private static String year(RangeView view) {
        String sign = MoneyWords.sign(view.currency());
        TextTable table = TextTable.of(
                "in a year",
                "#sold",
                "#hL",
                "#mix %",
                "#tank-days",
                "#revenue " + sign,
                "#variable cost " + sign,
                "#contribution " + sign);
        PaperSum hl = new PaperSum(1);
        PaperSum mix = new PaperSum(1);
        PaperSum days = new PaperSum(1);
        for (RangeView.Row row : view.rows()) {
            table.row(
                    row.sold().price().cost().name(),
                    String.valueOf(row.sold().containers()),
                    hl.add(row.hl().doubleValue()),
                    mix.step(row.mixShare().doubleValue() * 100),
                    row.tankDays().map(value -> days.add(value.doubleValue())).orElse(""),
                    MoneyWords.figure(row.revenue()),
                    MoneyWords.figure(row.variableCost()),
                    MoneyWords.figure(row.contribution()));
        }
        RangeView.Total total = view.total();
        table.total(
                "all",
                "",
                hl.total(),
                mix.total(),
                total.tankDays().isPresent() ? days.total() : "",
                MoneyWords.figure(total.revenue()),
                MoneyWords.figure(total.variableCost()),
                MoneyWords.figure(total.contribution()));
        StringBuilder text = new StringBuilder(table.text(2));
        total.contributionPerHl()
                .ifPresent(money -> text.append(Figures.folded(
                        "contribution of the range: " + MoneyWords.said(view.currency(), money) + " a hL"
                                + total.contributionPerTankDay()
                                        .map(day -> ", " + MoneyWords.said(view.currency(), day) + " a tank-day")
                                        .orElse(""),
                        2,
                        WIDTH)));
        return text.toString();
    }

    private static String rank(OptionalInt rank) {
        return rank.isPresent() ? String.valueOf(rank.getAsInt()) : "";
    }
}
