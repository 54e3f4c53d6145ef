package costrel.tables;

import costrel.buying.Carriage;
import costrel.buying.Pack;
import costrel.recipe.Names;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Reads carriage.csv: supplier, amount, pallet, valid from, valid until, currency. The pallet is how much of the goods one charge
 * carries; blank where the charge is for the order.
 */
public final class CarriageReader {

    static final Columns COLUMNS =
            Columns.required("supplier", "amount", "valid from").optional("pallet", "valid until", "currency");

    private CarriageReader() {}

    /**
     * Reads the table. Two charges of one supplier, by the order or by pallets of one unit, that both apply on a day are a problem.
     *
     * @param source the file
     * @return the charges in file order, or what is wrong
     */
    public static Loaded<List<Carriage>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<Carriage> carriages = new ArrayList<>();
            Map<String, List<Spans.Span>> seen = new HashMap<>();
            for (CsvRow row : table) {
                carriage(row, source.name() + ":" + row.line()).ifPresent(carriage -> {
                    String key = Names.folded(carriage.supplier()) + "|"
                            + carriage.pallet()
                                    .map(pallet -> pallet.unit().label())
                                    .orElse("order");
                    Spans.add(
                            row,
                            seen.computeIfAbsent(key, k -> new ArrayList<>()),
                            carriage.validFrom(),
                            carriage.validUntil());
                    carriages.add(carriage);
                });
            }
            return table.loaded(() -> List.copyOf(carriages));
        }
    }

    private static Optional<Carriage> carriage(CsvRow row, String origin) {
        Optional<String> supplier = row.need("supplier", CellKind.TEXT);
        Optional<Exact.Cash> cash = row.need("amount", Exact.CASH);
        Optional<CurrencyUnit> currency = MoneyCells.currency(row, "amount", cash);
        if (cash.isPresent()
                && (cash.get().amount().signum() <= 0 || cash.get().per().isPresent())) {
            row.problem(
                    "amount",
                    TableProblem.quoted(row.cell("amount")),
                    "an amount over 0 such as £45.00; what it carries stands in pallet");
        }
        Optional<Pack> pallet = row.may("pallet", Exact.PACK);
        Optional<LocalDate> from = row.need("valid from", Cells.DATE);
        Optional<LocalDate> until = MoneyCells.until(row, from);
        return row.build(
                "amount",
                () -> new Carriage(
                        supplier.orElseThrow(),
                        cash.orElseThrow().amount(),
                        currency.orElseThrow(),
                        pallet,
                        from.orElseThrow(),
                        until,
                        origin));
    }
}
