package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The console never executes what stands in a recipe or a table. */
@Timeout(120)
final class HostileCellsTest {

    @Test
    void java_in_a_cell_stays_text(@TempDir Path folder) throws IOException {
        Path sample = Path.of("../samples/lanternfold");
        try (Stream<Path> files = Files.walk(sample)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(sample.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        Path witness = folder.resolve("witness");
        String hostile = "${java.nio.file.Files.createFile(java.nio.file.Path.of(\"\"" + witness + "\"\"))}";
        for (String file : new String[] {
            "recipes/wickgate-bitter.csv", "packaging-plans.csv", "brewing-plan.csv", "list-prices.csv"
        }) {
            Path path = folder.resolve(file);
            Files.writeString(path, Files.readString(path).replace("Wickgate Bitter", "\"" + hostile + "\""));
        }
        Streams.Run run = Streams.run("", Sheets.rendering(), folder.toString(), "-e", "beers()");
        assertEquals("", run.err());
        assertEquals(Console.DONE, run.code());
        assertFalse(Files.exists(witness));
    }
}
