package costrel.harvest;

import costrel.harvest.HarvestPlan.ShareChange;
import costrel.harvest.LinearProgram.Answer;
import costrel.harvest.LinearProgram.Row;
import costrel.harvest.PlanModel.Use;
import costrel.recipe.Holds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Changes of blend from a gyle to the next of the same beer. A lot's share is the part of what an addition holds that it
 * brings: of its weight, its oil or its EBU. Weight and oil are fixed, so their shares are linear in the weights. The EBU of a
 * bittering addition moves with the alpha acid of the late hops and within the tolerance of the gyle; where it isn't fixed its
 * shares are first held in an envelope (McCormick 1976) that every true share lies in, which proves a bound, and then computed
 * with the EBU of that answer, which gives a plan.
 */
final class Steadiness {

    /** Two totals that differ by less than this part count as one. */
    private static final double SAME = 1e-12;

    /** The same addition in two gyles that follow one another. */
    private record Link(int fromGyle, int fromAddition, int toGyle, int toAddition) {}

    /** Least and most that an addition can hold. */
    private record Range(double least, double most) {
        boolean fixed() {
            return most - least <= SAME * most;
        }
    }

    private final PlanModel model;
    private final List<Link> links = new ArrayList<>();
    private final List<List<Range>> ranges = new ArrayList<>();

    Steadiness(PlanModel model) {
        this.model = model;
        for (int g = 0; g < model.gyles().size(); g++) {
            ranges.add(new ArrayList<>());
            for (int a = 0; a < model.gyle(g).additions().size(); a++) {
                ranges.get(g).add(range(g, a));
            }
        }
        Map<String, Integer> last = new HashMap<>();
        for (int g = 0; g < model.gyles().size(); g++) {
            Integer before = last.put(model.gyle(g).beer(), g);
            if (before != null) {
                link(before, g);
            }
        }
    }

    private void link(int from, int to) {
        List<PlanAddition> earlier = model.gyle(from).additions();
        List<PlanAddition> later = model.gyle(to).additions();
        for (int a = 0; a < earlier.size(); a++) {
            for (int b = 0; b < later.size(); b++) {
                if (earlier.get(a).label().equals(later.get(b).label())
                        && earlier.get(a).holds() == later.get(b).holds()
                        && ranges.get(from).get(a).most() > 0
                        && ranges.get(to).get(b).most() > 0) {
                    links.add(new Link(from, a, to, b));
                }
            }
        }
    }

    boolean hasLinks() {
        return !links.isEmpty();
    }

    /** Whether every share is linear in the weights, so that one program proves its answer. */
    boolean exact() {
        return links.stream()
                .allMatch(link -> ranges.get(link.fromGyle())
                                .get(link.fromAddition())
                                .fixed()
                        && ranges.get(link.toGyle()).get(link.toAddition()).fixed());
    }

    /** What an addition can hold at least and at most, whatever the lots. */
    private Range range(int g, int a) {
        PlanGyle gyle = model.gyle(g);
        PlanAddition addition = model.addition(g, a);
        if (addition.holds() != Holds.BITTERNESS) {
            double held = PlanModel.holdsAtMost(gyle, addition);
            return new Range(held, held);
        }
        double lateLeast = 0;
        double lateMost = 0;
        double shares = 0;
        boolean free = false;
        for (int b = 0; b < gyle.additions().size(); b++) {
            PlanAddition other = model.addition(g, b);
            if (other.holds() == Holds.BITTERNESS) {
                free |= other.bitteringShare().isEmpty();
                shares += other.bitteringShare().orElse(0);
                continue;
            }
            double[] ebu = model.columnsOf(g, b).stream()
                    .map(model.uses()::get)
                    .mapToDouble(use -> use.ebuPerKg() / use.heldPerKg())
                    .toArray();
            double held = PlanModel.holdsAtMost(gyle, other);
            lateLeast += held * Arrays.stream(ebu).min().orElse(0);
            lateMost += held * Arrays.stream(ebu).max().orElse(0);
        }
        double least = Math.max(0, gyle.targetEbu() - gyle.toleranceEbu() - lateMost);
        double most = Math.max(0, gyle.targetEbu() + gyle.toleranceEbu() - lateLeast);
        if (addition.bitteringShare().isPresent()) {
            double share = shares > 0 ? addition.bitteringShare().orElseThrow() / shares : 0;
            return new Range(free ? 0 : least * share, most * share);
        }
        boolean alone = gyle.additions().stream()
                        .filter(each -> each.holds() == Holds.BITTERNESS)
                        .count()
                == 1;
        return new Range(alone ? least : 0, most);
    }

