package costrel.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

    @Test
    void a_table_wider_than_the_screen_goes_on_below_with_its_first_column() {
        String text = TextTable.of("malt", "#kg", "sacks", "#share %")
                .row("pale", "617.00", "24 × 25 kg", "97.2")
                .row("crystal", "17.80", "", "2.8")
                .total("", "634.80", "", "100.0")
                .text(0, 30);
        assertEquals("""
                malt         kg  sacks
                pale     617.00  24 × 25 kg
                crystal   17.80
                         ------
                         634.80
                malt     share %
                pale        97.2
                crystal      2.8
                         -------
                           100.0
                """, text);
    }

    @Test
    void what_goes_on_below_repeats_as_many_columns_as_tell_the_rows_apart() {
        String text = TextTable.of("part", "item", "#kg", "supplier of it", "#£")
                .row("hops", "Fuggle", "3.10", "Hop Factors", "61.38")
                .row("hops", "Target", "2.50", "Hop Factors", "35.50")
                .total("", "", "5.60", "", "96.88")
                .text(0, 36);
        assertEquals("""
                part  item      kg  supplier of it
                hops  Fuggle  3.10  Hop Factors
                hops  Target  2.50  Hop Factors
                              ----
                              5.60
                part  item        £
                hops  Fuggle  61.38
                hops  Target  35.50
                              -----
                              96.88
                """, text);
    }

    @Test
    void every_sheet_fits_a_screen_of_a_hundred_characters() {
        for (Sheet sheet : LanternfoldSheets.all()) {
            boolean words = sheet.tables().stream()
                    .flatMap(table -> table.rows().stream())
                    .flatMap(row -> row.cells().stream())
                    .anyMatch(cell -> cell.text().length() > 60);
            TextForm.of(sheet, 100)
                    .lines()
                    .filter(line -> !words)
                    .forEach(line -> assertTrue(line.length() <= 100, () -> sheet.kind() + ": " + line));
        }
    }
}
