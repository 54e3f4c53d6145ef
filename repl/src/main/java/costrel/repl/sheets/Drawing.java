package costrel.repl.sheets;

import costrel.report.Picture;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Base64;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.knowm.xchart.internal.chartpart.Chart;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * A chart with its words.
 *
 * @param key what it is called in a page
 * @param title a line to stand under it
 * @param description what it shows, with the figures, for who can't see it
 * @param chart the chart
 */
record Drawing(String key, String title, String description, Chart<?, ?> chart) {

    private static final String SVG = "http://www.w3.org/2000/svg";

    /** Dots of a PNG to a unit of the drawing: 300 to the inch on a page of A4. */
    private static final int SCALE = 3;

    /** As one svg element, lines and letters, with title and description inside. */
    String svg() {
        try {
            Document document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
            SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
            context.setComment(null);
            context.setIDGenerator(new SVGIDGenerator() {
                @Override
                public String generateID(String prefix) {
                    return key + "-" + super.generateID(prefix);
                }
            });
            SVGGraphics2D graphics = new SVGGraphics2D(context, false);
            graphics.setSVGCanvasSize(new Dimension(chart.getWidth(), chart.getHeight()));
            chart.paint(graphics, chart.getWidth(), chart.getHeight());
            Element root = graphics.getRoot();
            root.setAttribute("viewBox", "0 0 " + chart.getWidth() + " " + chart.getHeight());
            root.setAttribute("role", "img");
            root.setAttribute("aria-labelledby", key + "-title " + key + "-desc");
            words(document, root, "desc", description);
            words(document, root, "title", title);
            StringWriter text = new StringWriter();
            graphics.stream(root, text, false, false);
            String all = text.toString();
            // It is written with line breaks inside its tags.
            return all.substring(all.indexOf("<svg"))
                    .replace("\"genericDefs\"", "\"" + key + "-defs\"")
                    .replaceAll("\\s+(/?>)", "$1")
                    .replaceAll(">\\s+<", ">\n<")
                    .strip();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("chart: expected an XML parser, found none", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void words(Document document, Element root, String tag, String words) {
        Element element = document.createElementNS(SVG, tag);
        element.setAttribute("id", key + "-" + tag);
        element.appendChild(document.createTextNode(words));
        root.insertBefore(element, root.getFirstChild());
    }

    /** As a PNG. */
    byte[] png() {
        BufferedImage image =
                new BufferedImage(chart.getWidth() * SCALE, chart.getHeight() * SCALE, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(SCALE, SCALE);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        chart.paint(graphics, chart.getWidth(), chart.getHeight());
        graphics.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** For a page that shows lines. */
    Picture lines() {
        return Picture.ofSvg(key, title, description, svg());
    }

    /** For a page that shows dots. */
    Picture dots() {
        return Picture.ofPng(key, title, description, Base64.getEncoder().encodeToString(png()));
    }
}
