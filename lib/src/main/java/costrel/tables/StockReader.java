package costrel.tables;

import costrel.buying.Pack;
import costrel.stock.Movement;
import costrel.stock.StockLedger;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Reads a stock ledger: date, item, kind (opening, receipt, issue), quantity, cost, currency. The cost is that of all of the quantity,
 * brought to the store; an issue has none, since the basis of cost gives it.
 */
public final class StockReader {

    private static final Columns COLUMNS =
            Columns.required("date", "item", "kind", "quantity").optional("cost", "currency");

    private static final String OPENING = "opening";
    private static final String RECEIPT = "receipt";
    private static final String ISSUE = "issue";
    private static final CellKind<String> KIND = CellKind.oneOf(new String[] {OPENING, RECEIPT, ISSUE}, word -> word);

    private StockReader() {}

    /**
     * Reads the rows of one file. Whether they make a ledger is for {@link #ledger}, since a ledger may stand in several files.
     *
     * @param source the file
     * @return the movements in file order, or what is wrong
     */
    public static Loaded<List<Movement>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<Movement> movements = new ArrayList<>();
            for (CsvRow row : table) {
                movement(row, source.name() + ":" + row.line()).ifPresent(movements::add);
            }
            return table.loaded(() -> List.copyOf(movements));
        }
    }

    /**
     * One ledger of the rows of all files.
     *
     * @param currency what every receipt is paid in
     * @param movements the rows, file by file
     * @return the ledger, or for each item the first row that can't be: more taken out than is there, another unit than before, another
     *     currency, an opening row after others
     */
    public static Loaded<StockLedger> ledger(CurrencyUnit currency, List<Movement> movements) {
        try {
            return Loaded.of(StockLedger.of(currency, movements), List.of());
        } catch (IllegalArgumentException e) {
            return Loaded.refused(problems(String.valueOf(e.getMessage()), movements));
        }
    }

    private static List<TableProblem> problems(String faults, List<Movement> movements) {
        Set<String> origins = movements.stream().map(Movement::origin).collect(Collectors.toSet());
        List<TableProblem> problems = new ArrayList<>();
        for (String fault : faults.split("\n", -1)) {
            int end = fault.indexOf(": ");
            while (end >= 0 && !origins.contains(fault.substring(0, end))) {
                end = fault.indexOf(": ", end + 1);
            }
            int colon = end < 0 ? -1 : fault.lastIndexOf(':', end - 1);
            problems.add(
                    colon < 0
                            ? new TableProblem("stock.csv", 0, "", "", fault)
                            : TableProblem.from(
                                    fault.substring(0, colon),
                                    Long.parseLong(fault.substring(colon + 1, end)),
                                    column(fault),
                                    fault.substring(end + 2)));
        }
        return problems;
    }

    private static String column(String fault) {
        if (fault.contains(": cost: ")) {
            return "cost";
        }
        return fault.contains("expected opening stock") ? "kind" : "quantity";
    }

    private static Optional<Movement> movement(CsvRow row, String origin) {
        Optional<LocalDate> day = row.need("date", Cells.DATE);
        Optional<String> item = row.need("item", CellKind.TEXT);
        Optional<String> kind = row.need("kind", KIND);
        Optional<Pack> quantity = row.need("quantity", Exact.PACK);
        if (kind.isPresent() && kind.get().equals(ISSUE)) {
            if (!row.cell("cost").isEmpty()) {
                row.problem(
                        "cost",
                        TableProblem.quoted(row.cell("cost")),
                        "nothing for an issue: the basis of cost says what it costs");
            }
            return row.build(
                    "quantity",
                    () -> new Movement.Issue(
                            day.orElseThrow(),
                            item.orElseThrow(),
                            quantity.orElseThrow().content(),
                            quantity.orElseThrow().unit().label(),
                            origin));
        }
        Optional<Money> cost = cost(row);
        return row.build(
                "quantity",
                () -> new Movement.Receipt(
                        day.orElseThrow(),
                        item.orElseThrow(),
                        quantity.orElseThrow().content(),
                        quantity.orElseThrow().unit().label(),
                        cost.orElseThrow(),
                        kind.orElseThrow().equals(OPENING),
                        origin));
    }

    private static Optional<Money> cost(CsvRow row) {
        Optional<Exact.Cash> cash = row.need("cost", Exact.CASH);
        Optional<CurrencyUnit> currency = MoneyCells.currency(row, "cost", cash);
        if (cash.isEmpty() || currency.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal amount = cash.get().amount();
        int decimals = Math.max(0, currency.get().getDecimalPlaces());
        if (cash.get().per().isPresent()
                || amount.signum() < 0
                || amount.stripTrailingZeros().scale() > decimals) {
            row.problem(
                    "cost",
                    TableProblem.quoted(row.cell("cost")),
                    "what all of it cost, 0 or more, to the smallest coin, such as £536.25");
            return Optional.empty();
        }
        return Optional.of(Money.of(currency.get(), amount.setScale(decimals)));
    }
}
