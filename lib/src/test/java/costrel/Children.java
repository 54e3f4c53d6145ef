package costrel;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Java processes beside this one, for what can't be done to this one: to kill it, or to take its rights away. */
public final class Children {

    private static final int LONGEST_SECONDS = 60;

    private Children() {}

    /**
     * Starts a main method of the tests.
     *
     * @param under the command that starts it, such as one that takes rights away; none for no such command
     * @param main the class
     * @param args what it is given
     */
    public static Process start(List<String> under, Class<?> main, String... args) throws IOException {
        List<String> command = new ArrayList<>(under);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(
                "-Xshare:auto", "-XX:-UsePerfData", "-XX:TieredStopAtLevel=1", "-Dfile.encoding=UTF-8", "-cp", path()));
        command.add(main.getName());
        command.addAll(List.of(args));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    /** Runs a main method of the tests to its end; returns what it printed. */
    public static List<String> run(List<String> under, Class<?> main, String... args)
            throws IOException, InterruptedException {
        Process child = start(under, main, args);
        List<String> lines = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        if (!child.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
            child.destroyForcibly();
            throw new IllegalStateException(main + " doesn't come to an end; so far " + lines);
        }
        return lines;
    }

    /** A command that takes from the superuser what lets it into every file; empty where there is none of that name. */
    public static List<String> withoutPrivileges() {
        return Stream.of("/usr/bin/setpriv", "/bin/setpriv")
                .filter(file -> Files.isExecutable(Path.of(file)))
                .findFirst()
                .map(file -> List.of(file, "--inh-caps=-all", "--bounding-set=-all"))
                .orElse(List.of());
    }

    private static String path() {
        return Stream.of(
                        Stream.of("target/classes", "target/test-classes"),
                        parts("java.class.path"),
                        parts("jdk.module.path"))
                .flatMap(part -> part)
                .collect(Collectors.joining(System.getProperty("path.separator")));
    }

    private static Stream<String> parts(String property) {
        return Arrays.stream(Objects.requireNonNullElse(System.getProperty(property), "")
                .split(java.util.regex.Pattern.quote(System.getProperty("path.separator"))));
    }
}
