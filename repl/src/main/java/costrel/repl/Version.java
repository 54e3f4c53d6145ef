package costrel.repl;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version that the build wrote beside this class. */
final class Version {

    private static final String FILE = "version.properties";

    private Version() {}

    /**
     * Reads the version, such as {@code 0.1.0}.
     *
     * @throws IllegalStateException if the build left no version
     */
    static String read() {
        Properties properties = new Properties();
        try (InputStream in = Version.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("version: expected " + FILE + " beside the program, found none");
            }
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String version = properties.getProperty("version", "");
        if (version.isEmpty() || version.startsWith("$")) {
            throw new IllegalStateException("version: expected digits such as 0.1.0, found '" + version + "'");
        }
        return version;
    }
}
