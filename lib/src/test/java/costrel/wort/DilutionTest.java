package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.wort.Dilution.Portion;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DilutionTest {
    private static final double CLOSED = 1e-9;
    private static final double PRINTED_DEGREES = 0.00051;

    private static Portion portion(double volumeL, double degrees) {
        return new Portion(volumeL, Gravity.ofDegrees(degrees));
    }

    @Test
    void liquoring_back_follows_litres_times_degrees() {
        assertEquals(250, Dilution.liquorToAdd(portion(5000, 42), Gravity.ofDegrees(40)), CLOSED);
        assertEquals(463.1579, Dilution.liquorToAdd(portion(800, 60), Gravity.ofDegrees(38)), 0.0001);
        assertEquals(0, Dilution.liquorToAdd(portion(800, 60), Gravity.ofDegrees(60)));
    }

    @Test
    void the_act_of_1979_reckons_wort_at_1055() {
        // Alcoholic Liquor Duties Act 1979, section 38(4): quantity × (OG - 1000) / 55, so 1000 L at 1040 are 727.27 L
        // at 1055.
        double at1055L = 1000 * 40 / 55.0;
        assertEquals(1000 - at1055L, Dilution.liquorToAdd(portion(at1055L, 55), Gravity.ofDegrees(40)), CLOSED);
    }

    @Test
    void boiling_down_keeps_litres_times_degrees() {
        // M. P. Manning, BrewingTechniques 1(3), 1993: 11.5 gal at 42 boiled to 10.0 gal is 48.3, to 10.5 gal 46.
        assertEquals(48.3, boiledDown(11.5, 42, 10.0), 0.05);
        assertEquals(46, boiledDown(11.5, 42, 10.5), 0.05);
        Portion left = Dilution.evaporate(portion(5500, 36), 0.08);
        assertEquals(5060, left.volumeL(), CLOSED);
        assertEquals(39.1304, left.gravity().excessDegrees(), 0.00006);
        assertEquals(0.08, Dilution.evaporationShare(5500, 5060), CLOSED);
    }

    private static double boiledDown(double before, double degrees, double after) {
        return Dilution.evaporate(portion(before, degrees), Dilution.evaporationShare(before, after))
                .gravity()
                .excessDegrees();
    }

    @Test
    void hinds_three_beers_of_one_mash_have_15400_barrel_degrees() {
        // H. L. Hind, Brewing Science and Practice, 1940, as quoted: 100 brl at 1050, 100 at 1040, 200 at 1032.
        Portion all = Dilution.blend(List.of(portion(100, 50), portion(100, 40), portion(200, 32)));
        assertEquals(15400, all.litreDegrees(), CLOSED);
        assertEquals(400, all.volumeL(), CLOSED);
    }

    @Test
    void two_gyles_blend_by_volume() {
        assertEquals(
                42,
                Dilution.blend(List.of(portion(2000, 60), portion(3000, 30)))
                        .gravity()
                        .excessDegrees(),
                CLOSED);
    }

    @Test
    void the_parti_gyle_of_1930_blends_to_its_printed_pounds() {
        for (Map<String, String> row : ReferenceTable.read("wort/parti_gyle_1930.csv")) {
            Portion beer = Dilution.blend(List.of(
                    new Portion(ReferenceTable.number(row, "wort_30.4"), Gravity.parse("30.4 lb/brl")),
                    new Portion(ReferenceTable.number(row, "wort_12"), Gravity.parse("12 lb/brl")),
                    new Portion(ReferenceTable.number(row, "wort_2"), Gravity.parse("2 lb/brl")),
                    portion(ReferenceTable.number(row, "liquor"), 0)));
            double printedPounds = ReferenceTable.number(row, "printed_lb_per_brl");
            if ("agree".equals(row.get("agreement"))) {
                assertEquals(ReferenceTable.number(row, "printed_brl"), beer.volumeL(), CLOSED);
                assertEquals(printedPounds, beer.gravity().brewersPounds(), 0.006);
                // The record turns pounds into gravity with 2.77 where 1000/360 is exact.
                double printedSg = ReferenceTable.number(row, "printed_sg_1000");
                assertEquals(printedSg, 1000 + 2.77 * beer.gravity().brewersPounds(), 0.06);
                assertTrue(1000 + beer.gravity().excessDegrees() > printedSg);
            } else {
                // The erratum: 362 barrels printed, 364 in the parts; over 362 the pounds come out as printed.
                assertEquals(364, beer.volumeL(), CLOSED);
                assertEquals(11.82, beer.gravity().brewersPounds(), 0.006);
                assertEquals(printedPounds, beer.gravity().brewersPounds() * 364 / 362, 0.01);
            }
        }
    }

    @Test
    void by_mass_the_gravity_after_liquoring_back_is_a_little_higher() {
        // Mass balance with the Plato cubic, worked out in another program: 71.4 L, to more digits, make 1045 into 1042
        // by the plain rule.
        Portion slight = Dilution.blendExact(List.of(portion(1000, 45), portion(71.4286, 0)));
        assertEquals(42.016, slight.gravity().excessDegrees(), PRINTED_DEGREES);
        assertEquals(1071.41, slight.volumeL(), 0.0051);
        Portion strong = Dilution.blendExact(List.of(portion(1000, 80), portion(1000, 0)));
        assertEquals(40.181, strong.gravity().excessDegrees(), PRINTED_DEGREES);
        assertEquals(1999.65, strong.volumeL(), 0.0051);
    }

    @Test
    void liquor_reckoned_by_mass_brings_the_wort_to_the_wanted_gravity() {
        Seeded.cases(500, random -> {
            Portion wort = portion(Seeded.between(random, 10, 10_000), Seeded.between(random, 20, 150));
            Gravity to = Gravity.ofDegrees(wort.gravity().excessDegrees() * Seeded.between(random, 0.3, 1));
            double plain = Dilution.liquorToAdd(wort, to);
            assertEquals(
                    to.excessDegrees(),
                    Dilution.blend(List.of(wort, portion(plain, 0))).gravity().excessDegrees(),
                    CLOSED);
            double byMass = Dilution.liquorToAddExact(wort, to);
            assertEquals(
                    to.excessDegrees(),
                    Dilution.blendExact(List.of(wort, portion(byMass, 0)))
                            .gravity()
                            .excessDegrees(),
                    1e-8);
            assertTrue(byMass >= plain - CLOSED * wort.volumeL());
        });
    }

    @Test
    void what_boils_away_can_be_put_back() {
        Seeded.cases(500, random -> {
            Portion wort = portion(Seeded.between(random, 10, 10_000), Seeded.between(random, 1, 100));
            double waterL = wort.volumeL() * Seeded.between(random, 0, 0.3);
            Portion boiled = Dilution.evaporateExact(wort, waterL);
            close(wort, Dilution.blendExact(List.of(boiled, portion(waterL, 0))));
            double share = Seeded.between(random, 0, 0.3);
            Portion plain = Dilution.evaporate(wort, share);
            assertEquals(wort.litreDegrees(), plain.litreDegrees(), CLOSED * wort.litreDegrees());
        });
    }

    @Test
    void it_does_not_matter_which_worts_are_blended_first() {
        Seeded.cases(500, random -> {
            Portion a = any(random);
            Portion b = any(random);
            Portion c = any(random);
            Portion plain = Dilution.blend(List.of(a, b, c));
            close(plain, Dilution.blend(List.of(a, Dilution.blend(List.of(b, c)))));
            close(plain, Dilution.blend(List.of(Dilution.blend(List.of(c, a)), b)));
            Portion byMass = Dilution.blendExact(List.of(a, b, c));
            close(byMass, Dilution.blendExact(List.of(a, Dilution.blendExact(List.of(b, c)))));
            close(byMass, Dilution.blendExact(List.of(Dilution.blendExact(List.of(c, a)), b)));
        });
    }

    private static Portion any(Random random) {
        return portion(Seeded.between(random, 1, 10_000), Seeded.between(random, 1, 120));
    }

    private static void close(Portion expected, Portion found) {
        assertEquals(expected.volumeL(), found.volumeL(), CLOSED * expected.volumeL());
        assertEquals(expected.gravity().excessDegrees(), found.gravity().excessDegrees(), 1e-8);
    }

    @Test
    void what_cannot_be_is_refused() {
        Portion wort = portion(1000, 45);
        Refusal.says("extract: expected 0 to 40 °P", () -> Dilution.evaporateExact(portion(1000, 150), 500));
        Refusal.says(
                "SG 1 to 1.17874, found 1.1900", () -> Dilution.liquorToAddExact(portion(10, 190), Gravity.of(1.1)));
        Refusal.says(
                "expected more than that of water and at most 1.0450, found 1.0500",
                () -> Dilution.liquorToAdd(wort, Gravity.ofDegrees(50)));
        Refusal.says("expected more than that of water", () -> Dilution.liquorToAddExact(wort, Gravity.ofDegrees(0)));
        Refusal.says("volume: expected 0 L or more, found -1", () -> portion(-1, 45));
        Refusal.says("blend: expected more than 0 L in all", () -> Dilution.blend(List.of()));
        Refusal.says("blend: expected more than 0 L in all", () -> Dilution.blendExact(List.of(portion(0, 45))));
        Refusal.says(
                "reckoning by mass: expected wort or liquor of SG 1 to 1.17874, found 0.9980",
                () -> Dilution.blendExact(List.of(portion(10, -2))));
        Refusal.says(
                "evaporation: expected a share of the volume of 0 up to less than 1, found 8",
                () -> Dilution.evaporate(wort, 8));
        Refusal.says("found NaN", () -> Dilution.evaporate(wort, Double.NaN));
        Refusal.says("L of water in the wort, found 1000", () -> Dilution.evaporateExact(wort, 1000));
        Refusal.says(
                "volume after the boil: expected more than 0 and at most 10 L, found 11",
                () -> Dilution.evaporationShare(10, 11));
        Refusal.says("volume before the boil", () -> Dilution.evaporationShare(0, 0));
    }
}
