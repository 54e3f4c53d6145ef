package costrel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.ibm.icu.impl.units.UnitsConverter;
import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every unit against ICU4J, which has its factors from the Unicode Common Locale Data Repository. What it doesn't know
 * (casks, the hundredweight, the malt quarter, the beer barrels) is told in its gallons and pounds.
 */
class UnitsAgainstIcuTest {

    private static final double RELATIVE = 1e-15;
    private static final double DEGREES = 1e-12;

    @ParameterizedTest
    @CsvSource({
        "kg, kilogram, kilogram, 1",
        "g, gram, kilogram, 1",
        "mg, milligram, kilogram, 1",
        "t, tonne, kilogram, 1",
        "lb, pound, kilogram, 1",
        "oz, ounce, kilogram, 1",
        "st, stone, kilogram, 1",
        "cwt, pound, kilogram, 112",
        "qr, pound, kilogram, 336",
        "L, liter, liter, 1",
        "mL, milliliter, liter, 1",
        "hL, hectoliter, liter, 1",
        "m³, cubic-meter, liter, 1",
        "fl oz, fluid-ounce-imperial, liter, 1",
        "pt, pint-imperial, liter, 1",
        "qt, quart-imperial, liter, 1",
        "gal, gallon-imperial, liter, 1",
        "pin, gallon-imperial, liter, 4.5",
        "firkin, gallon-imperial, liter, 9",
        "kilderkin, gallon-imperial, liter, 18",
        "brl, gallon-imperial, liter, 36",
        "hogshead, gallon-imperial, liter, 54",
        "US gal, gallon, liter, 1",
        "US bbl, gallon, liter, 31",
        "min, minute, minute, 1",
        "s, second, minute, 1",
        "h, hour, minute, 1",
        "d, day, minute, 1",
        "g/hL, gram-per-hectoliter, gram-per-hectoliter, 1",
        "kg/hL, kilogram-per-hectoliter, gram-per-hectoliter, 1",
        "mg/L, milligram-per-liter, gram-per-hectoliter, 1",
        "g/L, gram-per-liter, gram-per-hectoliter, 1",
        "oz/brl, ounce-per-gallon-imperial, gram-per-hectoliter, 1/36",
        "lb/brl, pound-per-gallon-imperial, gram-per-hectoliter, 1/36",
        "L/kg, liter-per-kilogram, liter-per-kilogram, 1",
        "mL/100 g, milliliter-per-gram, liter-per-kilogram, 1/100",
        "brl/qr, gallon-imperial-per-pound, liter-per-kilogram, 36/336",
        "mL/hL, milliliter-per-hectoliter, milliliter-per-hectoliter, 1",
        "L/hL, liter-per-hectoliter, milliliter-per-hectoliter, 1",
        "pt/brl, pint-imperial-per-gallon-imperial, milliliter-per-hectoliter, 1/36",
        "L/h, liter-per-hour, liter-per-hour, 1",
        "hL/h, hectoliter-per-hour, liter-per-hour, 1",
        "brl/h, gallon-imperial-per-hour, liter-per-hour, 36",
    })
    void a_factor_is_the_one_that_an_independent_library_has(String symbol, String from, String to, String times) {
        String[] ratio = times.split("/", -1);
        double scale = Double.parseDouble(ratio[0]) / (ratio.length == 2 ? Double.parseDouble(ratio[1]) : 1);
        double theirs = new UnitsConverter(from, to).convert(BigDecimal.ONE).doubleValue() * scale;
        double ours = UnitTable.require(TextTables.unit(symbol)).toCanonical(1);
        assertEquals(theirs, ours, theirs * RELATIVE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-40, 0, 32, 50, 70, 150.5, 158, 212})
    void fahrenheit_and_celsius_are_those_of_an_independent_library(double degrees) {
        UnitsConverter toCelsius = new UnitsConverter("fahrenheit", "celsius");
        UnitsConverter toFahrenheit = new UnitsConverter("celsius", "fahrenheit");
        BigDecimal exact = BigDecimal.valueOf(degrees);
        assertEquals(
                toCelsius.convert(exact).doubleValue(),
                Amounts.celsius(Amounts.of(degrees, Units.FAHRENHEIT)),
                DEGREES);
        assertEquals(
                toFahrenheit.convert(exact).doubleValue(),
                Amounts.value(Amounts.ofCelsius(degrees), Units.FAHRENHEIT),
                DEGREES);
    }
}
