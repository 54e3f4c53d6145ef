package costrel.duty;

import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.cell;
import static costrel.cost.Given.dec;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.buying.UnitPrice;
import costrel.cost.Given;
import costrel.figures.Rounded;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RoundingTest {

    static List<Map<String, String>> cases() {
        return ReferenceTable.read("duty/rounding.csv");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_line_is_rounded_once_halves_up(Map<String, String> row) {
        UnitPrice price = new UnitPrice(dec(cell(row, "value")), BigDecimal.ONE, "kg");

        assertFigure(cell(row, "HALF_UP"), price.times(BigDecimal.ONE, Integer.parseInt(cell(row, "places"))));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_strength_is_cut_down(Map<String, String> row) {
        if (cell(row, "places").equals("1")) {
            assertFigure(cell(row, "DOWN"), Duty.cut(dec(cell(row, "value"))));
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_discount_is_rounded_up(Map<String, String> row) {
        if (cell(row, "places").equals("2")) {
            // A flat band that holds A = 1 hL has exactly its cumulative amount plus the marginal one as its discount.
            ReliefBand band = new ReliefBand(
                    Given.day("2026-02-01"),
                    Optional.empty(),
                    dec("3.5"),
                    dec("8.5"),
                    true,
                    BigDecimal.ZERO,
                    BigDecimal.TEN,
                    dec(cell(row, "value")),
                    BigDecimal.ZERO,
                    "arithmetic");

            assertFigure(cell(row, "CEILING"), SmallProducerRelief.discount(band, BigDecimal.ONE, 2));
        }
    }

    @Test
    void a_third_of_a_penny_is_not_rounded_before_the_line() {
        // £10 for 3 kg: 3 kg cost £10.00 again, where £3.33 a kg would give £9.99.
        assertFigure("10.00", new UnitPrice(BigDecimal.TEN, dec("3"), "kg").times(dec("3"), 2));
    }

    @Test
    void unit_prices_compare_by_what_one_unit_costs() {
        UnitPrice sack = new UnitPrice(dec("25.00"), dec("50"), "kg");
        UnitPrice kilogram = new UnitPrice(dec("0.5"), dec("1"), "kg");

        assertEquals(sack, kilogram);
        assertEquals(sack.hashCode(), kilogram.hashCode());
        assertTrue(new UnitPrice(dec("10"), dec("3"), "kg").compareTo(new UnitPrice(dec("3.33"), dec("1"), "kg")) > 0);
    }

    @Test
    void a_ratio_is_the_same_whether_it_ends_or_not() {
        for (long value = 0; value <= 130; value++) {
            for (long of = 1; of <= 60; of++) {
                BigDecimal found = Rounded.ratio(BigDecimal.valueOf(value), BigDecimal.valueOf(of));
                BigDecimal expected = BigDecimal.valueOf(value).divide(BigDecimal.valueOf(of), MathContext.DECIMAL128);
                assertEquals(expected, found, value + " over " + of);
            }
        }
    }
}
