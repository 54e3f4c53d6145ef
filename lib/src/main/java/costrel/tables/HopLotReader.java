package costrel.tables;

import costrel.hops.AlphaMethod;
import costrel.hops.HopAnalysis;
import costrel.hops.HopForm;
import costrel.hops.HopLot;
import costrel.hops.MoistureBasis;
import costrel.recipe.Names;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads hop-lots.csv: lot, variety, crop year, form, analysed, alpha, method, basis, moisture, oil, storage index, stock, store,
 * packing. Further rows of a lot are its later analyses; stock, store and packing are those of the row analysed last that
 * states them.
 */
public final class HopLotReader {

    static final Columns COLUMNS = Columns.required("lot", "variety", "crop year", "form", "analysed", "alpha")
            .optional(
                    "method",
                    "basis",
                    "moisture",
                    "oil",
                    "storage index",
                    "stock",
                    "store",
                    "packing",
                    "stated loss",
                    "whole pack");

    private static final CellKind<HopForm> FORM = CellKind.oneOf(HopForm.values(), HopForm::label);
    private static final CellKind<AlphaMethod> METHOD = CellKind.oneOf(AlphaMethod.values(), AlphaMethod::label);
    private static final CellKind<MoistureBasis> BASIS = CellKind.oneOf(MoistureBasis.values(), MoistureBasis::label);
    private static final CellKind<HopLot.Packing> PACKING =
            CellKind.oneOf(HopLot.Packing.values(), HopLot.Packing::label);

    private HopLotReader() {}

    /** A lot while its rows come in. */
    private static final class Draft {
        private final CsvRow first;
        private final String id;
        private final String variety;
        private final int cropYear;
        private final HopForm form;
        private final Map<LocalDate, Long> lines = new LinkedHashMap<>();
        private final List<HopAnalysis> analyses = new ArrayList<>();
        private LocalDate latest = LocalDate.MIN;
        private OptionalDouble stock = OptionalDouble.empty();
        private OptionalDouble store = OptionalDouble.empty();
        private Optional<HopLot.Packing> packing = Optional.empty();
        private OptionalDouble statedLoss = OptionalDouble.empty();
        private OptionalDouble wholePack = OptionalDouble.empty();

        Draft(CsvRow first, String id, String variety, int cropYear, HopForm form) {
            this.first = first;
            this.id = id;
            this.variety = variety;
            this.cropYear = cropYear;
            this.form = form;
        }

        HopLot lot() {
            return new HopLot(
                    id,
                    variety,
                    cropYear,
                    form,
                    analyses,
                    stock,
                    store,
                    packing.orElse(HopLot.Packing.UNSTATED),
                    statedLoss,
                    wholePack);
        }
    }

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the lots in file order, or what is wrong
     */
    public static Loaded<List<HopLot>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            Map<String, Draft> drafts = new LinkedHashMap<>();
            for (CsvRow row : table) {
                readRow(row, drafts);
            }
            List<HopLot> lots = new ArrayList<>();
            if (table.problems().isEmpty()) {
                drafts.values()
                        .forEach(draft -> draft.first.build("lot", draft::lot).ifPresent(lots::add));
            }
            return table.loaded(() -> List.copyOf(lots));
        }
    }

    private static void readRow(CsvRow row, Map<String, Draft> drafts) {
        Optional<String> id = row.need("lot", CellKind.TEXT);
        Optional<String> variety = row.need("variety", CellKind.TEXT);
        Optional<Integer> year = row.need("crop year", Cells.YEAR);
        Optional<HopForm> form = row.need("form", FORM);
        Optional<HopAnalysis> analysis = analysis(row);
        OptionalDouble stock = row.mayFigure("stock", Cells.KILOGRAMS);
        OptionalDouble store = row.mayFigure("store", Cells.CELSIUS);
        Optional<HopLot.Packing> packing = row.may("packing", PACKING);
        if (id.isEmpty() || variety.isEmpty() || year.isEmpty() || form.isEmpty()) {
            return;
        }
        Draft draft = drafts.computeIfAbsent(
                Names.folded(id.get()), key -> new Draft(row, id.get(), variety.get(), year.get(), form.get()));
        agree(row, "variety", draft, Names.folded(draft.variety).equals(Names.folded(variety.get())));
        agree(row, "crop year", draft, draft.cropYear == year.get());
        agree(row, "form", draft, draft.form == form.get());
        OptionalDouble statedLoss = row.mayFigure("stated loss", Cells.PART);
        OptionalDouble wholePack = row.mayFigure("whole pack", Cells.KILOGRAMS);
        draft.statedLoss = statedLoss.isPresent() ? statedLoss : draft.statedLoss;
        draft.wholePack = wholePack.isPresent() ? wholePack : draft.wholePack;
        analysis.ifPresent(found -> add(draft, row, found, stock, store, packing));
    }

    private static void agree(CsvRow row, String column, Draft draft, boolean same) {
        if (!same) {
            row.problem(
                    column,
                    TableProblem.quoted(row.cell(column)) + ", so there are two lots with one id",
                    TableProblem.quoted(draft.first.cell(column)) + " as for this lot on line " + draft.first.line());
        }
    }

    private static void add(
            Draft draft,
            CsvRow row,
            HopAnalysis analysis,
            OptionalDouble stock,
            OptionalDouble store,
            Optional<HopLot.Packing> packing) {
        Long before = draft.lines.putIfAbsent(analysis.date(), row.line());
        if (before != null) {
            row.problem(
                    "analysed", analysis.date() + " again, after line " + before, "one analysis of a lot on one day");
            return;
        }
        draft.analyses.add(analysis);
        boolean later = analysis.date().isAfter(draft.latest);
        draft.latest = later ? analysis.date() : draft.latest;
        draft.stock = stock.isPresent() && (later || draft.stock.isEmpty()) ? stock : draft.stock;
        draft.store = store.isPresent() && (later || draft.store.isEmpty()) ? store : draft.store;
        draft.packing = packing.isPresent() && (later || draft.packing.isEmpty()) ? packing : draft.packing;
    }

    private static Optional<HopAnalysis> analysis(CsvRow row) {
        Optional<LocalDate> date = row.need("analysed", Cells.DATE);
        OptionalDouble alpha = row.mayFigure("alpha", Cells.PART);
        AlphaMethod method = row.may("method", METHOD).orElse(AlphaMethod.UNSTATED);
        MoistureBasis basis = row.may("basis", BASIS).orElse(MoistureBasis.AS_IS);
        OptionalDouble moisture = row.mayFigure("moisture", Cells.PART);
        OptionalDouble oil = row.mayFigure("oil", Cells.OIL);
        OptionalDouble index = row.mayFigure("storage index", Cells.NUMBER);
        if (alpha.isEmpty() && index.isEmpty() && row.sound()) {
            row.problem("alpha", "nothing", "alpha acid such as 5.2 %, or a storage index in its column");
        }
        return row.build(
                "alpha", () -> new HopAnalysis(date.orElseThrow(), alpha, method, basis, moisture, oil, index));
    }
}
