package costrel.brewery;

import costrel.tables.TableProblem;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The tables of a folder as they stood at one time. A folder whose tables change while it is read would be read partly from
 * before and partly from after.
 */
final class FolderState {

    private FolderState() {}

    /** Size and time of each table by its name in the folder. What can't be looked at is left to its reader. */
    static Map<String, String> of(Path folder) {
        Map<String, String> tables = new TreeMap<>();
        put(tables, folder, folder);
        put(tables, folder, folder.resolve("recipes"));
        return tables;
    }

    /** A problem for each table that was made, changed or taken away between two times. */
    static List<TableProblem> changes(Map<String, String> before, Map<String, String> after) {
        Set<String> names = new TreeSet<>(before.keySet());
        names.addAll(after.keySet());
        return names.stream()
                .filter(name -> !Optional.ofNullable(before.get(name)).equals(Optional.ofNullable(after.get(name))))
                .map(name -> new TableProblem(
                        name,
                        0,
                        "",
                        "one that was made, changed or removed meanwhile",
                        "a file that stays as it is while its folder is read; read it again"))
                .toList();
    }

    private static void put(Map<String, String> tables, Path folder, Path part) {
        try (DirectoryStream<Path> found = Files.newDirectoryStream(part, "*.csv")) {
            for (Path table : found) {
                tables.put(folder.relativize(table).toString(), state(table));
            }
        } catch (IOException | DirectoryIteratorException toldByReader) {
            return;
        }
    }

    private static String state(Path table) {
        try {
            BasicFileAttributes now = Files.readAttributes(table, BasicFileAttributes.class);
            return now.size() + " " + now.lastModifiedTime();
        } catch (IOException e) {
            return "gone";
        }
    }
}
