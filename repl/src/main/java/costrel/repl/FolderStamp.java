package costrel.repl;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How the tables of a brewery's folder stood at one time, to tell whether they have changed since.
 *
 * @param files time of the last change and size, by name
 */
record FolderStamp(Map<String, String> files) {

    static final FolderStamp NONE = new FolderStamp(Map.of());

    FolderStamp {
        files = Map.copyOf(files);
    }

    /** How they stand now. */
    static FolderStamp of(Path folder) {
        Map<String, String> files = new TreeMap<>();
        put(files, folder, folder);
        put(files, folder, folder.resolve("recipes"));
        return new FolderStamp(files);
    }

    /** Notes the tables of a part of the folder; none where it can't be looked at. */
    private static void put(Map<String, String> files, Path folder, Path part) {
        try (DirectoryStream<Path> tables = Files.newDirectoryStream(part, "*.csv")) {
            for (Path table : tables) {
                BasicFileAttributes now = Files.readAttributes(table, BasicFileAttributes.class);
                files.put(
                        folder.relativize(table).toString().replace('\\', '/'),
                        now.lastModifiedTime().toMillis() + " " + now.size());
            }
        } catch (IOException unseen) {
            // As good as no such folder: whoever opens it tells what is wrong.
            return;
        }
    }

    /** Names of files that have been changed, made or taken away between another time and this. */
    List<String> differsFrom(FolderStamp before) {
        return Stream.concat(files.keySet().stream(), before.files.keySet().stream())
                .distinct()
                .filter(name -> !files.getOrDefault(name, "").equals(before.files.getOrDefault(name, "")))
                .sorted()
                .toList();
    }
}
