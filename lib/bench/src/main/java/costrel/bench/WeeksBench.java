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
import java.util.EnumSet;
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
 * Two hundred beers of 30 lines costed at the prices of each of 52 weeks; against a workbook that does the same lines and their sum,
 * recalculated by LibreOffice without a window. Once with the goods alone, once with every line of the sheets: goods, packaging, rates
 * and duty.
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
        Timer.Timed<BigDecimal> whole = Timer.fastest(3, () -> sheets(year, BEERS));
        for (int i = 0; i < nanos.length; i++) {
            int beers = BEERS >> (nanos.length - 1 - i);
            whole = Timer.fastest(5, () -> sheets(year, beers));
            nanos[i] = whole.nanos();
            report.note(
                    String.format(Locale.ROOT, "%d beers × %d weeks, sheets whole, warm", beers, WEEKS),
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
        try {
            against(report, "goods", alone, lines(year, GOODS));
            against(report, "whole sheets", whole, lines(year, EnumSet.allOf(CostGroup.class)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        report.print();
    }

    private static void against(Report report, String what, Timer.Timed<BigDecimal> ours, Sums sums)
            throws IOException, InterruptedException {
        OptionalDouble figures = Workbook.seconds(book(sums, false));
        if (figures.isEmpty()) {
            report.note(
                    "the same as a workbook", "LibreOffice", "not installed: apt-get install libreoffice-calc-nogui");
            return;
        }
        Workbook formulas = book(sums, true);
        double seconds = Workbook.seconds(formulas).orElse(Double.NaN);
        double recalculated = seconds - figures.getAsDouble();
        report.note(
                what + ": total of all beers and weeks",
                "of the workbook, " + sums.lines().size() + " lines a week",
                ours.result().toPlainString() + " : " + formulas.total().toPlainString());
        report.note(
                what + ": the workbook, to open and save",
                "the same with figures for formulas",
                String.format(Locale.ROOT, "%.1f s of %.1f s", figures.getAsDouble(), seconds));
        double times = recalculated * 1e9 / ours.nanos();
        report.atLeast(
                what + " of 200 beers × 52 weeks, warm",
                "workbook, without opening and saving",
                String.format(
                        Locale.ROOT,
                        "%s : %.1f s = %s faster",
                        Report.time(ours.nanos()),
                        recalculated,
                        Report.times(times)),
                times,
                20,
                " × faster");
    }

    /** The lines of all beers, and the prices of each week by the name that the lines give. */
    private record Sums(List<Workbook.Line> lines, Map<String, List<BigDecimal>> prices) {}

    /** What the sheets multiply and round, out of the sheets themselves: lines of some groups, with what a unit costs each week. */
    private static Sums lines(Year year, Set<CostGroup> groups) {
        List<Workbook.Line> lines = new ArrayList<>();
        Map<List<BigDecimal>, String> names = new HashMap<>();
        Map<String, List<BigDecimal>> prices = new LinkedHashMap<>();
        for (int b = 0; b < BEERS; b++) {
            List<List<CostLine>> ofWeeks = new ArrayList<>();
            for (int w = 0; w < WEEKS; w++) {
                ofWeeks.add(sheet(year, b, w).lines().stream()
                        .filter(line -> groups.contains(line.group())
                                && line.unitPrice().isPresent())
                        .toList());
            }
            List<CostLine> first = ofWeeks.get(0);
            for (int i = 0; i < first.size(); i++) {
                List<BigDecimal> byWeek = new ArrayList<>();
                for (List<CostLine> ofWeek : ofWeeks) {
                    byWeek.add(ofWeek.get(i).unitPrice().orElseThrow().amount());
                }
                CostLine line = first.get(i);
                String name =
                        names.computeIfAbsent(byWeek, fresh -> line.group().label() + " " + names.size());
                prices.putIfAbsent(name, byWeek);
                lines.add(new Workbook.Line(
                        name, line.amount(), line.unitPrice().orElseThrow().content(), line.group() == CostGroup.DUTY));
            }
        }
        return new Sums(lines, prices);
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

    private static CostSheet sheet(Year year, int beer, int week) {
        return year.beers().get(beer).cost(year.gyles().get(beer), year.prices(), FIRST.plusWeeks(week));
    }

    private static BigDecimal sheets(Year year, int beers) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int w = 0; w < WEEKS; w++) {
            for (int b = 0; b < beers; b++) {
                sum = sum.add(sheet(year, b, w).total().getAmount());
            }
        }
        return sum;
    }

    /** What the workbook of goods does and no more: the price of each item in each week, and the lines of each beer rounded and summed. */
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

    private static Workbook book(Sums sums, boolean formulas) throws IOException {
        try (Workbook book = Workbook.begin(formulas)) {
            book.total(sums.lines().size(), WEEKS);
            book.prices(sums.prices());
            book.lines();
            for (Workbook.Line line : sums.lines()) {
                book.line(line, WEEKS);
            }
            return book;
        }
    }
}
