package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.HopUse;
import costrel.recipe.Amount;
import costrel.recipe.Holds;
import costrel.recipe.Recipe;
import costrel.wort.Gravity;
import costrel.wort.TemperatureCourse;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class RecipeFilesTest {

    /** Litres of a UK barrel: Weights and Measures Act 1985, 36 gallons of 4.54609 L. */
    private static final double BARREL_L = 163.65924;

    private static final String HEADINGS = "part,item,amount,use,time,holds,lot\n";

    @Test
    void a_recipe_as_brewed_is_read() {
        Recipe recipe = read("""
                # as brewed
                beer,name,Cresset Bitter,,,,
                beer,plant,Shed,,,,
                beer,brewed,2026-03-17,,,,
                beer,brew length,5 brl,,,,
                beer,apparent attenuation,79 %,,,,
                beer,declared strength,3.9 %,,,,
                beer,condition,1.1 volumes,,,,
                beer,liquor:grist,2.5 L/kg,,,,
                beer,initial heat,149 °F,,,,
                beer,boil,1 h 15 min,,,,
                beer,liquoring back,8 %,,,,
                beer,stand,hold 98 °C 20 min,,,,
                beer,tank time,6 d,,,,
                beer,hold,colour,,,,
                grist,pale ale malt,110.5 kg,mash,,,
                grist,crystal 150,8 kg,,,colour,
                grist,brewing invert sugar,5 kg,copper,20 min,,
                hops,Challenger,1.1 kg,copper,start,,CH-1
                hops,Golding,10 oz,Copper,15 min,,alpha 4.4 %
                hops,Golding,1.5 oz/brl,hot stand,,oil,GO-2; alpha 4.6 %
                hops,Fuggle,3 lb,dry hop in cask,,,
                yeast,ale yeast,0.9 million/mL/°P,,,,
                liquor,gypsum,34 g/hL,all liquor,,,
                aid,isinglass finings,2.5 pt/brl,cask,,,
                primings,sucrose,400 g/hL,,,,
                """);
        assertEquals("Cresset Bitter", recipe.name());
        assertEquals(Optional.of("Shed"), recipe.home());
        assertEquals(Optional.of(LocalDate.of(2026, 3, 17)), recipe.brewed());
        assertEquals(5 * BARREL_L, recipe.brewLengthL().orElseThrow(), 1e-9);
        assertEquals(
                new Recipe.Targets(
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(0.79),
                        OptionalDouble.of(3.9),
                        OptionalDouble.of(1.1)),
                recipe.targets());
        assertEquals(65, recipe.method().initialHeatC().orElseThrow(), 1e-9, "149 °F are 65 °C");
        assertEquals(75, recipe.method().boilMinutes(), 1e-9);
        assertEquals(0.92, recipe.method().castShare(), 1e-15);
        assertEquals(Recipe.GristHold.COLOUR, recipe.method().hold());
        assertEquals(OptionalDouble.of(6), recipe.method().tankDays());
        assertEquals(
                Optional.of(TemperatureCourse.of(new TemperatureCourse.Hold(98, 20))),
                recipe.method().stand());
        assertEquals(
                List.of(
                        new Recipe.Grist("pale ale malt", new Amount.OfMass(110.5), OptionalDouble.empty(), false),
                        new Recipe.Grist("crystal 150", new Amount.OfMass(8), OptionalDouble.empty(), true),
                        new Recipe.Grist("brewing invert sugar", new Amount.OfMass(5), OptionalDouble.of(20), false)),
                recipe.grist());
        Recipe.Hop bittering = recipe.hops().get(0);
        assertEquals(new HopUse.Copper(75), bittering.use(), "start is the start of the boil");
        assertEquals(Optional.of("CH-1"), bittering.lot());
        assertEquals(Holds.BITTERNESS, bittering.holds());
        Recipe.Hop late = recipe.hops().get(1);
        assertEquals(OptionalDouble.of(0.044), late.statedAlpha());
        assertEquals(Optional.empty(), late.lot());
        assertEquals(Holds.DOSE, late.holds());
        // An avoirdupois ounce is a sixteenth of 0.45359237 kg: Weights and Measures Act 1985.
        assertEquals(10 * 0.45359237 / 16, ((Amount.OfMass) late.amount()).kilograms(), 1e-12);
        Recipe.Hop stand = recipe.hops().get(2);
        assertEquals(new HopUse.HotStand(Double.POSITIVE_INFINITY), stand.use());
        assertEquals(Holds.OIL, stand.holds());
        assertEquals(Optional.of("GO-2"), stand.lot());
        assertEquals(OptionalDouble.of(0.046), stand.statedAlpha());
        assertEquals(new HopUse.DryHopCask(), recipe.hops().get(3).use());
        assertEquals(List.of(new Recipe.Yeast("ale yeast", new Amount.OfCells(900_000))), recipe.yeasts());
        assertEquals(Recipe.Into.ALL_LIQUOR, recipe.additions().get(0).into());
        assertEquals(Recipe.Into.CASK, recipe.additions().get(1).into());
        assertEquals(
                new Recipe.Addition("sucrose", Recipe.Into.PRIMINGS, new Amount.OfRate(400)),
                recipe.additions().get(2));
    }

    @Test
    void a_recipe_of_targets_is_read() {
        Recipe recipe = read("""
                beer,name,Trimmer,,,,
                beer,OG,1.040,,,,
                beer,FG,1.008,,,,
                beer,bitterness,28 EBU,,,,
                beer,boil,60 min,,,,
                grist,pale ale malt,95 %,,,,
                grist,wheat malt,5 %,,,,
                hops,Target,28 EBU,copper,60 min,,
                hops,Cascade,1.5 mL oil/hL,dry hop in tank,,,
                """);
        assertEquals(Optional.of(Gravity.ofDegrees(40)), recipe.targets().og());
        // FG = OG (1 - A) on excess degrees: 8 = 40 (1 - 0.8).
        assertEquals(0.8, recipe.targets().apparentAttenuation().orElseThrow(), 1e-12);
        assertEquals(new Amount.OfGrist(0.95), recipe.grist().get(0).amount());
        assertEquals(new Amount.OfBitterness(28), recipe.hops().get(0).amount());
        assertEquals(new Amount.OfOil(1.5), recipe.hops().get(1).amount());
        assertEquals(1, recipe.method().castShare(), "nothing is liquored back unless it is stated");
    }

    @Test
    void a_share_over_the_whole_is_told_without_the_noise_of_a_double() {
        // 1.1 × 100 is 110.00000000000001 in doubles.
        for (Executable tried : List.<Executable>of(
                () -> new Amount.OfGrist(1.1), () -> new PackagingPlanReader.Planned("firkin", 1.1))) {
            String told = String.valueOf(
                    assertThrows(IllegalArgumentException.class, tried).getMessage());
            assertTrue(told.endsWith("found 110 %"), told);
        }
    }

    @Test
    void a_written_recipe_reads_back_equal() {
        long seed = Long.getLong("seed", 19790405);
        Random random = new Random(seed);
        for (int i = 0; i < 400; i++) {
            Recipe recipe = new RandomRecipe(random).recipe();
            String text = RecipeWriter.text(recipe);
            int number = i;
            Loaded<Recipe> again = RecipeReader.read(CsvSource.text("saved.csv", text));
            assertEquals(List.of(), again.problems(), () -> "-Dseed=" + seed + ", case " + number + "\n" + text);
            assertEquals(recipe, again.orThrow(), () -> "-Dseed=" + seed + ", case " + number + "\n" + text);
        }
    }

    @Test
    void what_stands_in_a_recipe_is_never_run() {
        Recipe recipe = read("""
                beer,name,"=cmd|' /C calc'!A0",,,,
                beer,plant,${jndi:ldap://x},,,,
                beer,boil,60 min,,,,
                grist,System.exit(1);,1 kg,,,,
                """);
        assertEquals("=cmd|' /C calc'!A0", recipe.name());
        assertEquals("System.exit(1);", recipe.grist().get(0).material());
        assertEquals(Optional.of("${jndi:ldap://x}"), recipe.home());
    }

    private static Recipe read(String rows) {
        return RecipeReader.read(CsvSource.text("recipe.csv", HEADINGS + rows)).orThrow();
    }

    /** A recipe with figures of every size and names that need care. */
    private static final class RandomRecipe {
        private static final List<String> NAMES = List.of(
                "pale ale malt",
                "Brewer's Gold",
                "=odd",
                "'=odder",
                "a, b",
                "say \"so\"",
                "-3",
                "#1",
                "käse; ünd",
                "1e5");
        private final Random random;

        RandomRecipe(Random random) {
            this.random = random;
        }

        /** All by mass, or shares that make a whole grist. */
        private List<Recipe.Grist> grist() {
            boolean byMass = random.nextBoolean();
            double left = 1;
            List<Recipe.Grist> grist = new ArrayList<>();
            for (int more = random.nextInt(4); more >= 0; more--) {
                double share = more == 0 ? left : left * figure(0.9);
                left -= share;
                Amount amount = byMass ? mass() : new Amount.OfGrist(share);
                grist.add(new Recipe.Grist(name(), amount, maybeFigure(60), random.nextBoolean()));
            }
            return grist;
        }

        Recipe recipe() {
            double boil = 30 + figure(100);
            return new Recipe(
                    name(),
                    maybe(this::name),
                    maybe(() -> LocalDate.of(2026, 1, 1).plusDays(random.nextInt(1000))),
                    maybeFigure(5000),
                    new Recipe.Targets(
                            maybe(() -> Gravity.ofDegrees(figure(90))),
                            maybeFigure(80),
                            maybeFigure(1),
                            maybeFigure(12),
                            maybeFigure(3)),
                    new Recipe.Method(
                            maybeFigure(4),
                            maybeFigure(70),
                            boil,
                            0.5 + figure(0.5),
                            maybe(() -> TemperatureCourse.of(new TemperatureCourse.Linear(98, figure(97), figure(60)))),
                            maybeFigure(30),
                            random.nextBoolean() ? Recipe.GristHold.EXTRACT : Recipe.GristHold.COLOUR),
                    grist(),
                    some(() -> hop(boil)),
                    some(() ->
                            new Recipe.Yeast(name(), pick(List.of(mass(), rate(), new Amount.OfCells(figure(3e6)))))),
                    some(() -> new Recipe.Addition(
                            name(),
                            pick(List.of(Recipe.Into.values())),
                            pick(List.of(
                                    mass(),
                                    rate(),
                                    new Amount.OfVolume(figure(50)),
                                    new Amount.OfVolumeRate(figure(900)))))));
        }

        private Recipe.Hop hop(double boil) {
            HopUse use = pick(List.of(
                    new HopUse.Mash(),
                    new HopUse.FirstWort(),
                    new HopUse.Copper(random.nextDouble() * boil),
                    new HopUse.HotStand(figure(40)),
                    new HopUse.HotStand(Double.POSITIVE_INFINITY),
                    new HopUse.Hopback(),
                    new HopUse.DryHopTank(),
                    new HopUse.DryHopCask()));
            Amount amount = pick(List.of(
                    mass(),
                    rate(),
                    new Amount.OfOil(figure(3)),
                    use.isDryHop() ? mass() : new Amount.OfBitterness(figure(60))));
            return new Recipe.Hop(
                    name(), maybe(this::name), maybeFigure(0.2), use, amount, pick(List.of(Holds.values())));
        }

        private Amount mass() {
            return new Amount.OfMass(figure(200));
        }

        private Amount rate() {
            return new Amount.OfRate(figure(500));
        }

        private String name() {
            return pick(NAMES);
        }

        /** More than 0 and at most so much: round, in thirds, or with all its digits, sometimes tiny. */
        private double figure(double most) {
            return switch (random.nextInt(4)) {
                case 0 -> most / (1 + random.nextInt(9));
                case 1 -> most * (1 + random.nextInt(1000)) / 1000;
                case 2 -> most * 1e-9 * (1 + random.nextInt(9));
                default -> most * (1 - random.nextDouble());
            };
        }

        private OptionalDouble maybeFigure(double most) {
            return random.nextBoolean() ? OptionalDouble.of(figure(most)) : OptionalDouble.empty();
        }

        private <T> Optional<T> maybe(Supplier<T> thing) {
            return random.nextBoolean() ? Optional.of(thing.get()) : Optional.empty();
        }

        private <T> List<T> some(Supplier<T> thing) {
            List<T> some = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(4); i++) {
                some.add(thing.get());
            }
            return some;
        }

        private <T> T pick(List<? extends T> choices) {
            return choices.get(random.nextInt(choices.size()));
        }
    }
}
