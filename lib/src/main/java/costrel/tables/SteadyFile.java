package costrel.tables;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;

/**
 * The bytes of a file that nobody writes to meanwhile. One that is written to while it is read, such as one that another
 * program is just saving, would give its first part as though that were all; here its end is a fault.
 */
final class SteadyFile extends FilterInputStream {

    /** A price list of a million rows takes a tenth of it. */
    static final long LARGEST_BYTES = 1_000_000_000;

    private final Path path;
    private final long sizeBytes;
    private final FileTime changed;
    private long takenBytes;

    private SteadyFile(Path path, InputStream bytes, BasicFileAttributes before) {
        super(bytes);
        this.path = path;
        this.sizeBytes = before.size();
        this.changed = before.lastModifiedTime();
    }

    static InputStream open(Path path) throws IOException {
        BasicFileAttributes before = Files.readAttributes(path, BasicFileAttributes.class);
        if (before.size() > LARGEST_BYTES) {
            throw new TextFault(0, "a file of at most 1,000,000,000 bytes", "one of " + before.size());
        }
        return new SteadyFile(path, Files.newInputStream(path), before);
    }

    @Override
    public int read() throws IOException {
        int one = in.read();
        count(one < 0 ? -1 : 1);
        return one;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
        int taken = in.read(target, offset, length);
        count(taken);
        return taken;
    }

    private void count(int taken) throws IOException {
        if (taken >= 0) {
            takenBytes += taken;
            return;
        }
        BasicFileAttributes now = Files.exists(path) ? Files.readAttributes(path, BasicFileAttributes.class) : null;
        boolean same = now == null
                ? takenBytes == sizeBytes
                : takenBytes == sizeBytes
                        && now.size() == sizeBytes
                        && now.lastModifiedTime().equals(changed);
        if (!same) {
            throw new TextFault(0, "a file that stays as it is while it is read", "one that was changed meanwhile");
        }
    }
}
