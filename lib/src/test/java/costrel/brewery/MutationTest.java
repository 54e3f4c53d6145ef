package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Answered;
import costrel.recipe.Recipe;
import costrel.tables.CsvSource;
import costrel.tables.Loaded;
import costrel.tables.RecipeReader;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Text that was right once, damaged at random: what comes of it is a value or a refusal with a reason, and soon. The same few
 * thousand at each build; {@code AmountsFuzzTest} and its like look for damage that reaches further.
 */
class MutationTest {

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

    private static long seed() {
        return Long.getLong("seed", 18510501);
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

    private static void check(Runnable read, String text, long seed) {
        Answered.byValueOrRefusal(read, () -> "-Dseed=" + seed + ":\n" + text);
    }

    @Test
    void damaged_amounts_are_read_or_refused() throws IOException {
        long seed = seed();
        Random random = new Random(seed);
        List<String> corpus = Trials.amounts();
        for (String text : corpus) {
            Trials.READERS.forEach(reader -> check(() -> reader.accept(text), text, seed));
        }
        for (int i = 3_000; i > 0; i--) {
            String text = damaged(corpus.get(random.nextInt(corpus.size())), random);
            Trials.READERS.forEach(reader -> check(() -> reader.accept(text), text, seed));
        }
    }

    @Test
    void damaged_recipes_are_brewed_and_costed_or_refused() throws IOException {
        long seed = seed();
        Random random = new Random(seed);
        Brewery brewery = Brewery.open(LanternfoldTest.FOLDER);
        List<String> corpus = Trials.recipes();
        int brewed = 0;
        for (int i = 400; i > 0; i--) {
            String text = damaged(corpus.get(random.nextInt(corpus.size())), random);
            Loaded<Recipe> loaded = RecipeReader.read(CsvSource.text("t.csv", text));
            if (loaded.sound()) {
                Recipe recipe = loaded.orThrow();
                check(() -> Trials.brew(brewery, recipe), text, seed);
                brewed++;
            }
        }
        assertTrue(brewed > 0, "-Dseed=" + seed);
    }
}
