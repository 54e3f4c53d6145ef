package costrel;

import static java.util.stream.Collectors.joining;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/** Compiles classes of a line or two while a test runs, so that a rule can be tried on one that breaks it. */
final class SmallClasses {

    private SmallClasses() {}

    /** Compiles each source, against the libraries of this test run, inside the folder and imports the result. */
    static JavaClasses compiled(Path folder, List<String> sources) throws IOException {
        Path classes = folder.resolve("classes");
        List<String> arguments =
                new ArrayList<>(List.of("-proc:none", "-nowarn", "-d", classes.toString(), "-classpath", libraries()));
        for (int i = 0; i < sources.size(); i++) {
            Path file = Files.createDirectories(folder.resolve("source-" + i))
                    .resolve(nameOfTheClassIn(sources.get(i)) + ".java");
            arguments.add(Files.writeString(file, sources.get(i)).toString());
        }
        StringWriter messages = new StringWriter();
        PrintWriter printer = new PrintWriter(messages);
        ToolProvider compiler = ToolProvider.findFirst("javac").orElseThrow();
        if (compiler.run(printer, printer, arguments.toArray(String[]::new)) != 0) {
            throw new IllegalArgumentException(messages.toString());
        }
        return new ClassFileImporter().importPath(classes);
    }

    private static String nameOfTheClassIn(String source) {
        List<String> words = List.of(source.split(" ", -1));
        return words.get(Math.max(words.indexOf("class"), words.indexOf("enum")) + 1);
    }

    /** What this test run has on its class path and, where it runs as a module, on its module path. */
    private static String libraries() {
        return Stream.of("java.class.path", "jdk.module.path")
                .map(name -> System.getProperty(name, ""))
                .filter(path -> !path.isEmpty())
                .collect(joining(System.getProperty("path.separator")));
    }
}
