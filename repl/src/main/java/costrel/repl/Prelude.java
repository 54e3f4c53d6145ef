package costrel.repl;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** What the console knows before the first input: the text of {@code prelude.jsh}. */
final class Prelude {

    private static final String FILE = "prelude.jsh";

    private Prelude() {}

    /**
     * Reads the prelude.
     *
     * @return its text
     * @throws IllegalStateException if the build left no prelude
     */
    static String read() {
        try (InputStream in = Prelude.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("prelude: expected " + FILE + " beside the program, found none");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
