package costrel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.quantity.Quantities;

class AmountsTest {

    private static final double RELATIVE = 1e-15;

    private static final List<DoubleFunction<Quantity<?>>> WAYS_OUT = List.of(
            Amounts::ofLitres,
            Amounts::ofKilograms,
            Amounts::ofMinutes,
            Amounts::ofCelsius,
            Amounts::ofGramsPerHectolitre,
            Amounts::ofLitresPerKilogram,
            Amounts::ofMillilitresPerHectolitre,
            Amounts::ofLitreDegrees,
            Amounts::ofLitreDegreesPerKilogram,
            Amounts::ofLitresPerHour);

    @Test
    void what_goes_out_of_the_door_comes_back_in_unchanged() {
        Random random = new Random(TextTables.SEED);
        for (int i = 0; i < 1000; i++) {
            double x = TextTables.anyNumber(random);
            String seed = "seed " + TextTables.SEED + ", value " + x;
            assertEquals(x, Amounts.litres(Amounts.ofLitres(x)), seed);
            assertEquals(x, Amounts.kilograms(Amounts.ofKilograms(x)), seed);
            assertEquals(x, Amounts.minutes(Amounts.ofMinutes(x)), seed);
            assertEquals(x, Amounts.celsius(Amounts.ofCelsius(x)), seed);
            assertEquals(x, Amounts.gramsPerHectolitre(Amounts.ofGramsPerHectolitre(x)), seed);
            assertEquals(x, Amounts.litresPerKilogram(Amounts.ofLitresPerKilogram(x)), seed);
            assertEquals(x, Amounts.millilitresPerHectolitre(Amounts.ofMillilitresPerHectolitre(x)), seed);
            assertEquals(x, Amounts.litreDegrees(Amounts.ofLitreDegrees(x)), seed);
            assertEquals(x, Amounts.litreDegreesPerKilogram(Amounts.ofLitreDegreesPerKilogram(x)), seed);
            assertEquals(x, Amounts.litresPerHour(Amounts.ofLitresPerHour(x)), seed);
        }
    }

    @Test
    void a_unit_there_and_back_loses_no_more_than_rounding() throws IllegalAccessException {
        Random random = new Random(TextTables.SEED);
        for (Field field : Units.class.getFields()) {
            for (int i = 0; i < 200; i++) {
                double x = random.nextDouble() * Math.pow(10, random.nextInt(12) - 6);
                double back = thereAndBack(x, UnitTable.require((Unit<?>) field.get(null)));
                double tolerance = field.get(null).equals(Units.FAHRENHEIT) ? 1e-12 : x * 3e-16;
                assertEquals(x, back, tolerance + x * 3e-16, field.getName() + ", seed " + TextTables.SEED);
            }
        }
    }

    private static <Q extends Quantity<Q>> double thereAndBack(double value, KnownUnit<Q> unit) {
        Unit<Q> canonical = unit.kind().canonical();
        double there = Amounts.value(Amounts.of(value, unit.unit()), canonical);
        return Amounts.value(Amounts.of(there, canonical), unit.unit());
    }

