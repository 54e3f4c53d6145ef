package costrel.repl;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

final class ConsoleTest {

    @Test
    void the_version_is_the_one_the_build_gave() {
        assertTrue(Version.read().matches("\\d+\\.\\d+\\.\\d+"), Version.read());
    }
}
