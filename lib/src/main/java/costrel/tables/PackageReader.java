package costrel.tables;

import costrel.cost.PackageItem;
import costrel.recipe.Names;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads packages.csv: container, item, quantity. What one container takes: "1 each", or "1/12 each" of what twelve share. */
public final class PackageReader {

    static final Columns COLUMNS = Columns.required("container", "item", "quantity");

    private PackageReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the items in file order, or what is wrong
     */
    public static Loaded<List<PackageItem>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<PackageItem> items = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<String> container = row.need("container", CellKind.TEXT);
                Optional<String> item = row.need("item", CellKind.TEXT);
                if (container.isPresent() && item.isPresent()) {
                    row.once(seen, "item", Names.folded(container.get()) + "|" + Names.folded(item.get()));
                }
                Optional<Exact.PerContainers> quantity = row.need("quantity", Exact.PER_CONTAINERS);
                row.build(
                                "quantity",
                                () -> new PackageItem(
                                        container.orElseThrow(),
                                        item.orElseThrow(),
                                        quantity.orElseThrow().quantity().content(),
                                        quantity.orElseThrow().containers(),
                                        quantity.orElseThrow().quantity().unit()))
                        .ifPresent(items::add);
            }
            return table.loaded(() -> List.copyOf(items));
        }
    }
}
