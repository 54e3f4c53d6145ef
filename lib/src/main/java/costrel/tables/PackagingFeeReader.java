package costrel.tables;

import costrel.cost.ContainerCharges.PackagingFee;
import costrel.recipe.Names;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * Reads packaging-fees.csv: material, valid from, valid until, fee, source. The fee is on 1000 kg. Who is liable for such fees
 * depends on turnover and tonnage: ask the authority.
 */
public final class PackagingFeeReader {

    private static final Columns COLUMNS =
            Columns.required("material", "valid from", "fee", "source").optional("valid until");

    private PackagingFeeReader() {}

    /**
     * Reads the table. Two fees on a material that both apply on a day are a problem.
     *
     * @param source the file
     * @return the fees in the order of the file, or what is wrong
     */
    public static Loaded<List<PackagingFee>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<PackagingFee> fees = new ArrayList<>();
            Map<String, List<Spans.Span>> seen = new HashMap<>();
            for (CsvRow row : table) {
                fee(row).ifPresent(fee -> {
                    Spans.add(
                            row,
                            seen.computeIfAbsent(Names.folded(fee.material()), any -> new ArrayList<>()),
                            fee.validFrom(),
                            fee.validUntil());
                    fees.add(fee);
                });
            }
            return table.loaded(() -> List.copyOf(fees));
        }
    }

    /** Fees with those of a brewery, which are alone on their days. */
    static List<PackagingFee> replaced(List<PackagingFee> fees, List<PackagingFee> own) {
        List<PackagingFee> all = fees;
        // One by one, so that days between two of them stay with the fee that was there.
        for (PackagingFee fee : own) {
            all = HeldDays.replaced(
                    all,
                    List.of(fee),
                    PackagingFee::material,
                    row -> new HeldDays(row.validFrom(), row.validUntil()),
                    (row, days) -> days.of(row));
        }
        return List.copyOf(all);
    }

    private static Optional<PackagingFee> fee(CsvRow row) {
        Optional<String> material = row.need("material", CellKind.TEXT);
        Optional<LocalDate> from = row.need("valid from", Cells.DATE);
        Optional<LocalDate> until = MoneyCells.until(row, from);
        Optional<Exact.Cash> cash = row.need("fee", Exact.CASH);
        Optional<CurrencyUnit> currency = cash.flatMap(Exact.Cash::currency);
        if (cash.isPresent() && (currency.isEmpty() || cash.get().per().isPresent())) {
            row.problem(
                    "fee",
                    TableProblem.quoted(row.cell("fee")),
                    "an amount on 1000 kg with its currency such as 192 GBP, without a unit");
        }
        Optional<String> publisher = row.need("source", CellKind.TEXT);
        return row.build(
                "fee",
                () -> new PackagingFee(
                        material.orElseThrow(),
                        cash.orElseThrow().amount(),
                        currency.orElseThrow(),
                        from.orElseThrow(),
                        until,
                        publisher.orElseThrow()));
    }
}
