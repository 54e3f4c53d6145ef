package costrel.plant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Dips between measured points, by the rule of three. */
class DipTableTest {

    private static DipTable table(Map<Double, Double> points) {
        return new DipTable(new TreeMap<>(points));
    }

    @Test
    void a_volume_between_two_points_is_read_between_their_dips() {
        DipTable wet = table(Map.of(3000.0, 62.0, 5000.0, 98.5, 7000.0, 135.0));
        assertEquals(98.5, wet.at(5000).orElseThrow());
        assertEquals(62.0 + 36.5 / 4, wet.at(3500).orElseThrow(), 1e-12);
        DipTable room = table(Map.of(0.0, 180.0, 6000.0, 30.0));
        assertEquals(105, room.at(3000).orElseThrow(), 1e-12);
    }

    @Test
    void nothing_is_read_beyond_what_was_measured() {
        DipTable table = table(Map.of(3000.0, 62.0, 5000.0, 98.5));
        assertTrue(table.at(2999).isEmpty());
        assertTrue(table.at(5001).isEmpty());
        assertTrue(DipTable.NONE.at(1).isEmpty());
    }

    @Test
    void a_stick_that_turns_back_or_a_single_point_is_refused() {
        for (Map<Double, Double> points : List.of(
                Map.of(1.0, 10.0),
                Map.of(1.0, 10.0, 2.0, 10.0),
                Map.of(1.0, 10.0, 2.0, 12.0, 3.0, 11.0),
                Map.of(1.0, 10.0, 2.0, Double.NaN),
                Map.of(-1.0, 10.0, 2.0, 12.0))) {
            String told = String.valueOf(assertThrows(IllegalArgumentException.class, () -> table(points))
                    .getMessage());
            assertTrue(told.startsWith("dips: expected"), told);
        }
    }
}
