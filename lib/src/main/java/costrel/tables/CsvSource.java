package costrel.tables;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Where the bytes of a table come from, and what its problems call it. */
public final class CsvSource {

    private final String name;
    private final Opener opener;

    private CsvSource(String name, Opener opener) {
        this.name = name;
        this.opener = opener;
    }

    /** Opens the bytes. */
    private interface Opener {
        InputStream open() throws IOException;
    }

    /**
     * A file, called by its own name without its folder.
     *
     * @param path the file
     * @return the source; nothing is opened yet
     */
    public static CsvSource file(Path path) {
        Path last = path.getFileName();
        return file(path, last == null ? path.toString() : last.toString());
    }

    /**
     * A file, called by another name, such as its place in the brewery's folder.
     *
     * @param path the file
     * @param name what its problems call it
     * @return the source; nothing is opened yet
     */
    public static CsvSource file(Path path, String name) {
        return new CsvSource(name, () -> openFile(path));
    }

    /**
     * Text in memory.
     *
     * @param name what its problems call it
     * @param text the whole table
     * @return the source
     */
    public static CsvSource text(String name, String text) {
        return new CsvSource(name, () -> new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    /**
     * A stream of UTF-8 bytes, which is read once and closed.
     *
     * @param name what its problems call it
     * @param bytes the bytes
     * @return the source
     */
    public static CsvSource stream(String name, InputStream bytes) {
        return new CsvSource(name, () -> bytes);
    }

    /**
     * What problems call the table.
     *
     * @return such as "prices-2026.csv"
     */
    public String name() {
        return name;
    }

    InputStream open() throws IOException {
        return opener.open();
    }

    private static InputStream openFile(Path path) throws IOException {
        if (Files.isDirectory(path)) {
            throw new TextFault(0, "a CSV file", "a folder");
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new TextFault(0, "a CSV file", "something that is neither a file nor a folder");
        }
        try {
            return SteadyFile.open(path);
        } catch (NoSuchFileException e) {
            throw new TextFault(
                    0, "a CSV file", Files.isSymbolicLink(path) ? "a link that leads nowhere" : "no file of that name");
        } catch (AccessDeniedException e) {
            throw new TextFault(0, "a CSV file that may be read", "one without permission to read it");
        } catch (FileSystemException e) {
            throw Files.isSymbolicLink(path) ? new TextFault(0, "a CSV file", "a link that leads nowhere") : e;
        }
    }
}
