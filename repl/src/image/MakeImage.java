import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes a folder that runs the console without an installed Java: the modules of the JDK at hand that it needs, the jars,
 * a launcher, and an archive of the classes that a start loads. The jars stay on the class path, where JShell sees them.
 */
final class MakeImage {

    /** JShell and its compiler; jars as file systems for the compiler; what the libraries lean on. */
    private static final String MODULES = "java.base,java.desktop,java.logging,java.management,java.xml,jdk.jshell,jdk.management,jdk.unsupported,jdk.zipfs";

    private static final List<String> OPTIONS = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xlog:disable");

    private static final String SHELL = """
            #!/bin/sh
            # Starts the console with the Java that stands beside it.
            self=$(readlink -f -- "$0" 2>/dev/null) || self=$0
            home=$(CDPATH= cd -- "$(dirname -- "$self")/.." && pwd -P) || exit 3
            exec "$home/bin/java" %s "-XX:SharedArchiveFile=$home/lib/costrel.jsa" \\
                -jar "$home/app/costrel.jar" "$@"
            """;

    private static final String BATCH = """
            @echo off
            "%%~dp0java" %s "-XX:SharedArchiveFile=%%~dp0..\\lib\\costrel.jsa" -jar "%%~dp0..\\app\\costrel.jar" %%*
            """;

    private MakeImage() {}

    /**
     * Makes the image.
     *
     * @param args the jar with its libraries in the folder lib beside it, the folder to make, the day of the release, and
     *     the sample brewery that the first start is tried on
     */
    public static void main(String[] args) throws Exception {
        Path jar = Path.of(args[0]);
        Path image = Path.of(args[1]);
        FileTime time = FileTime.from(Instant.parse(args[2]));
        Path brewery = Path.of(args[3]);
        delete(image);
        link(image);
        copy(jar, image.resolve("app/costrel.jar"), time);
        try (Stream<Path> libraries = Files.list(jar.resolveSibling("lib"))) {
            for (Path library : libraries.sorted().toList()) {
                copy(library, image.resolve("app/lib").resolve(library.getFileName()), time);
            }
        }
        launcher(image.resolve("bin/costrel"), String.format(SHELL, String.join(" ", OPTIONS)));
        launcher(
                image.resolve("bin/costrel.bat"),
                String.format(BATCH, String.join(" ", OPTIONS)).replace("\n", "\r\n"));
        archive(image, time, brewery);
        System.out.println("image: " + image);
    }

    private static void link(Path image) {
        ToolProvider jlink = ToolProvider.findFirst("jlink")
                .orElseThrow(() -> new IllegalStateException("jlink: expected a JDK that has it, found none"));
        int code = jlink.run(
                System.out,
                System.err,
                "--add-modules",
                MODULES,
                "--strip-java-debug-attributes",
                "--no-header-files",
                "--no-man-pages",
                "--output",
                image.toString());
        if (code != 0) {
            throw new IllegalStateException("jlink: ended with " + code);
        }
    }

    private static void copy(Path from, Path to, FileTime time) throws IOException {
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
        // The archive of classes holds the time of each jar.
        Files.setLastModifiedTime(to, time);
    }

    private static void launcher(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardCharsets.UTF_8);
        if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    /**
     * Keeps the classes of the JDK, and those that an answer loads over them, in a form that is quick to load. Where the
     * image is moved the second may no longer fit; Java then starts with the first alone and says nothing.
     */
    private static void archive(Path image, FileTime time, Path brewery) throws IOException, InterruptedException {
        // The archives hold the time of the modules.
        Files.setLastModifiedTime(image.resolve("lib/modules"), time);
        java(image, List.of("-Xshare:dump", "-Xlog:disable"));
        List<String> options = new ArrayList<>(OPTIONS);
        options.add("-XX:ArchiveClassesAtExit=" + image.resolve("lib/costrel.jsa"));
        java(
                image,
                options,
                "-jar",
                image.resolve("app/costrel.jar").toString(),
                brewery.toString(),
                "--json",
                "-e",
                "day(\"2026-11-25\")",
                "-e",
                "brew(\"Wickgate Bitter\").on(\"Main\").length(\"30 brl\")");
    }

    private static void java(Path image, List<String> options, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(image.resolve("bin/java").toString()));
        command.addAll(options);
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        Process process = builder.start();
        process.getOutputStream().close();
        byte[] said = process.getInputStream().readAllBytes();
        if (process.waitFor() != 0) {
            try (OutputStream err = System.err) {
                err.write(said);
            }
            throw new IllegalStateException("java: ended with " + process.exitValue());
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(one);
                }
            }
        }
    }
}
