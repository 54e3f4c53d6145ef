package costrel.repl;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The console's own words with a line about each and an example: the text of {@code words.txt}. */
final class Words {

    private static final String FILE = "words.txt";
    private static final Map<String, Word> ALL = read();

    /**
     * A word.
     *
     * @param name as it is typed
     * @param line what it is for
     * @param example a line to type, with names in braces still to be filled in
     * @param more what may be put behind the example
     */
    record Word(String name, String line, String example, List<More> more) {}

    /**
     * What may be put behind a word's example.
     *
     * @param ending as it is typed, such as {@code .gyle()}
     * @param line what it is for
     */
    record More(String ending, String line) {}

    private Words() {}

    /** All words in the order in which help shows them. */
    static Map<String, Word> all() {
        return ALL;
    }

    private static Map<String, Word> read() {
        Map<String, Word> words = new LinkedHashMap<>();
        List<More> more = new ArrayList<>();
        for (String line : text().split("\n", -1)) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] cells = line.split(" \\| ", -1);
            if (line.startsWith(" ")) {
                more.add(new More(cells[0].strip(), cells[1]));
            } else {
                more = new ArrayList<>();
                words.put(cells[0], new Word(cells[0], cells[1], cells[2], more));
            }
        }
        return words;
    }

    private static String text() {
        try (InputStream in = Words.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("words: expected " + FILE + " beside the program, found none");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
