package costrel.harvest;

import costrel.harvest.LinearProgram.Row;
import costrel.hops.AlphaMethod;
import costrel.hops.HopForm;
import costrel.recipe.Holds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * The requirements of a plan as one linear program. A column is the weight of a lot in an addition of a gyle; there is one only
 * where variety, form and day allow it. Gyles stand in the order of brewing.
 */
final class PlanModel {

    /** What a row asks for. */
    enum Asks {
        /** The bitterness of a gyle within its tolerance. */
        BITTERNESS,
        /** A bittering addition at its share of the bittering. */
        PROPORTION,
        /** What a dose or an oil addition holds. */
        HELD,
        /** Leaf for the bed in the hopback. */
        LEAF,
        /** No more than so much of an addition from one lot. */
        MOST_SHARE,
        /** Alpha acid that dissolves. */
        SOLUBLE,
        /** The stock of a lot. */
        STOCK
    }

    /** A row of the program and what it is about; −1 where it isn't about one gyle, addition or lot. */
    record Tag(int row, Asks asks, int gyle, int addition, int lot) {}

    /** A column of the program: a lot in an addition, with what a kilogram of it brings. */
    record Use(int gyle, int addition, int lot, double alpha, double ebuPerKg, double heldPerKg) {}

    private final List<PlanGyle> gyles;
    private final List<PlanLot> lots;
    private final PlanRules rules;
    private final boolean tight;
    private final LinearProgram program = new LinearProgram();
    private final List<Use> uses = new ArrayList<>();
    private final List<List<List<Integer>>> columnsOf = new ArrayList<>();
    private final List<Tag> tags = new ArrayList<>();
    private final Set<String> remarks = new LinkedHashSet<>();

    /** The requirements for a search: what can be said as a bound of a column is no row, and what always holds is left out. */
    static PlanModel tight(List<PlanGyle> gyles, List<PlanLot> lots, PlanRules rules) {
        return new PlanModel(gyles, lots, rules, true);
    }

    /** The same with a row for every requirement, so that each can be let give way. */
    PlanModel loose() {
        return new PlanModel(gyles, lots, rules, false);
    }

    private PlanModel(List<PlanGyle> given, List<PlanLot> lots, PlanRules rules, boolean tight) {
        this.gyles = given.stream()
                .sorted(Comparator.comparing(PlanGyle::day)) // a stable sort: gyles of one day keep their order
                .toList();
        this.lots = List.copyOf(lots);
        this.rules = rules;
        this.tight = tight;
        once("gyle", gyles.stream().map(PlanGyle::id).toList());
        once("hop lot", lots.stream().map(PlanLot::id).toList());
        for (int g = 0; g < gyles.size(); g++) {
            columnsOf.add(new ArrayList<>());
            for (int a = 0; a < gyle(g).additions().size(); a++) {
                columnsOf.get(g).add(columns(g, a));
            }
        }
        for (int g = 0; g < gyles.size(); g++) {
            rowsOf(g);
        }
        for (int l = 0; l < this.lots.size(); l++) {
            int lot = l;
            List<Integer> columns = columnsWhere(use -> use.lot() == lot);
            if (!columns.isEmpty()) {
                row(columns, use -> 1, 0, this.lots.get(l).stockKg(), Asks.STOCK, -1, -1, l);
            }
        }
    }

    PlanGyle gyle(int index) {
        return gyles.get(index);
    }

    PlanAddition addition(int gyle, int addition) {
        return gyles.get(gyle).additions().get(addition);
    }

    PlanLot lot(int index) {
        return lots.get(index);
    }

    List<PlanGyle> gyles() {
        return gyles;
    }

    List<PlanLot> lots() {
        return lots;
    }

    PlanRules rules() {
        return rules;
    }

    List<Use> uses() {
        return uses;
    }

    List<Tag> tags() {
        return tags;
    }

    Set<String> remarks() {
        return remarks;
    }

    LinearProgram program() {
        return program;
    }

    /** Columns of the lots that may go into an addition. */
    List<Integer> columnsOf(int gyle, int addition) {
        return columnsOf.get(gyle).get(addition);
    }

