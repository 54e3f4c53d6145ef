package costrel.report;

import costrel.cost.CostSheet;
import costrel.pricing.Comparison;
import costrel.pricing.ComparisonStatement;
import costrel.pricing.Effect;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import org.joda.money.CurrencyUnit;

/** Why a pint costs more or less than it did, as text: each effect and its largest lines, all of it adding up. */
public final class ComparisonText {

    private static final int WIDTH = 110;
    private static final int LARGEST = 6;

    private ComparisonText() {}

    /**
     * A comparison by the pint.
     *
     * @param comparison the comparison
     * @return lines of text
     */
    public static String of(Comparison comparison) {
        CurrencyUnit currency = comparison.after().total().getCurrencyUnit();
        String unit = "#" + MoneyWords.coins(currency) + " a pint";
        ComparisonStatement statement = comparison.pencePerPint();
        TextTable summary = TextTable.of("why a pint moved", unit);
        summary.row("before: " + named(comparison.before()), statement.before().toPlainString());
        for (ComparisonStatement.Row row : statement.rows()) {
            if (row.amount().signum() != 0 || row.effect() != Effect.EXCHANGE_RATE) {
                summary.row(row.effect().label(), signed(row.amount()));
            }
        }
        summary.total("after: " + named(comparison.after()), statement.after().toPlainString());
        StringBuilder text = new StringBuilder(summary.text(2));
        for (ComparisonStatement.Row row : statement.rows()) {
            if (row.effect() != Effect.ROUNDING && !row.lines().isEmpty()) {
                text.append(lines(row, unit));
            }
        }
        return text.append(Figures.folded("method: " + Comparison.METHOD, 2, WIDTH))
                .append(Figures.folded(
                        "hop lots of one variety stand for the same hop; exchange rates are told apart from prices only where"
                                + " they are given",
                        2,
                        WIDTH))
                .append(PricingText.care())
                .toString();
    }

    private static String named(CostSheet sheet) {
        return sheet.batch().beer() + ", " + sheet.batch().costedOn();
    }

    private static String lines(ComparisonStatement.Row row, String unit) {
        List<ComparisonStatement.Line> bySize = row.lines().stream()
                .sorted(Comparator.comparing(
                                (ComparisonStatement.Line line) -> line.amount().abs())
                        .reversed())
                .toList();
        TextTable table = TextTable.of("by " + row.effect().label(), "", unit);
        int shown = bySize.size() <= LARGEST + 1 ? bySize.size() : LARGEST;
        bySize.subList(0, shown).forEach(line -> table.row(line.part(), line.item(), signed(line.amount())));
        if (shown < bySize.size()) {
            BigDecimal rest = bySize.subList(shown, bySize.size()).stream()
                    .map(ComparisonStatement.Line::amount)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            table.row("and", (bySize.size() - shown) + " smaller lines", signed(rest));
        }
        table.total("", "", signed(row.amount()));
        return table.text(2);
    }

    private static String signed(BigDecimal amount) {
        return (amount.signum() > 0 ? "+" : "") + amount.toPlainString();
    }
}
