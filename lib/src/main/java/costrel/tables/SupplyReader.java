package costrel.tables;

import costrel.recipe.Names;
import costrel.recipe.Supply;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads supplies.csv: name, kind (yeast, liquor treatment, process aid), cells, ions, normality, allergens. Ions are mg/L
 * brought by 1 g/hL of a salt or 1 mL/hL of an acid, written "Ca 2.328; SO4 5.579".
 */
public final class SupplyReader {

    private static final Columns COLUMNS =
            Columns.required("name", "kind").optional("cells", "ions", "normality", "allergens", "source");

    private static final CellKind<Supply.Kind> KIND = CellKind.oneOf(Supply.Kind.values(), Supply.Kind::label);

    private static final Pattern ION = Pattern.compile("([A-Z][A-Za-z0-9]{0,9})[ \\u00a0]+(\\d{1,9}(?:\\.\\d{1,12})?)");

    private static final CellKind<List<Supply.Ion>> IONS =
            CellKind.of("ions with mg/L from 1 g/hL such as Ca 2.328; SO4 5.579", SupplyReader::ions);

    private SupplyReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the supplies in file order, or what is wrong
     */
    public static Loaded<List<Supply>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<Supply> supplies = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            for (CsvRow row : table) {
                Optional<String> name = row.need("name", CellKind.TEXT);
                name.ifPresent(text -> row.once(seen, "name", Names.folded(text)));
                Optional<Supply.Kind> kind = row.need("kind", KIND);
                OptionalDouble cells = row.mayFigure("cells", Cells.CELLS_PER_KILOGRAM);
                List<Supply.Ion> ions = row.may("ions", IONS).orElse(List.of());
                OptionalDouble normality = row.mayFigure("normality", Cells.NORMALITY);
                List<String> allergens = row.may("allergens", Cells.LIST).orElse(List.of());
                String from = row.may("source", CellKind.TEXT).orElse("");
                row.build(
                                "cells",
                                () -> new Supply(
                                        name.orElseThrow(),
                                        kind.orElseThrow(),
                                        cells,
                                        ions,
                                        normality,
                                        allergens,
                                        from))
                        .ifPresent(supplies::add);
            }
            return table.loaded(() -> List.copyOf(supplies));
        }
    }

    private static List<Supply.Ion> ions(String text) {
        List<Supply.Ion> ions = new ArrayList<>();
        for (String part : text.split(";", -1)) {
            Matcher ion = ION.matcher(part.strip());
            if (!ion.matches()) {
                throw new IllegalArgumentException(text);
            }
            ions.add(new Supply.Ion(ion.group(1), Double.parseDouble(ion.group(2))));
        }
        return List.copyOf(ions);
    }
}
