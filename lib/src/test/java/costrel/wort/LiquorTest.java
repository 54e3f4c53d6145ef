package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LiquorTest {
    /** Grams of the ion in a mole of the salt, from the standard atomic masses of IUPAC. */
    private static final Map<String, Double> ION_IN_A_MOLE =
            Map.of("Ca", 40.078, "Mg", 24.305, "SO4", 32.06 + 4 * 15.999, "Cl", 2 * 35.45);

    @Test
    void salts_bring_their_ions_by_stoichiometry() {
        for (Map<String, String> row : ReferenceTable.read("wort/salts.csv")) {
            Double ion = ION_IN_A_MOLE.get(row.get("ion"));
            double factor =
                    Liquor.ionFactor(ion == null ? Double.NaN : ion, ReferenceTable.number(row, "grams_per_mole"));
            assertEquals(ReferenceTable.number(row, "factor"), factor, 0.001 * factor, row.toString());
        }
        assertEquals(46.56, Liquor.ionAddedMgPerLitre(20, 2.328), 1e-9);
    }

    @Test
    void acid_takes_alkalinity_away_by_equivalents() {
        // Molarities at 20 °C: CRC Handbook, 102nd ed.; sulphuric acid has two equivalents to a mole.
        assertEquals(17.164, Liquor.acidMlPerHl(100, 11.642), 0.0006);
        assertEquals(5.561, Liquor.acidMlPerHl(100, 2 * 17.966), 0.0006);
        assertEquals(199.83, Liquor.acidMlPerHl(100, 1), 0.006);
    }

    @Test
    void residual_alkalinity_is_kolbachs() {
        // In German degrees, the printed sum 27 - ((13 + 1.5/2) / 3.5).
        assertEquals(23.07, Liquor.residualAlkalinity(27, 13, 1.5), 0.006);
        // From mg/L of the ions, worked out in another program.
        assertEquals(72.766, Liquor.residualAlkalinityOfIons(150, 100, 10), 0.002);
        assertEquals(-61.504, Liquor.residualAlkalinityOfIons(30, 120, 10), 0.002);
        // The divisors on mg/L of the ions.
        assertEquals(150 - 100 / 1.4016 - 10 / 1.7000, Liquor.residualAlkalinityOfIons(150, 100, 10), 0.005);
    }

    @Test
    void what_cannot_be_is_refused() {
        Refusal.says("normality of the acid: expected more than 0 eq/L, found 0", () -> Liquor.acidMlPerHl(100, 0));
        Refusal.says("alkalinity to take out: expected 0 mg/L", () -> Liquor.acidMlPerHl(-1, 1));
        Refusal.says("dose of salt: expected 0 g/hL or more", () -> Liquor.ionAddedMgPerLitre(Double.NaN, 2));
        Refusal.says("ion factor: expected 0 to 10", () -> Liquor.ionAddedMgPerLitre(1, 23));
        Refusal.says("mass of the salt: expected 40 g/mol or more", () -> Liquor.ionFactor(40, 20));
        Refusal.says("mass of the ion", () -> Liquor.ionFactor(0, 20));
        Refusal.says("alkalinity: expected 0 or more", () -> Liquor.residualAlkalinity(-1, 0, 0));
        Refusal.says(
                "calcium hardness: expected 0 or more, found NaN",
                () -> Liquor.residualAlkalinityOfIons(1, Double.NaN, 0));
    }
}
