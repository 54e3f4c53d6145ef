package costrel.bench;

import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.PriceRow;
import costrel.buying.UnitPrice;
import costrel.cost.BillLine;
import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.cost.GoodsAtPrices;
import costrel.scaling.Gyle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/**
 * Two hundred beers of 30 lines costed at the prices of each of 52 weeks, sheets whole with duty and packaging; against a workbook
 * that does the lines of the bill and their sums only, recalculated by LibreOffice without a window.
 */
final class WeeksBench {
    private static final int BEERS = 200;
    private static final int WEEKS = 52;
    private static final int LINES = 30;
    private static final int FAMILIES = 10;
    private static final LocalDate FIRST = LocalDate.of(2026, 2, 2);
    private static final Set<CostGroup> GOODS = Set.of(
            CostGroup.MASHED_GOODS,
            CostGroup.SUGARS,
            CostGroup.HOPS,
            CostGroup.YEAST,
            CostGroup.LIQUOR_TREATMENT,
            CostGroup.PROCESS_AIDS);

    private WeeksBench() {}

    /** A brewery's beers and what their goods cost, week by week. */
    private record Year(List<Beer> beers, List<Gyle> gyles, Map<String, double[]> perKg, PriceList prices) {}

    static void report() {
        Year year = year();
        Report report = new Report();
        double[] nanos = new double[3];
        Timer.Timed<BigDecimal> whole = Timer.fastest(1, () -> goods(year, BEERS)); // not warmed up
        for (int i = 0; i < nanos.length; i++) {
            int beers = BEERS >> (nanos.length - 1 - i);
            nanos[i] = Timer.fastest(3, () -> goods(year, beers)).nanos();
            report.note(
                    String.format(Locale.ROOT, "%d beers × %d weeks recosted, warm", beers, WEEKS),
                    "-",
                    Report.time(nanos[i]) + ", a sheet " + Report.time(nanos[i] / beers / WEEKS));
        }
        report.atMost(
                "growth from 50 to 200 beers",
                "linear: 4 ×",
                Report.times(nanos[2] / nanos[0]),
                nanos[2] / nanos[0],
                5,
                " ×");
        Timer.Timed<BigDecimal> alone = Timer.fastest(8, () -> goodsAlone(year));
        report.note(
                "goods alone, warm",
                "of the sheets",
                alone.result() + " : " + whole.result() + ", " + Report.time(alone.nanos()));
        against(report, year, whole, alone);
        report.print();
    }

    private static void against(
            Report report, Year year, Timer.Timed<BigDecimal> whole, Timer.Timed<BigDecimal> alone) {
        try {
            OptionalDouble figures = Workbook.seconds(book(year, false));
            if (figures.isEmpty()) {
                report.note(
                        "the same as a workbook",
                        "LibreOffice",
                        "not installed: apt-get install libreoffice-calc-nogui");
                return;
            }
            Workbook formulas = book(year, true);
            double seconds = Workbook.seconds(formulas).orElse(Double.NaN);
            double recalculated = seconds - figures.getAsDouble();
            BigDecimal total = formulas.total();
            report.note(
                    "goods of all beers and weeks",
                    "total of the workbook",
                    whole.result().toPlainString() + " : " + total.toPlainString());
            report.note(
                    "of the workbook, to open and save",
                    "the same with figures for formulas",
                    String.format(Locale.ROOT, "%.1f s of %.1f s", figures.getAsDouble(), seconds));
            double times = recalculated * 1e9 / alone.nanos();
            report.atLeast(
                    "goods of 200 beers × 52 weeks, warm",
                    "workbook, without opening and saving",
                    String.format(
                            Locale.ROOT,
                            "%s : %.1f s = %s faster",
                            Report.time(alone.nanos()),
                            recalculated,
                            Report.times(times)),
                    times,
                    20,
                    " × faster");
            report.note(
                    "sheets whole, with duty and packaging",
                    "workbook of the goods alone",
                    Report.times(recalculated * 1e9 / whole.nanos()) + " faster");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static Year year() {
        List<Beer> beers = new ArrayList<>();
        List<Gyle> gyles = new ArrayList<>();
        Map<String, double[]> perKg = new LinkedHashMap<>();
        List<PriceRow> rows = new ArrayList<>(Beer.ofContainers());
        for (int i = 0; i < BEERS; i++) {
            Beer beer = new Beer(i % FAMILIES, LINES);
            Gyle gyle = beer.scale();
            beers.add(beer);
            gyles.add(gyle);
            for (BillLine line : Beer.bill(gyle)) {
                perKg.computeIfAbsent(line.item(), item -> prices(perKg.size()));
            }
        }
        perKg.forEach((item, weeks) -> {
            for (int w = 0; w < WEEKS; w++) {
                rows.add(Beer.weekly(item, weeks[w], FIRST.plusWeeks(w), rows.size() + 2));
            }
        });
        return new Year(beers, gyles, perKg, PriceList.of(rows));
    }

    private static double[] prices(int item) {
        double[] perKg = new double[WEEKS];
        for (int w = 0; w < WEEKS; w++) {
            perKg[w] = 1 + (item * 37 + w * 11) % 400 / 100.0;
        }
        return perKg;
    }

    private static BigDecimal goods(Year year, int beers) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int b = 0; b < beers; b++) {
            for (int w = 0; w < WEEKS; w++) {
                CostSheet sheet = year.beers().get(b).cost(year.gyles().get(b), year.prices(), FIRST.plusWeeks(w));
                for (CostLine line : sheet.gyleLines()) {
                    if (GOODS.contains(line.group())) {
                        sum = sum.add(line.value().getAmount());
                    }
                }
            }
        }
        return sum;
    }

    /** What the workbook does and no more: the price of each item in each week, and the lines of each beer rounded and summed. */
    private static BigDecimal goodsAlone(Year year) {
        long pence = 0;
        for (int w = 0; w < WEEKS; w++) {
            LocalDate day = FIRST.plusWeeks(w);
            Map<String, UnitPrice> ofWeek = new HashMap<>();
            for (String item : year.perKg().keySet()) {
                ofWeek.put(
                        item,
                        year.prices()
                                .choose(List.of(item), day, BigDecimal.ONE, PackUnit.KILOGRAM, CurrencyUnit.GBP)
                                .unitPrice());
            }
            for (Gyle gyle : year.gyles()) {
                List<BillLine> bill = Beer.bill(gyle);
                double[] amounts = bill.stream().mapToDouble(BillLine::amount).toArray();
                List<UnitPrice> prices = bill.stream()
                        .map(line -> Objects.requireNonNull(ofWeek.get(line.item())))
                        .toList();
                pence += GoodsAtPrices.of(prices, CurrencyUnit.GBP).coins(amounts);
            }
        }
        return BigDecimal.valueOf(pence, 2);
    }

    private static Workbook book(Year year, boolean formulas) throws IOException {
        try (Workbook book = Workbook.begin(formulas)) {
            book.total(BEERS * LINES, WEEKS);
            book.prices(year.perKg());
            book.lines();
            for (Gyle gyle : year.gyles()) {
                for (BillLine line : Beer.bill(gyle)) {
                    book.line(line.item(), line.amount(), WEEKS);
                }
            }
            return book;
        }
    }
}
