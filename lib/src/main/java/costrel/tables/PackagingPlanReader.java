package costrel.tables;

import costrel.measure.Share;
import costrel.recipe.Names;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads packaging-plans.csv: beer, container, share. The shares of a beer are of what is racked and sum to 100 %. */
public final class PackagingPlanReader {

    static final Columns COLUMNS = Columns.required("beer", "container", "share");

    /** How far the shares of a plan may be from the whole. */
    private static final double SUM_TOLERANCE = 1e-9;

    private PackagingPlanReader() {}

    /**
     * A container in a plan.
     *
     * @param container its name
     * @param share the share of the racked beer that goes into it, over 0 to 1
     */
    public record Planned(String container, double share) {

        public Planned {
            if (!(share > 0 && share <= 1)) {
                throw new IllegalArgumentException("share: expected over 0 % to 100 %, found "
                        + (Double.isFinite(share) ? Share.of(share) : share));
            }
        }
    }

    /** A plan while its rows come in. */
    private static final class Draft {
        private final String beer;
        private final List<Planned> planned = new ArrayList<>();
        private final Map<String, Long> seen = new HashMap<>();
        private long lastLine;
        private boolean sound = true;

        Draft(String beer) {
            this.beer = beer;
        }

        double sum() {
            return planned.stream().mapToDouble(Planned::share).sum();
        }
    }

    /**
     * Reads the table.
     *
     * @param source the file
     * @return the plan of each beer, beers in file order, or what is wrong
     */
    public static Loaded<Map<String, List<Planned>>> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            Map<String, Draft> drafts = new LinkedHashMap<>();
            for (CsvRow row : table) {
                take(row, drafts);
            }
            Map<String, List<Planned>> plans = new LinkedHashMap<>();
            for (Draft draft : drafts.values()) {
                if (draft.sound && !(Math.abs(draft.sum() - 1) <= SUM_TOLERANCE)) {
                    table.problems()
                            .add(
                                    draft.lastLine,
                                    "share",
                                    CsvOut.number(Math.rint(draft.sum() * 1e10) / 1e8) + " %",
                                    "shares of " + draft.beer + " that sum to 100 %");
                }
                plans.put(draft.beer, List.copyOf(draft.planned));
            }
            return table.loaded(() -> Collections.unmodifiableMap(plans));
        }
    }

    private static void take(CsvRow row, Map<String, Draft> drafts) {
        Optional<String> beer = row.need("beer", CellKind.TEXT);
        Optional<String> container = row.need("container", CellKind.TEXT);
        Optional<Double> share = row.need("share", Cells.PART);
        if (beer.isEmpty()) {
            return;
        }
        Draft draft = drafts.computeIfAbsent(Names.folded(beer.get()), key -> new Draft(beer.get()));
        draft.lastLine = row.line();
        container.ifPresent(name -> row.once(draft.seen, "container", Names.folded(name)));
        row.build("share", () -> new Planned(container.orElseThrow(), share.orElseThrow()))
                .ifPresent(draft.planned::add);
        draft.sound &= row.sound();
    }
}
