package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.buying.NoPriceException;
import costrel.cost.ContainerCost;
import costrel.cost.CostBasis;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.scaling.Gyle;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Any unit in, same beer out: the whole folder of the sample brewery written in units drawn at random, each beer brewed and
 * costed from it, and every figure held to what the folder gives as it ships.
 */
class WholeJobUnitsTest {
    private static final long SEED = Long.getLong("seed", 454609L);
    private static final int FOLDERS = 8;

    /** Sixteen digits are written; a figure of a gyle comes out of a few dozen of them. */
    private static final double RELATIVE = 1e-10;

    /** A weight that is a round number of kilograms often costs an exact half penny, which a sixteenth digit tips. */
    private static final long A_PENNY = 1;

    private static final long PENNIES_IN_ALL = 3;

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private int costed;

    @Test
    void whatever_units_a_folder_is_written_in_every_beer_weighs_and_costs_the_same(@TempDir Path folder)
            throws IOException {
        List<CostBasis> bases = List.of(CostBasis.values());
        Brewery shipped = Brewery.open(LanternfoldTest.FOLDER);
        for (int i = 0; i < FOLDERS; i++) {
            long seed = SEED + i;
            Random random = new Random(seed);
            Path inner = Files.createDirectory(folder.resolve("seed" + seed));
            Path copy = SampleFolder.copiedInto(inner);
            OtherUnits units = new OtherUnits(random);
            units.rewrite(copy);
            assertTrue(units.changed() > 300, "-Dseed=" + seed + ": only " + units.changed() + " cells changed");
            Brewery other = Brewery.open(copy);
            for (String beer : shipped.recipes().values().stream()
                    .map(recipe -> recipe.name())
                    .toList()) {
                String plant = beer.equals("Trimwick Pale") || random.nextBoolean() ? "Main" : "Pilot";
                String litres = length(random, plant);
                CostBasis basis = bases.get(random.nextInt(bases.size()));
                String at = "-Dseed=" + seed + ": " + beer + ", " + litres + " on " + plant + ", " + basis;
                assertSame(
                        of(shipped.brew(beer), plant, litres, basis), of(other.brew(beer), plant, litres, basis), at);
            }
        }
        assertTrue(
                costed > FOLDERS, "-Dseed=" + SEED + ": " + costed + " beers of " + FOLDERS + " folders were costed");
    }

    /** Not a round one: 5 g/hL on 650 L is half way between two steps of 5 g. */
    private static String length(Random random, String plant) {
        int millilitres =
                plant.equals("Main") ? 3_000_000 + random.nextInt(2_000_000) : 500_000 + random.nextInt(400_000);
        return BigDecimal.valueOf(millilitres, 3) + " L";
    }

    private static Brew of(Brew brew, String plant, String litres, CostBasis basis) {
        return brew.on(plant).length(litres).day(DAY).basis(basis);
    }

    private void assertSame(Brew shipped, Brew other, String at) {
        Map<String, Double> expected = figures(shipped.gyle());
        Map<String, Double> found = figures(other.gyle());
        assertEquals(expected.keySet(), found.keySet(), at);
        expected.forEach((what, figure) -> assertEquals(
                figure,
                found.getOrDefault(what, Double.NaN),
                RELATIVE * Math.max(1, Math.abs(figure)),
                () -> at + ", " + what));
        Map<String, Long> pence = pence(shipped);
        Map<String, Long> pennies = pence(other);
        costed += pence.containsKey("total") ? 1 : 0;
        assertEquals(pence.keySet(), pennies.keySet(), at);
        pence.forEach((what, expectedPence) -> {
            // two containers and the total gather the pennies of the lines
            long most = what.contains(" × ") || what.equals("total") ? PENNIES_IN_ALL : A_PENNY;
            long off = Math.abs(expectedPence - pennies.getOrDefault(what, Long.MIN_VALUE));
            assertTrue(off <= most, () -> at + ", " + what + ": " + off + " pence off " + expectedPence);
        });
    }

    private static Map<String, Double> figures(Gyle gyle) {
        Map<String, Double> figures = new LinkedHashMap<>();
        figures.put("collected", gyle.collectedL());
        figures.put("OG", gyle.og().excessDegrees());
        figures.put("cast", gyle.castDegrees());
        figures.put("copper up", gyle.copperUpDegrees());
        figures.put("mash efficiency", gyle.mashEfficiency());
        figures.put("EBU", gyle.bitterness().ebu());
        for (Gyle.Grist line : gyle.grist()) {
            figures.put(line.material().name() + " kg", line.kg());
            figures.put(line.material().name() + " weighed", line.weighedKg());
        }
        for (int i = 0; i < gyle.hops().size(); i++) {
            Gyle.Hop hop = gyle.hops().get(i);
            figures.put("hop " + i + " kg", hop.kg());
            figures.put("hop " + i + " weighed", hop.weighedKg());
            figures.put("hop " + i + " EBU", hop.ebu());
        }
        for (List<Gyle.Weight> weights : List.of(gyle.yeasts(), gyle.additions())) {
            for (int i = 0; i < weights.size(); i++) {
                figures.put(weights.get(i).name() + " " + i, weights.get(i).amount());
            }
        }
        gyle.colours()
                .forEach(colour -> figures.put(colour.rule(), colour.colour().ebc()));
        gyle.liquor().ifPresent(liquor -> {
            figures.put("liquor", liquor.totalL());
            figures.put("mash liquor", liquor.mashL());
            figures.put("strike heat", liquor.strikeC().orElse(-1));
        });
        figures.put("racked", gyle.beer().rackedL());
        gyle.weighed().ifPresent(weighed -> figures.put("OG as weighed", weighed.ogDegrees()));
        return figures;
    }

    /** Every line in pence, or that there is no sheet: the store may hold too little of a malt. */
    private static Map<String, Long> pence(Brew brew) {
        Map<String, Long> pence = new LinkedHashMap<>();
        try {
            CostSheet sheet = brew.cost();
            for (CostLine line : sheet.lines()) {
                pence.put(pence.size() + " " + line.item(), line.value().getAmountMinorLong());
            }
            for (ContainerCost container : sheet.containers()) {
                pence.put(
                        container.count() + " × " + container.container().name(),
                        container.total().getAmountMinorLong());
            }
            pence.put("total", sheet.total().getAmountMinorLong());
        } catch (NoPriceException refused) {
            pence.put("refused", 0L);
        }
        return pence;
    }
}
