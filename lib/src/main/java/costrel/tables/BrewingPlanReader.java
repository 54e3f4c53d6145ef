package costrel.tables;

import costrel.harvest.PlannedBrew;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads brewing-plan.csv: gyle, beer, plant, day, brew length. One row a gyle. */
public final class BrewingPlanReader {

    static final Columns COLUMNS = Columns.required("gyle", "beer", "plant", "day", "brew length");

    private BrewingPlanReader() {}

    /**
     * Reads a brewing plan.
     *
     * @param source the file
     * @return the gyles in the order of the file, or what is wrong
     */
    public static Loaded<List<PlannedBrew>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<PlannedBrew> brews = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<String> gyle = row.need("gyle", CellKind.TEXT);
                Optional<String> beer = row.need("beer", CellKind.TEXT);
                Optional<String> plant = row.need("plant", CellKind.TEXT);
                Optional<LocalDate> day = row.need("day", Cells.DATE);
                Optional<Double> litres = row.need("brew length", Cells.LITRES);
                gyle.ifPresent(id -> row.once(seen, "gyle", id));
                row.build(
                                "brew length",
                                () -> new PlannedBrew(
                                        gyle.orElseThrow(),
                                        beer.orElseThrow(),
                                        plant.orElseThrow(),
                                        day.orElseThrow(),
                                        litres.orElseThrow()))
                        .ifPresent(brews::add);
            }
            return table.loaded(() -> List.copyOf(brews));
        }
    }
}
