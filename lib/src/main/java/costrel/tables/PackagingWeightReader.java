package costrel.tables;

import costrel.cost.ContainerCharges.PackageWeight;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads packaging-weights.csv: container, material, weight, containers, part. What the packaging of a container weighs of one
 * material; containers is how many share that weight, 12 for a carton of twelve. Where a container has several parts of one
 * material, part tells them apart.
 */
public final class PackagingWeightReader {

    static final Columns COLUMNS =
            Columns.required("container", "material", "weight").optional("containers", "part");

    private static final CellKind<BigDecimal> COUNT =
            CellKind.of("a whole number of containers from 1 such as 12", PackagingWeightReader::count);

    private PackagingWeightReader() {}

    /**
     * Reads the table. A blank number of containers is 1.
     *
     * @param source the file
     * @return the weights in the order of the file, or what is wrong
     */
    public static Loaded<List<PackageWeight>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<PackageWeight> weights = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                weight(row, seen).ifPresent(weights::add);
            }
            return table.loaded(() -> List.copyOf(weights));
        }
    }

    private static Optional<PackageWeight> weight(CsvRow row, Map<String, Long> seen) {
        Optional<String> container = row.need("container", CellKind.TEXT);
        Optional<String> material = row.need("material", CellKind.TEXT);
        Optional<BigDecimal> massKg = row.need("weight", Exact.KILOGRAMS);
        Optional<BigDecimal> containers = row.may("containers", COUNT);
        String part = row.may("part", CellKind.TEXT).orElse("");
        if (container.isPresent() && material.isPresent()) {
            String key = Names.folded(container.get()) + "|" + Names.folded(material.get()) + "|" + Names.folded(part);
            Long before = seen.putIfAbsent(key, row.line());
            if (before != null) {
                row.problem(
                        part.isEmpty() ? "material" : "part",
                        TableProblem.quoted(part.isEmpty() ? material.get() : part) + " again, after line " + before,
                        "one row for each; name the part where there are several of one material");
            }
        }
        return row.build(
                "weight",
                () -> new PackageWeight(
                        container.orElseThrow(),
                        material.orElseThrow(),
                        massKg.orElseThrow(),
                        containers.orElse(BigDecimal.ONE)));
    }

    private static BigDecimal count(String text) {
        if (!text.matches("[1-9][0-9]{0,5}")) {
            throw new IllegalArgumentException(text);
        }
        return new BigDecimal(text);
    }
}
