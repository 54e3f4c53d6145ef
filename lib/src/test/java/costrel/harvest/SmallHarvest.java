package costrel.harvest;

import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import costrel.recipe.Holds;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * A random harvest of a few gyles and lots, and its requirements written down afresh as rows over the weights of every lot in
 * every addition: column = gyle, addition, lot.
 */
final class SmallHarvest {
    static final double START = Plans.ebuPerKgAlpha(0.3);
    static final double HALF = Plans.ebuPerKgAlpha(0.2);
    static final double LATE = Plans.ebuPerKgAlpha(0.08);

    final List<PlanGyle> gyles = new ArrayList<>();
    final List<PlanLot> lots = new ArrayList<>();
    final PlanRules rules;
    private final int additions;

    /** What the additions of every gyle are. */
    enum Kind {
        ONE_BITTERING,
        TWO_BITTERINGS_IN_PROPORTION,
        BITTERING_AND_DOSE,
        BITTERING_AND_OIL
    }

    SmallHarvest(Random random, Kind kind, int gyleCount, int lotCount, OptionalDouble packKg, double mostChange) {
        additions = kind == Kind.ONE_BITTERING ? 1 : 2;
        double share = random.nextInt(3) > 0 ? 1 : 0.6 + 0.3 * random.nextDouble();
        double soluble = random.nextInt(4) > 0 ? Double.POSITIVE_INFINITY : 60 + 40 * random.nextDouble();
        rules = new PlanRules(share, soluble, mostChange, 0, AlphaMethodFactors.NONE);
        for (int l = 0; l < lotCount; l++) {
            lots.add(lot(random, l, packKg));
        }
        for (int g = 0; g < gyleCount; g++) {
            gyles.add(gyle(random, kind, g + 1));
        }
    }

    private static PlanLot lot(Random random, int l, OptionalDouble packKg) {
        double alpha = 0.03 + 0.09 * random.nextDouble();
        double loss = 0.97 + 0.03 * random.nextDouble();
        Map<String, Double> alphas = new HashMap<>();
        for (int g = 1; g < 5; g++) {
            alphas.put("G" + g, alpha * Math.pow(loss, g));
        }
        int lateFrom = random.nextInt(5) == 0 ? 2 : 0;
        return new PlanLot(
                "L" + l,
                "Fuggle",
                random.nextInt(3) > 0 ? HopForm.LEAF : HopForm.T90,
                2024 + random.nextInt(3),
                Plans.NEW_YEAR.plusWeeks(lateFrom),
                AlphaMethod.LEAD_CONDUCTANCE,
                alphas,
                Plans.some(0.4 + random.nextDouble()),
                random.nextInt(8) == 0 ? 0 : 8 * random.nextDouble(),
                packKg,
                Plans.some(10 + 15 * random.nextDouble()));
    }

    private static PlanGyle gyle(Random random, Kind kind, int number) {
        PlanAddition start = PlanAddition.bittering("start", "Fuggle", Plans.some(0.7), START);
        double target = 18 + 15 * random.nextDouble();
        double tolerance = random.nextInt(3) == 0 ? 1 : 0;
        double leafKg = random.nextInt(3) == 0 ? 2 * random.nextDouble() : 0;
        return switch (kind) {
            case ONE_BITTERING -> Plans.gyle(number, "bitter", target, tolerance, leafKg, start);
            case TWO_BITTERINGS_IN_PROPORTION ->
                Plans.gyle(
                        number,
                        "bitter",
                        target,
                        tolerance,
                        leafKg,
                        start,
                        PlanAddition.bittering("half", "Fuggle", Plans.some(0.3), HALF));
            case BITTERING_AND_DOSE ->
                Plans.gyle(
                        number,
                        "bitter",
                        target,
                        tolerance,
                        leafKg,
                        start,
                        PlanAddition.dose("late", "Fuggle", 2 * random.nextDouble(), LATE));
            case BITTERING_AND_OIL ->
                Plans.gyle(
                        number,
                        "bitter",
                        target,
                        tolerance,
                        leafKg,
                        start,
                        PlanAddition.oil("late", "Fuggle", 15 * random.nextDouble(), LATE));
        };
    }

    int columns() {
        return gyles.size() * additions * lots.size();
    }

    int column(int g, int a, int l) {
        return (g * additions + a) * lots.size() + l;
    }

    PlanAddition addition(int g, int a) {
        return gyles.get(g).additions().get(a);
    }

    private double alpha(int g, int l) {
        return lots.get(l).alphaByGyle().getOrDefault(gyles.get(g).id(), Double.NaN);
    }

