package costrel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every public element of the library says what it is. The compiler's own check is used, less one complaint: it asks for a comment
 * on the compact constructor of a record, whose parameters are described on the record.
 */
class JavadocTest {

    private static final String NOT_EXPORTED = "-Xdoclint/package:-costrel.figures";

    private static final Pattern WARNING = Pattern.compile("(?m)^(.*\\.java):(\\d+): (?:warning|error): (.*)$");

    @Test
    void every_public_element_is_described(@TempDir Path out) throws IOException {
        assertEquals(List.of(), complaints(sources(Path.of("src/main/java")), out));
    }

    @Test
    void an_element_without_a_comment_is_found(@TempDir Path out) throws IOException {
        Path file = out.resolve("Bare.java");
        Files.writeString(file, """
                /** A record.
                 * @param x a number */
                public record Bare(double x) {
                    public Bare {
                        x = x + 0.0;
                    }
                    public double twice() {
                        return 2 * x;
                    }
                }
                """);
        List<String> found = complaints(List.of(file), out);
        assertEquals(1, found.size(), found.toString());
        assertTrue(found.get(0).startsWith("Bare.java:7: no comment"), found.get(0));
    }

    private static List<Path> sources(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }

    private static List<String> complaints(List<Path> sources, Path out) throws IOException {
        List<String> arguments = new ArrayList<>(List.of(
                "-proc:none", "-Xdoclint:all/protected", NOT_EXPORTED, "-Xmaxwarns", "10000", "-d", out.toString()));
        String modules = System.getProperty("jdk.module.path", "");
        arguments.addAll(List.of(
                modules.isEmpty() ? "--class-path" : "--module-path",
                modules.isEmpty() ? System.getProperty("java.class.path") : modules));
        sources.forEach(file -> arguments.add(file.toString()));
        StringWriter text = new StringWriter();
        try (PrintWriter printer = new PrintWriter(text)) {
            ToolProvider.findFirst("javac").orElseThrow().run(printer, printer, arguments.toArray(String[]::new));
        }
        List<String> complaints = new ArrayList<>();
        Matcher matcher = WARNING.matcher(text.toString());
        while (matcher.find()) {
            Path file = Path.of(matcher.group(1));
            int line = Integer.parseInt(matcher.group(2));
            if (!compactConstructor(file, line)) {
                complaints.add(file.getFileName() + ":" + line + ": " + matcher.group(3));
            }
        }
        return complaints;
    }

    private static boolean compactConstructor(Path file, int line) throws IOException {
        return Files.readAllLines(file).get(line - 1).matches("\\s*public [A-Z]\\w* \\{");
    }
}