    /** A program, and every change of a share as a sum of terms over its columns. */
    record Extended(LinearProgram program, List<List<Term>> changes) {

        /** Makes the largest change least; that change is the cost. */
        Answer leastLargest(PlanLimits limits) {
            LinearProgram larger = program.copy();
            int largest = larger.column(1);
            for (List<Term> change : changes) {
                for (double sign : new double[] {1, -1}) {
                    List<Term> terms = new ArrayList<>(List.of(new Term(largest, -1)));
                    change.forEach(term -> terms.add(new Term(term.column(), sign * term.factor())));
                    larger.row(rowOf(terms, Double.NEGATIVE_INFINITY, 0));
                }
            }
            double[] cost = new double[larger.columns()];
            cost[largest] = 1;
            return larger.minimise(cost, limits);
        }

        /** Makes the sum of all changes least with none over a bound; that sum is the cost. */
        Answer leastSum(double bound, PlanLimits limits) {
            LinearProgram larger = program.copy();
            for (List<Term> change : changes) {
                List<Term> terms = new ArrayList<>(change);
                terms.add(new Term(larger.column(bound), -1));
                terms.add(new Term(larger.column(bound), 1));
                larger.row(rowOf(terms, 0, 0));
            }
            double[] cost = new double[larger.columns()];
            Arrays.fill(cost, program.columns(), cost.length, 1);
            return larger.minimise(cost, limits);
        }

        /** The same program with no change over a bound. */
        LinearProgram within(double bound) {
            LinearProgram bounded = program.copy();
            changes.forEach(change -> bounded.row(rowOf(change, -bound, bound)));
            return bounded;
        }
    }

    /** The program with shares taken over the middle of what additions can hold: near the truth, and small. */
    Extended near(LinearProgram base) {
        return extended(base, Totals.MIDDLE, null);
    }

    /** The program with shares in their envelopes: its answer is a bound on every plan. */
    Extended relaxed(LinearProgram base) {
        return extended(base, Totals.RANGE, null);
    }

    /** The program with every addition at the total that given weights bring: its answer is a plan. */
    Extended at(LinearProgram base, double[] kg) {
        return extended(base, Totals.GIVEN, kg);
    }

    /** What the total of an addition is taken to be where it isn't fixed. */
    private enum Totals {
        MIDDLE,
        RANGE,
        GIVEN
    }

    private Extended extended(LinearProgram base, Totals totals, double @Nullable [] kg) {
        LinearProgram program = base.copy();
        Map<Long, Map<Integer, Term>> shares = new HashMap<>();
        List<List<Term>> changes = new ArrayList<>();
        for (Link link : links) {
            Map<Integer, Term> from = sharesOf(program, shares, link.fromGyle(), link.fromAddition(), totals, kg);
            Map<Integer, Term> to = sharesOf(program, shares, link.toGyle(), link.toAddition(), totals, kg);
            if (from.isEmpty() || to.isEmpty()) {
                continue;
            }
            TreeSet<Integer> lots = new TreeSet<>(from.keySet());
            lots.addAll(to.keySet());
            for (int lot : lots) {
                List<Term> terms = new ArrayList<>();
                Optional.ofNullable(to.get(lot)).ifPresent(terms::add);
                Optional.ofNullable(from.get(lot))
                        .ifPresent(term -> terms.add(new Term(term.column(), -term.factor())));
                changes.add(terms);
            }
        }
        return new Extended(program, changes);
    }

    /** A factor times a column. */
    record Term(int column, double factor) {}

    static Row rowOf(List<Term> terms, double least, double most) {
        return new Row(
                terms.stream().mapToInt(Term::column).toArray(),
                terms.stream().mapToDouble(Term::factor).toArray(),
                least,
                most);
    }