    double ebuPerKg(int g, int a, int l) {
        return addition(g, a).ebuPerKgAlpha() * alpha(g, l);
    }

    double heldPerKg(int g, int a, int l) {
        return switch (addition(g, a).holds()) {
            case BITTERNESS -> ebuPerKg(g, a, l);
            case DOSE -> 1;
            case OIL -> lots.get(l).oilMlPer100g().orElseThrow() * 10;
        };
    }

    /** A cost over the weights: what a kilogram of each lot counts. */
    double[] cost(Corners corners, double... perKg) {
        double[] cost = corners.row(0);
        for (int c = 0; c < columns(); c++) {
            cost[c] = perKg[c % lots.size()];
        }
        return cost;
    }

    /** The requirements as rows; there may be more columns than weights. */
    Corners rows(int moreColumns) {
        Corners corners = new Corners(columns() + moreColumns);
        for (int g = 0; g < gyles.size(); g++) {
            PlanGyle gyle = gyles.get(g);
            double[] ebu = corners.row(gyle.targetEbu());
            double[] leaf = corners.row(gyle.leastLeafKg());
            for (int a = 0; a < additions; a++) {
                for (int l = 0; l < lots.size(); l++) {
                    ebu[column(g, a, l)] = ebuPerKg(g, a, l);
                    leaf[column(g, a, l)] = lots.get(l).form() == HopForm.LEAF ? 1 : 0;
                    if (gyle.day().isBefore(lots.get(l).availableFrom())) {
                        double[] absent = corners.row(0);
                        absent[column(g, a, l)] = 1;
                        corners.atMost(absent);
                    }
                }
                addition(corners, g, a);
            }
            bitterness(corners, gyle, ebu);
            if (gyle.leastLeafKg() > 0) {
                corners.atLeast(leaf);
            }
        }
        for (int l = 0; l < lots.size(); l++) {
            double[] stock = corners.row(lots.get(l).stockKg());
            for (int c = l; c < columns(); c += lots.size()) {
                stock[c] = 1;
            }
            corners.atMost(stock);
        }
        return corners;
    }

    private void bitterness(Corners corners, PlanGyle gyle, double[] ebu) {
        if (gyle.toleranceEbu() == 0) {
            corners.equal(ebu);
            return;
        }
        int limit = ebu.length - 1;
        double[] low = ebu.clone();
        ebu[limit] = gyle.targetEbu() + gyle.toleranceEbu();
        low[limit] = gyle.targetEbu() - gyle.toleranceEbu();
        corners.atMost(ebu);
        corners.atLeast(low);
    }

    private void addition(Corners corners, int g, int a) {
        PlanAddition addition = addition(g, a);
        double[] held = corners.row(addition.doseKg().orElse(addition.oilMl().orElse(0)));
        double[] alpha = corners.row(rules.alphaSolubleMgPerL());
        for (int l = 0; l < lots.size(); l++) {
            held[column(g, a, l)] = heldPerKg(g, a, l);
            alpha[column(g, a, l)] = alpha(g, l) * 1e6 / 1000;
        }
        if (addition.holds() != Holds.BITTERNESS) {
            corners.equal(held);
        } else if (a == 1) {
            double[] proportion = corners.row(0);
            for (int l = 0; l < lots.size(); l++) {
                proportion[column(g, 0, l)] = 0.3 * ebuPerKg(g, 0, l);
                proportion[column(g, 1, l)] = -0.7 * ebuPerKg(g, 1, l);
            }
            corners.equal(proportion);
        }
        if (Double.isFinite(rules.alphaSolubleMgPerL())) {
            corners.atMost(alpha);
        }
        for (int l = 0; l < lots.size() && rules.mostShare() < 1; l++) {
            double[] most = corners.row(0);
            for (int k = 0; k < lots.size(); k++) {
                most[column(g, a, k)] = heldPerKg(g, a, k) * ((k == l ? 1 : 0) - rules.mostShare());
            }
            corners.atMost(most);
        }
    }

    /** How far the allocations of a plan break a requirement, at worst, for each unit of its limit or 1. */
    double worstBreach(HarvestPlan plan) {
        double[] x = new double[columns()];
        for (HarvestPlan.Allocation line : plan.allocations()) {
            for (int g = 0; g < gyles.size(); g++) {
                for (int a = 0; a < additions; a++) {
                    for (int l = 0; l < lots.size(); l++) {
                        if (line.gyle().equals(gyles.get(g).id())
                                && line.addition().equals(addition(g, a).label())
                                && line.lot().equals(lots.get(l).id())) {
                            x[column(g, a, l)] = line.kg();
                        }
                    }
                }
            }
        }
        return rows(0).worstBreach(x);
    }
}
