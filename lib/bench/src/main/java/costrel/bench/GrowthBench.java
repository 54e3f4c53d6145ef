package costrel.bench;

import costrel.buying.PriceList;
import costrel.scaling.Gyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How the time grows with the lines of a beer and with the number of beers. */
final class GrowthBench {
    private static final int[] SIZES = {10, 100, 1_000, 10_000};
    private static final int LINES = 30;

    private GrowthBench() {}

    static void report() {
        Report report = new Report();
        lines(LINES, 2_000); // warm
        for (int lines : SIZES) {
            double nanos = lines(lines, Math.max(2, 20_000 / lines));
            report.note(
                    String.format(Locale.ROOT, "a beer of %,d lines scaled and costed", lines),
                    "-",
                    Report.time(nanos) + ", a line " + Report.time(nanos / lines));
        }
        for (int beers : SIZES) {
            double nanos = beers(beers);
            report.note(
                    String.format(Locale.ROOT, "%,d beers of %d lines scaled and costed", beers, LINES),
                    "-",
                    Report.time(nanos) + ", a beer " + Report.time(nanos / beers));
        }
        report.print();
    }

    private static double lines(int lines, int times) {
        Beer beer = new Beer(1, lines);
        return Timer.fastest(3, () -> {
                            for (int i = 0; i < times; i++) {
                                beer.cost(beer.scale());
                            }
                            return times;
                        })
                        .nanos()
                / times;
    }

    private static double beers(int count) {
        List<Beer> beers = new ArrayList<>();
        for (int i = 0; i < Math.min(count, 1_000); i++) {
            beers.add(new Beer(i, LINES));
        }
        return Timer.fastest(3, () -> {
                    int lines = 0;
                    for (int i = 0; i < count; i++) {
                        Beer beer = beers.get(i % beers.size());
                        Gyle gyle = beer.scale();
                        PriceList prices = beer.prices();
                        lines += beer.cost(gyle, prices, Beer.DAY).gyleLines().size();
                    }
                    return lines;
                })
                .nanos();
    }
}
