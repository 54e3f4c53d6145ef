package costrel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {

    @ParameterizedTest
    @CsvFileSource(resources = "data-valid.csv", delimiter = '|', quoteCharacter = '\'', useHeadersInDisplayName = true)
    void an_amount_as_a_brewer_writes_it_is_read(String text, String kind, double value, String symbol) {
        assertAmount(value, symbol, TextTables.read(kind, text));
        assertAmount(value, symbol, QuantityText.any(text));
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "data-invalid.csv",
            delimiter = '|',
            quoteCharacter = '\'',
            useHeadersInDisplayName = true)
    void anything_else_is_refused_with_its_reason(String text, String kind, String why) {
        QuantityTextException refused = assertThrows(QuantityTextException.class, () -> TextTables.read(kind, text));
        assertTrue(refused.why().contains(why), refused.getMessage());
        assertTrue(TextTables.message(refused).contains("found '" + text.strip() + "' ("), refused.getMessage());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "spellings.csv", delimiter = '|', useHeadersInDisplayName = true)
    void every_documented_spelling_is_read(String symbol, String spellings) {
        for (String spelling : spellings.split(";", -1)) {
            assertAmount(2.5, symbol, QuantityText.any("2.5 " + spelling));
            assertAmount(2.5, symbol, QuantityText.any("2.5" + spelling));
        }
    }

    /** Ordinary, no-break, thin and narrow no-break space, and a tab. */
    @ParameterizedTest
    @ValueSource(strings = {" ", "\u00a0", "\u2009", "\u202f", "\t", " \u00a0"})
    void any_kind_of_space_may_stand_between_number_and_unit(String space) {
        assertAmount(25, "kg", QuantityText.mass(space + "25" + space + "kg" + space));
        assertAmount(70, "oz", QuantityText.mass("4" + space + "lb" + space + "6" + space + "oz"));
        assertAmount(3, "US gal", QuantityText.volume("3" + space + "US" + space + "gal"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "25\nkg",
                "25 kg\n3 g",
                "25\u200bkg",
                "25 kg\u0000",
                "25 \ud83c\udf7a",
                "25 \ud83c",
                "\ufeff25 kg"
            })
    void line_breaks_and_unseen_characters_are_refused_in_one_line_of_words(String text) {
        QuantityTextException refused = assertThrows(QuantityTextException.class, () -> QuantityText.mass(text));
        assertTrue(TextTables.message(refused).codePoints().noneMatch(Character::isISOControl), refused.getMessage());
        assertTrue(refused.found().indexOf('\u200b') < 0, refused.found());
    }

    @Test
    void a_refusal_says_what_was_expected_and_what_was_found() {
        QuantityTextException refused = assertThrows(QuantityTextException.class, () -> QuantityText.mass("25 L"));
        assertEquals("expected a mass such as 25 kg, found '25 L' (L is a volume)", refused.getMessage());
        assertEquals("a mass such as 25 kg", refused.expected());
        assertEquals("25 L", refused.found());
        assertEquals("L is a volume", refused.why());
    }

    @ParameterizedTest
    @CsvSource({
        "mass, a mass such as 25 kg",
        "volume, a volume such as 30 brl",
        "time, a time such as 90 min",
        "temperature, a temperature such as 21 °C",
        "massConcentration, a weight per volume such as 12 g/hL",
        "specificVolume, a volume per weight such as 2.5 L/kg",
        "volumeRatio, a volume per volume such as 15 mL/hL",
        "extractAmount, an amount of extract such as 36000 L°",
        "specificExtract, an extract per weight such as 300 L°/kg",
        "flowRate, a flow such as 140 L/h",
    })
    void the_example_in_a_refusal_is_itself_accepted(String kind, String expected) {
        QuantityTextException refused =
                assertThrows(QuantityTextException.class, () -> TextTables.read(kind, "a good deal"));
        assertEquals(expected, refused.expected());
        String example = expected.substring(expected.indexOf(" such as ") + 9);
        assertEquals(example, QuantityText.print(TextTables.read(kind, example)));
    }

    @Test
    void a_text_as_long_as_a_file_is_refused_in_few_words() {
        QuantityTextException refused =
                assertThrows(QuantityTextException.class, () -> QuantityText.mass("9".repeat(1_000_000) + " kg"));
        assertTrue(TextTables.message(refused).length() < 200, refused.getMessage());
    }

    @ParameterizedTest
    @ValueSource(ints = {310, 390})
    void a_number_beyond_any_double_is_refused(int digits) {
        assertEquals(
                "the number is too large", refused("9".repeat(digits) + " kg").why());
        assertEquals(
                "the number is too large", refused("9".repeat(305) + " t 1 g").why());
    }

    @Test
    void parts_of_two_kinds_are_refused_where_any_kind_will_do() {
        assertEquals("L is a volume, lb is a mass", refused("4 lb 6 L").why());
        assertEquals(
                "one number and one unit are enough for a weight per volume",
                refused("4 g/hL 6 lb").why());
    }

    private static QuantityTextException refused(String text) {
        return assertThrows(QuantityTextException.class, () -> QuantityText.any(text));
    }

    @ParameterizedTest
    @CsvSource({
        "25, kg, 25 kg",
        "0.1, kg, 0.1 kg",
        "-3.5, °C, -3.5 °C",
        "1, firkin, 1 firkin",
        "4, firkin, 4 firkins",
        "0, pin, 0 pins",
        "1, brl, 1 brl",
        "30, brl, 30 brl",
        "1e21, g, 1000000000000000000000 g",
        "1e-7, kg, 0.0000001 kg",
        "123456789012345678, mg, 123456789012345680 mg",
        "0.002, t, 0.002 t",
    })
    void an_amount_prints_in_plain_decimals(double value, String symbol, String printed) {
        assertEquals(printed, QuantityText.print(amount(value, symbol)));
    }

    @ParameterizedTest
    @CsvSource({
        "4909.7772, 1, 30.0 brl",
        "163.65924, 0, 1 brl",
        "163.65924, 3, 1.000 brl",
        "-0.001, 2, 0.00 brl",
        "0, 0, 0 brl",
        "163.65924, 15, 1.000000000000000 brl",
    })
    void a_volume_prints_in_barrels_to_a_number_of_decimals(double litres, int decimals, String printed) {
        assertEquals(printed, QuantityText.print(Amounts.ofLitres(litres), Units.UK_BARREL, decimals));
    }

    /** Half up as a person sees the figure: 1.005 is below a half as a double. */
    @Test
    void halves_are_rounded_up_as_they_are_written() {
        assertEquals("1.01 kg", QuantityText.print(Amounts.ofKilograms(1.005), Units.KILOGRAM, 2));
        assertEquals("3 kg", QuantityText.print(Amounts.ofKilograms(2.5), Units.KILOGRAM, 0));
        assertEquals("-3 kg", QuantityText.print(Amounts.ofKilograms(-2.5), Units.KILOGRAM, 0));
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 16})
    void decimals_beyond_reason_are_refused(int decimals) {
        assertThrows(
                IllegalArgumentException.class, () -> QuantityText.print(Amounts.ofLitres(1), Units.LITRE, decimals));
    }

    @Test
    void what_is_printed_reads_back_to_the_same_number_in_every_unit() {
        Random random = new Random(TextTables.SEED);
        for (KnownUnit<?> unit : UnitTable.all()) {
            for (int i = 0; i < 300; i++) {
                double value = TextTables.anyNumber(random);
                String printed = QuantityText.print(amount(value, unit.symbol()));
                String seed = printed + ", seed " + TextTables.SEED;
                assertEquals(value, QuantityText.any(printed).getValue().doubleValue(), seed);
                assertEquals(unit.unit(), QuantityText.any(printed).getUnit(), seed);
            }
        }
    }

    /** Pieces of real amounts put together at random: read or refused, never anything else, and stable once read. */
    @Test
    void no_text_at_all_breaks_the_reader() {
        String[] pieces = {
            "1", "25", "0.5", ".", ",", "-", "+", "½", "e3", "/", " ", "  ", "\u202f", "kg", "lb", "oz", "brl", "gal",
            "US", "L", "°", "deg", "hL", "100", "h", "min", "%", "(", "\n", "\ud83c", "٣", "KGM", "quarter"
        };
        Random random = new Random(TextTables.SEED);
        int read = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(6); n >= 0; n--) {
                text.append(pieces[random.nextInt(pieces.length)]);
            }
            Quantity<?> quantity;
            try {
                quantity = QuantityText.any(text.toString());
            } catch (QuantityTextException refused) {
                continue;
            }
            read++;
            String printed = QuantityText.print(quantity);
            assertEquals(
                    printed, QuantityText.print(QuantityText.any(printed)), "'" + text + "', seed " + TextTables.SEED);
        }
        assertTrue(read > 100, read + " read, seed " + TextTables.SEED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "fr-FR", "tr-TR", "ar-SA-u-nu-arab", "hi-IN-u-nu-deva", "th-TH-u-nu-thai"})
    void the_country_of_the_machine_changes_nothing(String country) {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag(country));
        try {
            assertAmount(1.5, "kg", QuantityText.mass("1.5 kg"));
            assertAmount(2, "firkin", QuantityText.volume("2 FIRKINS"));
            assertAmount(1, "pin", QuantityText.volume("1 PIN"));
            assertThrows(QuantityTextException.class, () -> QuantityText.mass("1,5 kg"));
            assertThrows(QuantityTextException.class, () -> QuantityText.mass("1.500,5 kg"));
            assertEquals("1234567.5 kg", QuantityText.print(Amounts.ofKilograms(1_234_567.5)));
            assertEquals("1234567.50 kg", QuantityText.print(Amounts.ofKilograms(1_234_567.5), Units.KILOGRAM, 2));
            assertEquals("7.9 %", Share.parse("7.9%").toString());
            assertEquals(
                    "expected a mass such as 25 kg, found '25 L' (L is a volume)",
                    assertThrows(QuantityTextException.class, () -> QuantityText.mass("25 L"))
                            .getMessage());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void a_unit_without_a_trade_code_has_none() {
        assertEquals(Optional.empty(), QuantityText.code(Units.UK_BARREL));
        assertEquals(Optional.of("KGM"), QuantityText.code(Units.KILOGRAM));
        assertEquals(Optional.empty(), QuantityText.code(Units.KILOGRAM.multiply(25)));
    }

    @Test
    void a_unit_of_another_trade_has_no_symbol() {
        Unit<Length> metre = tech.units.indriya.unit.Units.METRE;
        assertThrows(IllegalArgumentException.class, () -> QuantityText.symbol(metre));
        assertThrows(IllegalArgumentException.class, () -> QuantityText.print(Amounts.of(3, metre)));
    }

    private static Quantity<?> amount(double value, String symbol) {
        return Amounts.of(value, TextTables.unit(symbol));
    }

    private static void assertAmount(double value, String symbol, Quantity<?> quantity) {
        assertEquals(value, quantity.getValue().doubleValue());
        assertEquals(symbol, QuantityText.symbol(quantity.getUnit()));
    }
}
