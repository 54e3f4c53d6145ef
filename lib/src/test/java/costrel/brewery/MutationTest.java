package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.measure.QuantityText;
import costrel.measure.Share;
import costrel.recipe.Recipe;
import costrel.report.BoilClock;
import costrel.tables.CsvSource;
import costrel.tables.Loaded;
import costrel.tables.RecipeReader;
import costrel.tables.RecipeWriter;
import costrel.wort.Gravity;
import costrel.wort.TemperatureCourse;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Text that was right once, damaged at random: what comes of it is a value or a refusal with a reason, and soon. A few
 * thousand at each build; {@code -Pfuzz} takes a million of each.
 */
class MutationTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final long LONGEST_NANOS = 2_000_000_000;
    private static final String[] SPLICES = {
        "",
        " ",
        ",",
        ".",
        "-",
        "+",
        "0",
        "9",
        "e9",
        "e308",
        "%",
        "/",
        "°",
        "½",
        "£",
        "\"",
        "'",
        "\n",
        "\u0000",
        "\u202e",
        "\ud800",
        "NaN",
        "Infinity",
        "kg",
        "brl",
        "1.",
        "²",
        "٣",
        "=",
        "#",
        "999999999999"
    };

    private static final List<Consumer<String>> READERS = List.of(
            MutationTest::quantity,
            QuantityText::mass,
            QuantityText::volume,
            QuantityText::time,
            QuantityText::temperature,
            QuantityText::massConcentration,
            QuantityText::flowRate,
            Share::parse,
            MutationTest::gravity,
            TemperatureCourse::parse,
            BoilClock::parse,
            text -> QuantityText.convert(text, "L"),
            text -> QuantityText.convert("1 kg", text));

    private static long seed() {
        return Long.getLong("seed", 18510501);
    }

    /** What is printed reads as what it was printed of. */
    private static void quantity(String text) {
        String printed = QuantityText.print(QuantityText.any(text));
        assertEquals(printed, QuantityText.print(QuantityText.any(printed)), "parse(print(x))");
    }

    private static void gravity(String text) {
        String printed = Gravity.parse(text).toString();
        assertEquals(printed, Gravity.parse(printed).toString(), "parse(print(x))");
    }

    private static String damaged(String text, Random random) {
        StringBuilder damaged = new StringBuilder(text);
        for (int i = random.nextInt(4); i >= 0; i--) {
            int at = random.nextInt(damaged.length() + 1);
            int end = Math.min(damaged.length(), at + random.nextInt(4));
            switch (random.nextInt(4)) {
                case 0 -> damaged.delete(at, end);
                case 1 -> damaged.insert(at, damaged.substring(at, end));
                case 2 -> damaged.replace(at, end, SPLICES[random.nextInt(SPLICES.length)]);
                default ->
                    damaged.insert(at, (char) (random.nextBoolean() ? random.nextInt(128) : random.nextInt(65536)));
            }
        }
        return damaged.toString();
    }

    /** Runs a reader on a text; anything but a value and a refusal with a reason, or more than a moment, is a failure. */
    private static void check(Runnable read, String text, long seed) {
        long began = System.nanoTime();
        try {
            read.run();
        } catch (IllegalArgumentException refusal) {
            if (refusal.getMessage() == null || refusal.getMessage().isBlank()) {
                throw new AssertionError("-Dseed=" + seed + ", no reason for refusing: " + text, refusal);
            }
        } catch (RuntimeException | Error e) {
            throw new AssertionError("-Dseed=" + seed + ", from:\n" + text, e);
        }
        assertTrue(System.nanoTime() - began < LONGEST_NANOS, () -> "-Dseed=" + seed + ", too slow: " + text);
    }

    @Test
    void damaged_amounts_are_read_or_refused() throws IOException {
        long seed = seed();
        Random random = new Random(seed);
        List<String> corpus;
        try (InputStream texts = Objects.requireNonNull(MutationTest.class.getResourceAsStream("texts.txt"))) {
            corpus = new String(texts.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        }
        for (String text : corpus) {
            READERS.forEach(reader -> check(() -> reader.accept(text), text, seed));
        }
        for (int i = Integer.getInteger("fuzz.runs", 3_000); i > 0; i--) {
            String text = damaged(corpus.get(random.nextInt(corpus.size())), random);
            READERS.forEach(reader -> check(() -> reader.accept(text), text, seed));
        }
    }

    @Test
    void damaged_recipes_are_brewed_and_costed_or_refused() throws IOException {
        long seed = seed();
        Random random = new Random(seed);
        Brewery brewery = Brewery.open(LanternfoldTest.FOLDER);
        List<String> corpus = new ArrayList<>();
        try (Stream<Path> files = Files.list(LanternfoldTest.FOLDER.resolve("recipes"))) {
            for (Path file : files.sorted().toList()) {
                corpus.add(Files.readString(file));
            }
        }
        int brewed = 0;
        for (int i = Integer.getInteger("fuzz.runs", 400); i > 0; i--) {
            String text = damaged(corpus.get(random.nextInt(corpus.size())), random);
            Loaded<Recipe> loaded = RecipeReader.read(CsvSource.text("t.csv", text));
            if (loaded.sound()) {
                Recipe recipe = loaded.orThrow();
                check(() -> brew(brewery, recipe), text, seed);
                check(() -> assertEquals(recipe, again(recipe), "parse(print(x))"), text, seed);
                brewed++;
            }
        }
        assertTrue(brewed > 0, "-Dseed=" + seed);
    }

    private static Recipe again(Recipe recipe) {
        return RecipeReader.read(CsvSource.text("t.csv", RecipeWriter.text(recipe)))
                .orThrow();
    }

    private static void brew(Brewery brewery, Recipe recipe) {
        Brewery with = new Brewery(
                brewery.settings(),
                brewery.catalogue(),
                Map.of(recipe.name(), recipe),
                brewery.plants(),
                brewery.prices(),
                brewery.rates(),
                brewery.containers(),
                brewery.packages(),
                Map.of(recipe.name(), brewery.packagingPlan("Wickgate Bitter")),
                brewery.duty(),
                brewery.production(),
                List.of(),
                brewery.hopRules(),
                brewery.alphaMethodFactors(),
                brewery.assumed(),
                List.of(),
                brewery.stock(),
                brewery.standardCosts(),
                brewery.containerCharges());
        Brew brew = with.brew(recipe.name()).on("Main").length("24 brl").day(DAY);
        double pence = brew.cost().total().getAmount().doubleValue();
        assertTrue(pence > 0, "a cost");
    }
}
