package costrel.tables;

/**
 * A column of an open table and what its cells hold. Its place is looked up once and not again at each row.
 *
 * @param name the name as the table's readers know it
 * @param kind what its cells hold
 * @param position where it stands in a row, or -1 where the file has none of that name
 * @param missing whether the file should have it and hasn't, which is a problem already
 */
record CsvColumn<T>(String name, CellKind<T> kind, int position, boolean missing) {}
