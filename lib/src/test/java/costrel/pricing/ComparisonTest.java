package costrel.pricing;

import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.dec;
import static costrel.pricing.Given.SEED;
import static costrel.pricing.Given.assertNear;
import static costrel.pricing.Given.bitter;
import static costrel.pricing.Given.keg;
import static costrel.pricing.Given.price;
import static costrel.pricing.Given.uses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.buying.PackUnit;
import costrel.buying.PriceRow;
import costrel.cost.BillGroup;
import costrel.cost.BillLine;
import costrel.cost.CostSheet;
import costrel.cost.PackageItem;
import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.packaging.PackagingShare;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** Why a pint costs more or less than another. */
class ComparisonTest {
    private static final BigDecimal LAST_DIGIT = dec("1e-25");

    /** No line is rounded by more than half a penny, the duty by less than a penny. */
    private static BigDecimal mostByRounding(CostSheet sheet) {
        BigDecimal money = BigDecimal.valueOf(sheet.lines().size(), 2);
        return money.divide(sheet.yieldChain().saleablePints(), Figures.SHOWN);
    }

    private static BigDecimal somewhat(Random random, double mean) {
        return BigDecimal.valueOf(mean * (0.7 + 0.6 * random.nextDouble())).setScale(4, RoundingMode.HALF_UP);
    }

    /** The invented bitter with everything about it moved, things left out and containers dropped. */
    private static Given.Gyle random(Random random) {
        Given.Gyle given = bitter();
        List<BillLine> bill = new ArrayList<>();
        for (BillLine line : given.bill()) {
            if (random.nextInt(5) > 0) {
                bill.add(uses(
                        line.group(),
                        line.item(),
                        somewhat(random, line.amount()).doubleValue()));
            }
        }
        List<PriceRow> prices = given.prices().stream()
                .map(row -> price(
                        row.item(),
                        row.pack().unit(),
                        somewhat(random, row.price().doubleValue()).toPlainString()))
                .toList();
        List<PackagingShare> plan = new ArrayList<>();
        double left = 1;
        for (PackagingShare share : given.plan()) {
            boolean last = share.container().name().contains("bottle");
            double part = last ? left : left * (0.2 + 0.5 * random.nextDouble());
            if (last || random.nextBoolean()) {
                plan.add(new PackagingShare(share.container(), part, 0.03 * random.nextDouble()));
                left -= part;
            }
        }
        return new Given.Gyle(
                given.collectedL() * (0.8 + 0.4 * random.nextDouble()),
                given.collectedL() * (0.6 + 0.2 * random.nextDouble()),
                BigDecimal.valueOf(28 + random.nextInt(60), 1).toPlainString(),
                5 + random.nextInt(20),
                bill,
                prices,
                given.rates(),
                plan,
                given.packages(),
                BigDecimal.valueOf(1 + random.nextInt(6000)));
    }

    private static Set<Effect> moved(Comparison comparison) {
        Set<Effect> effects = EnumSet.noneOf(Effect.class);
        comparison.effects().stream()
                .filter(effect -> effect.perPint().signum() != 0)
                .forEach(effect -> effects.add(effect.effect()));
        effects.remove(Effect.ROUNDING);
        return effects;
    }

    private static void assertAddsUp(ComparisonStatement statement, String which) {
        BigDecimal sum = BigDecimal.ZERO;
        for (ComparisonStatement.Row row : statement.rows()) {
            sum = sum.add(row.amount());
            BigDecimal lines = Pints.sum(
                    row.lines().stream().map(ComparisonStatement.Line::amount).toList());
            assertEquals(0, row.amount().compareTo(lines), which + ": " + row.effect());
        }
        assertEquals(0, statement.after().subtract(statement.before()).compareTo(sum), which);
    }

    @Test
    void the_effects_sum_to_the_difference_and_so_do_they_as_printed() {
        Random random = new Random(SEED);
        for (int i = 0; i < 150; i++) {
            CostSheet before = random(random).sheet();
            CostSheet after = random(random).sheet();
            Comparison comparison = Comparison.between(before, after);
            String which = "seed " + SEED + ", case " + i;
            BigDecimal sum = Pints.sum(
                    comparison.effects().stream().map(Comparison.Moved::perPint).toList());
            assertNear(after.unroundedPerPint().subtract(before.unroundedPerPint()), sum, LAST_DIGIT, which);
            assertNear(
                    BigDecimal.ZERO,
                    comparison.of(Effect.ROUNDING).perPint(),
                    mostByRounding(before).add(mostByRounding(after)),
                    which);
            ComparisonStatement pence = comparison.pencePerPint();
            assertEquals(before.pencePerPint(), pence.before(), which);
            assertEquals(after.pencePerPint(), pence.after(), which);
            assertAddsUp(pence, which);
            assertAddsUp(comparison.forPints(BigDecimal.valueOf(1 + random.nextInt(300_000))), which);
        }
    }

