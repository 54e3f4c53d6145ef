package costrel.repl.sheets;

import costrel.report.BoilClock;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes sheets to files: the ending says the form, the file is whole or not there, and no stranger's file is replaced. */
public final class SheetFile {

    /** Stands in every file that is written, with the kind of sheet after it. */
    private static final String MARK = "Costrel: ";

    private static final long LONGEST_READ = 50_000_000;

    private SheetFile() {}

    /**
     * Writes a sheet, or the chart of one.
     *
     * @param thing a brew, its cost or prices, a comparison, a study of risk, a harvest or its plan, a range, or a brewery for
     *     its price list
     * @param file ends in .html or .pdf for a sheet, in .svg or .png for its chart
     * @param day the day from which a price list holds
     * @param clock when the boil starts or ends, such as "boil 09:00"; empty leaves boxes for the times
     * @return what was written, in words
     * @throws IllegalArgumentException if the ending is another, the thing has no such sheet or chart, the folder isn't there, or
     *     the file is there and is no earlier sheet of the same kind
     */
    public static String write(Object thing, String file, LocalDate day, Optional<String> clock) {
        String ending = ending(file);
        Path path = Path.of(file).toAbsolutePath();
        Sheet sheet = Sheet.of(thing, day, clock.map(BoilClock::parse));
        boolean replaced = mayBeWritten(path, file, sheet.kind());
        byte[] bytes = bytes(sheet, ending, file);
        try {
            put(bytes, path);
        } catch (IOException e) {
            throw new IllegalArgumentException(file + ": expected a file that can be written, found " + reason(e), e);
        }
        boolean chart = ending.equals("svg") || ending.equals("png");
        return (chart ? "chart of the " : "") + sheet.kind() + ", " + sheet.of() + ": written to " + file
                + (replaced ? ", in place of the one before" : "");
    }

    /**
     * The chart of a thing in characters, for a terminal.
     *
     * @param thing a brew, its cost or prices, a comparison, a study of risk, a harvest or its plan
     * @return lines of text
     * @throws IllegalArgumentException if it has none
     */
    public static String chart(Object thing) {
        return Sheet.text(thing);
    }

    private static String ending(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        for (String known : List.of("html", "pdf", "svg", "png")) {
            if (name.matches("(?s).*[^/\\\\]\\." + known)) {
                return known;
            }
        }
        throw new IllegalArgumentException(
                "sheet: expected a file that ends in .html or .pdf for a sheet, in .svg or .png for"
                        + " its chart, found '" + file + "'");
    }

    private static byte[] bytes(Sheet sheet, String ending, String file) {
        String mark = MARK + sheet.kind();
        if (ending.equals("html")) {
            String page = sheet.page()
                    .apply(sheet.drawings().stream().map(Drawing::lines).toList());
            return marked(page, mark).getBytes(StandardCharsets.UTF_8);
        }
        if (ending.equals("pdf")) {
            return Pdf.of(
                    sheet.page()
                            .apply(sheet.drawings().stream().map(Drawing::dots).toList()),
                    mark);
        }
        if (sheet.drawings().isEmpty()) {
            throw new IllegalArgumentException(file + ": expected something with a chart, found a " + sheet.kind()
                    + "; write it to .html or .pdf");
        }
        Drawing drawing = sheet.drawings().get(0);
        return ending.equals("png")
                ? Png.marked(drawing.png(), mark)
                : ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- " + mark + " -->\n" + drawing.svg() + "\n")
                        .getBytes(StandardCharsets.UTF_8);
    }

    private static String marked(String page, String mark) {
        return page.replaceFirst("<head>", "<head>\n<meta name=\"generator\" content=\"" + mark + "\"/>");
    }

    /** Whether an earlier sheet of the same kind is replaced; anything else that is there is left alone. */
    private static boolean mayBeWritten(Path path, String file, String kind) {
        Path folder = path.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new IllegalArgumentException(file + ": expected a folder that is there, found none");
        }
        if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try {
            if (Files.isRegularFile(path)
                    && Files.size(path) <= LONGEST_READ
                    && new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1).contains(MARK + kind)) {
                return true;
            }
        } catch (IOException e) {
            throw new IllegalArgumentException(file + ": expected a file that can be read, found " + reason(e), e);
        }
        throw new IllegalArgumentException(file + ": expected a new name or an earlier " + kind
                + " to put this in the place of, found another file; name another, or remove it first");
    }

    private static void put(byte[] bytes, Path path) throws IOException {
        Path beside = path.resolveSibling(
                "." + path.getFileName() + "." + ProcessHandle.current().pid() + "-" + System.nanoTime() + ".part");
        try {
            Files.write(beside, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            try {
                Files.move(beside, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static String reason(IOException e) {
        return e.getClass()
                .getSimpleName()
                .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                .toLowerCase(Locale.ROOT);
    }
}
