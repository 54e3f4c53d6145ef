package costrel.repl;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the console keeps of its own between two runs: the history of inputs, in the user's state folder. */
final class State {

    /** The line editor's own form: milliseconds since 1970, a colon, the input. */
    private static final Pattern ENTRY = Pattern.compile("\\d{1,18}:");

    /** The line editor keeps it far below; a larger one would take long to read. */
    private static final long LARGEST_BYTES = 50_000_000;

    private State() {}

    /**
     * The folder for it: {@code COSTREL_STATE} if set; on Windows {@code %LOCALAPPDATA%\costrel}; elsewhere
     * {@code $XDG_STATE_HOME/costrel}, or {@code ~/.local/state/costrel}.
     *
     * @param environment the environment's variables
     * @param system the operating system's name
     * @param home the user's home folder, may be empty
     * @return the folder, which need not exist; empty if there is no place for it
     */
    static Optional<Path> folder(Map<String, String> environment, String system, String home) {
        String own = environment.getOrDefault("COSTREL_STATE", "");
        if (!own.isBlank()) {
            return path(own);
        }
        if (system.toLowerCase(Locale.ROOT).startsWith("windows")) {
            return path(environment.getOrDefault("LOCALAPPDATA", "")).map(base -> base.resolve("costrel"));
        }
        // The XDG rules: a path that is not absolute is to be passed over.
        Optional<Path> stated =
                path(environment.getOrDefault("XDG_STATE_HOME", "")).filter(Path::isAbsolute);
        Optional<Path> base = stated.isPresent()
                ? stated
                : path(home)
                        .filter(Path::isAbsolute)
                        .map(folder -> folder.resolve(".local").resolve("state"));
        return base.map(folder -> folder.resolve("costrel"));
    }

    /**
     * The history file in a state folder, made if need be. One that can't be read as a history is put aside as
     * {@code history-unreadable}.
     *
     * @param folder the state folder
     * @return the file; empty if it can't be read and written, in which case nothing is kept
     */
    static Optional<Path> history(Path folder) {
        try {
            Files.createDirectories(folder);
            Path file = folder.resolve("history");
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file)) {
                return Optional.empty();
            }
            Files.newByteChannel(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)
                    .close();
            keepPrivate(file);
            if (!isHistory(file)) {
                Files.move(file, folder.resolve("history-unreadable"), StandardCopyOption.REPLACE_EXISTING);
            }
            return Optional.of(file);
        } catch (IOException | SecurityException e) {
            return Optional.empty();
        }
    }

    private static boolean isHistory(Path file) throws IOException {
        if (Files.size(file) > LARGEST_BYTES) {
            return false;
        }
        try (Stream<String> lines = Files.lines(file)) {
            return lines.allMatch(line -> ENTRY.matcher(line).lookingAt());
        } catch (UncheckedIOException e) {
            return false;
        }
    }

    /** For the user's eyes only, where the file system knows of users. */
    private static void keepPrivate(Path file) throws IOException {
        PosixFileAttributeView users = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (users != null) {
            users.setPermissions(EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE));
        }
    }

    private static Optional<Path> path(String text) {
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
