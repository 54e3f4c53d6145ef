package costrel.tables;

import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads alpha-methods.csv: from, to, factor, source. An alpha figure by the first method times the factor is one by the second. */
public final class AlphaMethodReader {

    private static final Columns COLUMNS = Columns.required("from", "to", "factor", "source");
    private static final CellKind<AlphaMethod> METHOD =
            CellKind.of("a method such as EBC 7.4, EBC 7.7 or ASBC Hops-6", AlphaMethod::parse);

    private AlphaMethodReader() {}

    /**
     * Reads the factors.
     *
     * @param source the file
     * @return the factors, or what is wrong
     */
    public static Loaded<AlphaMethodFactors> read(CsvSource source) {
        try (CsvTable table = CsvTable.open(source, COLUMNS)) {
            List<AlphaMethodFactors.Factor> factors = new ArrayList<>();
            for (CsvRow row : table) {
                Optional<AlphaMethod> from = row.need("from", METHOD);
                Optional<AlphaMethod> to = row.need("to", METHOD);
                Optional<Double> factor = row.need("factor", Cells.NUMBER);
                Optional<String> named = row.need("source", CellKind.TEXT);
                row.build(
                                "factor",
                                () -> new AlphaMethodFactors.Factor(
                                        from.orElseThrow(),
                                        to.orElseThrow(),
                                        factor.orElseThrow(),
                                        named.orElseThrow()))
                        .ifPresent(factors::add);
            }
            return table.loaded(() -> new AlphaMethodFactors(factors));
        }
    }
}
