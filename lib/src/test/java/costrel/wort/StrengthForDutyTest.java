package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StrengthForDutyTest {
    private static final LocalDate FIRST_DAY = LocalDate.of(2023, 8, 1);
    private static final StrengthFactorTable FACTORS = table();

    private static StrengthFactorTable table() {
        List<StrengthFactor> rows = new ArrayList<>();
        for (Map<String, String> row : ReferenceTable.read("wort/hmrc_strength_factors.csv")) {
            rows.add(new StrengthFactor(
                    ReferenceTable.number(row, "from_degrees"),
                    ReferenceTable.number(row, "to_degrees"),
                    ReferenceTable.number(row, "factor")));
        }
        return new StrengthFactorTable("Notice 226", FIRST_DAY, Optional.empty(), rows, "HMRC Notice 226, 30.3");
    }

    private static StrengthForDuty.Result strength(double ogDegrees, double pgDegrees) {
        return StrengthForDuty.of(Gravity.ofDegrees(ogDegrees), Gravity.ofDegrees(pgDegrees), FACTORS);
    }

    @Test
    void the_strengths_of_common_gravities_follow_notice_226() {
        for (Map<String, String> row : ReferenceTable.read("wort/original_and_present_gravity.csv")) {
            StrengthForDuty.Result found =
                    StrengthForDuty.of(Gravity.parse(text(row, "og")), Gravity.parse(text(row, "pg")), FACTORS);
            same(text(row, "difference"), found.difference());
            same(text(row, "duty_factor"), found.factor());
            same(text(row, "duty_strength_unrounded"), found.unroundedStrength());
            assertEquals(new BigDecimal(text(row, "duty_strength")), found.strength());
        }
    }

    @Test
    void strength_is_cut_down_to_one_decimal_and_never_rounded_up() {
        // gov.uk, Alcoholic products technical guide, section 11: "7.59% becomes 7.5%".
        StrengthForDuty.Result found = strength(75.5, 18);
        same("7.59", found.unroundedStrength());
        assertEquals(new BigDecimal("7.5"), found.strength());
    }

    @Test
    void a_difference_in_the_gap_between_two_bands_is_first_taken_to_a_tenth() {
        List<StrengthFactor> rows = FACTORS.rows();
        for (int i = 0; i < rows.size() - 1; i++) {
            BigDecimal edge = BigDecimal.valueOf(rows.get(i).toDegrees());
            BigDecimal lower = BigDecimal.valueOf(rows.get(i).factor());
            BigDecimal upper = BigDecimal.valueOf(rows.get(i + 1).factor());
            same(lower, strength(edge.doubleValue(), 0).factor());
            same(
                    lower,
                    strength(edge.add(new BigDecimal("0.04")).doubleValue(), 0).factor());
            same(
                    upper,
                    strength(edge.add(new BigDecimal("0.05")).doubleValue(), 0).factor());
            same(
                    upper,
                    strength(edge.add(new BigDecimal("0.1")).doubleValue(), 0).factor());
        }
    }

    @Test
    void binary_noise_does_not_cost_a_tenth() {
        // 32.05 less 8 is 24.05 and goes up to 24.1; in binary fractions it comes out a hair under.
        assertTrue(32.05 - 8.0 < 24.05);
        same("24.1", strength(32.05, 8).difference());
        double computed = Math.nextDown(32.05);
        assertTrue(computed < 32.05);
        same("24.1", strength(computed, 8).difference());
        // A reading that really is under the half stays under.
        same("24.0", strength(32.0499, 8).difference());
    }

    @Test
    void the_printed_strengths_of_the_bands_agree_within_their_mixed_rounding() {
        for (Map<String, String> row : ReferenceTable.read("wort/hmrc_strength_factors.csv")) {
            String printed = text(row, "strength_printed");
            String most = printed.replaceAll(".*[- ]", "");
            double found = strength(ReferenceTable.number(row, "to_degrees"), 0)
                    .unroundedStrength()
                    .doubleValue();
            assertEquals(Double.parseDouble(most), found, 0.1);
        }
    }

    @Test
    void nothing_fermented_is_no_strength() {
        assertEquals(new BigDecimal("0.0"), strength(40, 40).strength());
    }

    @Test
    void the_lower_the_present_gravity_the_stronger_the_beer() {
        Seeded.cases(1000, random -> {
            double og = Seeded.between(random, 30, 100);
            double pg = Seeded.between(random, 1, 20);
            assertTrue(
                    strength(og, pg - 1).strength().compareTo(strength(og, pg).strength()) >= 0);
            BigDecimal unrounded = strength(og, pg).unroundedStrength();
            assertEquals(
                    unrounded.setScale(1, RoundingMode.FLOOR), strength(og, pg).strength());
        });
    }

    @Test
    void what_the_table_does_not_reach_is_refused_with_what_to_supply() {
        assertEquals(new BigDecimal("13.5"), strength(110.7, 10).strength());
        Refusal.says(
                "table 'Notice 226' ends, found 100.8; supply the strength as measured", () -> strength(110.8, 10));
        Refusal.says(
                "present gravity: expected no more than the original gravity of 1.0400, found 1.0410",
                () -> strength(40, 41));
    }

    @Test
    void a_table_holds_on_its_first_and_last_day() {
        StrengthFactorTable ended = new StrengthFactorTable(
                "old", FIRST_DAY, Optional.of(LocalDate.of(2025, 1, 31)), FACTORS.rows(), FACTORS.source());
        assertFalse(ended.holdsOn(LocalDate.of(2023, 7, 31)));
        assertTrue(ended.holdsOn(FIRST_DAY));
        assertTrue(ended.holdsOn(LocalDate.of(2025, 1, 31)));
        assertFalse(ended.holdsOn(LocalDate.of(2025, 2, 1)));
        assertTrue(FACTORS.holdsOn(LocalDate.of(2099, 1, 1)));
    }

    @Test
    void a_table_with_a_hole_or_an_overlap_is_refused() {
        Refusal.says("expected a band from 0 degrees, found 1", () -> of(new StrengthFactor(1, 6.9, 0.125)));
        Refusal.says(
                "expected a band from 7.0 degrees, found 7.2",
                () -> of(new StrengthFactor(0, 6.9, 0.125), new StrengthFactor(7.2, 9, 0.126)));
        Refusal.says(
                "expected a band from 7.0 degrees, found 6.9",
                () -> of(new StrengthFactor(0, 6.9, 0.125), new StrengthFactor(6.9, 9, 0.126)));
        Refusal.says("end on a tenth of a degree, found 6.95", () -> of(new StrengthFactor(0, 6.95, 0.125)));
        Refusal.says("expected a band or more, found none", StrengthForDutyTest::of);
        Refusal.says("expected more than 0 and less than 1", () -> new StrengthFactor(0, 6.9, 125));
        Refusal.says("strength factor: to: expected 7 to 200 degrees", () -> new StrengthFactor(7, 6.9, 0.125));
        Refusal.says(
                "expected a last day on or after 2023-08-01",
                () -> new StrengthFactorTable(
                        "t", FIRST_DAY, Optional.of(FIRST_DAY.minusDays(1)), FACTORS.rows(), "source"));
        Refusal.says(
                "expected a name and a source",
                () -> new StrengthFactorTable("t", FIRST_DAY, Optional.empty(), FACTORS.rows(), " "));
    }

    private static StrengthFactorTable of(StrengthFactor... rows) {
        return new StrengthFactorTable("test", FIRST_DAY, Optional.empty(), List.of(rows), "none");
    }

    private static String text(Map<String, String> row, String column) {
        return Optional.ofNullable(row.get(column)).orElseThrow();
    }

    private static void same(String expected, BigDecimal found) {
        same(new BigDecimal(expected), found);
    }

    private static void same(BigDecimal expected, BigDecimal found) {
        assertEquals(0, expected.compareTo(found), () -> "expected " + expected + ", found " + found);
    }
}