    /** Shares of the lots of an addition as terms by lot; none where it holds nothing, or may hold nothing in an envelope. */
    private Map<Integer, Term> sharesOf(
            LinearProgram program,
            Map<Long, Map<Integer, Term>> made,
            int g,
            int a,
            Totals totals,
            double @Nullable [] kg) {
        long key = ((long) g << 32) + a;
        Map<Integer, Term> known = made.get(key);
        if (known != null) {
            return known;
        }
        Range range = ranges.get(g).get(a);
        Map<Integer, Term> shares = new HashMap<>();
        List<Integer> columns = model.columnsOf(g, a);
        if (!range.fixed() && totals == Totals.RANGE) {
            if (range.least() > 0) {
                envelopes(program, columns, range, shares);
            }
            made.put(key, shares);
            return shares;
        }
        double total = (range.least() + range.most()) / 2;
        if (!range.fixed() && kg != null) {
            total = model.held(g, a, kg);
            List<Term> held = columns.stream()
                    .map(column -> new Term(column, model.uses().get(column).heldPerKg()))
                    .toList();
            program.row(rowOf(held, total, total));
        }
        if (total > SAME * range.most()) {
            for (int column : columns) {
                Use use = model.uses().get(column);
                shares.put(use.lot(), new Term(column, use.heldPerKg() / total));
            }
        }
        made.put(key, shares);
        return shares;
    }

    /** Columns for shares whose total isn't fixed: held = share · total, total in a range, in the four planes around it. */
    private void envelopes(LinearProgram program, List<Integer> columns, Range range, Map<Integer, Term> shares) {
        List<Term> sum = new ArrayList<>();
        for (int column : columns) {
            Use use = model.uses().get(column);
            int share = program.column(1);
            shares.put(use.lot(), new Term(share, 1));
            sum.add(new Term(share, 1));
            Term held = new Term(column, use.heldPerKg());
            program.row(rowOf(List.of(held, new Term(share, -range.least())), 0, Double.POSITIVE_INFINITY));
            program.row(rowOf(List.of(held, new Term(share, -range.most())), Double.NEGATIVE_INFINITY, 0));
            program.row(rowOf(
                    minusTotal(columns, column, new Term(share, -range.most())),
                    -range.most(),
                    Double.POSITIVE_INFINITY));
            program.row(rowOf(
                    minusTotal(columns, column, new Term(share, -range.least())),
                    Double.NEGATIVE_INFINITY,
                    -range.least()));
        }
        program.row(rowOf(sum, 1, 1));
    }

    /** What one lot brings less what all bring, with a further term. */
    private List<Term> minusTotal(List<Integer> columns, int one, Term further) {
        List<Term> terms = new ArrayList<>(List.of(further));
        for (int column : columns) {
            if (column != one) {
                terms.add(new Term(column, -model.uses().get(column).heldPerKg()));
            }
        }
        return terms;
    }

    /** The largest change of a plan's shares. */
    Optional<ShareChange> largest(double[] kg) {
        Optional<ShareChange> largest = Optional.empty();
        for (Link link : links) {
            double[] from = trueShares(link.fromGyle(), link.fromAddition(), kg);
            double[] to = trueShares(link.toGyle(), link.toAddition(), kg);
            for (int l = 0; l < from.length && to.length > 0; l++) {
                ShareChange change = new ShareChange(
                        model.gyle(link.fromGyle()).beer(),
                        model.addition(link.fromGyle(), link.fromAddition()).label(),
                        model.lot(l).id(),
                        model.gyle(link.fromGyle()).id(),
                        model.gyle(link.toGyle()).id(),
                        from[l],
                        to[l]);
                if (largest.isEmpty() || change.size() > largest.get().size()) {
                    largest = Optional.of(change);
                }
            }
        }
        return largest;
    }

    /** The shares of all lots in an addition; nothing where it holds nothing. */
    private double[] trueShares(int g, int a, double[] kg) {
        double total = model.held(g, a, kg);
        if (!(total > SAME * ranges.get(g).get(a).most())) {
            return new double[0];
        }
        double[] shares = new double[model.lots().size()];
        for (int column : model.columnsOf(g, a)) {
            Use use = model.uses().get(column);
            shares[use.lot()] += use.heldPerKg() * kg[column] / total;
        }
        return shares;
    }
}
