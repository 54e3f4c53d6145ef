package costrel.tables;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** CSV text by RFC 4180 as rows of cells, as {@link CsvOut} writes it: the apostrophe before a formula is taken off again. */
public final class CsvIn {

    private CsvIn() {}

    /**
     * The rows of a text; empty lines are passed over. Rows may have any number of cells.
     *
     * @param text CSV text
     * @return rows in the order of the text
     * @throws IllegalArgumentException if a quote is left open or stands where none may
     */
    public static List<List<String>> rows(String text) {
        List<List<String>> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            for (CSVRecord row : parser) {
                List<String> cells = new ArrayList<>();
                row.forEach(cell -> cells.add(CsvOut.isGuarded(cell) ? cell.substring(1) : cell));
                rows.add(List.copyOf(cells));
            }
        } catch (IOException | UncheckedIOException e) {
            throw new IllegalArgumentException("CSV: expected quotes that are closed, found: " + e.getMessage(), e);
        }
        return List.copyOf(rows);
    }
}
