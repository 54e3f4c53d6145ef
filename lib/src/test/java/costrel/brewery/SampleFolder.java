package costrel.brewery;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The sample brewery's folder, to be changed by a test. */
final class SampleFolder {

    private SampleFolder() {}

    static Path copiedInto(Path inner) throws IOException {
        Path folder = inner.resolve("lanternfold");
        try (Stream<Path> files = Files.walk(LanternfoldTest.FOLDER)) {
            files.forEach(file -> {
                try {
                    Files.copy(
                            file,
                            folder.resolve(
                                    LanternfoldTest.FOLDER.relativize(file).toString()));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
        return folder;
    }
}
