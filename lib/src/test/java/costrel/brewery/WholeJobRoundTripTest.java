package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.measure.Amounts;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe;
import costrel.recipe.Resolver;
import costrel.scaling.Gyle;
import costrel.scaling.Scaler;
import costrel.tables.CsvSource;
import costrel.tables.RecipeReader;
import costrel.tables.RecipeWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A beer of the sample brewery scaled to the other plant, written down there as a recipe, read from that text and brewed again:
 * the same gyle on the same plant, and the recipe that it came from at home.
 */
class WholeJobRoundTripTest {
    private static final Brewery LANTERNFOLD = Brewery.open(LanternfoldTest.FOLDER);
    private static final long SEED = Long.getLong("seed", 1736L);
    private static final double RELATIVE = 1e-8;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static final List<String> BREWED =
            List.of("Tallow Mild", "Wickgate Bitter", "Haymoth Golden", "Oatlamp Stout", "Snuffer Strong");

    /** What was brewed, through the text of a recipe file; goods are found again by their names on the day. */
    private static Gyle again(Gyle gyle, String plant, double litres) {
        Recipe written = Scaler.asBrewed(gyle).recipe();
        Recipe read = RecipeReader.read(CsvSource.text("written.csv", RecipeWriter.text(written)))
                .orThrow();
        assertEquals(written, read);
        ResolvedRecipe resolved = Resolver.resolve(read, LANTERNFOLD.catalogue(), Optional.of(DAY));
        return Scaler.scale(
                Scaler.read(resolved, Optional.of(LANTERNFOLD.plant(gyle.plant().name()))),
                LANTERNFOLD.plant(plant),
                Amounts.ofLitres(litres),
                Scaler.Options.usual());
    }

    private static void assertSame(Gyle expected, Gyle found, String at) {
        assertEquals(expected.og().excessDegrees(), found.og().excessDegrees(), RELATIVE * 100, at + ", OG");
        assertEquals(expected.bitterness().ebu(), found.bitterness().ebu(), RELATIVE * 100, at + ", EBU");
        for (int i = 0; i < expected.grist().size(); i++) {
            Gyle.Grist line = expected.grist().get(i);
            assertEquals(
                    line.kg(),
                    found.grist().get(i).kg(),
                    RELATIVE * line.kg(),
                    at + ", " + line.material().name());
        }
        for (int i = 0; i < expected.hops().size(); i++) {
            Gyle.Hop line = expected.hops().get(i);
            assertEquals(line.kg(), found.hops().get(i).kg(), RELATIVE * Math.max(1, line.kg()), at + ", hop " + i);
        }
        for (int i = 0; i < expected.additions().size(); i++) {
            Gyle.Weight line = expected.additions().get(i);
            assertEquals(
                    line.amount(),
                    found.additions().get(i).amount(),
                    RELATIVE * Math.max(1, line.amount()),
                    at + ", " + line.name());
        }
        for (int i = 0; i < expected.yeasts().size(); i++) {
            Gyle.Weight line = expected.yeasts().get(i);
            assertEquals(line.amount(), found.yeasts().get(i).amount(), RELATIVE * line.amount(), at + ", yeast");
        }
        assertEquals(
                expected.colours().get(0).colour().ebc(),
                found.colours().get(0).colour().ebc(),
                RELATIVE * 100,
                at + ", EBC");
        assertEquals(
                expected.beer().rackedL(),
                found.beer().rackedL(),
                RELATIVE * expected.beer().rackedL(),
                at + ", racked");
    }

    @Test
    void a_gyle_written_down_as_a_recipe_is_brewed_again_and_carried_home() {
        for (int i = 0; i < 25; i++) {
            long seed = SEED + i;
            Random random = new Random(seed);
            for (String beer : BREWED) {
                double litres = 2500 + 3000 * random.nextDouble();
                double homeLitres = 400 + 500 * random.nextDouble();
                String at = "-Dseed=" + seed + ": " + beer + ", " + litres + " L";
                Brew brew = LANTERNFOLD.brew(beer).day(DAY);
                Gyle away = brew.on("Main").length(Amounts.ofLitres(litres)).gyle();
                assertSame(away, again(away, "Main", litres), at);
                Gyle home =
                        brew.on("Pilot").length(Amounts.ofLitres(homeLitres)).gyle();
                assertSame(home, again(again(away, "Main", litres), "Pilot", homeLitres), at + ", at home");
            }
        }
    }
}