    @Test
    void the_order_of_the_lines_does_not_matter() {
        Random random = new Random(SEED);
        for (int i = 0; i < 50; i++) {
            CostSheet before = random(random).sheet();
            Given.Gyle gyle = random(random);
            List<BillLine> bill = new ArrayList<>(gyle.bill());
            Collections.shuffle(bill, random);
            assertEquals(
                    Comparison.between(before, gyle.sheet()).effects(),
                    Comparison.between(before, gyle.with(bill).sheet()).effects(),
                    "seed " + SEED + ", case " + i);
        }
    }

    @Test
    void the_other_way_round_every_effect_changes_its_sign() {
        Random random = new Random(SEED);
        for (int i = 0; i < 100; i++) {
            CostSheet before = random(random).sheet();
            CostSheet after = random(random).sheet();
            Comparison there = Comparison.between(before, after);
            Comparison back = Comparison.between(after, before);
            String which = "seed " + SEED + ", case " + i;
            for (Effect effect : Effect.values()) {
                assertNear(
                        there.of(effect).perPint(),
                        back.of(effect).perPint().negate(),
                        LAST_DIGIT,
                        which + ", " + effect);
            }
            Iterator<ComparisonStatement.Row> rows = back.pencePerPint().rows().iterator();
            for (ComparisonStatement.Row row : there.pencePerPint().rows()) {
                assertEquals(row.amount(), rows.next().amount().negate(), which + ", " + row.effect());
            }
        }
    }

    @Test
    void a_sheet_does_not_differ_from_itself() {
        Comparison comparison = Comparison.between(bitter().sheet(), bitter().sheet());
        assertTrue(
                comparison.effects().stream().allMatch(effect -> effect.lines().isEmpty()));
        assertFigure("0.00", comparison.pencePerPint().difference());
    }

    /** By hand: 230 kg at 0.10 more is 23.00, over the pints that can be sold. */
    @Test
    void dearer_malt_is_an_effect_of_price_and_of_nothing_else() {
        List<PriceRow> dearer = new ArrayList<>(bitter().prices());
        dearer.set(0, price("pale malt", PackUnit.KILOGRAM, "0.92"));
        CostSheet before = bitter().sheet();
        Comparison comparison =
                Comparison.between(before, bitter().buying(dearer).sheet());
        assertEquals(EnumSet.of(Effect.PRICE), moved(comparison));
        Comparison.Moved price = comparison.of(Effect.PRICE);
        assertEquals(
                List.of("pale malt"),
                price.lines().stream().map(Comparison.Line::item).toList());
        assertNear(
                dec("23").divide(before.yieldChain().saleablePints(), Figures.SHOWN),
                price.perPint(),
                LAST_DIGIT,
                "pale malt");
    }

    /** By hand: 0.5 kg of hops at 17.50 is 8.75. */
    @Test
    void more_hops_are_an_effect_of_usage_and_of_nothing_else() {
        List<BillLine> more = new ArrayList<>(bitter().bill());
        more.set(2, uses(BillGroup.HOPS, "Goldings", 3.9));
        CostSheet before = bitter().sheet();
        Comparison comparison = Comparison.between(before, bitter().with(more).sheet());
        assertEquals(EnumSet.of(Effect.USAGE), moved(comparison));
        assertNear(
                dec("8.75").divide(before.yieldChain().saleablePints(), Figures.SHOWN),
                comparison.of(Effect.USAGE).perPint(),
                LAST_DIGIT,
                "Goldings");
    }

    /** A new lot of the same hops: 3.4 kg at 17.50 becomes 3.0 kg at 20.00, so that both effects are there, by Bennet. */
    @Test
    void a_new_hop_lot_in_the_place_of_an_old_one_is_price_and_usage() {
        List<BillLine> bill = new ArrayList<>(bitter().bill());
        bill.set(2, uses(BillGroup.HOPS, "Goldings of 2026", 3.0));
        List<PriceRow> prices = new ArrayList<>(bitter().prices());
        prices.add(price("Goldings of 2026", PackUnit.KILOGRAM, "20"));
        CostSheet before = bitter().sheet();
        CostSheet after = bitter().with(bill).buying(prices).sheet();
        Comparison asOne = Comparison.between(
                before, after, new ComparisonOptions(Map.of("Goldings of 2026", "goldings"), List.of()));
        BigDecimal pints = before.yieldChain().saleablePints();
        // 2.50 × (3.4 + 3.0) / 2 = 8.00 and −0.4 × (17.50 + 20.00) / 2 = −7.50, by hand.
        assertNear(dec("8").divide(pints, Figures.SHOWN), asOne.of(Effect.PRICE).perPint(), LAST_DIGIT, "price");
        assertNear(
                dec("-7.5").divide(pints, Figures.SHOWN), asOne.of(Effect.USAGE).perPint(), LAST_DIGIT, "usage");
        Comparison asTwo = Comparison.between(before, after);
        assertEquals(EnumSet.of(Effect.USAGE), moved(asTwo));
        assertEquals(2, asTwo.of(Effect.USAGE).lines().size());
    }

