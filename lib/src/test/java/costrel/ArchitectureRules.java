package costrel;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.PackageMatcher;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.elements.ClassesShould;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The layout of the library, and what no part of it may lean on, as rules over compiled classes. */
final class ArchitectureRules {

    /** The packages, lowest first: each uses only those before it. */
    static final List<String> ORDER = List.of(
            "measure",
            "explain",
            "wort",
            "hops",
            "recipe",
            "plant",
            "scaling",
            "harvest",
            "figures",
            "packaging",
            "buying",
            "duty",
            "stock",
            "cost",
            "pricing",
            "tables",
            "brewery",
            "report");

    private ArchitectureRules() {}

    /** Every rule by its name, which is also what a failure prints first. */
    static Map<String, ArchRule> all() {
        Map<String, ArchRule> rules = new LinkedHashMap<>();
        rules.put(
                "every class lives in a package of the layout",
                classes().should().resideInAnyPackage(in(ORDER)));
        for (int i = 0; i + 1 < ORDER.size(); i++) {
            String[] above = in(ORDER.subList(i + 1, ORDER.size()));
            rules.put(
                    orderRule(ORDER.get(i)),
                    inside(ORDER.get(i)).dependOnClassesThat().resideInAnyPackage(above));
        }
        namedBans(rules);
        purity(rules);
        traps(rules);
        rules.replaceAll((name, rule) -> rule.as(name).allowEmptyShould(true));
        return Collections.unmodifiableMap(rules);
    }

    /** The name of the rule that holds one package below all that follow it. */
    static String orderRule(String name) {
        return name + " uses nothing that stands above it";
    }

    private static void namedBans(Map<String, ArchRule> rules) {
        rules.put(
                "plant does not know recipes by name",
                inside("plant").dependOnClassesThat(types("costrel.recipe.Recipe", "costrel.recipe.Catalogue")));
        rules.put("stock does not know scaling", inside("stock").dependOnClassesThat(types("costrel.scaling..")));
        rules.put("cost does not know scaling", inside("cost").dependOnClassesThat(types("costrel.scaling..")));
        rules.put("buying does not know scaling", inside("buying").dependOnClassesThat(types("costrel.scaling..")));
        rules.put(
                "packaging does not know scaling", inside("packaging").dependOnClassesThat(types("costrel.scaling..")));
        rules.put(
                "duty knows neither scaling nor price lists",
                inside("duty").dependOnClassesThat(types("costrel.scaling..", "costrel.buying..")));
        rules.put(
                "pricing knows cost sheets and not what they were made from",
                inside("pricing")
                        .dependOnClassesThat(types(
                                "costrel.recipe..", "costrel.plant..", "costrel.scaling..", "costrel.harvest..")));
        rules.put(
                "money is known from harvest upwards only",
                outside(
                                "harvest", "figures", "buying", "duty", "stock", "cost", "pricing", "tables", "brewery",
                                "report")
                        .dependOnClassesThat(types("org.joda.money..")));
        rules.put(
                "only measure knows Indriya",
                outside("measure").dependOnClassesThat(types("tech.units..", "tech.uom..", "javax.measure.spi..")));
        rules.put(
                "only tables knows Commons CSV", outside("tables").dependOnClassesThat(types("org.apache.commons..")));
        rules.put("only report knows Jackson", outside("report").dependOnClassesThat(types("tools.jackson..")));
        rules.put(
                "only harvest and pricing know Hipparchus",
                outside("harvest", "pricing").dependOnClassesThat(types("org.hipparchus..")));
        rules.put(
                "only tables, brewery and report know the file system",
                outside("tables", "brewery", "report")
                        .dependOnClassesThat(types(
                                "java.nio.file.Files",
                                "java.nio.file.FileSystem",
                                "java.nio.file.FileSystems",
                                "java.nio.channels.FileChannel",
                                "java.io.File",
                                "java.io.FileInputStream",
                                "java.io.FileOutputStream",
                                "java.io.FileReader",
                                "java.io.FileWriter",
                                "java.io.RandomAccessFile")));
        rules.put(
                "nobody knows the console",
                everywhere().dependOnClassesThat(types("jdk.jshell..", "org.jline..", "picocli..", "java.io.Console")));
    }

