package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The program of samples/embedding runs with the library on the class path and on the module path, and prints the same. */
@Timeout(300)
final class BothPathsTest {

    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Path PROGRAM = ROOT.resolve("samples/embedding/src/main/java/org/example/pintcost/Main.java");
    private static final Pattern SHIPPED =
            Pattern.compile("(?m)^\\s*\\S+?:jar:[^:\\s]+:(?:compile|runtime):(\\S.*?\\.jar)\\b");

    @Test
    void a_program_prints_the_same_from_the_class_path_and_from_the_module_path(@TempDir Path folder) throws Exception {
        String libraries = libraries();
        String classes = run(folder.resolve("class-path.txt"), "--class-path", libraries);
        String modules = run(folder.resolve("module-path.txt"), "--module-path", libraries, "--add-modules", "costrel");

        assertTrue(classes.contains("p a pint"), classes);
        assertEquals(classes, modules);
    }

    /** The library as built, and what Maven says that it needs to run. */
    private static String libraries() throws IOException {
        List<String> paths =
                new ArrayList<>(List.of(ROOT.resolve("lib/target/classes").toString()));
        Matcher jar = SHIPPED.matcher(Files.readString(ROOT.resolve("lib/target/dependencies.txt")));
        while (jar.find()) {
            paths.add(jar.group(1));
        }
        assertTrue(paths.size() > 10, paths.toString());
        return String.join(File.pathSeparator, paths);
    }

    private static String run(Path output, String... options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of("-Dfile.encoding=UTF-8", "-Dstdout.encoding=UTF-8"));
        command.addAll(List.of(options));
        command.add(PROGRAM.toString());
        command.add(ROOT.resolve("samples/lanternfold").toString());
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(output.toFile())
                .start();
        int code = process.waitFor();
        String printed = Files.readString(output, StandardCharsets.UTF_8);
        assertEquals(0, code, printed);
        return printed;
    }
}
