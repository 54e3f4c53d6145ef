package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The scripts in samples/ print what their golden files hold. The figures themselves are checked elsewhere; this shows a change of
 * the sheet to whoever makes it. With {@code -Dgolden=write} the files are written anew, to be read before they are kept.
 */
@Timeout(300)
final class SampleScriptsTest {

    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Path GOLDEN = Path.of("src/test/resources/costrel/repl/golden");

    @ParameterizedTest
    @CsvSource({"first-gyle, 0", "new-harvest, 1", "new-beer, 0"})
    void a_script_prints_its_golden_file(String script, int code) throws IOException {
        Streams.Run run = Streams.run(
                "",
                Sheets.rendering(),
                ROOT.resolve("samples/lanternfold").toString(),
                ROOT.resolve("samples/" + script + ".jsh").toString());
        assertEquals("", run.err());
        assertEquals(code, run.code());
        String shown = run.out().replace("\r", "");
        Path golden = GOLDEN.resolve(script + ".txt");
        if ("write".equals(System.getProperty("golden"))) {
            Files.createDirectories(GOLDEN);
            Files.writeString(golden, shown);
        }
        assertEquals(Files.readString(golden).replace("\r", ""), shown);
    }
}