    private static void purity(Map<String, ArchRule> rules) {
        rules.put(
                "nobody prints",
                everywhere()
                        .accessTargetWhere(members(
                                "java.lang.System#out",
                                "java.lang.System#err",
                                "java.lang.System#in",
                                "java.lang.Throwable#printStackTrace")));
        rules.put(
                "nobody logs",
                everywhere()
                        .dependOnClassesThat(types("java.util.logging..", "java.lang.System$Logger", "org.slf4j..")));
        rules.put("nobody keeps preferences", everywhere().dependOnClassesThat(types("java.util.prefs..")));
        rules.put(
                "nobody reads the clock",
                everywhere()
                        .accessTargetWhere(members(
                                "java.time..#now",
                                "java.lang.System#currentTimeMillis",
                                "java.lang.System#nanoTime",
                                "java.time.ZoneId#systemDefault"))
                        .orShould()
                        .dependOnClassesThat(types(
                                "java.time.Clock",
                                "java.time.InstantSource",
                                "java.util.Date",
                                "java.util.Calendar",
                                "java.util.TimeZone")));
        rules.put(
                "nobody takes the locale of the machine",
                everywhere()
                        .accessTargetWhere(members("java.util.Locale#getDefault", "java.lang.String#formatted"))
                        .orShould()
                        .accessTargetWhere(withoutLocale(
                                "java.lang.String#format",
                                "java.lang.String#toLowerCase",
                                "java.lang.String#toUpperCase",
                                "java.util.Formatter#<init>",
                                "java.io.PrintWriter#format",
                                "java.io.PrintWriter#printf",
                                "java.time.format.DateTimeFormatter#ofPattern",
                                "java.text.NumberFormat#getInstance",
                                "java.text.NumberFormat#getNumberInstance",
                                "java.text.NumberFormat#getIntegerInstance",
                                "java.text.NumberFormat#getPercentInstance",
                                "java.text.NumberFormat#getCurrencyInstance")));
        rules.put(
                "nobody looks at the machine around it",
                everywhere()
                        .accessTargetWhere(members(
                                "java.lang.System#getenv",
                                "java.lang.System#getProperty",
                                "java.lang.System#getProperties",
                                "java.lang.System#lineSeparator",
                                "java.lang.System#exit",
                                "java.lang.Runtime#getRuntime")));
        rules.put(
                "nobody throws dice without a seed",
                everywhere()
                        .accessTargetWhere(members("java.lang.Math#random", "java.util.UUID#randomUUID"))
                        .orShould()
                        .callConstructor("java.util.Random")
                        .orShould()
                        .callConstructor("java.util.SplittableRandom")
                        .orShould()
                        .dependOnClassesThat(types("java.util.concurrent.ThreadLocalRandom", "java.security..")));
        rules.put(
                "no static field changes", fields().that().areStatic().should().beFinal());
        rules.put(
                "no static field holds what changes",
                noFields()
                        .that()
                        .areStatic()
                        .should()
                        .haveRawType(describe("a type that changes", ArchitectureRules::changes)));
        rules.put(
                "no static array is handed out",
                fields().that()
                        .areStatic()
                        .and()
                        .haveRawType(describe("an array", JavaClass::isArray))
                        .and()
                        .doNotHaveModifier(JavaModifier.SYNTHETIC)
                        .should()
                        .bePrivate());
    }

    private static void traps(Map<String, ArchRule> rules) {
        rules.put(
                "units are neither parsed nor printed by Indriya",
                everywhere()
                        .dependOnClassesThat(types("tech.units.indriya.format..", "javax.measure.format.."))
                        .orShould()
                        .accessTargetWhere(members("tech.units.indriya.AbstractUnit#parse"))
                        .orShould()
                        .callMethod(
                                "tech.units.indriya.quantity.Quantities", "getQuantity", CharSequence.class.getName()));
        rules.put(
                "the shared state of Indriya is left alone",
                everywhere()
                        .dependOnClassesThat(types("tech.units.indriya.function.Calculus"))
                        .orShould()
                        .accessTargetWhere(describe("converters by scale", ArchitectureRules::convertsByScale)));
    }

    private static ClassesShould everywhere() {
        return noClasses().should();
    }

    private static ClassesShould inside(String name) {
        return noClasses().that().resideInAPackage("costrel." + name).should();
    }

    private static ClassesShould outside(String... names) {
        return noClasses().that().resideOutsideOfPackages(in(List.of(names))).should();
    }

    private static String[] in(List<String> names) {
        return names.stream().map(name -> "costrel." + name).toArray(String[]::new);
    }

    /** Classes by full name, or all of a package and those under it where the name ends in two dots. */
    private static DescribedPredicate<JavaClass> types(String... names) {
        return describe(
                "one of " + String.join(", ", names),
                type -> List.of(names).stream().anyMatch(name -> is(type, name)));
    }

    private static boolean is(JavaClass type, String name) {
        return name.endsWith("..")
                ? PackageMatcher.of(name).matches(type.getPackageName())
                : type.getName().equals(name);
    }

    /** Methods, constructors and fields as {@code owner#name}, of the owner or anything that extends it. */
    private static DescribedPredicate<JavaAccess<?>> members(String... names) {
        return describe(
                "one of " + String.join(", ", names),
                access -> List.of(names).stream().anyMatch(name -> touches(access, name)));
    }

    private static DescribedPredicate<JavaAccess<?>> withoutLocale(String... names) {
        return describe(
                "one of " + String.join(", ", names) + " without a locale",
                access -> members(names).test(access) && !takes(access, Locale.class.getName()));
    }

    private static boolean touches(JavaAccess<?> access, String name) {
        int hash = name.indexOf('#');
        String owner = name.substring(0, hash);
        JavaClass found = access.getTargetOwner();
        return access.getTarget().getName().equals(name.substring(hash + 1))
                && (is(found, owner) || found.isAssignableTo(owner));
    }

    private static boolean takes(JavaAccess<?> access, String type) {
        return access.getTarget() instanceof CodeUnitAccessTarget target
                && target.getRawParameterTypes().stream()
                        .anyMatch(parameter -> parameter.getName().equals(type));
    }

    private static boolean convertsByScale(JavaAccess<?> access) {
        return access.getTarget().getName().startsWith("getConverterTo")
                && takes(access, "javax.measure.Quantity$Scale");
    }

    private static boolean changes(JavaClass type) {
        return List.of(
                        "java.util.AbstractCollection",
                        "java.util.AbstractMap",
                        "java.lang.StringBuilder",
                        "java.lang.ThreadLocal",
                        "java.text.Format",
                        "java.util.Random",
                        "java.util.concurrent.atomic.AtomicBoolean",
                        "java.util.concurrent.atomic.AtomicInteger",
                        "java.util.concurrent.atomic.AtomicLong",
                        "java.util.concurrent.atomic.AtomicReference",
                        "java.util.concurrent.ConcurrentMap")
                .stream()
                .anyMatch(type::isAssignableTo);
    }
}
