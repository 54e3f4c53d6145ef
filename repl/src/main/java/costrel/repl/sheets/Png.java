package costrel.repl.sheets;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/** Words inside a PNG. */
final class Png {

    /** Signature and header chunk: PNG Specification, W3C Recommendation, sections 5.2 and 11.2.2. */
    private static final int HEADER = 8 + 25;

    private Png() {}

    /** With a text chunk that names what made it, behind the header; section 11.3.4.3 of the specification. */
    static byte[] marked(byte[] png, String words) {
        byte[] chunk = ("tEXtSoftware\0" + words).getBytes(StandardCharsets.ISO_8859_1);
        CRC32 check = new CRC32();
        check.update(chunk);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(png, 0, HEADER);
        out.writeBytes(number(chunk.length - 4));
        out.writeBytes(chunk);
        out.writeBytes(number((int) check.getValue()));
        out.write(png, HEADER, png.length - HEADER);
        return out.toByteArray();
    }

    private static byte[] number(int value) {
        return ByteBuffer.allocate(4).putInt(value).array();
    }
}
