package costrel.repl;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A session's good lines as a script that runs again. */
final class SavedScript {

    private static final String FIRST_WORDS = "// Saved at the Costrel console";

    private SavedScript() {}

    /**
     * Writes a script, whole or not at all.
     *
     * @param name the file, which ends in .jsh
     * @param lines what was answered, in order
     * @param folder the brewery folder that was open
     * @param day the day on the desk, if one was set
     * @return what to tell the user
     * @throws IllegalArgumentException if there is nothing to write, the name isn't that of a script, or a file of that name
     *     was not saved here
     */
    static String write(String name, List<String> lines, Path folder, Optional<LocalDate> day) {
        if (!name.endsWith(".jsh")) {
            throw new IllegalArgumentException(
                    "script: expected a name that ends in .jsh, such as \"monday.jsh\", found '" + name + "'");
        }
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("script: expected a line that was answered, found none so far");
        }
        try {
            Path file = Path.of(name).toAbsolutePath().normalize();
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isOurs(file)) {
                throw new IllegalArgumentException("script: expected a new name or a script saved here before, found '"
                        + name + "', which was written otherwise");
            }
            Path part = Files.createTempFile(file.getParent(), "costrel", ".part");
            try {
                Files.writeString(part, text(lines, folder, day));
                move(part, file);
            } finally {
                Files.deleteIfExists(part);
            }
            return lines.size() + (lines.size() == 1 ? " line" : " lines") + " saved as " + file;
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException("script: expected the name of a file, found '" + name + "'", e);
        } catch (IOException e) {
            throw new UncheckedIOException("script: '" + name + "' can't be written: " + e.getMessage(), e);
        }
    }

    private static String text(List<String> lines, Path folder, Optional<LocalDate> day) {
        StringBuilder text = new StringBuilder(FIRST_WORDS);
        text.append(" over the brewery folder ").append(Rendering.clean(String.valueOf(folder.getFileName())));
        text.append(".\n");
        if (day.isEmpty()) {
            text.append("// No day was set: it works for the day on which it runs.\n");
        }
        lines.forEach(line -> text.append(line.strip()).append('\n'));
        return text.toString();
    }

    private static boolean isOurs(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        byte[] start;
        try (var in = Files.newInputStream(file)) {
            start = in.readNBytes(FIRST_WORDS.length());
        }
        return new String(start, StandardCharsets.UTF_8).equals(FIRST_WORDS);
    }

    private static void move(Path part, Path file) throws IOException {
        try {
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
