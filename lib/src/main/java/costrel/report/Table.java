package costrel.report;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A table of a sheet.
 *
 * @param key its name for programs, such as grist
 * @param caption its name for people
 * @param columns its columns, each with a key of its own
 * @param rows its rows, in reading order
 */
public record Table(String key, String caption, List<Column> columns, List<Row> rows) implements Block {

    /**
     * A row.
     *
     * @param cells one for each column
     * @param total whether it is ruled off from those above as what they come to
     */
    public record Row(List<Cell> cells, boolean total) {

        /**
         * A row.
         *
         * @param cells one for each column
         * @param total whether it is a total
         */
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A table.
     *
     * @param key name for programs
     * @param caption name for people
     * @param columns its columns
     * @param rows its rows
     * @throws IllegalArgumentException if a key is no key or stands twice, or a row has more or fewer cells than columns
     */
    public Table {
        Column.checkKey(key);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        Set<String> keys = new HashSet<>();
        for (Column column : columns) {
            if (!keys.add(column.key())) {
                throw new IllegalArgumentException(
                        "table " + key + ": expected each key once, found " + column.key() + " twice");
            }
        }
        for (Row row : rows) {
            if (row.cells().size() != columns.size()) {
                throw new IllegalArgumentException("table " + key + ": expected " + columns.size()
                        + " cells in a row, found " + row.cells().size());
            }
        }
    }
}
