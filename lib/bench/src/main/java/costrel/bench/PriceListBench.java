package costrel.bench;

import com.sun.management.OperatingSystemMXBean;
import costrel.buying.PriceList;
import costrel.tables.CsvSource;
import costrel.tables.PriceReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Opens a price list of a million rows in a heap of 256 MB, every check on; against a bare Commons CSV pass over the file. */
public final class PriceListBench {
    private static final int ROWS = Integer.getInteger("bench.rows", 1_000_000);
    private static final int WEEKS = 50;
    private static final int ROUNDS = Integer.getInteger("bench.rounds", 5);
    private static final String BARE = "bare";
    private static final String OURS = "ours";
    private static final OperatingSystemMXBean PROCESS =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    private PriceListBench() {}

    static void report() {
        try {
            Path file = Files.createTempFile("prices", ".csv");
            try {
                write(file);
                Took bare = inNewProcess(file, BARE);
                Took ours = inNewProcess(file, OURS);
                if (start(file, bare.text(), ours.text()).inheritIO().start().waitFor() != 0) {
                    System.out.println("price list of 1,000,000 rows: NOT MET, it does not open in a 256 MB heap");
                }
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** How long one pass took: of the processor, with collecting garbage and compiling, and by the clock. */
    private record Took(double processorNanos, double clockNanos) {
        static Took of(Timer.Job<?> job) {
            long before = PROCESS.getProcessCpuTime();
            Timer.Timed<?> timed = Timer.fastest(1, job);
            return new Took(PROCESS.getProcessCpuTime() - before, timed.nanos());
        }

        static Took parse(String text) {
            String[] parts = text.strip().split(" ", -1);
            return new Took(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
        }

        /** The less of both, each by itself: other work on the machine can only make one slower. */
        Took least(Took other) {
            return new Took(Math.min(processorNanos, other.processorNanos), Math.min(clockNanos, other.clockNanos));
        }

        String text() {
            return processorNanos + " " + clockNanos;
        }
    }

    private static ProcessBuilder start(Path file, String... more) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:+UseSerialGC",
                "-Dbench.rows=" + ROWS,
                "-cp",
                System.getProperty("java.class.path"),
                PriceListBench.class.getName(),
                file.toString()));
        command.addAll(List.of(more));
        return new ProcessBuilder(command);
    }

    /** The first pass of a process, as a person waits for who opens a folder once; the least of several processes. */
    private static Took inNewProcess(Path file, String pass) throws IOException, InterruptedException {
        Took least = new Took(Double.MAX_VALUE, Double.MAX_VALUE);
        for (int i = 0; i < ROUNDS; i++) {
            Process process = start(file, pass)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (process.waitFor() != 0) {
                throw new IOException("the first pass of a process failed: " + pass);
            }
            least = least.least(Took.parse(printed));
        }
        return least;
    }

    /**
     * Measures in a process of its own.
     *
     * @param args the file, and what to measure: one first pass, or warm passes beside two first ones that are known
     * @throws IOException if it can't be read
     */
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[0]);
        if (args[1].equals(BARE)) {
            System.out.println(Took.of(() -> bare(file)).text());
        } else if (args[1].equals(OURS)) {
            System.out.println(Took.of(() -> open(file)).text());
        } else {
            warm(file, Took.parse(args[1]), Took.parse(args[2]));
        }
    }

    private static void warm(Path file, Took firstBare, Took firstOurs) throws IOException {
        warm();
        // The bare pass and ours in turn; the least of each.
        Took bare = new Took(Double.MAX_VALUE, Double.MAX_VALUE);
        Took ours = bare;
        double kept = 0;
        for (int round = 0; round < ROUNDS; round++) {
            bare = bare.least(Took.of(() -> bare(file)));
            long before = used();
            PriceList[] list = new PriceList[1];
            ours = ours.least(Took.of(() -> list[0] = open(file)));
            kept = (double) (used() - before) / list[0].rows().size();
        }
        Report report = new Report();
        double share = bare.processorNanos() / ours.processorNanos();
        report.atLeast(
                String.format(Locale.ROOT, "price list of %,d rows, every check on", ROWS),
                "bare Commons CSV pass, processor time",
                rates(ours.processorNanos(), bare.processorNanos()),
                share,
                0.6,
                " of its rows/s");
        report.note("the same", "by the clock", rates(ours.clockNanos(), bare.clockNanos()));
        report.note(
                "the same, first pass of a process",
                "processor time, with compiling",
                rates(firstOurs.processorNanos(), firstBare.processorNanos()));
        report.note(
                "the same, first pass of a process",
                "by the clock",
                rates(firstOurs.clockNanos(), firstBare.clockNanos()));
        report.atMost("kept a row", "-", String.format(Locale.ROOT, "%.0f bytes", kept), kept, 200, " bytes");
        report.atMost(
                "heap that it opens in",
                "-",
                String.format(
                        Locale.ROOT,
                        "-Xmx%dm, most used %d MB",
                        Runtime.getRuntime().maxMemory() >> 20,
                        peak()),
                256,
                256,
                " MB");
        report.print();
    }

    private static String rates(double ours, double bare) {
        return String.format(
                Locale.ROOT, "%,.0f : %,.0f rows/s = %.2f", ROWS / ours * 1e9, ROWS / bare * 1e9, bare / ours);
    }

    private static PriceList open(Path file) {
        return PriceReader.list(CsvSource.file(file)).orThrow();
    }

    private static long bare(Path file) throws IOException {
        long length = 0;
        try (Reader reader = Files.newBufferedReader(file);
                CSVParser parser = CSVParser.parse(reader, CSVFormat.RFC4180)) {
            for (CSVRecord row : parser) {
                for (int i = 0; i < row.size(); i++) {
                    length += row.get(i).length();
                }
            }
        }
        return length;
    }

    private static void warm() throws IOException {
        Path small = Files.createTempFile("prices", ".csv");
        try {
            write(small, 50_000);
            for (int i = 0; i < 4; i++) {
                bare(small);
                open(small);
            }
        } finally {
            Files.delete(small);
        }
    }

    private static long used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    private static long peak() {
        long peak = 0;
        for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
            peak += pool.getType() == MemoryType.HEAP ? pool.getPeakUsage().getUsed() : 0;
        }
        return peak >> 20;
    }

    private static void write(Path file) throws IOException {
        write(file, ROWS);
    }

    /** Items with fifty weekly prices each, which stand together; forty suppliers, prices and packs that differ. */
    private static void write(Path file, int rows) throws IOException {
        List<String> packs = List.of("25 kg", "1 t", "5 kg", "20 L", "10 kg");
        LocalDate first = LocalDate.of(2026, 1, 5);
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("item,supplier,pack,price,currency,valid from,valid until,minimum quantity,delivery\n");
            for (int i = 0; i < rows; i++) {
                int item = i / WEEKS;
                LocalDate from = first.plusWeeks(i % WEEKS);
                out.write("material " + item + ",Maltings " + item % 40 + "," + packs.get(item % 5) + ",£"
                        + (5 + (i * 7919L) % 995) + "." + (10 + (i * 31L) % 90) + ",GBP," + from + ","
                        + from.plusDays(6) + ","
                        + (item % 3 == 0 ? "100 " + packs.get(item % 5).split(" ", -1)[1] : "")
                        + "," + (item % 4 == 0 ? "£1.25" : "") + "\n");
            }
        }
    }
}
