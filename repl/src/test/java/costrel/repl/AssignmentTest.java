package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class AssignmentTest {

    @Test
    void a_name_an_equals_sign_and_an_expression_are_an_assignment() {
        assertEquals(Optional.of(new Assignment("x", false, 4, "5")), Assignment.of("x = 5"));
        assertEquals(Optional.of(new Assignment("x", false, 2, "5")), Assignment.of("x=5;"));
        assertEquals(Optional.of(new Assignment("x", true, 8, "5")), Assignment.of("var x = 5 ;"));
        assertEquals(Optional.of(new Assignment("x", false, 4, "y = 5")), Assignment.of("x = y = 5"));
        assertEquals(Optional.of(new Assignment("x", false, 4, "a == b")), Assignment.of("x = a == b"));
        assertEquals(Optional.of(new Assignment("münze", false, 8, "5")), Assignment.of("münze = 5"));
        assertEquals(Optional.of(new Assignment("x", false, 14, "5")), Assignment.of("// y = \n/**/x=5"));
        assertEquals(Optional.of(new Assignment("x", false, 4, "f(\n1)")), Assignment.of("x = f(\n1)"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "x",
                "x == 5",
                "x += 5",
                "x[0] = 5",
                "x.y = 5",
                "int x = 5",
                "var = 5",
                "this = 5",
                "5 = x",
                "x =",
                "x = ;",
                "f(x = 5)",
                "// x = 5",
                "/* x */",
                "for (x = 5;;) {}",
                "var x",
                "final var x = 5"
            })
    void anything_else_is_not(String source) {
        assertEquals(Optional.empty(), Assignment.of(source));
    }
}
