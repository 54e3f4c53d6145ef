package costrel.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class ConvertTest {

    @Test
    void an_amount_is_told_in_another_unit_of_its_kind() {
        // Murphy & Son, "Hop Requirements": 2 oz/brl is about 35 g/hL; exactly 2 × 28.349523125 g in 1.6365924 hL
        assertEquals("34.6445738 g/hL", QuantityText.convert("2 oz/brl", "g/hL"));
        // Weights and Measures Act 1985: 36 gallons of 4.54609 L
        assertEquals("163.65924 L", QuantityText.convert("1 brl", "L"));
        assertEquals("288 pt", QuantityText.convert("1 brl", "pt"));
        assertEquals("70 °F", QuantityText.convert("21.1111111 °C", "°F"));
    }

    @Test
    void a_mass_is_no_volume() {
        assertThrows(IllegalArgumentException.class, () -> QuantityText.convert("25 kg", "L"));
        assertThrows(IllegalArgumentException.class, () -> QuantityText.convert("25 kg", "furlong"));
    }
}
