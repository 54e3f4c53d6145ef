package costrel.report;

import costrel.cost.CostSheet;
import costrel.pricing.Comparison;
import costrel.pricing.ComparisonStatement;
import costrel.pricing.Effect;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.joda.money.CurrencyUnit;

/** Why a pint costs more or less than it did, as text: each effect and its largest lines, all of it adding up. */
public final class ComparisonText {

    private static final int LARGEST = 6;

    private ComparisonText() {}

    /**
     * A comparison by the pint, as text.
     *
     * @param comparison the comparison
     * @return lines of text
     */
    public static String of(Comparison comparison) {
        return TextForm.of(sheet(comparison));
    }

    /**
     * A comparison by the pint.
     *
     * @param comparison the comparison
     * @return a sheet of the kind "comparison"
     */
    public static Sheet sheet(Comparison comparison) {
        CurrencyUnit currency = comparison.after().total().getCurrencyUnit();
        ComparisonStatement statement = comparison.pencePerPint();
        TextTable summary = TextTable.keyed(
                "effects",
                "from the pint before to the pint after",
                Column.words("effect", "why a pint moved"),
                MoneyWords.perPint("perPint", currency));
        summary.row("before: " + named(comparison.before()), statement.before().toPlainString());
        for (ComparisonStatement.Row row : statement.rows()) {
            if (row.amount().signum() != 0 || row.effect() != Effect.EXCHANGE_RATE) {
                summary.row(row.effect().label(), signed(row.amount()));
            }
        }
        summary.total("after: " + named(comparison.after()), statement.after().toPlainString());
        List<Block> blocks = new ArrayList<>();
        blocks.add(summary.table());
        for (ComparisonStatement.Row row : statement.rows()) {
            if (row.effect() != Effect.ROUNDING && !row.lines().isEmpty()) {
                blocks.add(lines(row, currency));
            }
        }
        blocks.add(new Block.Note(Block.Note.Kind.HOW, "method", Comparison.METHOD));
        blocks.add(Block.Note.how("hop lots of one variety stand for the same hop; exchange rates are told apart from"
                + " prices only where they are given"));
        blocks.add(MoneyWords.care());
        boolean sameDay = named(comparison.after()).equals(named(comparison.before()));
        String title = named(comparison.after()) + ", against "
                + (sameDay ? "another reckoning of the same day" : named(comparison.before()));
        return new Sheet(
                "comparison",
                title,
                List.of(
                        Fact.words("before", "before", named(comparison.before())),
                        Fact.words("after", "after", named(comparison.after())),
                        Fact.words("currency", "currency", currency.getCode())),
                blocks);
    }

    private static String named(CostSheet sheet) {
        return sheet.batch().beer() + ", " + sheet.batch().costedOn();
    }

    private static Table lines(ComparisonStatement.Row row, CurrencyUnit currency) {
        List<ComparisonStatement.Line> bySize = row.lines().stream()
                .sorted(Comparator.comparing(
                                (ComparisonStatement.Line line) -> line.amount().abs())
                        .reversed())
                .toList();
        String name = "by " + row.effect().label();
        TextTable table = TextTable.keyed(
                Column.keyOf(name),
                name,
                Column.words("part", name),
                Column.words("item", ""),
                MoneyWords.perPint("perPint", currency));
        int shown = bySize.size() <= LARGEST + 1 ? bySize.size() : LARGEST;
        bySize.subList(0, shown).forEach(line -> table.row(line.part(), line.item(), signed(line.amount())));
        if (shown < bySize.size()) {
            BigDecimal rest = bySize.subList(shown, bySize.size()).stream()
                    .map(ComparisonStatement.Line::amount)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            table.row("and", (bySize.size() - shown) + " smaller lines", signed(rest));
        }
        return table.total("", "", signed(row.amount())).table();
    }

    private static String signed(BigDecimal amount) {
        return (amount.signum() > 0 ? "+" : "") + amount.toPlainString();
    }
}
