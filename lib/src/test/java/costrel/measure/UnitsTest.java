package costrel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {

    private static final double ONE_ROUNDING = 2.3e-16;

    @ParameterizedTest
    @CsvFileSource(resources = "exact-factors.csv", useHeadersInDisplayName = true)
    void statutory_measures_hold_to_the_last_digit(String symbol, String factor, String base) {
        KnownUnit<?> unit = UnitTable.require(TextTables.unit(symbol));
        assertEquals(base, QuantityText.symbol(unit.kind().canonical()));
        assertEquals(
                0,
                new BigDecimal(factor)
                        .multiply(BigDecimal.valueOf(unit.denominator()))
                        .compareTo(BigDecimal.valueOf(unit.numerator())));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "unece-rec20.csv", useHeadersInDisplayName = true)
    void trade_codes_mean_what_recommendation_20_prints(
            String code, String symbol, BigDecimal printed, String base, int digits) {
        Quantity<?> one = QuantityText.any("1 " + code);
        assertEquals(symbol, QuantityText.symbol(one.getUnit()));
        assertEquals(code, QuantityText.code(one.getUnit()).orElseThrow());
        assertEquals(0, printed.compareTo(inCanonical(one, base).round(new MathContext(digits))));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "us-barrel-equivalents.csv", useHeadersInDisplayName = true)
    void american_packages_are_the_fractions_of_a_barrel_that_the_regulation_prints(
            String name, double pieces, double content, String unit, double barrels) {
        double litres = pieces * Amounts.litres(QuantityText.volume(content + " " + unit));
        assertEquals(barrels, Amounts.value(Amounts.ofLitres(litres), Units.US_BEER_BARREL), 0.000_005, name);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "printed-conversions.csv", useHeadersInDisplayName = true)
    void trade_rates_agree_with_the_conversions_printed_beside_them(
            String text, double printed, String unit, double tolerance, String source) {
        assertEquals(printed, inCanonical(QuantityText.any(text), unit).doubleValue(), tolerance, source);
    }

    @ParameterizedTest
    @CsvSource({
        "IMPERIAL_PINT, 288",
        "IMPERIAL_GALLON, 36",
        "PIN, 8",
        "FIRKIN, 4",
        "KILDERKIN, 2",
        "UK_BARREL, 1",
    })
    void a_barrel_is_a_whole_number_of_smaller_measures(String name, double number)
            throws ReflectiveOperationException {
        Unit<javax.measure.quantity.Volume> measure =
                ((Unit<?>) Units.class.getField(name).get(null)).asType(javax.measure.quantity.Volume.class);
        assertEquals(number, Amounts.value(Amounts.of(1, Units.UK_BARREL), measure));
        assertEquals(1, Amounts.value(Amounts.of(number, measure), Units.UK_BARREL));
    }

    /** From the definitions: 336 lb, 36 gallons, and a barrel of water taken as 360 lb. */
    @Test
    void a_pound_of_extract_a_quarter_is_a_barrel_of_one_brewers_pound_from_a_quarter_of_malt() {
        double litreDegrees = 36 * 4.54609 * 1000 / 360;
        double malt = 336 * 0.45359237;
        double pound = Amounts.litreDegreesPerKilogram(Amounts.of(1, Units.POUND_PER_QUARTER));
        assertEquals(litreDegrees / malt, pound, 4 * ONE_ROUNDING);
    }

    /** From the definitions: 1 oz/firkin is 4 oz/brl; 16 oz are 1 lb. */
    @Test
    void ounces_and_pounds_a_barrel_follow_from_pound_and_gallon() {
        double pound = 453.59237 / (36 * 4.54609 / 100);
        assertEquals(pound, Amounts.gramsPerHectolitre(Amounts.of(1, Units.POUND_PER_BARREL)), pound * ONE_ROUNDING);
        assertEquals(1, Amounts.value(Amounts.of(16, Units.OUNCE_PER_BARREL), Units.POUND_PER_BARREL));
    }

    @Test
    void extract_is_not_taken_for_volume() {
        assertFalse(Units.LITRE_DEGREE.isCompatible(Units.LITRE));
        assertFalse(Units.LITRE_DEGREE_PER_KILOGRAM.isCompatible(Units.LITRE_PER_KILOGRAM));
    }

    @Test
    void every_unit_has_a_symbol_of_its_own_that_reads_back() throws IllegalAccessException {
        Map<String, String> names = new HashMap<>();
        for (Field field : Units.class.getFields()) {
            Unit<?> unit = (Unit<?>) field.get(null);
            String symbol = QuantityText.symbol(unit);
            assertEquals(unit, TextTables.unit(symbol), field.getName());
            assertEquals(null, names.put(symbol, field.getName()), symbol);
        }
        assertTrue(names.size() > 40, names.toString());
    }

    /** The table's factors against the units' own converters. */
    @Test
    void the_table_converts_as_the_units_themselves_do() throws IllegalAccessException {
        for (Field field : Units.class.getFields()) {
            Unit<?> unit = (Unit<?>) field.get(null);
            KnownUnit<?> known = UnitTable.require(unit);
            double own = own(known, 70);
            assertEquals(own, known.toCanonical(70), Math.abs(own) * ONE_ROUNDING, field.getName());
        }
    }

    private static <Q extends Quantity<Q>> double own(KnownUnit<Q> known, Number value) {
        return known.unit()
                .getConverterTo(known.kind().canonical())
                .convert(value)
                .doubleValue();
    }

    private static BigDecimal inCanonical(Quantity<?> quantity, String symbol) {
        KnownUnit<?> unit = UnitTable.require(quantity.getUnit());
        assertEquals(symbol, QuantityText.symbol(unit.kind().canonical()));
        return Decimals.shortest(unit.toCanonical(quantity.getValue().doubleValue()));
    }
}
