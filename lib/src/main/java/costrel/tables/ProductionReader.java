package costrel.tables;

import costrel.duty.ProductionYears;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads production.csv: production year from, pure alcohol. A production year starts on 1 February. */
public final class ProductionReader {

    private static final String YEAR = "production year from";
    private static final Columns COLUMNS = Columns.required(YEAR, "pure alcohol");

    private ProductionReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @return pure alcohol by production year, or what is wrong
     */
    public static Loaded<ProductionYears> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            Map<LocalDate, BigDecimal> years = new TreeMap<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<LocalDate> from = row.need(YEAR, Cells.DATE);
                Optional<BigDecimal> alcohol = row.need("pure alcohol", Exact.HECTOLITRES);
                from.ifPresent(day -> row.once(seen, YEAR, day.toString()));
                row.build(YEAR, () -> new ProductionYears(Map.of(from.orElseThrow(), alcohol.orElseThrow())))
                        .ifPresent(year -> years.putAll(year.pureAlcoholHl()));
            }
            return table.loaded(() -> new ProductionYears(years));
        }
    }
}
