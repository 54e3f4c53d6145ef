package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.measure.QuantityText;
import costrel.measure.Share;
import costrel.recipe.Recipe;
import costrel.report.BoilClock;
import costrel.tables.CsvSource;
import costrel.tables.RecipeReader;
import costrel.tables.RecipeWriter;
import costrel.wort.Gravity;
import costrel.wort.TemperatureCourse;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** What damaged texts are tried on, and the sound texts that the damage begins with. */
final class Trials {

    /** Everything that reads an amount. */
    static final List<Consumer<String>> READERS = List.of(
            Trials::quantity,
            QuantityText::mass,
            QuantityText::volume,
            QuantityText::time,
            QuantityText::temperature,
            QuantityText::massConcentration,
            QuantityText::flowRate,
            Share::parse,
            Trials::gravity,
            TemperatureCourse::parse,
            BoilClock::parse,
            text -> QuantityText.convert(text, "L"),
            text -> QuantityText.convert("1 kg", text));

    private Trials() {}

    static List<String> amounts() throws IOException {
        try (InputStream texts = Objects.requireNonNull(Trials.class.getResourceAsStream("texts.txt"))) {
            return new String(texts.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        }
    }

    static List<String> recipes() throws IOException {
        List<String> recipes = new ArrayList<>();
        try (Stream<Path> files = Files.list(LanternfoldTest.FOLDER.resolve("recipes"))) {
            for (Path file : files.sorted().toList()) {
                recipes.add(Files.readString(file));
            }
        }
        return recipes;
    }

    /** Brews and costs a recipe at the sample brewery, and writes it out and reads it again. */
    static void brew(Brewery brewery, Recipe recipe) {
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
        Recipe again = RecipeReader.read(CsvSource.text("t.csv", RecipeWriter.text(recipe)))
                .orThrow();
        assertEquals(recipe, again, "parse(print(x))");
        Brew brew = with.brew(recipe.name()).on("Main").length("24 brl").day(LanternfoldTest.DAY);
        double pence = brew.cost().total().getAmount().doubleValue();
        assertTrue(pence > 0, "a cost");
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
}
