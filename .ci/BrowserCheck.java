import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.brewery.PricedRange;
import costrel.brewery.WhyItMoved;
import costrel.cost.CostSheet;
import costrel.repl.Verbs;
import costrel.scaling.Gyle;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Opens sheets of Lanternfold in a headless browser and holds what it shows against the library. */
public final class BrowserCheck {

    private static final Pattern KEYED = Pattern.compile("data-key=\"([^\"]+)\"[^>]*>([^<]*)<");
    private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

    private final String browser;
    private final Path folder;
    private int checks;

    private BrowserCheck(String browser, Path folder) {
        this.browser = browser;
        this.folder = folder;
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("costrel-browser");
        try {
            BrowserCheck check = new BrowserCheck(arguments[0], folder);
            check.all();
            System.out.println("browser check: " + check.checks + " figures and pages as they should be");
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.deleteIfExists(path);
                }
            }
        }
    }

    private void all() throws Exception {
        Brewery brewery = Brewery.open(Path.of("samples/lanternfold"));
        for (String beer : brewery.recipes().keySet()) {
            Brew brew = brewery.brew(beer).on("Main").length("24 brl").day("2026-11-25");
            Path sheet = written("wall.html", file -> Verbs.sheet(brew, file, "cast 11:15"));
            Map<String, String> shown = shown(sheet);
            Gyle gyle = brew.gyle();
            for (int i = 0; i < gyle.grist().size(); i++) {
                same(beer, shown, "grist." + i + ".kg", gyle.grist().get(i).weighedKg(), 2);
            }
            for (int i = 0; i < gyle.hops().size(); i++) {
                same(beer, shown, "hop." + i + ".kg", gyle.hops().get(i).weighedKg(), 2);
                same(beer, shown, "hop." + i + ".lot", gyle.hops().get(i).hop().lot());
            }
            same(beer, shown, "liquor.mash", gyle.liquor().orElseThrow().mashL(), 0);
            same(beer, shown, "liquor.strike", gyle.liquor().orElseThrow().strikeC().orElseThrow(), 1);
            same(beer, shown, "expect.collected.l", gyle.collectedL(), 0);
            same(beer, shown, "expect.collected.gravity", 1 + gyle.og().excessDegrees() / 1000, 4);
            same(beer, shown, "expect.racked.l", gyle.beer().rackedL(), 0);
            same(beer, shown, "cast.clock", "11:15");
            onePage(beer, sheet);
            Files.delete(sheet);
        }
        Brew bitter = brewery.brew("Wickgate Bitter").on("Main").length("30 brl").day("2026-11-25");
        onePage("Wickgate Bitter at 30 brl", written("long.html", file -> Verbs.sheet(bitter, file)));
        CostSheet cost = bitter.cost();
        Map<String, String> costs = shown(written("cost.html", file -> Verbs.sheet(bitter.pricing().margin("35 %"), file)));
        same("cost sheet", costs, "total", cost.total().getAmount().toPlainString());
        same("cost sheet", costs, "total.pint", cost.pencePerPint().toPlainString());
        CostSheet before = bitter.day("2026-04-14").cost();
        Map<String, String> moved = shown(
                written("moved.html", file -> Verbs.sheet(WhyItMoved.between(brewery, before, cost), file)));
        same("comparison", moved, "before", before.pencePerPint().toPlainString());
        same("comparison", moved, "after", cost.pencePerPint().toPlainString());
        PricedRange range = PricedRange.of(brewery, cost.batch().costedOn());
        Map<String, String> ranged = shown(written("range.html", file -> Verbs.sheet(range, file)));
        same("range", ranged, "range.0.price", range.view().rows().get(0).sold().price().net().getAmount().toPlainString());
        Map<String, String> list = shown(written("list.html", file -> Verbs.sheet(brewery, file)));
        same("price list", list, "price.0", brewery.listPrices().get(0).price().getAmount().toPlainString());
    }

    private interface Writer {
        String write(String file);
    }

    private Path written(String name, Writer writer) {
        Path file = folder.resolve(name);
        writer.write(file.toString());
        return file;
    }

    private void same(String sheet, Map<String, String> shown, String key, double expected, int decimals) {
        same(sheet, shown, key, String.format(Locale.ROOT, "%." + decimals + "f", expected));
    }

    private void same(String sheet, Map<String, String> shown, String key, String expected) {
        expect(expected.equals(shown.get(key)), sheet + ", " + key + ": expected " + expected + ", found " + shown.get(key));
    }

    private void expect(boolean holds, String otherwise) {
        if (!holds) {
            throw new AssertionError(otherwise);
        }
        checks++;
    }

    /** What stands under each key in the page as the browser has built it. */
    private Map<String, String> shown(Path page) throws Exception {
        Map<String, String> shown = new LinkedHashMap<>();
        Matcher keyed = KEYED.matcher(browse(page, "--dump-dom"));
        while (keyed.find()) {
            shown.put(keyed.group(1), keyed.group(2));
        }
        return shown;
    }

    private void onePage(String beer, Path page) throws Exception {
        Path pdf = folder.resolve("printed.pdf");
        browse(page, "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
        try (PDDocument printed = Loader.loadPDF(pdf.toFile())) {
            expect(printed.getNumberOfPages() == 1, beer + ": expected one page, found " + printed.getNumberOfPages());
            double width = printed.getPage(0).getMediaBox().getWidth() * MILLIMETRES_PER_POINT;
            double height = printed.getPage(0).getMediaBox().getHeight() * MILLIMETRES_PER_POINT;
            expect(Math.abs(width - 210) < 1 && Math.abs(height - 297) < 1, beer + ": expected A4, found " + width + " mm");
        }
        Files.delete(pdf);
    }

    /** Runs the browser once; what its console says is an error. */
    private String browse(Path page, String... how) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                browser,
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--enable-logging=stderr",
                "--user-data-dir=" + folder.resolve("profile")));
        command.addAll(List.of(how));
        command.add(page.toUri().toString());
        Path said = folder.resolve("said");
        Path out = folder.resolve("out");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(said.toFile())
                .start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError(page.getFileName() + ": expected the browser to end within a minute, found it running");
        }
        String console = Files.readString(said, StandardCharsets.ISO_8859_1)
                .lines()
                .filter(line -> line.contains(":CONSOLE"))
                .reduce("", (all, line) -> all + line + "\n");
        expect(process.exitValue() == 0, page.getFileName() + ": the browser ended with " + process.exitValue());
        expect(console.isEmpty(), page.getFileName() + ": expected no errors, found " + console);
        return Files.readString(out, StandardCharsets.UTF_8);
    }
}
