package costrel.repl;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What {@code help} shows: all words with an example each, or one word with what may follow it. */
final class HelpPages {

    private static final int LONGEST_EXAMPLE = 52;

    private HelpPages() {}

    /** All words. */
    static String all(Own own, int width) {
        List<String[]> rows = new ArrayList<>();
        for (Words.Word word : Words.all().values()) {
            rows.add(new String[] {own.in(word.example()), word.line()});
        }
        rows.add(new String[] {"x = ...", "keep an answer under a name"});
        rows.add(new String[] {"Tab, Ctrl-C, Ctrl-D", "complete, stop, leave"});
        return columns(rows, width, "")
                + "help brew tells what may follow a word. Words alone need no brackets: beers, tour, undo.";
    }

    /**
     * One word.
     *
     * @throws IllegalArgumentException if there is no such word
     */
    static String of(String name, Own own, int width) {
        String wanted = name.strip().replaceAll("\\(.*", "").toLowerCase(Locale.ROOT);
        Words.Word word = Words.all().get(wanted);
        if (word == null) {
            List<String> nearest = Nearest.to(wanted, Words.all().keySet());
            throw new IllegalArgumentException("help: no word is called '" + name + "'"
                    + (nearest.isEmpty()
                            ? "; the words are " + String.join(", ", Words.all().keySet())
                            : "; nearest: " + String.join(", ", nearest)));
        }
        StringBuilder text = new StringBuilder();
        text.append(word.name()).append(": ").append(word.line()).append("\n  ");
        text.append(own.in(word.example())).append('\n');
        if (!word.more().isEmpty()) {
            text.append("behind it:\n");
            List<String[]> rows = new ArrayList<>();
            word.more().forEach(more -> rows.add(new String[] {own.in(more.ending()), own.in(more.line())}));
            text.append(columns(rows, width, "  "));
        }
        return text.toString().stripTrailing();
    }

    /** Examples beside what they are for; one under the other where the screen is too narrow for both. */
    static String columns(List<String[]> rows, int width, String indent) {
        int column = rows.stream()
                .mapToInt(row -> row[0].length())
                .filter(length -> length <= LONGEST_EXAMPLE)
                .max()
                .orElse(0);
        int longest = rows.stream().mapToInt(row -> row[1].length()).max().orElse(0);
        boolean beside = width <= 0 || indent.length() + column + 2 + longest < width;
        StringBuilder text = new StringBuilder();
        for (String[] row : rows) {
            text.append(indent).append(row[0]);
            boolean fits = beside && row[0].length() <= column;
            text.append(fits ? " ".repeat(column - row[0].length() + 2) : "\n" + indent + "    ");
            text.append(row[1]).append('\n');
        }
        return text.toString();
    }
}
