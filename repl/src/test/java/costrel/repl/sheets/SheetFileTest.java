package costrel.repl.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.brewery.PricedRange;
import costrel.brewery.WhyItMoved;
import costrel.cost.CostSheet;
import costrel.scaling.Gyle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class SheetFileTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Brewery LANTERNFOLD = Brewery.open(Path.of("../samples/lanternfold"));
    private static final Pattern FIGURE = Pattern.compile("<td class=\"n\" data-key=\"([^\"]+)\">([^<]+)</td>");

    @TempDir
    Path folder;

    private static Brew brew(String beer) {
        return LANTERNFOLD.brew(beer).on("Main").length("24 brl").day(DAY);
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private String write(Object thing, String name) {
        return SheetFile.write(thing, file(name), DAY, Optional.empty());
    }

    private static Map<String, String> figures(String html) {
        Map<String, String> figures = new LinkedHashMap<>();
        Matcher figure = FIGURE.matcher(html);
        while (figure.find()) {
            figures.put(figure.group(1), figure.group(2));
        }
        return figures;
    }

    private static String text(PDDocument pdf) throws IOException {
        return " " + new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ") + " ";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Tallow Mild",
                "Wickgate Bitter",
                "Haymoth Golden",
                "Oatlamp Stout",
                "Snuffer Strong",
                "Trimwick Pale"
            })
    void a_brew_sheet_prints_to_one_page_with_the_figures_of_the_gyle(String beer) throws IOException {
        Gyle gyle = brew(beer).gyle();
        SheetFile.write(brew(beer), file("wall.pdf"), DAY, Optional.of("cast 11:15"));
        SheetFile.write(brew(beer), file("wall.html"), DAY, Optional.of("cast 11:15"));
        Map<String, String> figures = figures(Files.readString(folder.resolve("wall.html")));
        assertTrue(figures.size() > 25, figures.toString());
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("wall.pdf").toFile())) {
            assertEquals(1, pdf.getNumberOfPages());
            // A4: ISO 216, 210 mm by 297 mm.
            assertEquals(210, pdf.getPage(0).getMediaBox().getWidth() / 72 * 25.4, 0.5);
            assertEquals(297, pdf.getPage(0).getMediaBox().getHeight() / 72 * 25.4, 0.5);
            String text = text(pdf);
            figures.forEach((key, figure) -> assertTrue(text.contains(" " + figure + " "), key + " " + figure + text));
            for (Gyle.Hop hop : gyle.hops()) {
                assertTrue(text.contains(String.format(Locale.ROOT, " %.2f ", hop.weighedKg())), text);
                assertTrue(text.contains(hop.hop().lot()), text);
            }
            assertTrue(text.contains(String.format(Locale.ROOT, " %.0f ", gyle.collectedL())), text);
            assertTrue(text.contains(" 11:15 "), text);
        }
    }

    @Test
    void a_cost_sheet_as_pdf_holds_the_figures_of_the_cost_sheet() throws IOException {
        CostSheet sheet = brew("Wickgate Bitter").cost();
        write(sheet, "cost.pdf");
        write(sheet, "cost.html");
        Map<String, String> figures = figures(Files.readString(folder.resolve("cost.html")));
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("cost.pdf").toFile())) {
            String text = text(pdf);
            assertTrue(text.contains(sheet.total().getAmount().toPlainString()), text);
            assertTrue(text.contains(sheet.pencePerPint().toPlainString()), text);
            figures.forEach((key, figure) -> assertTrue(text.contains(figure), key + " " + figure));
            assertEquals("en-GB", pdf.getDocumentCatalog().getLanguage());
        }
    }

    private static List<Object> charted() {
        Brew bitter = brew("Wickgate Bitter");
        return List.of(
                bitter.cost(),
                bitter.pricing().margin("35 %"),
                WhyItMoved.between(LANTERNFOLD, bitter.day("2026-04-14").cost(), bitter.cost()),
                bitter.risk().price("mashed goods", "10 %").draws(1000),
                LANTERNFOLD.harvest().between(LocalDate.of(2026, 12, 1), LocalDate.of(2027, 2, 10)),
                PricedRange.of(LANTERNFOLD, DAY));
    }

    @Test
    void every_chart_is_a_drawing_with_a_title_and_a_description_and_a_picture() throws Exception {
        int number = 0;
        for (Object thing : charted()) {
            String name = "chart" + number++;
            assertTrue(write(thing, name + ".svg").startsWith("chart of the "));
            Element svg = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(folder.resolve(name + ".svg").toFile())
                    .getDocumentElement();
            assertEquals("svg", svg.getTagName());
            assertEquals("img", svg.getAttribute("role"));
            assertFalse(
                    svg.getElementsByTagName("title").item(0).getTextContent().isBlank());
            assertTrue(svg.getElementsByTagName("desc").item(0).getTextContent().matches("(?s).*\\d+\\.\\d\\d.*"));
            write(thing, name + ".png");
            BufferedImage image = ImageIO.read(folder.resolve(name + ".png").toFile());
            assertNotNull(image);
            assertTrue(image.getWidth() >= 2000, name);
            write(thing, name + ".html");
            assertTrue(Files.readString(folder.resolve(name + ".html")).contains("role=\"img\""));
            assertTrue(SheetFile.chart(thing instanceof PricedRange ? brew("Wickgate Bitter") : thing)
                    .contains("█"));
        }
    }

    /** Of two identifiers in one page only the first is found: HTML Living Standard, the id attribute. */
    @Test
    void two_charts_in_one_page_share_no_identifier() throws IOException {
        write(brew("Wickgate Bitter").pricing().margin("35 %"), "two.html");
        Matcher id = Pattern.compile(" id=\"([^\"]+)\"").matcher(Files.readString(folder.resolve("two.html")));
        Map<String, Integer> seen = new LinkedHashMap<>();
        while (id.find()) {
            seen.merge(id.group(1), 1, Integer::sum);
        }
        assertTrue(seen.size() > 4, seen.toString());
        assertTrue(seen.values().stream().allMatch(count -> count == 1), seen.toString());
    }

    @Test
    void a_sheet_takes_the_place_of_its_like_and_of_nothing_else() throws IOException {
        for (String ending : List.of("html", "pdf")) {
            String name = "sheet." + ending;
            assertTrue(write(brew("Tallow Mild"), name).endsWith("written to " + file(name)));
            assertTrue(write(brew("Haymoth Golden"), name).endsWith(", in place of the one before"));
            refused(brew("Tallow Mild").cost(), name, "expected a new name or an earlier cost sheet");
        }
        write(brew("Tallow Mild").cost(), "pint.png");
        assertTrue(write(brew("Tallow Mild").cost(), "pint.png").endsWith("before"));
        Path letter = folder.resolve("letter.html");
        Files.writeString(letter, "<p>Dear Sir</p>");
        refused(brew("Tallow Mild"), "letter.html", "found another file");
        assertEquals("<p>Dear Sir</p>", Files.readString(letter));
        try (Stream<Path> all = Files.list(folder)) {
            assertEquals(4, all.count(), "only what was asked for is left");
        }
    }

    @Test
    void what_can_not_be_written_is_told() {
        refused(brew("Tallow Mild"), "sheet.docx", "expected a file that ends in .html or .pdf");
        refused(brew("Tallow Mild"), ".pdf", "expected a file that ends in");
        refused(brew("Tallow Mild"), "sheet.svg", "expected something with a chart, found a brew sheet");
        refused(brew("Tallow Mild"), "nowhere/sheet.html", "expected a folder that is there, found none");
        refused("a word", "sheet.html", "sheet: expected a brew");
        assertThrows(IllegalArgumentException.class, () -> SheetFile.chart("a word"));
    }

    private void refused(Object thing, String name, String words) {
        IllegalArgumentException told = assertThrows(IllegalArgumentException.class, () -> write(thing, name));
        assertTrue(String.valueOf(told.getMessage()).contains(words), told.toString());
    }
}
