package costrel.tables;

import costrel.harvest.CropYearAlpha;
import costrel.recipe.Names;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads crop-year-alpha.csv: variety, years, alpha low, alpha mean, alpha high, source. Every cell is needed. */
public final class CropYearAlphaReader {

    private static final Columns COLUMNS =
            Columns.required("variety", "years", "alpha low", "alpha mean", "alpha high", "source");

    private static final CellKind<Integer> YEARS =
            CellKind.of("a whole number of years such as 10", CropYearAlphaReader::years);

    private CropYearAlphaReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the rows in file order, or what is wrong
     */
    public static Loaded<List<CropYearAlpha>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<CropYearAlpha> rows = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<String> variety = row.need("variety", CellKind.TEXT);
                variety.ifPresent(text -> row.once(seen, "variety", Names.folded(text)));
                Optional<Integer> years = row.need("years", YEARS);
                Optional<Double> low = row.need("alpha low", Cells.PART);
                Optional<Double> mean = row.need("alpha mean", Cells.PART);
                Optional<Double> high = row.need("alpha high", Cells.PART);
                Optional<String> from = row.need("source", CellKind.TEXT);
                row.build(
                                "alpha mean",
                                () -> new CropYearAlpha(
                                        variety.orElseThrow(),
                                        years.orElseThrow(),
                                        low.orElseThrow(),
                                        mean.orElseThrow(),
                                        high.orElseThrow(),
                                        from.orElseThrow()))
                        .ifPresent(rows::add);
            }
            return table.loaded(() -> List.copyOf(rows));
        }
    }

    private static int years(String text) {
        if (!text.matches("[0-9]{1,3}")) {
            throw new IllegalArgumentException(text);
        }
        return Integer.parseInt(text);
    }
}