    /** 20 × 163.65924, written out; a factor rounded to a double first would give 3273.1848 only by luck. */
    @Test
    void decimals_that_are_exact_stay_exact() {
        assertEquals(3273.1848, Amounts.litres(Amounts.of(20, Units.UK_BARREL)));
        assertEquals(0.3, Amounts.gramsPerHectolitre(Amounts.of(3, Units.MILLIGRAM_PER_LITRE)));
        assertEquals(0.33, Amounts.litres(Amounts.of(330, Units.MILLILITRE)));
        assertEquals(11.33980925, Amounts.kilograms(Amounts.of(25, Units.POUND)));
        assertEquals(1.5, Amounts.value(Amounts.of(90, Units.MINUTE), Units.HOUR));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void what_is_not_a_number_passes_neither_way(double value) {
        for (DoubleFunction<Quantity<?>> out : WAYS_OUT) {
            IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> out.apply(value));
            assertTrue(TextTables.message(refused).endsWith(", found " + value), refused.getMessage());
        }
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> Amounts.kilograms(foreign(value, Units.KILOGRAM)));
        assertEquals("expected a finite number of kg, found " + value, refused.getMessage());
    }

    @Test
    void an_amount_too_large_for_its_kilograms_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> Amounts.kilograms(Amounts.of(1e308, Units.TONNE)));
        assertThrows(IllegalArgumentException.class, () -> Amounts.value(Amounts.ofKilograms(1e308), Units.MILLIGRAM));
    }

    @Test
    void a_difference_of_temperatures_is_not_a_temperature() {
        Quantity<Temperature> difference = Quantities.getQuantity(5, Units.CELSIUS, Quantity.Scale.RELATIVE);
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> Amounts.celsius(difference));
        assertEquals("expected a temperature, found a difference of 5 °C", refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> Amounts.value(difference, Units.FAHRENHEIT));
    }

    @Test
    @SuppressWarnings({"unchecked", "rawtypes"})
    void a_weight_passed_for_a_volume_behind_the_compilers_back_is_refused() {
        Quantity<Volume> disguised = (Quantity) Amounts.ofKilograms(25);
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> Amounts.litres(disguised));
        assertEquals("expected an amount that can be told in L, found 25 kg", refused.getMessage());
    }

    @Test
    void units_of_an_embedding_program_are_converted_by_their_own_factor() {
        Unit<Mass> sack = Units.KILOGRAM.multiply(25);
        assertEquals(75, Amounts.kilograms(Amounts.of(3, sack)));
        assertEquals(3, Amounts.value(Amounts.ofKilograms(75), sack));
        assertTrue(Amounts.same(Amounts.of(2, sack), Amounts.of(0.05, Units.TONNE), 0));
    }

    @Test
    void the_same_amount_in_other_units_is_the_same() {
        assertTrue(Amounts.same(Amounts.of(1, Units.LITRE), Amounts.of(1000, Units.MILLILITRE), 0));
        assertTrue(Amounts.same(Amounts.of(1, Units.UK_BARREL), Amounts.ofLitres(163.65924), RELATIVE));
        assertTrue(Amounts.same(Amounts.of(212, Units.FAHRENHEIT), Amounts.ofCelsius(100), 0));
        assertFalse(Amounts.same(Amounts.ofLitres(100), Amounts.ofLitres(101), 0.009));
        assertTrue(Amounts.same(Amounts.ofLitres(100), Amounts.ofLitres(101), 0.01));
        assertTrue(Amounts.same(Amounts.ofLitres(0), Amounts.of(0, Units.FIRKIN), 0));
        assertFalse(Amounts.same(Amounts.ofLitres(1), Amounts.ofLitres(-1), 1));
    }

    /** 0 °C and 1 °C: 1 K in 274.15 K is 0.36 %. */
    @Test
    void near_temperatures_are_compared_from_absolute_zero() {
        assertTrue(Amounts.same(Amounts.ofCelsius(0), Amounts.ofCelsius(1), 0.0037));
        assertFalse(Amounts.same(Amounts.ofCelsius(0), Amounts.ofCelsius(1), 0.0036));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.1, 1.1})
    void a_tolerance_that_makes_no_sense_is_refused(double tolerance) {
        Quantity<Volume> litre = Amounts.ofLitres(1);
        assertThrows(IllegalArgumentException.class, () -> Amounts.same(litre, litre, tolerance));
    }

    /** A quantity of somebody else's making, which holds what it likes. */
    @SuppressWarnings("unchecked")
    private static <Q extends Quantity<Q>> Quantity<Q> foreign(double value, Unit<Q> unit) {
        return (Quantity<Q>) Proxy.newProxyInstance(
                AmountsTest.class.getClassLoader(),
                new Class<?>[] {Quantity.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "getValue" -> value;
                    case "getUnit" -> unit;
                    case "getScale" -> Quantity.Scale.ABSOLUTE;
                    default -> throw new IllegalStateException(method.getName());
                });
    }
}
