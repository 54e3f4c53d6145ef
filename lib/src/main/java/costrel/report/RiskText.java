package costrel.report;

import costrel.brewery.RiskStudy;
import costrel.cost.CostSheet;
import costrel.pricing.Driver;
import costrel.pricing.RiskPlan;
import costrel.pricing.RiskResult;
import costrel.pricing.Spread;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.joda.money.CurrencyUnit;

/** What a pint may come to cost, as text: percentiles, what drives it, and the spreads it all rests on. */
public final class RiskText {

    private static final int WIDTH = 110;

    private RiskText() {}

    /**
     * Draws a study and sets it out.
     *
     * @param study what is drawn
     * @return lines of text
     * @throws IllegalArgumentException as the draws throw
     */
    public static String of(RiskStudy study) {
        return of(study, study.result());
    }

    private static String of(RiskStudy study, RiskResult result) {
        CostSheet sheet = study.sheet();
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        RiskPlan plan = result.plan();
        StringBuilder text = new StringBuilder();
        text.append(sheet.batch().beer())
                .append(study.container()
                        .map(container -> ", " + container.container().name())
                        .orElse(", whole mix"))
                .append(String.format(
                        Locale.ROOT,
                        ": what a pint may come to cost, %,d draws with seed %d\n",
                        plan.draws(),
                        plan.seed()));
        TextTable cost = TextTable.of("of all draws", "#" + MoneyWords.coins(currency) + " a pint");
        cost.row("as the sheet reckons", pint(currency, result.sheetPerPint()));
        cost.row("a tenth cost no more than (P10)", pint(currency, result.p10PerPint()));
        cost.row("half cost no more than (P50)", pint(currency, result.p50PerPint()));
        cost.row("nine in ten cost no more than (P90)", pint(currency, result.p90PerPint()));
        cost.row("mean", pint(currency, result.meanPerPint()));
        text.append(cost.text(2)).append(drivers(result));
        for (RiskPlan.Correlation pair : plan.correlations()) {
            text.append(Figures.folded(
                    "together: " + pair.first() + " and " + pair.second() + ", correlation "
                            + plain(pair.coefficient()),
                    2,
                    WIDTH));
        }
        if (plan.target().isPresent() && result.chanceUnderTarget().isPresent()) {
            RiskPlan.Target target = plan.target().get();
            text.append(Figures.folded(
                    "chance that " + pint(currency, target.pricePerPint()) + " " + MoneyWords.coins(currency)
                            + " a pint leaves less than " + MoneyWords.stated(BigDecimal.valueOf(target.margin()))
                            + " margin: "
                            + Figures.percent(result.chanceUnderTarget().getAsDouble(), 1),
                    2,
                    WIDTH));
        }
        return text.append(Figures.folded(
                        "rank: Spearman's rank correlation with the cost, 1 or -1 where it alone decides; spreads that go"
                                + " together do so by a Gaussian copula",
                        2,
                        WIDTH))
                .append(Figures.folded(
                        "no better than its spreads, which are your own: not a forecast; the beer, its strength and duty"
                                + " stay as they are",
                        2,
                        WIDTH))
                .append(PricingText.care())
                .toString();
    }

    private static String drivers(RiskResult result) {
        Map<String, Driver> byName = new LinkedHashMap<>();
        result.plan().drivers().forEach(driver -> byName.put(driver.name(), driver));
        TextTable table = TextTable.of("what drives it", "#rank", "drawn as");
        for (RiskResult.Influence influence : result.influences()) {
            Driver driver = byName.get(influence.driver());
            table.row(
                    influence.driver(),
                    Figures.fixed(influence.rankCorrelation(), 2),
                    driver == null ? "" : words(driver));
        }
        return table.text(2);
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
