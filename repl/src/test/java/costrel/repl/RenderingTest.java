package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

final class RenderingTest {

    private static final Rendering BARE = new Rendering(List.of());

    private record Sheet(String title) {}

    private record Pair(String name, Object value) {}

    private static final class BareThing {}

    private record Parts(OptionalDouble retentionLPerKg, OptionalInt fillLoss, Choice keptAs) {}

    private enum Choice {
        COPPER_SUGAR,
        NAMED {
            @Override
            public String toString() {
                return "as named";
            }
        }
    }

    @Test
    void a_kind_with_a_form_of_its_own_prints_in_that_form_wherever_it_stands() {
        Rendering rendering = new Rendering(List.of(
                new Rendering.Kind<>(Sheet.class, sheet -> "[" + sheet.title() + "]\n---", sheet -> false),
                new Rendering.Kind<>(Record.class, any -> "any", any -> true)));
        assertEquals("[mild]\n---", rendering.text(new Sheet("mild")));
        assertEquals("[mild]\n---\n[bitter]\n---", rendering.text(List.of(new Sheet("mild"), new Sheet("bitter"))));
        assertEquals("[mild]\n---", rendering.text(Optional.of(new Sheet("mild"))));
        assertEquals("any", rendering.text(new Pair("a", 1)));
    }

    @Test
    void findings_anywhere_in_a_result_need_a_person() {
        Rendering rendering = new Rendering(List.of(new Rendering.Kind<>(
                Sheet.class, Sheet::title, sheet -> sheet.title().isEmpty())));
        assertTrue(rendering.needsAPerson(new Sheet("")));
        assertTrue(rendering.needsAPerson(List.of(new Sheet("mild"), List.of(new Sheet("")))));
        assertFalse(rendering.needsAPerson(List.of(new Sheet("mild"), "")));
        assertFalse(rendering.needsAPerson(null));
    }

    @Test
    void numbers_print_without_exponents_or_noise_in_the_sizes_of_a_brewery() {
        assertEquals("0.3", BARE.text(0.1 + 0.2));
        assertEquals("1.04", BARE.text(1.040));
        assertEquals("30", BARE.text(30.0));
        assertEquals("4909.77", BARE.text(4909.77f));
        assertEquals("163659240000", BARE.text(163_659_240_000.0));
        assertEquals("0", BARE.text(-0.0));
        assertEquals("-2.5", BARE.text(-2.5));
        assertEquals("1E+300", BARE.text(1e300));
        assertEquals("1E-9", BARE.text(1e-9));
        assertEquals("12.50", BARE.text(new BigDecimal("12.50")));
        assertEquals("1E+1000000", BARE.text(new BigDecimal("1E+1000000")));
        assertEquals("123456789012345678901234567890", BARE.text(new BigInteger("123456789012345678901234567890")));
        assertEquals("not a number", BARE.text(Double.NaN));
        assertEquals("-boundless", BARE.text(Double.NEGATIVE_INFINITY));
    }

    @Test
    void one_of_many_things_takes_one_line() {
        assertEquals("pin\nnothing\n(4.5, 9)", BARE.text(Arrays.asList("pin", null, List.of(4.5, 9.0))));
        assertEquals("firkin: (9, name: a, value: 1)", BARE.text(Map.of("firkin", List.of(9, new Pair("a", 1)))));
        assertEquals("none", BARE.text(Map.of()));
        assertEquals("1\n2", BARE.text(new long[] {1, 2}));
        assertEquals("yes\nno", BARE.text(List.of(true, false)));
    }

    @Test
    void the_parts_of_a_thing_take_a_line_each_and_those_of_a_part_none() {
        assertEquals("name: outer\nvalue: name: inner, value: 2", BARE.text(new Pair("outer", new Pair("inner", 2.0))));
    }

    @Test
    void parts_choices_and_blanks_read_as_words() {
        assertEquals(
                "retention L per kg: 30\nfill loss: none\nkept as: copper sugar",
                BARE.text(new Parts(OptionalDouble.of(30), OptionalInt.empty(), Choice.COPPER_SUGAR)));
        assertEquals("bare thing", BARE.text(new BareThing()));
        assertEquals("as named", BARE.text(Choice.NAMED));
    }

    @Test
    void of_many_things_inside_another_the_first_stand_for_all() {
        List<Integer> nine = List.of(1, 2, 3, 4, 5, 6, 7, 8, 9);
        assertEquals("1\n2\n3\n4\n5\n6\n7\n8\n9", BARE.text(nine));
        assertEquals("name: a\nvalue: (1, 2, 3, … 9 in all)", BARE.text(new Pair("a", nine)));
        assertEquals("(1, 2, 3, 4, 5, 6, 7, 8)", BARE.text(List.of(nine.subList(0, 8))));
    }

    @Test
    void a_cell_cannot_steer_the_terminal() {
        assertEquals("�[2J�]0;title�", BARE.text("\u001b[2J\u001b]0;title\u0007"));
        assertEquals("a�b�c�d", BARE.text("a\u009bb\u202ec\u0000d"));
        assertEquals("one\ntwo\tthree", BARE.text("one\r\ntwo\tthree\n"));
        assertEquals("£½°é…", BARE.text("£½°é…"));
        assertEquals("name: �[2J\nvalue: 1", BARE.text(new Pair("\u001b[2J", 1)));
    }
}
