package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ExtractOfMaterialsTest {
    private static final double EXACT = 1e-9;

    @Test
    void baileys_laboratory_figures_agree_by_both_routes() {
        for (Map<String, String> row : ReferenceTable.read("wort/bailey_1907_extract.csv")) {
            double byPounds =
                    MaltExtract.litreDegreesPerKgFromPoundsPerQuarter(ReferenceTable.number(row, "pounds_per_quarter"));
            double byPercent = MaltExtract.litreDegreesPerKgFromPercent(ReferenceTable.number(row, "percent"));
            // The barrel of 360 lb is nominal: the routes part by 0.22 %.
            assertEquals(byPercent, byPounds, 0.003 * byPercent, row.toString());
        }
    }

    @Test
    void the_acts_malt_gives_79_pounds_to_the_quarter() {
        // Inland Revenue Act 1880 and Alcoholic Liquor Duties Act 1979, section 37: 36 gallons at 1055 from 84 lb of
        // malt.
        double hwe = Extract.from(163.65924, Gravity.of(1.055)).litreDegrees() / (84 * 0.45359237);
        assertEquals(236.2426, hwe, 0.0001);
        assertEquals(79.2, MaltExtract.poundsPerQuarterFromLitreDegreesPerKg(hwe), 1e-6);
    }

    @Test
    void a_base_malts_ebc_extract_gives_its_hot_water_extract_and_a_coloured_ones_is_refused() {
        for (Map<String, String> row : ReferenceTable.read("wort/ebc_and_iob_extract.csv")) {
            double ebc = ReferenceTable.number(row, "ebc_percent");
            if ("yes".equals(row.get("base"))) {
                assertEquals(ReferenceTable.number(row, "iob_hwe"), MaltExtract.baseMaltHweFromEbcPercent(ebc), 1);
            } else {
                Refusal.says("supply the hot water extract", () -> MaltExtract.baseMaltHweFromEbcPercent(ebc));
            }
        }
        Refusal.says("found 308", () -> MaltExtract.baseMaltHweFromEbcPercent(308));
        Refusal.says("found NaN", () -> MaltExtract.baseMaltHweFromEbcPercent(Double.NaN));
    }

    @Test
    void moisture_takes_its_share_of_the_extract() {
        assertEquals(76.4, MaltExtract.asIsFromDry(80, 0.045), EXACT);
        // G. Noonan, New Brewing Lager Beer, p. 13, as quoted, by a rule of its own: 78 % dry at 3.5 % is 75.2 %.
        assertEquals(75.2, MaltExtract.asIsFromDry(78, 0.035), 0.1);
    }

    @Test
    void every_conversion_goes_there_and_back() {
        Seeded.cases(500, random -> {
            double hwe = Seeded.between(random, 0, 400);
            double moisture = Seeded.between(random, 0, 0.9);
            assertEquals(
                    hwe,
                    MaltExtract.litreDegreesPerKgFromPercent(MaltExtract.percentFromLitreDegreesPerKg(hwe)),
                    EXACT);
            assertEquals(
                    hwe,
                    MaltExtract.litreDegreesPerKgFromPoundsPerQuarter(
                            MaltExtract.poundsPerQuarterFromLitreDegreesPerKg(hwe)),
                    EXACT);
            assertEquals(hwe, MaltExtract.dryFromAsIs(MaltExtract.asIsFromDry(hwe, moisture), moisture), EXACT);
        });
    }

    @Test
    void a_kilogram_of_sugar_takes_up_what_the_density_of_its_solution_says() {
        // CRC Handbook, 102nd ed.: 10 % sucrose has 1.0381 g/cm³, so 10 g take up 100/1.0381 - 90/0.9982 mL.
        double perKg = (100 / 1.0381 - 90 / 0.9982) / 10;
        assertEquals(perKg, Sugars.litresTakenUp(1, 386), 0.001);
        // A syrup of half its weight in sugar brings the other half as water.
        assertEquals(10 * (0.5 * perKg + 0.5 / 0.9982), Sugars.litresTakenUp(10, 193), 0.01);
        assertEquals(1 / 0.9982, Sugars.litresTakenUp(1, 0), EXACT);
        assertTrue(Sugars.litresTakenUp(1, 320) > Sugars.litresTakenUp(1, 386));
    }

    @Test
    void what_cannot_be_is_refused() {
        Refusal.says("extract: expected 0 to 105 %, found 308", () -> MaltExtract.litreDegreesPerKgFromPercent(308));
        Refusal.says("extract: expected 0 to 405 L°/kg", () -> MaltExtract.percentFromLitreDegreesPerKg(-1));
        Refusal.says("expected 0 to 135 lb in a quarter", () -> MaltExtract.litreDegreesPerKgFromPoundsPerQuarter(300));
        Refusal.says("0.04 is 4 %), found 4", () -> MaltExtract.asIsFromDry(80, 4));
        Refusal.says("extract as is: expected 0 or more", () -> MaltExtract.dryFromAsIs(Double.NaN, 0.04));
        Refusal.says("mass of sugar: expected 0 kg or more", () -> Sugars.litresTakenUp(-1, 386));
        Refusal.says("extract of the sugar: expected 0 to 400 L°/kg, found 3860", () -> Sugars.litresTakenUp(1, 3860));
    }
}
