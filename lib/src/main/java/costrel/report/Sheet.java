package costrel.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A result set out for reading, by people and by programs: the one description from which text, CSV, JSON and HTML are
 * made. Figures in it are rounded to what is printed.
 *
 * @param kind what sort of result, such as "cost sheet"; it stays what it is from version to version
 * @param title what it is, in a line
 * @param about what the title says, as facts for programs
 * @param blocks its parts, in reading order
 */
public record Sheet(String kind, String title, List<Fact> about, List<Block> blocks) {

    private static final Pattern KIND = Pattern.compile("[a-z]+([ -][a-z]+)*");

    /**
     * A result set out for reading.
     *
     * @param kind what sort of result
     * @param title what it is
     * @param about what the title says
     * @param blocks its parts
     * @throws IllegalArgumentException if the kind is anything but small letters, or two facts or two tables have the same
     *     key, or a table has the key sheet, facts or notes
     */
    public Sheet {
        if (!KIND.matcher(kind).matches()) {
            throw new IllegalArgumentException("kind of sheet: expected small letters, found '" + kind + "'");
        }
        about = List.copyOf(about);
        blocks = List.copyOf(blocks);
        Set<String> facts = new HashSet<>();
        factsOf(about, blocks).forEach(fact -> once(kind, facts, fact.key()));
        Set<String> tables = new HashSet<>(CsvForm.OWN_SECTIONS);
        tablesOf(blocks).forEach(table -> once(kind, tables, table.key()));
    }

    /**
     * A sheet that is one table.
     *
     * @param kind what sort of result
     * @param title what it is
     * @param table the table
     * @return the sheet
     * @throws IllegalArgumentException if the kind is no kind
     */
    public static Sheet of(String kind, String title, Table table) {
        return new Sheet(kind, title, List.of(), List.of(table));
    }

    /**
     * All facts: what the title says and what the blocks hold.
     *
     * @return facts with their keys, each key once
     */
    public List<Fact> facts() {
        return factsOf(about, blocks).toList();
    }

    /**
     * All tables.
     *
     * @return tables with their keys, each key once
     */
    public List<Table> tables() {
        return tablesOf(blocks).toList();
    }

    /**
     * All remarks.
     *
     * @return remarks in reading order
     */
    public List<Block.Note> notes() {
        List<Block.Note> notes = new ArrayList<>();
        for (Block block : blocks) {
            if (block instanceof Block.Note note) {
                notes.add(note);
            }
        }
        return notes;
    }

    private static Stream<Fact> factsOf(List<Fact> about, List<Block> blocks) {
        return Stream.concat(
                about.stream(),
                blocks.stream()
                        .flatMap(
                                block -> block instanceof Block.Facts facts ? facts.facts().stream() : Stream.empty()));
    }

    private static Stream<Table> tablesOf(List<Block> blocks) {
        return blocks.stream().flatMap(block -> block instanceof Table table ? Stream.of(table) : Stream.empty());
    }

    private static void once(String kind, Set<String> seen, String key) {
        if (!seen.add(key)) {
            throw new IllegalArgumentException(kind + ": expected the key " + key + " once, found it twice");
        }
    }
}
