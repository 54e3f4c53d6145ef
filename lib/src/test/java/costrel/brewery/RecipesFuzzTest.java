package costrel.brewery;

import com.code_intelligence.jazzer.junit.FuzzTest;
import costrel.Answered;
import costrel.recipe.Recipe;
import costrel.tables.CsvSource;
import costrel.tables.Loaded;
import costrel.tables.RecipeReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.provider.MethodSource;

/** Any bytes as a recipe's file: where it is sound, its names are looked up in the sample brewery, and it is brewed and costed. */
class RecipesFuzzTest {

    private static final Brewery LANTERNFOLD = Brewery.open(LanternfoldTest.FOLDER);

    static Stream<byte[]> recipes() throws IOException {
        return Trials.recipes().stream().map(text -> text.getBytes(StandardCharsets.UTF_8));
    }

    /** Classes are read and made before the time is taken. */
    @BeforeAll
    static void brewOnce() throws IOException {
        for (byte[] recipe : recipes().toList()) {
            Trials.brew(LANTERNFOLD, read(recipe).orThrow());
        }
    }

    private static Loaded<Recipe> read(byte[] bytes) {
        return RecipeReader.read(CsvSource.stream("t.csv", new ByteArrayInputStream(bytes)));
    }

    @MethodSource("recipes")
    @FuzzTest(maxDuration = "")
    void a_recipe_is_brewed_and_costed_or_refused(byte[] bytes) {
        Answered.byValueOrRefusal(
                () -> Trials.brew(LANTERNFOLD, read(bytes).orThrow()), () -> new String(bytes, StandardCharsets.UTF_8));
    }
}
