package costrel.report;

import costrel.brewery.LossTable;
import costrel.brewery.StrengthTable;
import costrel.cost.CostSheet;
import costrel.pricing.LossWorth;
import costrel.pricing.StrengthStep;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** What a pint would cost if the beer were stronger, or less of it were lost, as text. */
public final class StrengthText {

    private StrengthText() {}

    /**
     * Cost against strength, as text.
     *
     * @param table the beer at each strength
     * @return lines of text
     */
    public static String of(StrengthTable table) {
        return TextForm.of(sheet(table));
    }

    /**
     * Cost against strength.
     *
     * @param table the beer at each strength
     * @return a sheet of the kind "strengths"
     */
    public static Sheet sheet(StrengthTable table) {
        CurrencyUnit currency = table.rows().get(0).step().sheet().total().getCurrencyUnit();
        TextTable lines = TextTable.keyed(
                "strengths",
                "a pint of the whole mix at each strength",
                Column.figures("strength", "% vol", "% vol"),
                Column.figures("og", "OG", ""),
                MoneyWords.perPint("withoutDuty", "without duty", currency),
                MoneyWords.perPint("duty", "duty", currency),
                MoneyWords.perPint("perPint", currency),
                Column.words("step", "where duty steps"),
                Column.words("fits", ""));
        for (StrengthTable.Row row : table.rows()) {
            StrengthStep.Row step = row.step();
            BigDecimal all = coins(currency, step.costPerPint());
            BigDecimal duty = coins(currency, step.dutyPerPint());
            Optional<BigDecimal> rise = step.stepPerPint();
            lines.row(
                    step.strength().setScale(1, RoundingMode.UNNECESSARY).toPlainString(),
                    Figures.degrees(row.og().excessDegrees()),
                    all.subtract(duty).toPlainString(),
                    duty.toPlainString(),
                    all.toPlainString(),
                    rise.map(more -> "a step: " + MoneyWords.coinsOf(currency, more) + " more than the row above")
                            .orElse(""),
                    row.fits() ? "" : "a gyle of that length doesn't fit the plant");
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(lines.table());
        blocks.add(Block.Note.how(
                "the same grist, bitterness and attenuation at another gravity, just reaching each strength;"
                        + " duty goes by what the beer is, so keep clear of a step"));
        blocks.add(MoneyWords.care());
        return new Sheet(
                "strengths",
                table.beer() + ", cost of a pint of the whole mix at other strengths, duty point " + table.dutyOn(),
                List.of(
                        Fact.words("beer", "beer", table.beer()),
                        Fact.words("dutyOn", "duty point", table.dutyOn().toString()),
                        Fact.words("currency", "currency", currency.getCode())),
                blocks);
    }

    /**
     * What a point of each loss is worth, as text.
     *
     * @param table the losses
     * @return lines of text
     */
    public static String of(LossTable table) {
        return TextForm.of(sheet(table));
    }

    /**
     * What a point of each loss is worth.
     *
     * @param table the losses
     * @return a sheet of the kind "losses"
     */
    public static Sheet sheet(LossTable table) {
        CostSheet sheet = table.sheet();
        CurrencyUnit currency = sheet.total().getCurrencyUnit();
        String coins = MoneyWords.coins(currency);
        BigDecimal hl = sheet.yieldChain().soldL().movePointLeft(2);
        TextTable lines = TextTable.keyed(
                "losses",
                "one point of each loss",
                Column.words("lostIn", "lost in"),
                Column.figures("now", "now %", "%"),
                MoneyWords.perPint("morePerPint", "a point more: " + coins + " a pint", currency),
                MoneyWords.columnBy("morePerGyle", currency, "gyle"),
                MoneyWords.perPint("lessPerPint", "a point less: " + coins + " a pint", currency),
                MoneyWords.columnBy("lessPerGyle", currency, "gyle"));
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
        String title = sheet.batch().beer() + ", what one point of each loss is worth on "
                + hl.setScale(2, RoundingMode.HALF_UP).toPlainString() + " hL that are sold";
        return new Sheet(
                "losses",
                title,
                CostText.about(sheet),
                List.of(
                        lines.table(),
                        Block.Note.how("a point is one per cent of what comes into the step"),
                        MoneyWords.care()));
    }

    private static BigDecimal coins(CurrencyUnit currency, BigDecimal amount) {
        return new BigDecimal(MoneyWords.coinsOf(currency, amount));
    }
}
