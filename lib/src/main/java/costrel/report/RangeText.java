package costrel.report;

import costrel.brewery.PricedRange;
import costrel.pricing.Price;
import costrel.pricing.RangeView;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;

/** A range as text: what one of each costs, sells for and leaves, and what a year of them comes to. */
public final class RangeText {

    private RangeText() {}

    /**
     * The range as text.
     *
     * @param range the range
     * @return lines of text
     */
    public static String of(PricedRange range) {
        return TextForm.of(sheet(range));
    }

    /**
     * The range.
     *
     * @param range the range
     * @return a sheet of the kind "range"
     */
    public static Sheet sheet(PricedRange range) {
        RangeView view = range.view();
        List<Block> blocks = new ArrayList<>();
        blocks.add(each(view));
        blocks.add(year(view));
        contribution(view).ifPresent(blocks::add);
        range.remarks().forEach(remark -> blocks.add(Block.Note.of(Block.Note.Kind.FINDING, remark)));
        blocks.add(MoneyWords.care());
        List<Fact> about = new ArrayList<>();
        about.add(Fact.words("costedOn", "costed on", range.day().toString()));
        about.add(Fact.words("currency", "currency", view.currency().getCode()));
        about.addAll(contributions(view));
        return new Sheet("range", "The range at the costs and duty of " + range.day() + ", without VAT", about, blocks);
    }

    private static Table each(RangeView view) {
        CurrencyUnit currency = view.currency();
        TextTable table = TextTable.keyed(
                "each",
                "one of each",
                Column.words("item", "one of"),
                MoneyWords.column("cost", "costs", currency),
                MoneyWords.column("variable", "variable", currency),
                MoneyWords.column("price", "price", currency),
                MoneyWords.column("contribution", "contribution", currency),
                Column.figures("margin", "margin %", "%"),
                MoneyWords.columnBy("perHl", currency, "hL"),
                Column.figures("rankPerHl", "rank", ""),
                MoneyWords.columnBy("perTankDay", currency, "tank-day"),
                Column.figures("rankPerTankDay", "rank", ""));
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
        return table.table();
    }

    private static Table year(RangeView view) {
        CurrencyUnit currency = view.currency();
        TextTable table = TextTable.keyed(
                "year",
                "what a year comes to",
                Column.words("item", "in a year"),
                Column.figures("sold", "sold", ""),
                Column.figures("volume", "hL", "hL"),
                Column.figures("mix", "mix %", "%"),
                Column.figures("tankDays", "tank-days", "tank-day"),
                MoneyWords.column("revenue", "revenue", currency),
                MoneyWords.column("variable", "variable cost", currency),
                MoneyWords.column("contribution", "contribution", currency));
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
        return table.table();
    }

    private static List<Fact> contributions(RangeView view) {
        CurrencyUnit currency = view.currency();
        List<Fact> facts = new ArrayList<>();
        view.total()
                .contributionPerHl()
                .ifPresent(money -> facts.add(Fact.figure(
                        "contributionPerHl",
                        "contribution of the range",
                        MoneyWords.figure(currency, money),
                        currency.getCode() + "/hL")));
        view.total()
                .contributionPerTankDay()
                .ifPresent(money -> facts.add(Fact.figure(
                        "contributionPerTankDay",
                        "contribution of the range",
                        MoneyWords.figure(currency, money),
                        currency.getCode() + "/tank-day")));
        return facts;
    }

    private static Optional<Block> contribution(RangeView view) {
        CurrencyUnit currency = view.currency();
        return view.total()
                .contributionPerHl()
                .map(money -> new Block.Note(
                        Block.Note.Kind.HOW,
                        "contribution of the range",
                        MoneyWords.said(currency, money) + " a hL"
                                + view.total()
                                        .contributionPerTankDay()
                                        .map(day -> ", " + MoneyWords.said(currency, day) + " a tank-day")
                                        .orElse("")));
    }

    private static String rank(OptionalInt rank) {
        return rank.isPresent() ? String.valueOf(rank.getAsInt()) : "";
    }
}
