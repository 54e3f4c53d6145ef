package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The page that says how a brewery's files look names every column and property that the readers know. */
class FilesPageTest {

    private static final Path PAGE = Path.of("../samples/FILES.md");

    /** Readers of tables that only ship with the library, each explained by its own file. */
    private static final Set<String> BUILT_IN = Set.of("CropYearAlphaReader");

    @Test
    void every_column_stands_on_the_page() throws IOException, ReflectiveOperationException {
        String page = Files.readString(PAGE);
        List<String> missing = new ArrayList<>();
        int columns = 0;
        for (var type : new ClassFileImporter().importPackages("costrel.tables")) {
            if (!type.getSimpleName().endsWith("Reader") || BUILT_IN.contains(type.getSimpleName())) {
                continue;
            }
            for (Field field : Class.forName(type.getName()).getDeclaredFields()) {
                if (Modifier.isStatic(field.getModifiers()) && field.getType() == Columns.class) {
                    field.setAccessible(true);
                    for (String name : ((Columns) field.get(null)).known()) {
                        columns++;
                        if (!page.contains("`" + name + "`")) {
                            missing.add(type.getSimpleName() + ": " + name);
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), missing);
        assertTrue(columns > 100, "only " + columns + " columns found");
    }

    @Test
    void every_property_of_a_plant_and_a_beer_stands_on_the_page() throws IOException {
        String page = Files.readString(PAGE);
        List<String> missing = new ArrayList<>();
        List<String> words = new ArrayList<>(PlantReader.everyWord());
        words.addAll(RecipeReader.PROPERTIES);
        for (String word : words) {
            if (!page.contains("`" + word + "`")) {
                missing.add(word);
            }
        }
        assertEquals(List.of(), missing);
    }
}