    /** 20 EUR at 0.875 is 17.50, at 0.90 it is 18.00: the hops are dearer by money alone; 3.4 kg × 0.50 = 1.70. */
    @Test
    void a_foreign_price_that_stays_moves_by_the_rate_of_exchange_alone() {
        List<PriceRow> prices = new ArrayList<>(bitter().prices());
        prices.set(2, price("Goldings", PackUnit.KILOGRAM, "18"));
        CostSheet before = bitter().sheet();
        ComparisonOptions euro = new ComparisonOptions(
                Map.of(), List.of(new CurrencyMove(CurrencyUnit.EUR, dec("0.875"), dec("0.90"), Set.of("Goldings"))));
        Comparison comparison =
                Comparison.between(before, bitter().buying(prices).sheet(), euro);
        assertNear(
                dec("1.7").divide(before.yieldChain().saleablePints(), Figures.SHOWN),
                comparison.of(Effect.EXCHANGE_RATE).perPint(),
                LAST_DIGIT,
                "Goldings");
        assertNear(BigDecimal.ZERO, comparison.of(Effect.PRICE).perPint(), LAST_DIGIT, "price");
    }

    @Test
    void a_stronger_label_is_an_effect_of_duty_and_of_nothing_else() {
        Comparison comparison =
                Comparison.between(bitter().sheet(), bitter().at("4.4").sheet());
        assertEquals(EnumSet.of(Effect.DUTY), moved(comparison));
        assertTrue(comparison.of(Effect.DUTY).lines().stream()
                .allMatch(line ->
                        line.item().startsWith("strength, ") || line.item().startsWith("small producer's discount, ")));
    }

    /** 50 kegs of 30 L more is 3,000 bottles of 0.5 L less, nothing is lost, so the litres stay and the mix moves. */
    @Test
    void another_mix_of_containers_is_an_effect_of_mix_and_of_nothing_else() {
        Container bottle = new Container(
                "bottle",
                ContainerKind.BOTTLE,
                dec("0.5"),
                dec("0.5"),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                false,
                false,
                List.of(),
                List.of());
        Given.Gyle gyle = new Given.Gyle(
                3100,
                3000,
                "4.2",
                14,
                bitter().bill(),
                bitter().prices(),
                bitter().rates(),
                List.of(new PackagingShare(keg(), 0.25, 0), new PackagingShare(bottle, 0.75, 0)),
                List.of(
                        new PackageItem("30 L keg", "collar", BigDecimal.ONE, BigDecimal.ONE, PackUnit.EACH),
                        new PackageItem("bottle", "bottle and crown", BigDecimal.ONE, BigDecimal.ONE, PackUnit.EACH)),
                dec("420"));
        CostSheet before = gyle.sheet();
        CostSheet after = gyle.into(List.of(new PackagingShare(keg(), 0.75, 0), new PackagingShare(bottle, 0.25, 0)))
                .sheet();
        Comparison comparison = Comparison.between(before, after);
        assertEquals(EnumSet.of(Effect.MIX), moved(comparison));
        // Fewer bottles, which are the dear ones, and more kegs, which are the cheap ones: both make the pint cheaper.
        assertTrue(comparison.of(Effect.MIX).lines().stream()
                .allMatch(line -> line.perPint().signum() < 0));
    }

    @Test
    void beer_lost_in_the_tank_is_an_effect_of_yield() {
        Given.Gyle gyle = bitter().into(List.of(new PackagingShare(keg(), 1, 0)));
        CostSheet before = gyle.racking(1560).sheet();
        CostSheet after = gyle.racking(1500).sheet();
        Comparison comparison = Comparison.between(before, after);
        assertEquals(EnumSet.of(Effect.YIELD), moved(comparison));
        assertEquals(
                List.of("FV, tank and dry hops"),
                comparison.of(Effect.YIELD).lines().stream()
                        .map(Comparison.Line::item)
                        .toList());
        // The gyle costs the same and is spread over 1500 L where it was 1560 L.
        BigDecimal gyleCost = before.gyleCost().getAmount().multiply(Container.PINT_L);
        assertNear(
                gyleCost.divide(dec("1500"), Figures.SHOWN).subtract(gyleCost.divide(dec("1560"), Figures.SHOWN)),
                comparison.of(Effect.YIELD).perPint(),
                mostByRounding(before),
                "yield");
    }

    @Test
    void a_comparison_without_sense_is_refused() {
        assertRefused(
                "expected one currency",
                () -> new ComparisonOptions(
                        Map.of(),
                        List.of(
                                new CurrencyMove(CurrencyUnit.EUR, dec("1"), dec("1"), Set.of("Goldings")),
                                new CurrencyMove(CurrencyUnit.USD, dec("1"), dec("1"), Set.of("goldings")))));
        assertRefused("more than 0", () -> new CurrencyMove(CurrencyUnit.EUR, dec("0"), dec("1"), Set.of("a")));
        assertRefused("an item or more", () -> new CurrencyMove(CurrencyUnit.EUR, dec("1"), dec("1"), Set.of()));
        assertRefused(
                "pints: expected more than 0",
                () -> Comparison.between(bitter().sheet(), bitter().sheet()).forPints(BigDecimal.ZERO));
    }
}
