package costrel.report;

import costrel.brewery.LossTable;
import costrel.brewery.StrengthTable;
import costrel.cost.CostSheet;
import costrel.pricing.LossWorth;
import costrel.pricing.StrengthStep;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** What a pint would cost if the beer were stronger, or less of it were lost, as text. */
public final class StrengthText {

    private static final int WIDTH = 110;

    private StrengthText() {}

    /**
     * Cost against strength.
     *
     * @param table the beer at each strength
     * @return lines of text
     */
    public static String of(StrengthTable table) {
        CurrencyUnit currency = table.rows().get(0).step().sheet().total().getCurrencyUnit();
        String coins = MoneyWords.coins(currency);
        TextTable lines =
                TextTable.of("#% vol", "OG", "#without duty", "#duty", "#" + coins + " a pint", "where duty steps");
        boolean allFit = true;
        for (StrengthTable.Row row : table.rows()) {
            StrengthStep.Row step = row.step();
            allFit &= row.fits();
            BigDecimal all = coins(currency, step.costPerPint());
            BigDecimal duty = coins(currency, step.dutyPerPint());
            Optional<BigDecimal> rise = step.stepPerPint();
            lines.row(
                    step.strength().setScale(1, RoundingMode.UNNECESSARY).toPlainString(),
                    Figures.degrees(row.og().excessDegrees()) + (row.fits() ? "" : " *"),
                    all.subtract(duty).toPlainString(),
                    duty.toPlainString(),
                    all.toPlainString(),
                    rise.map(more -> "a step: " + MoneyWords.coinsOf(currency, more) + " more than the row above")
                            .orElse(""));
        }
        return table.beer() + ", cost of a pint of the whole mix at other strengths, duty point " + table.dutyOn()
                + "\n" + lines.text(2)
                + (allFit ? "" : Figures.folded("* a gyle of that length doesn't fit the plant", 2, WIDTH))
                + Figures.folded(
                        "the same grist, bitterness and attenuation at another gravity, just reaching each strength;"
                                + " duty goes by what the beer is, so keep clear of a step",
                        2,
                        WIDTH)
                + PricingText.care();
    }

    /**
     * What a point of each loss is worth.
     *
     * @param table the losses
     * @return lines of text
     */
    public static String of(LossTable table) {
        CostSheet sheet = table.sheet();
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        String sign = MoneyWords.sign(currency);
        String coins = MoneyWords.coins(currency);
        BigDecimal hl = sheet.yieldChain().soldL().movePointLeft(2);
        TextTable lines = TextTable.of(
                "lost in",
                "#now %",
                "#a point more: " + coins + " a pint",
                "#" + sign + " a gyle",
                "#a point less: " + coins + " a pint",
                "#" + sign + " a gyle");
        for (LossWorth row : table.rows()) {
            lines.row(
                    row.lostIn(),
                    row.lossShare()
                            .movePointRight(2)
                            .setScale(2, RoundingMode.HALF_UP)
                            .toPlainString(),
                    MoneyWords.coinsOf(currency, row.onePointMorePerPint()),
                    MoneyWords.figure(currency, row.onePointMoreOn(hl)),
                    row.onePointLessPerPint()
                            .map(worth -> MoneyWords.coinsOf(currency, worth))
                            .orElse(""),
                    row.onePointLessOn(hl)
                            .map(worth -> MoneyWords.figure(currency, worth))
                            .orElse(""));
        }
        return sheet.batch().beer() + ", what one point of each loss is worth on "
                + hl.setScale(2, RoundingMode.HALF_UP).toPlainString() + " hL that are sold\n" + lines.text(2)
                + Figures.folded("a point is one per cent of what comes into the step", 2, WIDTH)
                + PricingText.care();
    }

    private static BigDecimal coins(CurrencyUnit currency, BigDecimal amount) {
        return new BigDecimal(MoneyWords.coinsOf(currency, amount));
    }
}
