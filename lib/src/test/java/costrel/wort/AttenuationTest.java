package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class AttenuationTest {
    private static final double EXACT = 1e-12;

    @Test
    void three_quarters_of_the_degrees_gone_is_75_per_cent() {
        assertEquals(0.75, Attenuation.apparent(Gravity.of(1.040), Gravity.of(1.010)), EXACT);
        assertEquals(Gravity.of(1.010), Attenuation.fgFrom(Gravity.of(1.040), 0.75));
        assertEquals(-1, Attenuation.fgFrom(Gravity.ofDegrees(50), 1.02).excessDegrees(), EXACT);
    }

    @Test
    void final_gravity_and_attenuation_go_there_and_back() {
        Seeded.cases(1000, random -> {
            Gravity og = Gravity.ofDegrees(Seeded.between(random, 10, 150));
            double share = Seeded.between(random, 0, 1.05);
            assertEquals(share, Attenuation.apparent(og, Attenuation.fgFrom(og, share)), 1e-9);
        });
    }

    @Test
    void the_beer_6_form_is_the_share_of_extract_by_the_mass_balance() {
        // 2.0665 A / (2.0665 A + RE) with the alcohol that Balling's balance gives; agreement 0.01 %.
        double original = 9.9935;
        double real = 4.0139;
        double alcohol = (original - real) / (2.0665 - 0.010665 * original);
        double fermented = 2.0665 * alcohol / (2.0665 * alcohol + real);
        assertEquals(fermented, Attenuation.realAsbc(original, real), 0.0001);
        assertEquals(0.6110, Attenuation.realAsbc(original, real), 0.00006);
    }

    @Test
    void what_cannot_be_is_refused() {
        Refusal.says(
                "expected no more than the original gravity of 1.0100, found 1.0110",
                () -> Attenuation.apparent(Gravity.of(1.010), Gravity.of(1.011)));
        Refusal.says("expected no more than", () -> Attenuation.apparentOnPlato(Gravity.of(1.010), Gravity.of(1.011)));
        Refusal.says(
                "original gravity: expected more than that of water",
                () -> Attenuation.apparent(Gravity.of(1), Gravity.of(1)));
        Refusal.says(
                "original extract: expected more than 0",
                () -> Attenuation.apparentOnPlato(Gravity.of(1), Gravity.of(1)));
        Refusal.says("0.75 is 75 %), found 75", () -> Attenuation.fgFrom(Gravity.of(1.040), 75));
        Refusal.says("found NaN", () -> Attenuation.fgFrom(Gravity.of(1.040), Double.NaN));
        Refusal.says("found -0.1", () -> Attenuation.fgFrom(Gravity.of(1.040), -0.1));
        Refusal.says("real extract: expected 0 to 10 °P, found 11", () -> Attenuation.realSimple(10, 11));
        Refusal.says("original extract: expected more than 0", () -> Attenuation.realAsbc(Double.NaN, 1));
    }
}
