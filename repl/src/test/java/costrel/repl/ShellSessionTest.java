package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** One-shots as a shell or a program gives them, each with its answer, its error stream and its exit code. */
@Timeout(120)
final class ShellSessionTest {

    private static final String SHELL = "$ costrel ";
    private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

    private record Shot(List<String> arguments, List<String> out, List<String> err, List<Integer> code) {}

    private static List<Shot> shots() throws Exception {
        Path file = Path.of(Objects.requireNonNull(ShellSessionTest.class.getResource("shell/embedder.session"))
                .toURI());
        List<Shot> shots = new ArrayList<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            if (line.startsWith(SHELL)) {
                shots.add(new Shot(
                        words(line.substring(SHELL.length())),
                        new ArrayList<>(),
                        new ArrayList<>(),
                        new ArrayList<>()));
            } else if (!line.startsWith("#")) {
                Shot shot = shots.get(shots.size() - 1);
                if (line.startsWith("! ")) {
                    shot.err.add(line.substring(2));
                } else if (line.startsWith("= ")) {
                    shot.code.add(Integer.valueOf(line.substring(2)));
                } else {
                    shot.out.add(line);
                }
            }
        }
        return shots;
    }

    private static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            String text = word.group(1) != null ? word.group(1) : word.group(2);
            words.add(text.equals("samples/lanternfold") ? WordsTest.LANTERNFOLD.toString() : text);
        }
        return words;
    }

    @Test
    void every_one_shot_answers_as_its_file_says() throws Exception {
        List<Shot> shots = shots();
        assertTrue(shots.size() >= 5, "only " + shots.size() + " found");
        for (Shot shot : shots) {
            Streams.Run run =
                    Streams.run("", Sheets.rendering(), shot.arguments().toArray(String[]::new));
            String pattern = shot.out().stream()
                    .map(line -> line.equals("…") ? "(?:[^\\n]*\\n)*?" : Pattern.quote(line + "\n"))
                    .collect(Collectors.joining());
            assertTrue(run.out().replace("\r", "").matches(pattern), shot + "\n" + run);
            assertEquals(lines(shot.err()), run.err().replace("\r", ""), shot.toString());
            assertEquals(shot.code(), List.of(run.code()), shot.toString());
        }
    }

    private static String lines(List<String> lines) {
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }
}
