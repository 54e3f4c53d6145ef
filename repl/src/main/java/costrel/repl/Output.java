package costrel.repl;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A stream to print on that remembers why it could not be written to, where other print streams only know that it could not. */
final class Output extends PrintStream {

    private final Remembering bytes;

    private Output(Remembering bytes, Charset charset) {
        super(bytes, true, charset);
        this.bytes = bytes;
    }

    /**
     * Prints on a stream.
     *
     * @param to takes the bytes
     * @param charset how letters become bytes
     */
    static Output on(OutputStream to, Charset charset) {
        return new Output(new Remembering(to), charset);
    }

    /** Whether whoever reads has gone, as {@code head} does when it has enough. There is nobody to be told of it. */
    boolean readerHasGone() {
        return reason().map(text -> text.toLowerCase(Locale.ROOT).contains("pipe"))
                .orElse(false);
    }

    /** Why something could not be written; empty if all could. */
    Optional<String> reason() {
        IOException fault = bytes.fault;
        return Optional.ofNullable(fault).map(found -> String.valueOf(found.getMessage()));
    }

    /** Bytes on their way, and the first fault that they met. */
    private static final class Remembering extends FilterOutputStream {

        private volatile @Nullable IOException fault;

        Remembering(OutputStream to) {
            super(to);
        }

        @Override
        public void write(byte[] from, int start, int count) throws IOException {
            try {
                out.write(from, start, count);
            } catch (IOException e) {
                fault = fault == null ? e : fault;
                throw e;
            }
        }

        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }
    }
}
