package costrel.tables;

import costrel.hops.HopVariety;
import costrel.recipe.Names;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads hop-varieties.csv: name, origin, alpha low, alpha high, alpha mean, oil low, oil high, cohumulone low, cohumulone high,
 * retained six months.
 */
public final class HopVarietyReader {

    private static final Columns COLUMNS = Columns.required("name")
            .optional(
                    "origin",
                    "alpha low",
                    "alpha high",
                    "alpha mean",
                    "oil low",
                    "oil high",
                    "cohumulone low",
                    "cohumulone high",
                    "retained six months",
                    "source",
                    "character");

    private HopVarietyReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the varieties in file order, or what is wrong
     */
    public static Loaded<List<HopVariety>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<HopVariety> varieties = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<String> name = row.need("name", CellKind.TEXT);
                name.ifPresent(text -> row.once(seen, "name", Names.folded(text)));
                String origin = row.may("origin", CellKind.TEXT).orElse("");
                String character = row.may("character", CellKind.TEXT).orElse("");
                OptionalDouble alphaLow = row.mayFigure("alpha low", Cells.PART);
                OptionalDouble alphaHigh = row.mayFigure("alpha high", Cells.PART);
                OptionalDouble alphaMean = row.mayFigure("alpha mean", Cells.PART);
                OptionalDouble oilLow = row.mayFigure("oil low", Cells.OIL);
                OptionalDouble oilHigh = row.mayFigure("oil high", Cells.OIL);
                OptionalDouble cohumuloneLow = row.mayFigure("cohumulone low", Cells.PART);
                OptionalDouble cohumuloneHigh = row.mayFigure("cohumulone high", Cells.PART);
                OptionalDouble retained = row.mayFigure("retained six months", Cells.PART);
                String from = row.may("source", CellKind.TEXT).orElse("");
                row.build(
                                "name",
                                () -> new HopVariety(
                                        name.orElseThrow(),
                                        origin,
                                        alphaLow,
                                        alphaHigh,
                                        alphaMean,
                                        oilLow,
                                        oilHigh,
                                        cohumuloneLow,
                                        cohumuloneHigh,
                                        retained,
                                        from,
                                        character))
                        .ifPresent(varieties::add);
            }
            return table.loaded(() -> List.copyOf(varieties));
        }
    }
}
