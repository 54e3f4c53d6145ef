package costrel.tables;

import costrel.recipe.Catalogue.MaltLot;
import costrel.recipe.GristMaterial;
import costrel.recipe.Names;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads malt-lots.csv: lot, material, in use from, HWE, basis, moisture, colour. A blank figure keeps that of the material's
 * row; HWE on dry matter becomes as is by the delivery's moisture, else by the material's.
 */
public final class MaltLotReader {

    private static final Columns COLUMNS =
            Columns.required("lot", "material", "in use from").optional("HWE", "basis", "moisture", "colour");

    private MaltLotReader() {}

    /**
     * Reads the table.
     *
     * @param source the file
     * @param materials the materials that lots can be of, by name
     * @return the lots in file order, or what is wrong
     */
    public static Loaded<List<MaltLot>> read(CsvSource source, Map<String, GristMaterial> materials) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<MaltLot> lots = new ArrayList<>();
            Map<String, Long> seen = new HashMap<>();
            Map<String, Long> started = new HashMap<>();
            CellKind<GristMaterial> known = CellKind.known("a grist material of the tables", materials);
            for (CsvRow row : table) {
                Optional<String> lot = row.need("lot", CellKind.TEXT);
                lot.ifPresent(text -> row.once(seen, "lot", Names.folded(text)));
                Optional<GristMaterial> material = row.need("material", known);
                Optional<LocalDate> from = row.need("in use from", Cells.DATE);
                if (material.isPresent() && from.isPresent()) {
                    row.once(started, "in use from", material.get().name() + from.get());
                }
                OptionalDouble moisture =
                        orElse(row.mayFigure("moisture", Cells.PART), material.flatMap(m -> boxed(m.moisture())));
                OptionalDouble hwe =
                        orElse(GristMaterialReader.asIs(row, moisture), material.flatMap(m -> boxed(m.hwe())));
                OptionalDouble ebc = orElse(row.mayFigure("colour", Cells.EBC), material.flatMap(m -> boxed(m.ebc())));
                row.build(
                                "HWE",
                                () -> lot(
                                        lot.orElseThrow(),
                                        from.orElseThrow(),
                                        material.orElseThrow(),
                                        hwe,
                                        moisture,
                                        ebc))
                        .ifPresent(lots::add);
            }
            return table.loaded(() -> List.copyOf(lots));
        }
    }

    private static MaltLot lot(
            String lot,
            LocalDate from,
            GristMaterial material,
            OptionalDouble hwe,
            OptionalDouble moisture,
            OptionalDouble ebc) {
        return new MaltLot(
                lot,
                from,
                new GristMaterial(
                        material.name(), material.kind(), hwe, moisture, ebc, material.allergens(), "lot " + lot));
    }

    private static OptionalDouble orElse(OptionalDouble figure, Optional<Double> otherwise) {
        return figure.isPresent() || otherwise.isEmpty() ? figure : OptionalDouble.of(otherwise.get());
    }

    private static Optional<Double> boxed(OptionalDouble figure) {
        return figure.isPresent() ? Optional.of(figure.getAsDouble()) : Optional.empty();
    }
}
