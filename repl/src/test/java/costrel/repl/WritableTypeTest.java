package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

final class WritableTypeTest {

    @Test
    void a_type_that_can_be_written_stays_as_it_is() {
        for (String type : new String[] {
            "int",
            "String[]",
            "List<String>",
            "Map<String, List<Integer>>",
            "Class<? extends List<?>>",
            "Outer<String>.Inner<Integer>",
            "List<String>[]",
            "<anonymous class extending Object>",
            ""
        }) {
            assertEquals(type, WritableType.of(type));
        }
    }

    @Test
    void what_is_several_kinds_at_once_becomes_anything() {
        assertEquals(
                "List<?>", WritableType.of("List<java.io.Serializable&Comparable<? extends Number&Comparable<?>>>"));
        assertEquals("Map<String, List<?>>", WritableType.of("Map<String,List<Number&Comparable<?>>>"));
        assertEquals("Comparable<String>", WritableType.of("Comparable<String>&java.io.Serializable"));
        assertEquals("Class<?>", WritableType.of("Class<? extends Number&Comparable<?>>"));
    }
}
