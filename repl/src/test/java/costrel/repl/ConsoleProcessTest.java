package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The console as a process of its own, started by {@code main}. */
@Timeout(120)
final class ConsoleProcessTest {

    private static final String END = System.lineSeparator();

    @TempDir
    private Path folder = Path.of("");

    @Test
    void answers_of_a_process_are_utf_8_and_alone_on_standard_output() throws Exception {
        assertEquals(
                new Streams.Run(0, "£5" + END + "printed ½" + END, ""),
                start("\"£\" + 5\nSystem.out.println(\"printed ½\")\n", List.of()));
    }

    @Test
    void the_exit_code_of_a_process_is_the_consoles_or_the_users_own() throws Exception {
        assertEquals(2, start("", List.of(), "-e", "barels").code());
        assertEquals(3, start("", List.of(), "-e", "1 / 0").code());
        assertEquals(7, start("", List.of(), "-e", "System.exit(7)").code());
    }

    @Test
    void a_full_memory_is_a_fault_and_what_is_kept_can_be_let_go_of() throws Exception {
        Streams.Run run = start("""
                barrels = 5
                kept = new ArrayList<byte[]>()
                while (true) kept.add(new byte[100_000])
                kept = null
                barrels
                new byte[10_000_000].length
                """, List.of("-Xmx64m"));
        assertEquals("5" + END + "10000000" + END, run.out(), run.err());
        assertEquals("input:3: " + RunFaults.MEMORY.message() + END, run.err());
        assertEquals(3, run.code());
    }

    private Streams.Run start(String input, List<String> options, String... args)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Console.class.getName()));
        command.addAll(List.of(args));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        // A process that is told nothing about letters: the pipe is UTF-8 all the same.
        builder.environment().put("LC_ALL", "C");
        Process process = builder.start();
        try (OutputStream in = process.getOutputStream()) {
            in.write(input.getBytes(StandardCharsets.UTF_8));
        }
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        return new Streams.Run(process.exitValue(), Files.readString(out), Files.readString(err));
    }
}
