package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class CsvInTest {

    /** RFC 4180, section 2, rules 5 to 7: quotes around commas, quotes and line breaks; a quote is doubled. */
    @Test
    void rows_are_read_by_rfc_4180() {
        assertEquals(
                List.of(
                        List.of("malt", "pale, low"),
                        List.of("hops", "a \"fine\" lot", "two\nlines"),
                        List.of("yeast")),
                CsvIn.rows("malt,\"pale, low\"\r\n\r\nhops,\"a \"\"fine\"\" lot\",\"two\nlines\"\r\nyeast\r\n"));
    }

    @Test
    void what_was_guarded_on_the_way_out_is_itself_again() {
        for (String text : List.of("=1+1", "-A1", "'=x", "@SUM(A1)", "#note", "-2.50", "plain", "'quoted'")) {
            assertEquals(
                    List.of(List.of(text, "end")),
                    CsvIn.rows(new CsvOut().row(text, "end").text()));
        }
    }

    @Test
    void an_open_quote_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> CsvIn.rows("a,\"b\r\nc,d\r\n"));
    }
}
