package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class StateTest {

    /** The XDG Base Directory Specification, version 0.8: the default, and that a relative path is ignored. */
    @Test
    void the_state_folder_follows_the_rules_of_the_system(@TempDir Path home) {
        String at = home.toString();
        assertEquals(Optional.of(home.resolve(".local/state/costrel")), State.folder(Map.of(), "Linux", at));
        assertEquals(
                Optional.of(home.resolve("elsewhere/costrel")),
                State.folder(Map.of("XDG_STATE_HOME", home.resolve("elsewhere").toString()), "Linux", at));
        assertEquals(
                Optional.of(home.resolve(".local/state/costrel")),
                State.folder(Map.of("XDG_STATE_HOME", "relative"), "Linux", at));
        assertEquals(
                Optional.of(home.resolve("costrel")),
                State.folder(Map.of("LOCALAPPDATA", at, "XDG_STATE_HOME", "/x"), "Windows 11", ""));
        assertEquals(
                Optional.of(home),
                State.folder(Map.of("COSTREL_STATE", at, "XDG_STATE_HOME", "/x", "LOCALAPPDATA", "/y"), "Linux", "/z"));
    }

    @Test
    void without_a_home_there_is_no_state_folder() {
        assertEquals(Optional.empty(), State.folder(Map.of(), "Linux", ""));
        assertEquals(Optional.empty(), State.folder(Map.of(), "Linux", "?"));
        assertEquals(Optional.empty(), State.folder(Map.of(), "Windows 10", "C:\\Users\\x"));
    }

    @Test
    void the_history_is_for_the_users_eyes_only(@TempDir Path folder) throws IOException {
        Path file = State.history(folder.resolve("a").resolve("b")).orElseThrow();
        assertEquals(folder.resolve("a").resolve("b").resolve("history"), file);
        PosixFileAttributeView users = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (users != null) {
            assertEquals(
                    "rw-------",
                    PosixFilePermissions.toString(users.readAttributes().permissions()));
        }
    }

    @Test
    void a_history_is_kept_as_it_is_and_anything_else_put_aside(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("history"), "1767225600000:5 * 36\n");
        assertEquals(Optional.of(file), State.history(folder));
        assertEquals("1767225600000:5 * 36\n", Files.readString(file));
        Files.writeString(file, "shopping list\n");
        assertEquals(Optional.of(file), State.history(folder));
        assertTrue(Files.notExists(file));
        assertEquals("shopping list\n", Files.readString(folder.resolve("history-unreadable")));
    }

    @Test
    void where_nothing_can_be_written_there_is_no_history(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        assertEquals(Optional.empty(), State.history(file));
        assertEquals(Optional.empty(), State.history(file.resolve("below")));
        Files.createDirectory(folder.resolve("history"));
        assertEquals(Optional.empty(), State.history(folder));
    }
}
