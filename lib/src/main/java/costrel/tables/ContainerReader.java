package costrel.tables;

import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads containers.csv: name, kind (cask, keg, bottle, can), nominal, label, sediment, undrinkable, conditioned, draught,
 * allergens, rated for (a bottle: the condition its maker rates it for). A blank sediment or undrinkable volume counts as 0 and
 * is named as a default.
 */
public final class ContainerReader {

    private static final Columns COLUMNS = Columns.required(
                    "name", "kind", "nominal", "label", "conditioned", "draught")
            .optional("sediment", "undrinkable", "allergens", "rated for");

    private static final CellKind<ContainerKind> KIND = CellKind.oneOf(ContainerKind.values(), ContainerKind::label);

    private ContainerReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the containers in file order, or what is wrong
     */
    public static Loaded<List<Container>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<Container> containers = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<String> name = row.need("name", CellKind.TEXT);
                name.ifPresent(text -> row.once(seen, "name", Names.folded(text)));
                Optional<ContainerKind> kind = row.need("kind", KIND);
                Optional<BigDecimal> nominal = row.need("nominal", Exact.LITRES);
                Optional<BigDecimal> label = row.need("label", Exact.LITRES);
                List<String> defaults = new ArrayList<>();
                BigDecimal sediment = orZero(row, "sediment", defaults);
                BigDecimal undrinkable = orZero(row, "undrinkable", defaults);
                Optional<Boolean> conditioned = row.need("conditioned", Cells.YES_NO);
                Optional<Boolean> draught = row.need("draught", Cells.YES_NO);
                List<String> allergens = row.may("allergens", Cells.LIST).orElse(List.of());
                OptionalDouble rated = row.mayFigure("rated for", Cells.VOLUMES_OF_GAS);
                row.build(
                                "nominal",
                                () -> new Container(
                                        name.orElseThrow(),
                                        kind.orElseThrow(),
                                        nominal.orElseThrow(),
                                        label.orElseThrow(),
                                        sediment,
                                        undrinkable,
                                        conditioned.orElseThrow(),
                                        draught.orElseThrow(),
                                        allergens,
                                        defaults,
                                        rated))
                        .ifPresent(containers::add);
            }
            return table.loaded(() -> List.copyOf(containers));
        }
    }

    private static BigDecimal orZero(CsvRow row, String column, List<String> defaults) {
        if (row.cell(column).isEmpty()) {
            defaults.add(column + " 0 L, not stated");
        }
        return row.may(column, Exact.LITRES).orElse(BigDecimal.ZERO);
    }
}
