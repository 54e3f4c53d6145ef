package costrel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds the library to its layout. Each rule is also tried on a class of a line or two that breaks it, so that a rule
 * which has come to catch nothing fails.
 */
final class ArchitectureTest {

    private static final Map<String, ArchRule> RULES = ArchitectureRules.all();

    private static final JavaClasses LIBRARY = new ClassFileImporter().importPath(classFolder());

    private static JavaClasses broken;

    @Test
    void the_library_is_there_to_be_looked_at() {
        Set<String> seen = names(LIBRARY.stream().map(JavaClass::getPackageName));

        assertTrue(seen.contains("costrel.measure"), () -> "packages seen: " + seen);
        assertTrue(seen.contains("costrel.report"), () -> "packages seen: " + seen);
        assertFalse(LIBRARY.contain(ArchitectureTest.class), "tests are no part of the library");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ruleNames")
    void the_library_keeps_the_rule(String name) {
        rule(name).check(LIBRARY);
    }

    @BeforeAll
    static void compile_every_breach(@TempDir Path folder) throws IOException {
        List<String> sources = new ArrayList<>(List.of(
                "package costrel.recipe; public class Recipe {}",
                "package costrel.recipe; public class Catalogue {}",
                "package costrel.buying; public class PriceList {}",
                "package costrel.scaling; public class Gyle {}"));
        ArchitectureBreach.ALL.forEach(breach -> sources.add(breach.source()));
        broken = SmallClasses.compiled(folder, sources);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("breaches")
    void a_breach_of_the_rule_is_caught(ArchitectureBreach breach) {
        String found = reportOf(breach.rule(), broken);

        assertTrue(found.contains(breach.className()), () -> "not caught: " + breach.source());
    }

    @Test
    void a_package_may_use_those_below_it_and_none_above(@TempDir Path folder) throws IOException {
        List<String> order = ArchitectureRules.ORDER;
        List<String> sources = new ArrayList<>();
        for (String user : order) {
            sources.add("package costrel.%s; public class Thing {}".formatted(user));
            for (String used : order) {
                sources.add("package costrel.%s; class Uses_%s { costrel.%s.Thing it; }".formatted(user, used, used));
            }
        }
        JavaClasses classes = SmallClasses.compiled(folder, sources);

        for (int i = 0; i + 1 < order.size(); i++) {
            String found = reportOf(ArchitectureRules.orderRule(order.get(i)), classes);
            for (int j = 0; j < order.size(); j++) {
                String field = "costrel.%s.Uses_%s.it".formatted(order.get(i), order.get(j));
                assertEquals(j > i, found.contains(field), field);
            }
        }
    }

    @Test
    void what_each_package_is_there_for_is_allowed(@TempDir Path folder) throws IOException {
        JavaClasses classes = SmallClasses.compiled(
                folder,
                List.of(
                        "package costrel.measure; class A { tech.units.indriya.AbstractUnit<?> unit; }",
                        "package costrel.wort; class A { private static final double[] COEFFICIENTS = {1.0}; }",
                        "package costrel.hops; class A { String a(double x) {"
                                + " return String.format(java.util.Locale.ROOT, \"%.1f\", x); } }",
                        "package costrel.hops; enum Form { LEAF, PELLET; int number() {"
                                + " return switch (this) { case LEAF -> 1; case PELLET -> 2; }; } }",
                        "package costrel.cost; class A { org.joda.money.Money money; java.time.LocalDate on; }",
                        "package costrel.cost; class B { Object dice(long seed) { return new java.util.Random(seed); } }",
                        "package costrel.tables; class A { org.apache.commons.csv.CSVFormat format; }",
                        "package costrel.tables; class B { long size(java.nio.file.Path at) throws Exception {"
                                + " return java.nio.file.Files.size(at); } }"));

        RULES.values().forEach(rule -> rule.check(classes));
    }

    @Test
    void every_rule_has_a_breach_that_tries_it() {
        Set<String> tried = names(breaches().map(ArchitectureBreach::rule));
        List<String> order = ArchitectureRules.ORDER;
        order.subList(0, order.size() - 1).forEach(name -> tried.add(ArchitectureRules.orderRule(name)));

        assertEquals(names(RULES.keySet().stream()), tried);
    }

    private static Stream<String> ruleNames() {
        return RULES.keySet().stream();
    }

    private static Stream<ArchitectureBreach> breaches() {
        return ArchitectureBreach.ALL.stream();
    }

    private static String reportOf(String name, JavaClasses classes) {
        return rule(name).evaluate(classes).getFailureReport().toString();
    }

    private static ArchRule rule(String name) {
        return Objects.requireNonNull(RULES.get(name), name);
    }

    private static Set<String> names(Stream<String> names) {
        return names.collect(Collectors.toCollection(TreeSet::new));
    }

    /** The folder of the library's compiled classes, found through the lowest package's own description. */
    private static Path classFolder() {
        String description = "costrel/measure/package-info.class";
        var found =
                Objects.requireNonNull(ArchitectureTest.class.getClassLoader().getResource(description), description);
        return Path.of(URI.create(found.toString()).resolve("../../"));
    }
}