    /** Columns of a lot in the order of brewing. */
    List<Integer> columnsOfLot(int lot) {
        return columnsWhere(use -> use.lot() == lot);
    }

    /** What an addition holds at given weights: EBU, kg or mL of oil. */
    double held(int gyle, int addition, double[] kg) {
        double sum = 0;
        for (int column : columnsOf(gyle, addition)) {
            sum += uses.get(column).heldPerKg() * kg[column];
        }
        return sum;
    }

    private List<Integer> columnsWhere(Predicate<Use> wanted) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < uses.size(); i++) {
            if (wanted.test(uses.get(i))) {
                found.add(i);
            }
        }
        return found;
    }

    private List<Integer> columns(int g, int a) {
        PlanGyle gyle = gyle(g);
        PlanAddition addition = addition(g, a);
        List<Integer> columns = new ArrayList<>();
        for (int l = 0; l < lots.size(); l++) {
            PlanLot lot = lots.get(l);
            OptionalDouble given = lot.alphaFor(gyle);
            if (!addition.allows(lot) || given.isEmpty()) {
                continue;
            }
            double alpha = addition.ebuPerKgAlpha() > 0 || addition.inTheCopper()
                    ? byMethodOf(gyle, lot, given.getAsDouble())
                    : given.getAsDouble();
            double ebuPerKg = addition.ebuPerKgAlpha() * alpha;
            double heldPerKg = heldPerKg(addition, lot, ebuPerKg);
            if (!(heldPerKg > 0)) {
                remarks.add(lot.words() + " can't go into " + addition.label() + " of " + gyle.beer() + ": it has "
                        + (addition.holds() == Holds.OIL ? "no figure for oil" : "no alpha acid"));
                continue;
            }
            columns.add(program.column(holdsAtMost(gyle, addition) / heldPerKg));
            uses.add(new Use(g, a, l, alpha, ebuPerKg, heldPerKg));
        }
        return columns;
    }

    private static double heldPerKg(PlanAddition addition, PlanLot lot, double ebuPerKg) {
        return switch (addition.holds()) {
            case BITTERNESS -> ebuPerKg;
            case DOSE -> 1;
            case OIL -> lot.oilMlPer100g().orElse(0) * 10;
        };
    }

    static double holdsAtMost(PlanGyle gyle, PlanAddition addition) {
        return switch (addition.holds()) {
            case BITTERNESS -> gyle.targetEbu() + gyle.toleranceEbu();
            case DOSE -> addition.doseKg().orElseThrow();
            case OIL -> addition.oilMl().orElseThrow();
        };
    }

    /** Alpha acid of a lot by the method that the gyle's bitterness was read by; a figure without a method is taken as it is. */
    private double byMethodOf(PlanGyle gyle, PlanLot lot, double alpha) {
        AlphaMethod from = lot.method();
        AlphaMethod to = gyle.method();
        if (from == to) {
            return alpha;
        }
        if (from == AlphaMethod.UNSTATED || to == AlphaMethod.UNSTATED) {
            remarks.add("alpha figures of unlike methods meet in " + gyle.beer() + ": " + lot.words() + " ("
                    + from.label() + ") in a beer read by " + to.label() + " alpha, taken as they are");
            return alpha;
        }
        try {
            double converted = rules.factors().convert(alpha, from, to);
            remarks.add("alpha of " + lot.words() + " brought from " + from.label() + " to " + to.label() + " for "
                    + gyle.beer() + " with the stated factor "
                    + Figures.fixed(rules.factors().convert(0.1, from, to) * 10, 3));
            return converted;
        } catch (IllegalArgumentException refused) {
            throw new IllegalArgumentException(
                    gyle.words() + ", " + lot.words() + ": " + refused.getMessage(), refused);
        }
    }

    private void rowsOf(int g) {
        PlanGyle gyle = gyle(g);
        List<Integer> all = columnsWhere(use -> use.gyle() == g);
        row(
                all,
                Use::ebuPerKg,
                gyle.targetEbu() - gyle.toleranceEbu(),
                gyle.targetEbu() + gyle.toleranceEbu(),
                Asks.BITTERNESS,
                g,
                -1,
                -1);
        if (gyle.leastLeafKg() > 0) {
            List<Integer> leaf =
                    all.stream().filter(column -> isLeafBed(uses.get(column))).toList();
            row(leaf, use -> 1, gyle.leastLeafKg(), Double.POSITIVE_INFINITY, Asks.LEAF, g, -1, -1);
        }
        proportions(g);
        for (int a = 0; a < gyle.additions().size(); a++) {
            PlanAddition addition = addition(g, a);
            List<Integer> columns = columnsOf(g, a);
            if (addition.holds() != Holds.BITTERNESS) {
                double held = holdsAtMost(gyle, addition);
                row(columns, Use::heldPerKg, held, held, Asks.HELD, g, a, -1);
            }
            if (rules.mostShare() < 1 && tight && addition.holds() != Holds.BITTERNESS) {
                double most = rules.mostShare() * holdsAtMost(gyle, addition);
                columns.forEach(
                        column -> program.narrow(column, most / uses.get(column).heldPerKg()));
            } else if (rules.mostShare() < 1) {
                for (int column : columns) {
                    int lot = uses.get(column).lot();
                    row(
                            columns,
                            use -> use.heldPerKg() * ((use.lot() == lot ? 1 : 0) - rules.mostShare()),
                            Double.NEGATIVE_INFINITY,
                            0,
                            Asks.MOST_SHARE,
                            g,
                            a,
                            lot);
                }
            }
            if (addition.inTheCopper() && rules.alphaSolubleMgPerL() < Double.POSITIVE_INFINITY) {
                double most = rules.alphaSolubleMgPerL() * gyle.collectedL() / 1e6;
                double reach = holdsAtMost(gyle, addition)
                        * columns.stream()
                                .map(uses::get)
                                .mapToDouble(use -> use.alpha() / use.heldPerKg())
                                .max()
                                .orElse(0);
                if (!tight || reach > most) {
                    row(columns, Use::alpha, Double.NEGATIVE_INFINITY, most, Asks.SOLUBLE, g, a, -1);
                }
            }
        }
    }

    /** Bittering additions with a share: EBU of each = its part of a common total, which is a column of its own. */
    private void proportions(int g) {
        PlanGyle gyle = gyle(g);
        double shares = gyle.additions().stream()
                .mapToDouble(each -> each.bitteringShare().orElse(0))
                .sum();
        List<Integer> shared = new ArrayList<>();
        for (int a = 0; a < gyle.additions().size(); a++) {
            if (addition(g, a).bitteringShare().isPresent()) {
                shared.add(a);
            }
        }
        if (shared.isEmpty() || (shared.size() == 1 && shares > 0)) {
            return;
        }
        int total = program.column(gyle.targetEbu() + gyle.toleranceEbu());
        for (int a : shared) {
            double share = shares > 0 ? addition(g, a).bitteringShare().orElseThrow() / shares : 0;
            Row row = rowOver(columnsOf(g, a), Use::heldPerKg, 0, 0).plus(total, -share);
            tags.add(new Tag(program.row(row), Asks.PROPORTION, g, a, -1));
        }
    }

    boolean isLeafBed(Use use) {
        return addition(use.gyle(), use.addition()).inTheCopper()
                && lots.get(use.lot()).form() == HopForm.LEAF;
    }

    private void row(
            List<Integer> columns,
            ToDoubleFunction<Use> factor,
            double least,
            double most,
            Asks asks,
            int gyle,
            int addition,
            int lot) {
        int row = program.row(rowOver(columns, factor, least, most));
        tags.add(new Tag(row, asks, gyle, addition, lot));
    }

    private Row rowOver(List<Integer> columns, ToDoubleFunction<Use> factor, double least, double most) {
        int[] indices = columns.stream().mapToInt(Integer::intValue).toArray();
        double[] factors = new double[indices.length];
        for (int i = 0; i < indices.length; i++) {
            factors[i] = factor.applyAsDouble(uses.get(indices[i]));
        }
        return new Row(indices, factors, least, most);
    }

    private static void once(String what, List<String> ids) {
        Set<String> seen = new HashSet<>();
        for (String id : ids) {
            if (!seen.add(id)) {
                throw new IllegalArgumentException(
                        what + ": expected every one once, found two with the id '" + id + "'");
            }
        }
    }
}
