package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RackingTest {
    private static final double EXACT = 1e-9;
    /** Half a volume to a degree is a rounding of 0.502 to 0.507 over the gravities of cask beer. */
    private static final double ROUND_HALF_VOLUME = 0.015;

    private static final double SAME_GAS_AS_WATER = 0.07;
    private static final PrimingSugar SUCROSE = PrimingSugar.of("sucrose", 385.0);

    /** Balling's balance with alcohol by Tabarié and OIML R 22, worked out in another program. */
    @Test
    void what_is_left_brings_the_gas_of_the_balling_balance() {
        for (Map<String, String> row : ReferenceTable.read("wort/fermented_in_cask.csv")) {
            Gravity fg = Gravity.of(ReferenceTable.number(row, "pg_final") / 1000);
            Gravity pg = Gravity.of(ReferenceTable.number(row, "pg_at_racking") / 1000);
            Racking racking = new Racking(fg, pg, 0.8, 1.2);
            double volumes = ReferenceTable.number(row, "volumes");
            assertEquals(ReferenceTable.number(row, "drop"), racking.leftDegrees(), EXACT);
            assertEquals(volumes, racking.leftVolumes(), volumes * ROUND_HALF_VOLUME, row.toString());
            double extract = ReferenceTable.number(row, "grams_per_litre") * 2.0665 / 0.9565;
            assertEquals(extract, racking.leftExtractGramsPerLitre(), extract * ROUND_HALF_VOLUME, row.toString());
        }
    }

    /** Henry's law for water, Weiss (1974). Beer holds a little less, for its alcohol and extract. */
    @Test
    void beer_holds_nearly_what_water_holds() {
        for (Map<String, String> row : ReferenceTable.read("wort/co2_in_water.csv")) {
            double water = ReferenceTable.number(row, "volumes");
            double beer =
                    HeldGas.atWarmest(ReferenceTable.number(row, "celsius")).volumes();
            assertTrue(beer < water && beer > water * (1 - SAME_GAS_AS_WATER), row + ", found " + beer);
        }
    }

    @Test
    void the_warmest_of_a_course_counts_and_cooling_brings_no_gas_back() {
        HeldGas held = HeldGas.after(TemperatureCourse.parse("hold 18 °C 1440 min; linear 18 °C to 20 °C 720 min;"
                + " newton 20 °C towards 10 °C 0.005 /min 2880 min"));
        assertEquals(HeldGas.atWarmest(20), held);
        assertTrue(held.how().contains("at 20 °C"), held.how());
        assertTrue(HeldGas.atWarmest(28).how().contains("over 25 °C, where the published table ends"));
        Refusal.says("course since gas stopped rising", () -> HeldGas.after(TemperatureCourse.of()));
        Refusal.says("warmest temperature of the beer: expected -1 to 40 °C", () -> HeldGas.atWarmest(41));
        Refusal.says("condition held", () -> HeldGas.measured(Double.NaN));
    }

    /** T. Goldammer, The Brewers' Handbook: primings of SG 1.150 at 0.35 to 1.75 L/hL, that is 1.38 to 6.88 g of extract in a litre. */
    @Test
    void doses_for_casks_and_bottles_lie_in_the_published_range() {
        double held = HeldGas.atWarmest(20).volumes();
        Gravity fg = Gravity.of(1.010);
        for (double wanted : new double[] {1.25, 2.0, 2.5}) {
            double dose = new Racking(fg, fg, held, wanted).primingsGramsPerLitre(SUCROSE);
            assertTrue(dose > 1.376 && dose < 6.88, wanted + " volumes: " + dose);
        }
    }

    @Test
    void primings_and_condition_go_there_and_back() {
        Seeded.cases(1000, random -> {
            Racking racking = any(random.nextDouble() * 20, random.nextDouble() * 3, random.nextDouble() * 5, 0);
            double dose = racking.primingsGramsPerLitre(SUCROSE);
            double comesTo = Math.max(racking.wantedVolumes(), racking.unprimedVolumes());
            assertEquals(comesTo, racking.volumesWith(SUCROSE, dose), EXACT);
            assertEquals(
                    racking.wantedVolumes() - racking.unprimedVolumes(),
                    racking.shortVolumes() - racking.tooManyVolumes(),
                    EXACT);
            Racking atIt =
                    new Racking(racking.fg(), racking.rackingGravity(), racking.heldVolumes(), racking.wantedVolumes());
            assertEquals(Math.max(racking.heldVolumes(), racking.wantedVolumes()), atIt.unprimedVolumes(), EXACT);
            assertEquals(0, atIt.primingsGramsPerLitre(SUCROSE), 1e-8);
        });
    }

    @Test
    void more_wanted_takes_more_and_more_left_or_held_takes_less() {
        Seeded.cases(1000, random -> {
            double left = random.nextDouble() * 6;
            double held = random.nextDouble() * 2;
            double wanted = random.nextDouble() * 5;
            double more = 0.001 + random.nextDouble();
            double dose = any(left, held, wanted, 0).primingsGramsPerLitre(SUCROSE);
            assertTrue(any(left, held, wanted + more, 0).primingsGramsPerLitre(SUCROSE) >= dose);
            assertTrue(any(left, held + more, wanted, 0).primingsGramsPerLitre(SUCROSE) <= dose);
            assertTrue(any(left, held, wanted, more).primingsGramsPerLitre(SUCROSE) <= dose);
            assertTrue(any(left, held, wanted + more, 0).rackingGravity().excessDegrees()
                    >= any(left, held, wanted, 0).rackingGravity().excessDegrees());
            double celsius = Seeded.between(random, -1, 38);
            assertTrue(HeldGas.atWarmest(celsius + more).volumes()
                    < HeldGas.atWarmest(celsius).volumes());
        });
    }

    @Test
    void under_its_final_gravity_a_beer_counts_as_fermented_out() {
        Racking racking = new Racking(Gravity.of(1.010), Gravity.of(1.008), 0.9, 1.1);
        assertEquals(0, racking.leftDegrees());
        assertEquals(0.2, racking.shortVolumes(), EXACT);
    }

    @Test
    void a_condition_is_read_with_its_unit_only() {
        assertEquals(2.4, Condition.parseVolumes("wanted condition", " 2.4 volumes "));
        assertEquals(1, Condition.parseVolumes("wanted condition", "1 volume"));
        for (String text : new String[] {"2.4", "2,4 volumes", "2.4 % vol", "", "volumes", "2.4 g/L"}) {
            Refusal.says(
                    "wanted condition: expected a condition such as 2.0 volumes",
                    () -> Condition.parseVolumes("wanted condition", text));
        }
        Refusal.says(
                "wanted condition: expected 0 to 10 volumes, found 24",
                () -> Condition.parseVolumes("wanted condition", "24 volumes"));
        Refusal.says("found -1", () -> Condition.parseVolumes("wanted condition", "-1 volumes"));
    }

    @Test
    void figures_out_of_range_are_refused() {
        Gravity fg = Gravity.of(1.010);
        Refusal.says("condition held: expected 0 to 10", () -> new Racking(fg, fg, Double.NaN, 1));
        Refusal.says("wanted condition: expected 0 to 10", () -> new Racking(fg, fg, 1, 10.1));
    }

    private static Racking any(double left, double held, double wanted, double more) {
        return new Racking(Gravity.ofDegrees(10), Gravity.ofDegrees(10 + left + more), held, wanted);
    }
}
