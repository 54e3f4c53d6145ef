package costrel.tables;

import costrel.recipe.GristMaterial;
import costrel.recipe.Names;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads grist-materials.csv: name, kind (malt, adjunct, copper sugar), HWE, basis (as is, dry), moisture, colour, allergens.
 * HWE on dry matter becomes as is by (1 − moisture).
 */
public final class GristMaterialReader {

    static final CellKind<Boolean> BASIS = CellKind.of("as is or dry", GristMaterialReader::isDry);

    private static final Columns COLUMNS =
            Columns.required("name", "kind").optional("HWE", "basis", "moisture", "colour", "allergens", "source");

    private static final CellKind<GristMaterial.Kind> KIND =
            CellKind.oneOf(GristMaterial.Kind.values(), GristMaterial.Kind::label);

    private GristMaterialReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the materials in file order, or what is wrong
     */
    public static Loaded<List<GristMaterial>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<GristMaterial> materials = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<String> name = row.need("name", CellKind.TEXT);
                name.ifPresent(text -> row.once(seen, "name", Names.folded(text)));
                Optional<GristMaterial.Kind> kind = row.need("kind", KIND);
                OptionalDouble moisture = row.mayFigure("moisture", Cells.PART);
                OptionalDouble hwe = asIs(row, moisture);
                OptionalDouble ebc = row.mayFigure("colour", Cells.EBC);
                List<String> allergens = row.may("allergens", Cells.LIST).orElse(List.of());
                String from = row.may("source", CellKind.TEXT).orElse("");
                row.build(
                                "HWE",
                                () -> new GristMaterial(
                                        name.orElseThrow(), kind.orElseThrow(), hwe, moisture, ebc, allergens, from))
                        .ifPresent(materials::add);
            }
            return table.loaded(() -> List.copyOf(materials));
        }
    }

    /** The hot water extract as is of a row that states it as is or dry. Without extract there is none, whatever the basis. */
    static OptionalDouble asIs(CsvRow row, OptionalDouble moisture) {
        OptionalDouble stated = row.mayFigure("HWE", Cells.LITRE_DEGREES_PER_KILOGRAM);
        if (stated.isEmpty()) {
            row.may("basis", BASIS);
            return stated;
        }
        Optional<Boolean> dry = row.need("basis", BASIS);
        if (dry.isEmpty() || !dry.get()) {
            return stated;
        }
        if (moisture.isEmpty()) {
            if (row.cell("moisture").isEmpty()) {
                row.problem("moisture", "nothing", "a figure such as 3.5 %, since HWE is stated dry");
            }
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(stated.getAsDouble() * (1 - moisture.getAsDouble()));
    }

    private static boolean isDry(String text) {
        return switch (Names.folded(text)) {
            case "asis" -> false;
            case "dry" -> true;
            default -> throw new IllegalArgumentException(text);
        };
    }
}
