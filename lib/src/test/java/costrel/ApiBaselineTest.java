package costrel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.wort.Gravity;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.lang.module.ModuleDescriptor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Member;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What programs outside may call, as text, one file for each exported package. A change shows as a difference here, to be read
 * before it is kept with {@code mvn -pl lib -Dtest=ApiBaselineTest -Dgolden=write test}.
 */
final class ApiBaselineTest {

    private static final Path BASELINE = Path.of("src/test/resources/costrel/api");

    @Test
    void what_programs_may_call_is_what_it_was() throws IOException {
        Map<String, List<String>> now = exported();
        if ("write".equals(System.getProperty("golden"))) {
            write(now);
        }
        List<String> differences = new ArrayList<>();
        for (Map.Entry<String, List<String>> one : now.entrySet()) {
            Path file = BASELINE.resolve(one.getKey() + ".txt");
            differences.addAll(difference(Files.exists(file) ? Files.readAllLines(file) : List.of(), one.getValue()));
        }
        try (Stream<Path> files = Files.list(BASELINE)) {
            files.map(file -> file.getFileName().toString().replace(".txt", ""))
                    .filter(name -> !now.containsKey(name))
                    .forEach(name -> differences.add("gone: package " + name));
        }
        assertEquals(
                "",
                String.join("\n", differences),
                "the public API differs; read it, then keep it with -Dtest=ApiBaselineTest -Dgolden=write");
    }

    @Test
    void what_has_gone_and_what_is_new_are_both_told() {
        assertEquals(
                List.of("gone: int pints()", "new: long pints()"),
                difference(List.of("int pints()", "int gallons()"), List.of("long pints()", "int gallons()")));
    }

    /** {@link java.io.Reader} and {@link Thread.State} as the Java SE 17 API Specification has them. */
    @Test
    void a_type_is_told_with_its_open_calls_and_nothing_hidden() {
        List<String> reader = lines(Reader.class);

        assertTrue(reader.contains("java.io.Reader: public int read() throws java.io.IOException"), reader.toString());
        assertTrue(reader.contains("java.io.Reader: protected java.lang.Object lock"), reader.toString());
        assertTrue(reader.stream().noneMatch(line -> line.contains("private")), reader.toString());
        assertTrue(lines(Thread.State.class)
                .contains("java.lang.Thread$State: public static final java.lang.Thread$State BLOCKED"));
        assertTrue(lines(Gravity.class).stream()
                .anyMatch(line -> line.startsWith("costrel.wort.Gravity: record (double ")));
    }

    private static List<String> difference(List<String> before, List<String> now) {
        List<String> found = new ArrayList<>();
        before.stream().filter(line -> !now.contains(line)).forEach(line -> found.add("gone: " + line));
        now.stream().filter(line -> !before.contains(line)).forEach(line -> found.add("new: " + line));
        return found;
    }

    private static void write(Map<String, List<String>> now) throws IOException {
        Files.createDirectories(BASELINE);
        try (Stream<Path> files = Files.list(BASELINE)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        for (Map.Entry<String, List<String>> one : now.entrySet()) {
            Files.writeString(BASELINE.resolve(one.getKey() + ".txt"), String.join("\n", one.getValue()) + "\n");
        }
    }

    /** Every public type of every exported package, by package, in the order of the alphabet. */
    private static Map<String, List<String>> exported() throws IOException {
        URI gravity = URI.create(Objects.requireNonNull(Gravity.class.getResource("Gravity.class"))
                .toString());
        Path classes = Path.of(gravity.resolve("../../"));
        Map<String, List<String>> api = new TreeMap<>();
        ModuleDescriptor module;
        try (InputStream in = Files.newInputStream(classes.resolve("module-info.class"))) {
            module = ModuleDescriptor.read(in);
        }
        for (ModuleDescriptor.Exports exports : module.exports()) {
            TreeSet<String> lines = new TreeSet<>();
            try (Stream<Path> files =
                    Files.list(classes.resolve(exports.source().replace('.', '/')))) {
                for (Path file : files.toList()) {
                    String name = file.getFileName().toString();
                    if (name.endsWith(".class") && !name.equals("package-info.class")) {
                        lines.addAll(lines(load(exports.source() + "." + name.replace(".class", ""))));
                    }
                }
            }
            api.put(exports.source(), List.copyOf(lines));
        }
        return api;
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, Gravity.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(name, e);
        }
    }

    private static List<String> lines(Class<?> type) {
        List<String> lines = new ArrayList<>();
        for (Class<?> outer = type; outer != null; outer = outer.getEnclosingClass()) {
            if (!open(outer.getModifiers()) || outer.isAnonymousClass() || outer.isLocalClass()) {
                return lines;
            }
        }
        String name = type.getName();
        // What permits others is told below; only some versions of Java tell it here too.
        String kind = type.toGenericString().replaceAll("\\b(?:non-)?sealed ", "");
        lines.add(name + ": " + kind + above(type));
        if (type.isRecord()) {
            lines.add(name + ": record "
                    + Arrays.stream(type.getRecordComponents())
                            .map(part -> part.getGenericType().getTypeName() + " " + part.getName())
                            .collect(Collectors.joining(", ", "(", ")")));
        }
        Stream.of(type.getDeclaredConstructors(), type.getDeclaredMethods(), type.getDeclaredFields())
                .flatMap(Arrays::stream)
                .filter(member -> open(member.getModifiers()) && !member.isSynthetic() && !everywhere(member))
                .forEach(member -> lines.add(name + ": " + said(member).replace(name + ".", "")));
        return lines;
    }

    private static String above(Class<?> type) {
        List<String> above = new ArrayList<>();
        if (type.getGenericSuperclass() != null && !type.isRecord() && !type.isEnum()) {
            above.add(type.getGenericSuperclass().getTypeName());
        }
        Arrays.stream(type.getGenericInterfaces()).forEach(each -> above.add(each.getTypeName()));
        String permits = type.isSealed() ? " permits " + names(type.getPermittedSubclasses()) : "";
        return (above.isEmpty() ? "" : " under " + String.join(", ", above)) + permits;
    }

    private static String names(Class<?>[] types) {
        return Arrays.stream(types).map(Class::getName).sorted().collect(Collectors.joining(", "));
    }

    private static boolean open(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }

    /** What every object, record or enum has. */
    private static boolean everywhere(Member member) {
        List<String> names = member.getDeclaringClass().isEnum()
                ? List.of("toString", "values", "valueOf")
                : List.of("equals", "hashCode", "toString");
        return names.contains(member.getName());
    }

    private static String said(Member member) {
        return member instanceof Executable call ? call.toGenericString() : ((Field) member).toGenericString();
    }
}
