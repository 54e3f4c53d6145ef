package costrel.harvest;

import costrel.harvest.HarvestPlan.ShareChange;
import costrel.harvest.PlanModel.Use;
import costrel.harvest.ShareProgram.Sum;
import costrel.harvest.ShareProgram.Term;
import costrel.recipe.Holds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;

/**
 * Changes of blend from a gyle to the next of the same beer. A lot's share is the part of what an addition holds that it
 * brings: of its weight, its oil or its EBU. Weight and oil are fixed, so their shares are linear in the weights. The EBU of a
 * bittering addition moves with the alpha acid of the late hops and within the tolerance of the gyle. Where it isn't fixed, its
 * shares are taken to the first order around a plan to find a better one, and held in an envelope (McCormick 1976) that every
 * true share lies in to prove a bound.
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

        double middle() {
            return (least + most) / 2;
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

    /** The program with shares taken over the middle of what additions can hold: near the truth, and small. */
    ShareProgram near(LinearProgram base) {
        return withChanges(
                base.copy(), (g, a) -> overTotal(g, a, ranges.get(g).get(a).middle()));
    }

    /** The program with shares to the first order around given weights. */
    ShareProgram around(LinearProgram base, double[] kg) {
        return withChanges(base.copy(), (g, a) -> firstOrder(g, a, kg));
    }

    /** The program with every addition at the total that given weights bring: its answer is a plan. */
    ShareProgram at(LinearProgram base, double[] kg) {
        LinearProgram program = base.copy();
        return withChanges(program, (g, a) -> {
            double total = model.held(g, a, kg);
            if (!ranges.get(g).get(a).fixed()) {
                program.row(heldBy(g, a, 1).between(total, total));
            }
            return overTotal(g, a, total);
        });
    }

    /** The program with shares in their envelopes: its answer is a bound on every plan. */
    ShareProgram relaxed(LinearProgram base) {
        LinearProgram program = base.copy();
        return withChanges(program, (g, a) -> envelopes(program, g, a));
    }

    /**
     * The changes over all links. The shares of an addition are expressed once, by lot; there are none where it holds nothing,
     * and then it has no changes.
     */
    private ShareProgram withChanges(LinearProgram program, BiFunction<Integer, Integer, Map<Integer, Sum>> sharesOf) {
        Map<List<Integer>, Map<Integer, Sum>> shares = new HashMap<>();
        List<Sum> changes = new ArrayList<>();
        for (Link link : links) {
            Map<Integer, Sum> from = shares.computeIfAbsent(
                    List.of(link.fromGyle(), link.fromAddition()), key -> sharesOf.apply(key.get(0), key.get(1)));
            Map<Integer, Sum> to = shares.computeIfAbsent(
                    List.of(link.toGyle(), link.toAddition()), key -> sharesOf.apply(key.get(0), key.get(1)));
            if (!from.isEmpty() && !to.isEmpty()) {
                TreeSet<Integer> lots = new TreeSet<>(from.keySet());
                lots.addAll(to.keySet());
                lots.forEach(lot ->
                        changes.add(to.getOrDefault(lot, Sum.NOTHING).less(from.getOrDefault(lot, Sum.NOTHING))));
            }
        }
        return new ShareProgram(program, changes);
    }

    /** What the lots of an addition bring of what it holds, times a factor. */
    private Sum heldBy(int g, int a, double factor) {
        return new Sum(
                model.columnsOf(g, a).stream()
                        .map(column -> new Term(
                                column, factor * model.uses().get(column).heldPerKg()))
                        .toList(),
                0);
    }

    private Map<Integer, Sum> overTotal(int g, int a, double total) {
        Map<Integer, Sum> shares = new HashMap<>();
        if (total > SAME * ranges.get(g).get(a).most()) {
            for (int column : model.columnsOf(g, a)) {
                Use use = model.uses().get(column);
                shares.put(use.lot(), Sum.NOTHING.plus(column, use.heldPerKg() / total));
            }
        }
        return shares;
    }

    /** With a total t that is t₀ at the given weights: share = held/t ≈ held/t₀ − share₀ · t/t₀ + share₀. */
    private Map<Integer, Sum> firstOrder(int g, int a, double[] kg) {
        double total = model.held(g, a, kg);
        Map<Integer, Sum> shares = overTotal(g, a, total);
        if (!ranges.get(g).get(a).fixed()) {
            shares.replaceAll((lot, share) -> {
                double share0 = share.of(kg);
                return new Sum(share.terms(), share0).less(heldBy(g, a, share0 / total));
            });
        }
        return shares;
    }

    /** Columns for shares whose total isn't fixed: held = share · total, total in a range, in the four planes around it. */
    private Map<Integer, Sum> envelopes(LinearProgram program, int g, int a) {
        Range range = ranges.get(g).get(a);
        if (range.fixed()) {
            return overTotal(g, a, range.most());
        }
        Map<Integer, Sum> shares = new HashMap<>();
        if (!(range.least() > 0)) {
            return shares;
        }
        Sum all = Sum.NOTHING;
        Sum total = heldBy(g, a, 1);
        for (int column : model.columnsOf(g, a)) {
            Use use = model.uses().get(column);
            int share = program.column(1);
            shares.put(use.lot(), Sum.NOTHING.plus(share, 1));
            all = all.plus(share, 1);
            Sum held = Sum.NOTHING.plus(column, use.heldPerKg());
            double low = range.least();
            double high = range.most();
            program.row(held.plus(share, -low).between(0, Double.POSITIVE_INFINITY));
            program.row(held.plus(share, -high).between(Double.NEGATIVE_INFINITY, 0));
            program.row(held.less(total).plus(share, -high).between(-high, Double.POSITIVE_INFINITY));
            program.row(held.less(total).plus(share, -low).between(Double.NEGATIVE_INFINITY, -low));
        }
        program.row(all.between(1, 1));
        return shares;
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
