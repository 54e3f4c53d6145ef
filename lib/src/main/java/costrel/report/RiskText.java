package costrel.report;

import costrel.brewery.RiskStudy;
import costrel.cost.CostSheet;
import costrel.pricing.Driver;
import costrel.pricing.RiskPlan;
import costrel.pricing.RiskResult;
import costrel.pricing.Spread;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** What a pint may come to cost, as text: percentiles, what drives it, and the spreads it all rests on. */
public final class RiskText {

    private RiskText() {}

    /**
     * Draws a study and sets it out as text.
     *
     * @param study what is drawn
     * @return lines of text
     * @throws IllegalArgumentException as the draws throw
     */
    public static String of(RiskStudy study) {
        return TextForm.of(sheet(study));
    }

    /**
     * Draws a study and sets it out.
     *
     * @param study what is drawn
     * @return a sheet of the kind "risk"
     * @throws IllegalArgumentException as the draws throw
     */
    public static Sheet sheet(RiskStudy study) {
        RiskResult result = study.result();
        CostSheet sheet = study.sheet();
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        RiskPlan plan = result.plan();
        String of =
                study.container().map(container -> container.container().name()).orElse("whole mix");
        List<Fact> about = new ArrayList<>(CostText.about(sheet));
        about.add(Fact.words("of", "of", of));
        about.add(Fact.figure("draws", "draws", String.valueOf(plan.draws()), ""));
        about.add(Fact.figure("seed", "seed", String.valueOf(plan.seed()), ""));
        List<Block> blocks = new ArrayList<>();
        blocks.add(percentiles(currency, result));
        blocks.add(drivers(result));
        for (RiskPlan.Correlation pair : plan.correlations()) {
            blocks.add(new Block.Note(
                    Block.Note.Kind.ASSUMED,
                    "together",
                    pair.first() + " and " + pair.second() + ", correlation " + plain(pair.coefficient())));
        }
        chance(currency, result).ifPresent(blocks::add);
        blocks.add(new Block.Note(
                Block.Note.Kind.HOW,
                "rank",
                "Spearman's rank correlation with the cost, 1 or -1 where it alone decides; spreads that go together do"
                        + " so by a Gaussian copula"));
        blocks.add(
                Block.Note.how("no better than its spreads, which are your own: not a forecast; the beer, its strength"
                        + " and duty stay as they are"));
        blocks.add(MoneyWords.care());
        String title = String.format(
                Locale.ROOT,
                "%s, %s: what a pint may come to cost, %,d draws with seed %d",
                sheet.batch().beer(),
                of,
                plan.draws(),
                plan.seed());
        return new Sheet("risk", title, about, blocks);
    }

    private static Table percentiles(CurrencyUnit currency, RiskResult result) {
        TextTable cost = TextTable.keyed(
                "percentiles",
                "what a pint may come to cost",
                Column.words("of", "of all draws"),
                MoneyWords.perPint("perPint", currency));
        cost.row("as the sheet reckons", pint(currency, result.sheetPerPint()));
        cost.row("a tenth cost no more than (P10)", pint(currency, result.p10PerPint()));
        cost.row("half cost no more than (P50)", pint(currency, result.p50PerPint()));
        cost.row("nine in ten cost no more than (P90)", pint(currency, result.p90PerPint()));
        return cost.row("mean", pint(currency, result.meanPerPint())).table();
    }

    private static Optional<Block> chance(CurrencyUnit currency, RiskResult result) {
        if (result.plan().target().isEmpty() || result.chanceUnderTarget().isEmpty()) {
            return Optional.empty();
        }
        RiskPlan.Target target = result.plan().target().get();
        return Optional.of(new Block.Facts(List.of(Fact.figure(
                "chanceUnderTarget",
                "chance that " + pint(currency, target.pricePerPint()) + " " + MoneyWords.coins(currency)
                        + " a pint leaves less than " + MoneyWords.stated(BigDecimal.valueOf(target.margin()))
                        + " margin:",
                Figures.fixed(result.chanceUnderTarget().getAsDouble() * 100, 1),
                "%"))));
    }

    private static Table drivers(RiskResult result) {
        Map<String, Driver> byName = new LinkedHashMap<>();
        result.plan().drivers().forEach(driver -> byName.put(driver.name(), driver));
        TextTable table = TextTable.keyed(
                "drivers",
                "what drives the cost",
                Column.words("driver", "what drives it"),
                Column.figures("rank", "rank", ""),
                Column.words("drawnAs", "drawn as"));
        for (RiskResult.Influence influence : result.influences()) {
            Driver driver = byName.get(influence.driver());
            table.row(
                    influence.driver(),
                    Figures.fixed(influence.rankCorrelation(), 2),
                    driver == null ? "" : words(driver));
        }
        return table.table();
    }

    /** The distribution of a driver in words: relative where its base is 1, else in per cent. */
    private static String words(Driver driver) {
        Spread spread = driver.spread();
        if (spread instanceof Spread.Lognormal lognormal) {
            return driver.base() == 1 && lognormal.median() == 1
                    ? "lognormal about the sheet's, standard deviation of the logarithm "
                            + Figures.percent(lognormal.logDeviation(), 1)
                    : "lognormal, median " + Figures.percent(lognormal.median(), 2)
                            + ", standard deviation of the logarithm " + Figures.percent(lognormal.logDeviation(), 1);
        }
        if (spread instanceof Spread.Normal normal) {
            return "normal, mean " + Figures.percent(normal.mean(), 2) + ", standard deviation "
                    + Figures.percent(normal.deviation(), 2);
        }
        if (spread instanceof Spread.Triangular triangular) {
            return "triangular, least " + plain(triangular.least()) + ", likeliest " + plain(triangular.likeliest())
                    + ", most " + plain(triangular.most()) + " against " + plain(driver.base());
        }
        Spread.Uniform uniform = (Spread.Uniform) spread;
        return "uniform from " + plain(uniform.least()) + " to " + plain(uniform.most()) + " against "
                + plain(driver.base());
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static String pint(CurrencyUnit currency, double money) {
        return MoneyWords.coinsOf(currency, BigDecimal.valueOf(money));
    }
}
