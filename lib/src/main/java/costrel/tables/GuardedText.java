package costrel.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * UTF-8 bytes as characters for the CSV parser. A byte order mark is left out. A byte that is no UTF-8 becomes U+FFFD
 * and its line is kept, so that reading goes on to the faults behind it. A line or a row beyond bounds ends the reading
 * before it fills the memory.
 */
final class GuardedText extends Reader {

    /** Longest line, in characters. */
    static final int LONGEST_LINE = 1_000_000;

    /** Longest row with its quoted line breaks, in characters. */
    static final int LONGEST_ROW = 4_000_000;

    /** What stands for a byte that is no UTF-8. */
    static final char REPLACEMENT = '\uFFFD';

    /** Of the characters up to this one some end a line. */
    private static final char LAST_CONTROL = 0x1F;

    private static final char NEVER_A_CHARACTER = '\uFFFE';
    private static final int BUFFER = 8192;
    private static final int MOST_LINES_KEPT = 10_000;

    private final InputStream bytes;
    private final CharsetDecoder decoder = StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    private final ByteBuffer in = ByteBuffer.allocate(BUFFER).flip();
    private final CharBuffer out = CharBuffer.allocate(BUFFER).flip();
    private final NavigableSet<Long> damagedLines = new TreeSet<>();

    private boolean started;
    private boolean ended;
    private long line = 1;
    private long lineLength;
    private long rowLength;
    private char last;

    GuardedText(InputStream bytes) {
        this.bytes = bytes;
    }

    /** Told after each row: what comes next counts towards another one. */
    void rowRead() {
        rowLength = 0;
    }

    /** Whether there are lines that held bytes outside UTF-8 and weren't asked for. */
    boolean hasDamagedLines() {
        return !damagedLines.isEmpty();
    }

    /** Lines up to this one that held bytes outside UTF-8 and weren't asked for before. */
    NavigableSet<Long> takeDamagedLines(long upTo) {
        NavigableSet<Long> head = damagedLines.headSet(upTo, true);
        NavigableSet<Long> taken = new TreeSet<>(head);
        head.clear();
        return taken;
    }

    @Override
    public int read(char[] target, int offset, int length) throws IOException {
        if (!started) {
            start();
        }
        while (!out.hasRemaining()) {
            int plain = plainInto(target, offset, length);
            if (plain > 0) {
                return plain;
            }
            if (!decodeMore()) {
                return -1;
            }
        }
        int count = Math.min(length, out.remaining());
        out.get(target, offset, count);
        return count;
    }

    @Override
    public void close() throws IOException {
        bytes.close();
    }

    private void start() throws IOException {
        started = true;
        while (in.remaining() < 3 && !ended) {
            fill();
        }
        int first = in.remaining() > 0 ? in.get(0) & 0xFF : -1;
        int second = in.remaining() > 1 ? in.get(1) & 0xFF : -1;
        int third = in.remaining() > 2 ? in.get(2) & 0xFF : -1;
        if ((first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE)) {
            throw new TextFault(1, "a file saved as UTF-8", "one saved as UTF-16");
        }
        if (first == 0xEF && second == 0xBB && third == 0xBF) {
            in.position(3);
        }
    }

    private void fill() throws IOException {
        in.compact();
        int count = bytes.read(in.array(), in.arrayOffset() + in.position(), in.remaining());
        if (count < 0) {
            ended = true;
        } else {
            in.position(in.position() + count);
        }
        in.flip();
    }

    /**
     * Characters of one byte and of two, as nearly all texts of ours have no others: looked at and handed over as they come.
     * The first that is none of them is left to the decoder, with what follows it.
     */
    private int plainInto(char[] target, int offset, int length) throws TextFault {
        byte[] source = in.array();
        int from = in.arrayOffset() + in.position();
        int end = in.arrayOffset() + in.limit();
        int at = from;
        int place = offset;
        int most = offset + length;
        int counted = offset;
        while (at < end && place < most) {
            byte next = source[at];
            if (next > LAST_CONTROL) {
                target[place++] = (char) next;
                at++;
            } else if (next >= 0) {
                passed(place - counted);
                target[place] = (char) next;
                watch(target, place);
                last = (char) next;
                place++;
                at++;
                counted = place;
                passedInRow(1);
            } else if (isLeadOfTwo(next) && at + 1 < end && isContinuation(source[at + 1])) {
                target[place++] = (char) ((next & 0x1F) << 6 | (source[at + 1] & 0x3F));
                at += 2;
            } else {
                break;
            }
        }
        passed(place - counted);
        if (place > offset) {
            last = target[place - 1];
        }
        in.position(at - in.arrayOffset());
        return place - offset;
    }

    /** Whether a byte starts a character of two: C2 to DF (RFC 3629, section 4). */
    private static boolean isLeadOfTwo(byte value) {
        return value >= (byte) 0xC2 && value <= (byte) 0xDF;
    }

    private static boolean isContinuation(byte value) {
        return value <= (byte) 0xBF;
    }

    /** Decodes some characters into the buffer; false at the end of the text. */
    private boolean decodeMore() throws IOException {
        out.clear();
        CoderResult result = decoder.decode(in, out, ended);
        boolean damaged = result.isError() && out.hasRemaining();
        if (damaged) {
            in.position(in.position() + result.length());
            out.put(REPLACEMENT);
        }
        out.flip();
        watch();
        if (damaged) {
            damagedHere();
        }
        if (result.isUnderflow() && !out.hasRemaining()) {
            if (ended) {
                return false;
            }
            fill();
        }
        return true;
    }

    /** Counts lines and lengths of what was just decoded. */
    private void watch() throws TextFault {
        char[] chars = out.array();
        int end = out.arrayOffset() + out.limit();
        for (int i = out.arrayOffset() + out.position(); i < end; i++) {
            int plain = plain(chars, i, end);
            if (plain > 0) {
                i += plain - 1;
                passed(plain);
            } else {
                watch(chars, i);
                passedInRow(1);
            }
            last = chars[i];
        }
    }

    /** Counts characters that end no line. */
    private void passed(int count) throws TextFault {
        lineLength += count;
        passedInRow(count);
    }

    private void passedInRow(int count) throws TextFault {
        rowLength += count;
        if (lineLength > LONGEST_LINE) {
            throw new TextFault(line, "a line of at most 1,000,000 characters", "a longer one");
        }
        if (rowLength > LONGEST_ROW) {
            throw new TextFault(
                    line, "a row of at most 4,000,000 characters", "one that goes on here; a quote may be left open");
        }
    }

    /** How many characters from a place on end no line and are characters at all. */
    private static int plain(char[] chars, int from, int end) {
        int i = from;
        while (i < end && chars[i] > LAST_CONTROL && chars[i] != NEVER_A_CHARACTER) {
            i++;
        }
        return i - from;
    }

    /** A character that may be more than one of a line. */
    private void watch(char[] chars, int place) {
        char c = chars[place];
        if (c == NEVER_A_CHARACTER) {
            chars[place] = REPLACEMENT;
            damagedHere();
        }
        boolean lineEnd = c == '\r' || (c == '\n' && last != '\r');
        if (lineEnd) {
            line++;
            lineLength = 0;
        } else if (c != '\n') {
            lineLength++;
        }
    }

    private void damagedHere() {
        if (damagedLines.size() < MOST_LINES_KEPT) {
            damagedLines.add(line);
        }
    }
}
