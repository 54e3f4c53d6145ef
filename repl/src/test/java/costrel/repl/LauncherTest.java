package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The script that starts the console, with a Java that only says how it was called. */
@Timeout(60)
final class LauncherTest {

    private static final Path SCRIPT =
            Path.of("src/main/scripts/costrel").toAbsolutePath().normalize();

    @TempDir
    private Path scratch = Path.of("");

    private record Ran(int code, List<String> lines) {}

    @BeforeEach
    void putAJavaThere() throws IOException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "a shell of Unix");
        Path java = Files.createDirectories(scratch.resolve("java home/bin")).resolve("java");
        Files.writeString(java, "#!/bin/sh\nfor word; do echo \"$word\"; done\nexit 2\n");
        assertTrue(java.toFile().setExecutable(true));
        Files.copy(SCRIPT, Files.createDirectories(scratch.resolve("app here")).resolve("costrel"));
    }

    private Ran run(Path start, String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("/bin/sh", start.toString()));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("JAVA_HOME", scratch.resolve("java home").toString());
        Process process = builder.start();
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(process.waitFor(), out.lines().toList());
    }

    @Test
    void the_jar_beside_it_is_started_with_what_stands_on_the_line_and_its_exit_code_is_given_on() throws Exception {
        Path app = scratch.resolve("app here").toRealPath();
        Files.createFile(app.resolve("costrel.jar"));
        Path link = Files.createSymbolicLink(scratch.resolve("linked"), app.resolve("costrel"));
        Ran ran = run(link, "my brewery", "-e", "5 * 36");
        assertEquals(2, ran.code());
        List<String> expected = new ArrayList<>(List.of(
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                "-jar",
                app.resolve("costrel.jar").toString(),
                "my brewery",
                "-e",
                "5 * 36"));
        assertEquals(expected, ran.lines());

        Files.createFile(app.resolve("costrel.jsa"));
        expected.addAll(
                0,
                List.of(
                        "-XX:SharedArchiveFile=" + app.resolve("costrel.jsa"),
                        "-Xlog:cds=off",
                        "-Xlog:cds+dynamic=off"));
        assertEquals(expected, run(link, "my brewery", "-e", "5 * 36").lines());
    }

    @Test
    void without_a_jar_it_says_so_and_fails() throws Exception {
        Ran ran = run(scratch.resolve("app here/costrel"));
        assertEquals(Console.FAILURE, ran.code());
        assertTrue(ran.lines().get(0).startsWith("costrel: costrel.jar: expected it beside"), ran.toString());
    }
}
