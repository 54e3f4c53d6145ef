package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Opens a brewery folder whose files hold instructions wherever a name or a remark may stand, and files with the names of
 * start-up files of other consoles. Each instruction, run by anyone, would set the property {@link #MARK}.
 */
final class HostileFolderTest {

    private static final String MARK = "costrel.test.executed";

    /** What is done with the folder; one for each word that reads from it. */
    private static final List<String> USES = List.of("folder()", "Files.readString(folder().resolve(\"brewery.csv\"))");

    @Test
    void nothing_in_a_folder_is_ever_executed(@TempDir Path folder) throws IOException, URISyntaxException {
        copy(folder);
        for (String use : USES) {
            System.clearProperty(MARK);
            Streams.Run run = Streams.run("", folder.toString(), "-e", use);
            assertEquals(Console.DONE, run.code(), run.err());
            assertTrue(run.out().indexOf('\u001b') < 0, "what steers a terminal is not let through");
            Streams.run(use + "\n", folder.toString());
            assertNull(System.getProperty(MARK), use);
        }
    }

    @Test
    void the_instructions_in_the_folder_would_set_the_mark_if_they_were_executed(@TempDir Path folder)
            throws IOException, URISyntaxException {
        copy(folder);
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertTrue(
                        Files.readString(file).contains("System.setProperty(\"\"" + MARK)
                                || Files.readString(file).contains("System.setProperty(\"" + MARK),
                        file.toString());
            }
        }
        System.clearProperty(MARK);
        Streams.Run run = Streams.run("", folder.resolve("startup.jsh").toString());
        assertEquals(Console.DONE, run.code(), run.err());
        assertEquals("yes", System.getProperty(MARK));
        System.clearProperty(MARK);
    }

    private static void copy(Path folder) throws IOException, URISyntaxException {
        URL resource = Objects.requireNonNull(HostileFolderTest.class.getResource("hostile"));
        Path hostile = Path.of(resource.toURI());
        try (Stream<Path> files = Files.walk(hostile)) {
            List<Path> all = files.filter(Files::isRegularFile).toList();
            assertFalse(all.isEmpty());
            for (Path file : all) {
                Path to = folder.resolve(hostile.relativize(file).toString());
                Files.createDirectories(Objects.requireNonNull(to.getParent()));
                Files.copy(file, to);
            }
        }
    }
}
