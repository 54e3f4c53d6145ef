package costrel.tables;

import costrel.buying.Pack;
import costrel.recipe.Names;
import costrel.stock.Movement;
import costrel.stock.StockLedger;
import costrel.stock.UnitCost;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Reads standard-costs.csv: item, from, cost, currency. A cost is money by the unit such as £0.62/kg, from a day until the next one. */
public final class StandardCostReader {

    private static final Columns COLUMNS =
            Columns.required("item", "from", "cost").optional("currency");

    private static final String COST = "money by the unit such as £0.62/kg, 0 or more";

    /** Digits of a cost by a unit that doesn't divide out, such as by the pound. */
    private static final MathContext DIGITS = MathContext.DECIMAL128;

    private StandardCostReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @param currency what the costs must be in; empty where that is not known
     * @param ledger the ledger that they value: an item that it names must be counted in the same unit; empty where there is none
     * @return the costs in file order, or what is wrong
     */
    public static Loaded<List<UnitCost>> read(
            CsvSource source, Optional<CurrencyUnit> currency, Optional<StockLedger> ledger) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<UnitCost> costs = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            Map<String, String> units = new HashMap<>();
            for (CsvRow row : table) {
                Optional<String> item = row.need("item", CellKind.TEXT);
                Optional<LocalDate> from = row.need("from", Cells.DATE);
                if (item.isPresent() && from.isPresent()) {
                    row.once(seen, "from", Names.folded(item.get()) + "|" + from.get());
                }
                Optional<BigDecimal> cost = cost(row, currency, item, ledger, units);
                row.build(
                                "cost",
                                () -> new UnitCost(
                                        item.orElseThrow(),
                                        from.orElseThrow(),
                                        cost.orElseThrow(),
                                        source.name() + ":" + row.line()))
                        .ifPresent(costs::add);
            }
            return table.loaded(() -> List.copyOf(costs));
        }
    }

    private static Optional<BigDecimal> cost(
            CsvRow row,
            Optional<CurrencyUnit> wanted,
            Optional<String> item,
            Optional<StockLedger> ledger,
            Map<String, String> units) {
        Optional<Exact.Cash> cash = row.need("cost", Exact.CASH);
        Optional<CurrencyUnit> currency = MoneyCells.currency(row, "cost", cash);
        if (cash.isEmpty() || currency.isEmpty()) {
            return Optional.empty();
        }
        Optional<Pack> per = cash.get().per();
        if (per.isEmpty() || cash.get().amount().signum() < 0) {
            row.problem("cost", TableProblem.quoted(row.cell("cost")), COST);
            return Optional.empty();
        }
        if (wanted.isPresent() && !wanted.get().equals(currency.get())) {
            row.problem(
                    "cost",
                    TableProblem.quoted(row.cell("cost")),
                    "a cost in " + wanted.get() + " as the brewery's sheets");
        }
        String unit = per.get().unit().label();
        if (item.isPresent()) {
            List<Movement> moved =
                    ledger.map(store -> store.movementsOf(item.get())).orElse(List.of());
            String first = units.putIfAbsent(Names.folded(item.get()), unit);
            String due = moved.isEmpty()
                    ? (first == null ? unit : first)
                    : moved.get(0).unit();
            if (!due.equals(unit)) {
                row.problem(
                        "cost",
                        TableProblem.quoted(row.cell("cost")),
                        "a cost by the " + due
                                + (moved.isEmpty()
                                        ? " as in the item's row before"
                                        : " as the stock ledger counts it"));
            }
        }
        return Optional.of(cash.get().amount().divide(per.get().content(), DIGITS));
    }
}
