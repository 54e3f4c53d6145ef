package costrel.repl.sheets;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A page of HTML as PDF, with its letters inside, so that it looks the same on every machine. */
final class Pdf {

    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String FAMILY = "Liberation Sans";

    private Pdf() {}

    /**
     * Sets a page.
     *
     * @param html a page that is well-formed XML; nothing is fetched for it
     * @param producer what the file says it was made by
     */
    static byte[] of(String html, String producer) {
        XRLog.setLoggingEnabled(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useFont(Pdf::font, FAMILY, 400, FontStyle.NORMAL, true);
            builder.useFont(Pdf::font, FAMILY, 700, FontStyle.NORMAL, true);
            builder.useFont(Pdf::font, FAMILY, 400, FontStyle.ITALIC, true);
            builder.useUriResolver((base, uri) -> uri.startsWith("data:") ? uri : null);
            builder.usePdfUaAccessibility(true);
            builder.withProducer(producer);
            builder.withHtmlContent(html, null);
            builder.toStream(out);
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        // The producer may stand compressed; a comment at the end is read by everybody and shown by nobody.
        out.writeBytes(("% " + producer + "\n").getBytes(StandardCharsets.ISO_8859_1));
        return out.toByteArray();
    }

    private static InputStream font() {
        InputStream font = PdfRendererBuilder.class.getResourceAsStream(FONT);
        if (font == null) {
            throw new IllegalStateException("PDF: expected the letters of " + FAMILY + " with the program, found none");
        }
        return font;
    }
}
