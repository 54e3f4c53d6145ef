package costrel.tables;

import costrel.cost.Rate;
import costrel.cost.RateBasis;
import costrel.cost.RateGroup;
import costrel.recipe.Names;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Reads a table of rates: item, group, amount, basis, kind (fixed, variable), valid from, valid until, currency. */
public final class RateReader {

    private static final Columns COLUMNS = Columns.required("item", "group", "amount", "basis", "kind", "valid from")
            .optional("valid until", "currency");

    private static final CellKind<RateGroup> GROUP = CellKind.oneOf(RateGroup.values(), RateGroup::label);
    private static final CellKind<RateBasis> BASIS = CellKind.oneOf(RateBasis.values(), RateBasis::label);
    private static final CellKind<String> KIND = CellKind.oneOf(new String[] {"fixed", "variable"}, word -> word);

    private RateReader() {}

    /**
     * Reads the table. Two rows of one item, group and basis that both apply on a day are a problem.
     *
     * @param source the file
     * @return the rates in file order, or what is wrong
     */
    public static Loaded<List<Rate>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<Rate> rates = new ArrayList<>();
            Map<String, List<Spans.Span>> seen = new HashMap<>();
            for (CsvRow row : table) {
                rate(row, source.name() + ":" + row.line()).ifPresent(rate -> {
                    String key = Names.folded(rate.item()) + "|" + rate.group() + "|" + rate.basis();
                    Spans.add(
                            row,
                            seen.computeIfAbsent(key, k -> new ArrayList<>()),
                            rate.validFrom(),
                            rate.validUntil());
                    rates.add(rate);
                });
            }
            return table.loaded(() -> List.copyOf(rates));
        }
    }

    private static Optional<Rate> rate(CsvRow row, String origin) {
        Optional<String> item = row.need("item", CellKind.TEXT);
        Optional<RateGroup> group = row.need("group", GROUP);
        Optional<Exact.Cash> cash = row.need("amount", Exact.CASH);
        Optional<CurrencyUnit> currency = MoneyCells.currency(row, "amount", cash);
        Optional<RateBasis> basis = row.need("basis", BASIS);
        Optional<String> kind = row.need("kind", KIND);
        Optional<LocalDate> from = row.need("valid from", Cells.DATE);
        Optional<LocalDate> until = MoneyCells.until(row, from);
        if (cash.isPresent()
                && (cash.get().amount().signum() < 0 || cash.get().per().isPresent())) {
            row.problem(
                    "amount",
                    TableProblem.quoted(row.cell("amount")),
                    "an amount of 0 or more such as £12.50; what it is for stands in basis, and a credit is positive too");
        }
        return row.build(
                "amount",
                () -> new Rate(
                        item.orElseThrow(),
                        group.orElseThrow(),
                        cash.orElseThrow().amount(),
                        currency.orElseThrow(),
                        basis.orElseThrow(),
                        kind.orElseThrow().equals("fixed"),
                        from.orElseThrow(),
                        until,
                        origin));
    }
}
