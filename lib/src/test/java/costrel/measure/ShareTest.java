package costrel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShareTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "7.9 %|0.079",
                "7.9%|0.079",
                "' 12  % '|0.12",
                "0 %|0",
                "100 %|1",
                "-3 %|-0.03",
                "+3 %|0.03",
                "½ %|0.005",
                "2½ %|0.025",
                "0.7 %|0.007",
                "29 %|0.29",
                "57 %|0.57",
                "250 %|2.5",
            })
    void a_percentage_is_read_to_the_nearest_fraction(String text, double fraction) {
        assertEquals(fraction, Share.parse(text).fraction());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.079|no % sign",
                "7.9|no % sign",
                "''|nothing there",
                "%|no number",
                "7,9 %|no comma",
                "1,200 %|no comma",
                "1e2 %|without an exponent",
                "1/2 %|write a fraction as a decimal",
                ".5 %|a digit before the point",
                "5. %|a digit after the point",
                "٧ %|digits from 0 to 9",
                "7.9 % w/w|only a % sign",
                "7.9 %%|only a % sign",
                "7.9 percent|only a % sign",
                "7.9 kg|only a % sign",
                "NaN %|no number",
            })
    void anything_else_is_refused_with_its_reason(String text, String why) {
        QuantityTextException refused = assertThrows(QuantityTextException.class, () -> Share.parse(text));
        assertEquals("a share such as 7.9 %", refused.expected());
        assertTrue(refused.why().contains(why), refused.getMessage());
    }

    @Test
    void too_long_and_too_large_are_refused() {
        assertThrows(QuantityTextException.class, () -> Share.parse("9".repeat(1_000_000) + " %"));
        assertThrows(QuantityTextException.class, () -> Share.parse("9".repeat(390) + " %"));
    }

    @Test
    void percent_and_fraction_agree_as_they_are_written() {
        for (int tenths = -1000; tenths <= 2000; tenths++) {
            String percent = tenths / 10.0 + "";
            double fraction = Double.parseDouble(tenths + "e-3");
            assertEquals(fraction, Share.ofPercent(tenths / 10.0).fraction());
            assertEquals(Double.parseDouble(percent), Share.of(fraction).percent());
            assertEquals(Share.of(fraction), Share.parse(percent + " %"));
        }
    }

    @Test
    void what_is_printed_reads_back_to_the_same_share() {
        Random random = new Random(TextTables.SEED);
        for (int i = 0; i < 5000; i++) {
            Share share = Share.of(i % 2 == 0 ? random.nextDouble() : TextTables.anyNumber(random) / 1000);
            assertEquals(share, Share.parse(share.toString()), share + ", seed " + TextTables.SEED);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void what_is_not_a_number_is_no_share(double value) {
        assertThrows(IllegalArgumentException.class, () -> Share.of(value));
        assertThrows(IllegalArgumentException.class, () -> Share.ofPercent(value));
        assertThrows(IllegalArgumentException.class, () -> Share.ofPart(value));
    }

    @Test
    void a_part_is_from_nothing_to_the_whole() {
        assertEquals(0, Share.ofPart(0).fraction());
        assertEquals(1, Share.ofPart(1).fraction());
        assertEquals(
                "expected a share from 0 % to 100 %, found 101 %",
                assertThrows(IllegalArgumentException.class, () -> Share.ofPart(1.01))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> Share.ofPart(-0.01));
    }

    @Test
    void no_share_at_all_has_one_form() {
        assertEquals(Share.of(0), Share.of(-0.0));
        assertEquals("0 %", Share.of(-0.0).toString());
    }
}
