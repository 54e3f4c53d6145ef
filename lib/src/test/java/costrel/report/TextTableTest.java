package costrel.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class TextTableTest {

    @Test
    void figures_stand_with_their_points_under_each_other_and_the_total_under_a_rule() {
        String text = TextTable.of("malt", "#kg")
                .row("pale", "617.00")
                .row("crystal", "5.5")
                .total("", "622.50")
                .text(2);
        assertEquals("""
                  malt         kg
                  pale     617.00
                  crystal    5.5
                           ------
                           622.50
                """, text);
    }

    @Test
    void a_row_of_more_cells_than_columns_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> TextTable.of("a").row("1", "2"));
    }
}
