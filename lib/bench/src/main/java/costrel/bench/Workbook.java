package costrel.bench;

import java.io.BufferedWriter;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A workbook of prices by week and of recipe lines that look theirs up, as a flat OpenDocument spreadsheet. */
final class Workbook implements AutoCloseable {
    /** Added before a penny is cut: a double may lie a hair under the whole penny that is meant. */
    private static final String NOISE = "+1E-9";

    private final boolean formulas;
    private final Path folder;
    private final BufferedWriter out;
    private int items;
    private int row;

    private Workbook(boolean formulas, Path folder, BufferedWriter out) {
        this.formulas = formulas;
        this.folder = folder;
        this.out = out;
    }

    static Workbook begin(boolean formulas) throws IOException {
        Path folder = Files.createTempDirectory("workbook");
        BufferedWriter out = Files.newBufferedWriter(folder.resolve("weeks.fods"));
        out.write(
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<office:document"
                        + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
                        + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
                        + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\""
                        + " xmlns:of=\"urn:oasis:names:tc:opendocument:xmlns:of:1.2\" office:version=\"1.2\""
                        + " office:mimetype=\"application/vnd.oasis.opendocument.spreadsheet\"><office:body><office:spreadsheet>\n");
        return new Workbook(formulas, folder, out);
    }

    /** The sheet that is written out when all is recalculated: the sum of every line of every week. */
    void total(int lines, int weeks) throws IOException {
        out.write("<table:table table:name=\"total\"><table:table-row>");
        formula("SUM([lines.D1:lines." + column(3 + weeks - 1) + lines + "])");
        out.write("</table:table-row></table:table>\n");
    }

    /** What each thing costs, a column a week. */
    void prices(Map<String, List<BigDecimal>> byWeek) throws IOException {
        items = byWeek.size();
        out.write("<table:table table:name=\"prices\">\n");
        for (Map.Entry<String, List<BigDecimal>> item : byWeek.entrySet()) {
            out.write("<table:table-row>");
            text(item.getKey());
            for (BigDecimal price : item.getValue()) {
                figure(price.toPlainString());
            }
            out.write("</table:table-row>\n");
        }
        out.write("</table:table>\n");
    }

    void lines() throws IOException {
        out.write("<table:table table:name=\"lines\">\n");
    }

    /**
     * A line: what it pays for is looked up once, its cost of each week is rounded to the penny, half up, or for duty down.
     *
     * @param item what it pays for, as the prices name it
     * @param amount how much of it
     * @param content how much of it a price buys
     * @param down whether the penny is rounded down
     */
    record Line(String item, BigDecimal amount, BigDecimal content, boolean down) {}

    void line(Line line, int weeks) throws IOException {
        row++;
        out.write("<table:table-row>");
        text(line.item());
        figure(line.amount().toPlainString());
        formula("MATCH([.A" + row + "];[prices.$A$1:prices.$A$" + items + "];0)");
        for (int w = 0; w < weeks; w++) {
            String prices = "[prices." + column(1 + w) + "$1:prices." + column(1 + w) + "$" + items + "]";
            String value = "[.$B" + row + "]*INDEX(" + prices + ";[.$C" + row + "])/"
                    + line.content().toPlainString();
            formula(line.down() ? "ROUNDDOWN(" + value + NOISE + ";2)" : "ROUND(" + value + ";2)");
        }
        out.write("</table:table-row>\n");
    }

    @Override
    public void close() throws IOException {
        out.write("</table:table></office:spreadsheet></office:body></office:document>\n");
        out.close();
    }

    /** How long LibreOffice takes to open, recalculate and write the first sheet; empty where it is not there. */
    static OptionalDouble seconds(Workbook book) throws IOException, InterruptedException {
        List<String> command = List.of(
                "soffice",
                "-env:UserInstallation=" + book.folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                "csv",
                "--outdir",
                book.folder.toString(),
                book.folder.resolve("weeks.fods").toString());
        try {
            run(command, book.folder); // the first start makes a profile
            long start = System.nanoTime();
            run(command, book.folder);
            return OptionalDouble.of((System.nanoTime() - start) / 1e9);
        } catch (IOException missing) {
            return OptionalDouble.empty();
        } finally {
            book.readTotal();
        }
    }

    private static void run(List<String> command, Path folder) throws IOException, InterruptedException {
        File log = folder.resolve("log").toFile();
        new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log)
                .start()
                .waitFor();
    }

    private BigDecimal total = BigDecimal.ZERO;

    BigDecimal total() {
        return total;
    }

    private void readTotal() throws IOException {
        Path csv = folder.resolve("weeks.csv");
        if (Files.exists(csv)) {
            total = new BigDecimal(Files.readString(csv).strip());
        }
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> {
                try {
                    Files.delete(file);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }

    private void text(String text) throws IOException {
        out.write("<table:table-cell office:value-type=\"string\"><text:p>" + text + "</text:p></table:table-cell>");
    }

    private void figure(String value) throws IOException {
        out.write("<table:table-cell office:value-type=\"float\" office:value=\"" + value + "\"/>");
    }

    private void formula(String formula) throws IOException {
        if (formulas) {
            out.write("<table:table-cell table:formula=\"of:=" + formula + "\"/>");
        } else {
            figure("1");
        }
    }

    /** A for 0, AA for 26. */
    private static String column(int place) {
        String letter = String.valueOf((char) ('A' + place % 26));
        return place < 26 ? letter : column(place / 26 - 1) + letter;
    }
}
