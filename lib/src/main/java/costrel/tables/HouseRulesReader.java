package costrel.tables;

import costrel.harvest.HouseRules;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Reads hop-rules.csv: property, value. Properties are bitterness tolerance, most of one lot, most change and substitutes, the
 * last as {@code Fuggle > East Kent Golding; Challenger > First Gold}.
 */
public final class HouseRulesReader {

    private static final String TOLERANCE = "bitterness tolerance";
    private static final String MOST_SHARE = "most of one lot";
    private static final String MOST_CHANGE = "most change";
    private static final String SUBSTITUTES = "substitutes";

    private static final Columns COLUMNS = Columns.required("property", "value");
    private static final CellKind<String> PROPERTY =
            CellKind.word("a rule for hops", List.of(TOLERANCE, MOST_SHARE, MOST_CHANGE, SUBSTITUTES));
    private static final CellKind<Map<String, Set<String>>> PAIRS =
            CellKind.of("pairs such as Fuggle > East Kent Golding; Challenger > First Gold", HouseRulesReader::pairs);

    private HouseRulesReader() {}

    /**
     * Reads the rules; what the file leaves out is as {@link HouseRules#USUAL}.
     *
     * @param source the file
     * @return the rules, or what is wrong
     */
    public static Loaded<HouseRules> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            Properties rules = new Properties(table, "property", "value", table.headerLine());
            for (CsvRow row : table) {
                row.need("property", PROPERTY).ifPresent(property -> rules.put(row, property));
            }
            double tolerance = rules.mayFigure(TOLERANCE, RecipeReader.EBU).orElse(HouseRules.USUAL.toleranceEbu());
            double share = rules.mayFigure(MOST_SHARE, Cells.PART).orElse(HouseRules.USUAL.mostShare());
            double change = rules.mayFigure(MOST_CHANGE, Cells.PART).orElse(HouseRules.USUAL.mostChange());
            Map<String, Set<String>> substitutes = rules.may(SUBSTITUTES, PAIRS).orElse(Map.of());
            Optional<HouseRules> made = rules.build(() -> new HouseRules(tolerance, share, change, substitutes));
            return table.loaded(made::orElseThrow);
        }
    }

    private static Map<String, Set<String>> pairs(String text) {
        Map<String, Set<String>> pairs = new TreeMap<>();
        for (String pair : text.split(";", -1)) {
            int arrow = pair.indexOf('>');
            if (arrow <= 0 || pair.substring(arrow + 1).isBlank()) {
                throw new IllegalArgumentException("expected Fuggle > East Kent Golding, found '" + pair.strip() + "'");
            }
            pairs.computeIfAbsent(pair.substring(0, arrow).strip(), variety -> new TreeSet<>())
                    .add(pair.substring(arrow + 1).strip());
        }
        return pairs;
    }
}
