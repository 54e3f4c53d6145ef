package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.code_intelligence.jazzer.junit.FuzzTest;
import costrel.Answered;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** Any bytes as a table. The first byte says through which reader, as a letter from A on in the order of their names. */
class TablesFuzzTest {

    private static final Path SAMPLES = Path.of("../samples/lanternfold");
    private static final Map<String, Function<CsvSource, Loaded<?>>> READERS = new TreeMap<>(BadFilesTest.READERS);
    private static final List<String> NAMES = List.copyOf(READERS.keySet());

    static Stream<byte[]> tables() throws IOException, URISyntaxException {
        List<byte[]> seeds = new ArrayList<>();
        for (Path bad : BadFilesTest.cases()) {
            seeds.add(seed(BadFilesTest.folder(bad), Files.readAllBytes(bad)));
        }
        try (Stream<Path> files = Files.walk(SAMPLES)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".csv"))
                    .sorted()
                    .toList()) {
                String name = file.getFileName().toString().replaceAll("(-2026.*)?\\.csv$", "");
                seeds.add(
                        seed(file.startsWith(SAMPLES.resolve("recipes")) ? "recipes" : name, Files.readAllBytes(file)));
            }
        }
        for (String name : NAMES) {
            seeds.add(seed(name, new byte[0]));
        }
        return seeds.stream();
    }

    private static byte[] seed(String reader, byte[] table) {
        byte[] seed = new byte[table.length + 1];
        seed[0] = (byte) ('A' + NAMES.indexOf(reader));
        System.arraycopy(table, 0, seed, 1, table.length);
        return seed;
    }

    @MethodSource("tables")
    @FuzzTest(maxDuration = "")
    void a_table_is_read_or_every_fault_is_told(byte[] bytes) {
        if (bytes.length == 0) {
            return;
        }
        String name = NAMES.get(Math.floorMod(bytes[0] - 'A', NAMES.size()));
        byte[] table = Arrays.copyOfRange(bytes, 1, bytes.length);
        Answered.byValueOrRefusal(
                () -> {
                    Loaded<?> loaded = Objects.requireNonNull(READERS.get(name))
                            .apply(CsvSource.stream("t.csv", new ByteArrayInputStream(table)));
                    assertEquals(loaded.sound(), loaded.problems().isEmpty(), "sound, or problems");
                    for (TableProblem problem : loaded.problems()) {
                        assertFalse(problem.text().isBlank(), "a problem without words");
                    }
                    loaded.orThrow();
                },
                () -> name + ":\n" + new String(table, StandardCharsets.UTF_8));
    }
}
