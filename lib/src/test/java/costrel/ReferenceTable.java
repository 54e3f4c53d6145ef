package costrel;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Published figures for tests: a comma-separated resource whose first line names its source, then a header, then rows
 * as long as the header.
 */
public final class ReferenceTable {
    private ReferenceTable() {}

    /** Reads a resource below the package of this class, for instance {@code wort/water_density.csv}. */
    public static List<Map<String, String>> read(String resource) {
        List<String> lines = text(resource).lines().toList();
        if (lines.isEmpty() || !lines.get(0).startsWith("# source: ")) {
            throw new AssertionError(resource + ": expected a first line that begins '# source: '");
        }
        List<String> header = List.of();
        List<Map<String, String>> rows = new ArrayList<>();
        for (int i = 1; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            List<String> cells = cells(line);
            if (header.isEmpty()) {
                header = cells;
                continue;
            }
            if (cells.size() != header.size()) {
                throw new AssertionError(
                        resource + ":" + (i + 1) + ": expected " + header.size() + " cells, found " + cells.size());
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int k = 0; k < cells.size(); k++) {
                row.put(header.get(k), cells.get(k));
            }
            rows.add(row);
        }
        if (rows.isEmpty()) {
            throw new AssertionError(resource + ": expected a row or more, found none");
        }
        return rows;
    }

    /** The figure in a column of a row. */
    public static double number(Map<String, String> row, String column) {
        String cell = row.get(column);
        if (cell == null) {
            throw new AssertionError("expected a column '" + column + "', found " + row.keySet());
        }
        return Double.parseDouble(cell);
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    private static String text(String resource) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new AssertionError(resource + ": expected a test resource, found none");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
