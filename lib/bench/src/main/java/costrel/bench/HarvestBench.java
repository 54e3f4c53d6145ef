package costrel.bench;

import costrel.harvest.HarvestPlan;
import costrel.harvest.HarvestPlanner;
import costrel.harvest.Objective;
import costrel.harvest.PlanAddition;
import costrel.harvest.PlanGyle;
import costrel.harvest.PlanLot;
import costrel.harvest.PlanRules;
import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/** Plans the hops of a year: five beers in turn, five additions each, ten varieties, at the least cost. */
final class HarvestBench {
    private static final LocalDate NEW_YEAR = LocalDate.of(2027, 1, 4);
    private static final PlanRules RULES = new PlanRules(0.6, 250, 1, 0.1, AlphaMethodFactors.NONE);
    private static final int LOTS = 40;

    private HarvestBench() {}

    static void report() {
        Report report = new Report();
        plan(15); // warm
        for (int gyles : new int[] {15, 30, 60, 120}) {
            Timer.Timed<HarvestPlan> timed = Timer.fastest(2, () -> plan(gyles));
            boolean proved = timed.result().status() == HarvestPlan.Status.OPTIMAL;
            String what = String.format(Locale.ROOT, "harvest plan, %d gyles × %d lots × 5 additions", gyles, LOTS);
            String figure = Report.time(timed.nanos())
                    + (proved ? ", proved" : ", " + timed.result().status());
            if (gyles == 60) {
                report.atMost(what, "-", figure, proved ? timed.nanos() / 1e9 : Double.NaN, 5, " s, proved");
            } else {
                report.note(what, "-", figure);
            }
        }
        report.print();
    }

    private static HarvestPlan plan(int gyles) {
        Random random = new Random(7);
        List<PlanGyle> year = year(random, gyles);
        // Stocks go with the gyles, so that hops are as scarce in a small year as in a large one.
        return HarvestPlanner.plan(
                year, lots(random, gyles, 6 * gyles / 60.0, 18 * gyles / 60.0), RULES, Objective.LEAST_COST);
    }

    private static List<PlanGyle> year(Random random, int gyles) {
        String[][] varieties = new String[5][10];
        for (String[] beer : varieties) {
            for (int i = 0; i < beer.length; i++) {
                beer[i] = "variety " + random.nextInt(10);
            }
        }
        List<PlanGyle> year = new ArrayList<>();
        for (int g = 0; g < gyles; g++) {
            String[] of = varieties[g % 5];
            year.add(new PlanGyle(
                    "G" + g,
                    "beer " + g % 5,
                    NEW_YEAR.plusDays(g * 364L / gyles),
                    1000,
                    AlphaMethod.LEAD_CONDUCTANCE,
                    25 + 2 * (g % 5),
                    0.5,
                    1.5,
                    List.of(
                            PlanAddition.bittering("copper start", of[0], OptionalDouble.of(0.7), 300)
                                    .allowing(Set.of(of[1])),
                            PlanAddition.bittering("copper half", of[2], OptionalDouble.of(0.3), 200)
                                    .allowing(Set.of(of[3])),
                            PlanAddition.dose("late copper", of[4], 1.0, 80).allowing(Set.of(of[5])),
                            PlanAddition.dose("hot stand", of[6], 1.5, 30).allowing(Set.of(of[7])),
                            PlanAddition.dose("dry hop", of[8], 0.5, 0).allowing(Set.of(of[9])))));
        }
        return year;
    }

    private static List<PlanLot> lots(Random random, int gyles, double leastKg, double mostKg) {
        List<PlanLot> lots = new ArrayList<>();
        for (int l = 0; l < LOTS; l++) {
            double alpha = 0.03 + 0.1 * random.nextDouble();
            Map<String, Double> alphas = new HashMap<>();
            for (int g = 0; g < gyles; g++) {
                alphas.put("G" + g, alpha);
            }
            boolean old = l < LOTS / 2;
            lots.add(new PlanLot(
                    "L" + l,
                    "variety " + l % 10,
                    HopForm.LEAF,
                    old ? 2025 : 2026,
                    old ? LocalDate.of(2025, 10, 1) : NEW_YEAR.plusWeeks(30),
                    AlphaMethod.LEAD_CONDUCTANCE,
                    alphas,
                    OptionalDouble.empty(),
                    leastKg + (mostKg - leastKg) * random.nextDouble(),
                    OptionalDouble.empty(),
                    OptionalDouble.of(8 + 12 * random.nextDouble())));
        }
        return lots;
    }
}
