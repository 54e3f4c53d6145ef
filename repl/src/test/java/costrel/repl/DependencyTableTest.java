package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * DEVELOPERS.md names every jar that Maven resolves for the library, the console and their tests, with its version, and a licence
 * that the jar's own project description states. Maven writes what it resolved to {@code target/dependencies.txt} of each part.
 */
final class DependencyTableTest {

    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final String SHIPS = "ships";
    private static final String TESTS = "tests";
    private static final Pattern HEADING = Pattern.compile("### (?:Dependencies that ship|Dependencies of the tests)");
    private static final Pattern ROW = Pattern.compile("\\| (`.*`) (\\S+) \\| (\\S+) \\| (.+) \\|");
    private static final Pattern NAME = Pattern.compile("`([^`]+)`");
    private static final Pattern RESOLVED = Pattern.compile(
            "\\s*([^:\\s]+):([^:\\s]+):jar:([^:\\s]+):(compile|runtime|provided|test):(\\S.*?\\.jar)\\b.*");
    private static final Pattern LICENCES = Pattern.compile("(?s)<licenses>(.*?)</licenses>");
    private static final Pattern PARENT = Pattern.compile("(?s)<parent>(.*?)</parent>");

    /** What one line of the table, or one line of Maven's list, says of a jar. */
    private record Jar(String name, String version, String licence, String use, Path file) {}

    @Test
    void every_jar_that_is_resolved_stands_in_the_table_and_no_other() throws IOException {
        Map<String, String> table = new TreeMap<>();
        written().values().forEach(row -> table.put(row.name(), row.version() + ", " + row.use()));
        Map<String, String> resolved = new TreeMap<>();
        resolved().values().forEach(jar -> resolved.put(jar.name(), jar.version() + ", " + jar.use()));

        assertEquals(
                lines(resolved), lines(table), "DEVELOPERS.md, Dependencies: found on the right, resolved on the left");
    }

    @Test
    void every_licence_in_the_table_is_the_one_that_the_jar_states() throws IOException {
        Map<String, Jar> table = written();
        int looked = 0;
        for (Jar jar : resolved().values()) {
            String stated = licenceOf(jar);
            Jar row = table.get(jar.name());
            assertNotNull(row, jar.name() + " has no row");
            String family = row.licence().replaceFirst("-.*", "");
            String words = family.equals("EPL") ? "eclipse public license" : family.toLowerCase(Locale.ROOT);
            assertTrue(
                    stated.toLowerCase(Locale.ROOT).contains(words),
                    jar.name() + ": the table says " + row.licence() + ", its project says " + stated);
            looked++;
        }
        assertTrue(looked > 40, "jars looked at: " + looked);
    }

    @Test
    void what_ships_is_permissive_but_for_the_maker_of_pdf() throws IOException {
        for (Jar row : written().values()) {
            if (row.use().equals(SHIPS) && !row.licence().matches("Apache-2\\.0|BSD-3-Clause|MIT")) {
                assertTrue(row.name().startsWith("io.github.openhtmltopdf:"), row.name() + " is " + row.licence());
            }
        }
    }

    /** The rows of the two tables, by group and name. */
    private static Map<String, Jar> written() throws IOException {
        Map<String, Jar> rows = new TreeMap<>();
        String use = "";
        for (String line : Files.readAllLines(ROOT.resolve("DEVELOPERS.md"))) {
            if (line.startsWith("#")) {
                use = !HEADING.matcher(line).matches() ? "" : line.endsWith("ship") ? SHIPS : TESTS;
            }
            Matcher row = ROW.matcher(line);
            if (use.isEmpty() || !row.matches()) {
                continue;
            }
            Matcher name = NAME.matcher(row.group(1));
            while (name.find()) {
                Jar jar = new Jar(name.group(1), row.group(2), row.group(3), use, ROOT);
                assertEquals(null, rows.put(jar.name(), jar), jar.name() + " stands twice");
                assertFalse(row.group(4).isBlank(), jar.name() + " has no reason");
            }
        }
        return rows;
    }

    /** What Maven resolved for either part; what one of them ships isn't only for the tests of the other. */
    private static Map<String, Jar> resolved() throws IOException {
        Map<String, Jar> jars = new TreeMap<>();
        for (String part : List.of("lib", "repl")) {
            for (String line : Files.readAllLines(ROOT.resolve(part).resolve("target/dependencies.txt"))) {
                Matcher jar = RESOLVED.matcher(line);
                if (jar.matches() && !jar.group(1).equals("org.costrel")) {
                    String name = jar.group(1) + ":" + jar.group(2);
                    String use = jar.group(4).matches("compile|runtime") ? SHIPS : TESTS;
                    if (!jars.containsKey(name) || use.equals(SHIPS)) {
                        jars.put(name, new Jar(name, jar.group(3), "", use, Path.of(jar.group(5))));
                    }
                }
            }
        }
        return jars;
    }

    /** The licences in the jar's own project description, or in the nearest parent of it that states any. */
    private static String licenceOf(Jar jar) throws IOException {
        String file = jar.file().getFileName().toString();
        Path pom = jar.file().resolveSibling(file.substring(0, file.length() - ".jar".length()) + ".pom");
        int colon = jar.name().indexOf(':');
        int folders = Path.of(jar.name().substring(0, colon).replace('.', '/')).getNameCount();
        Path repository = jar.file().resolve("../".repeat(folders + 3)).normalize();
        while (true) {
            String text = Files.readString(pom).replaceAll("(?s)<!--.*?-->", "");
            Matcher licences = LICENCES.matcher(text);
            if (licences.find()) {
                return licences.group(1).replaceAll("\\s+", " ").trim();
            }
            Matcher parent = PARENT.matcher(text);
            assertTrue(parent.find(), pom + " states no licence and has no parent");
            String name = value(parent.group(1), "artifactId");
            String version = value(parent.group(1), "version");
            pom = repository
                    .resolve(value(parent.group(1), "groupId").replace('.', '/'))
                    .resolve(name)
                    .resolve(version)
                    .resolve(name + "-" + version + ".pom");
        }
    }

    private static String value(String xml, String element) {
        Matcher found = Pattern.compile("<" + element + ">\\s*(.*?)\\s*</" + element + ">")
                .matcher(xml);
        assertTrue(found.find(), element + " in " + xml);
        return found.group(1);
    }

    private static String lines(Map<String, String> jars) {
        List<String> lines = new ArrayList<>();
        jars.forEach((name, said) -> lines.add(name + " " + said));
        return String.join("\n", lines);
    }
}
