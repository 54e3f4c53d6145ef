package costrel.harvest;

import costrel.hops.HopVariety;
import costrel.recipe.Names;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Varieties near to one that is gone, ranked by published figures. A suggestion for a brewer to decide on: the built-in tables hold no
 * flavour, and nothing is ever put into a recipe by itself.
 *
 * <p>How near a figure is: the smaller of the two range middles over the larger, so 1 for equal ones and 0.5 where one is twice
 * the other. Where the ranges overlap, half of what is missing from 1 is given back. The nearness of a variety is the mean of alpha acid, oil
 * and cohumulone; a figure that is unknown counts as 0. Where the brewery states a flavour group
 * for both, it counts as a fourth figure: 1 for the same group, 0 for another. The weights are a rule of ours, common practice, no source.
 */
public final class Substitutes {

    private static final String ALPHA = "alpha acid";
    private static final String OIL = "oil";
    private static final String COHUMULONE = "cohumulone";

    private Substitutes() {}

    /**
     * A variety that may stand in for the one that is gone.
     *
     * @param variety the variety
     * @param nearness 0 to 1, 1 for the same figures
     * @param reason the figures in words, and what was not compared
     * @param kgFactor what a weight is multiplied by for the same alpha acid: mean of the one that is gone over mean of this one;
     *     the range middle stands in for a mean that isn't published; empty where either is unknown or 0
     * @param unknown which of alpha acid, oil and cohumulone could not be compared
     */
    public record Suggestion(
            String variety, double nearness, String reason, OptionalDouble kgFactor, List<String> unknown) {
        public Suggestion {
            unknown = List.copyOf(unknown);
        }
    }

    /** A published figure of a variety. */
    private record Range(String what, OptionalDouble low, OptionalDouble high, OptionalDouble mean) {

        /** Both ends are published. */
        boolean whole() {
            return low.isPresent() && high.isPresent();
        }

        /** Middle of the range, or the mean where a range isn't published. */
        OptionalDouble middle() {
            return whole() ? OptionalDouble.of((low.getAsDouble() + high.getAsDouble()) / 2) : mean;
        }

        boolean overlaps(Range other) {
            return whole()
                    && other.whole()
                    && low.getAsDouble() <= other.high.getAsDouble()
                    && other.low.getAsDouble() <= high.getAsDouble();
        }

        /** The range as printed, a single figure once. */
        String words() {
            if (!whole()) {
                return shown(mean.getAsDouble()) + unit();
            }
            String from = shown(low.getAsDouble());
            String to = shown(high.getAsDouble());
            return (from.equals(to) ? from : from + " to " + to) + unit();
        }

        private String shown(double figure) {
            return what.equals(OIL) ? Figures.fixed(figure, 2) : Figures.fixed(figure * 100, 1);
        }

        private String unit() {
            return what.equals(OIL) ? " mL/100 g" : " %";
        }
    }

    /**
     * Ranks varieties by how near they are to one that is gone.
     *
     * @param gone the variety that is gone
     * @param others varieties to choose from; the one that is gone is passed over
     * @return the nearest first, equal ones by name
     */
    public static List<Suggestion> rank(HopVariety gone, Collection<HopVariety> others) {
        return others.stream()
                .filter(other -> !Names.folded(other.name()).equals(Names.folded(gone.name())))
                .map(other -> suggestion(gone, other))
                .sorted(Comparator.comparingDouble(Suggestion::nearness)
                        .reversed()
                        .thenComparing(Suggestion::variety))
                .toList();
    }

    private static Suggestion suggestion(HopVariety gone, HopVariety other) {
        List<Range> wanted = ranges(gone);
        List<Range> offered = ranges(other);
        List<String> reasons = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        double sum = 0;
        for (int i = 0; i < wanted.size(); i++) {
            Range from = wanted.get(i);
            Range to = offered.get(i);
            if (from.middle().isEmpty() || to.middle().isEmpty()) {
                unknown.add(from.what());
                continue;
            }
            sum += near(from, to);
            reasons.add(from.what() + " " + to.words() + " for " + from.words()
                    + (from.overlaps(to) ? ", ranges overlap" : ""));
        }
        if (!unknown.isEmpty()) {
            reasons.add("no figure to compare for " + String.join(" and ", unknown));
        }
        int compared = wanted.size();
        if (gone.character().isBlank() || other.character().isBlank()) {
            reasons.add("flavour is not in the tables and not compared: rub and smell, and brew a trial gyle");
        } else {
            compared++;
            boolean same = Names.folded(gone.character()).equals(Names.folded(other.character()));
            sum += same ? 1 : 0;
            reasons.add(
                    same
                            ? "both " + gone.character() + " as you state them"
                            : other.character() + " for " + gone.character() + " as you state them");
        }
        return new Suggestion(
                other.name(),
                sum / compared,
                String.join("; ", reasons),
                kgFactor(wanted.get(0), offered.get(0)),
                unknown);
    }

    private static double near(Range from, Range to) {
        double a = from.middle().getAsDouble();
        double b = to.middle().getAsDouble();
        double larger = Math.max(a, b);
        double distance = larger == 0 ? 0 : Math.abs(a - b) / larger;
        return 1 - (from.overlaps(to) ? distance / 2 : distance);
    }

    private static OptionalDouble kgFactor(Range gone, Range other) {
        OptionalDouble from = gone.mean().isPresent() ? gone.mean() : gone.middle();
        OptionalDouble to = other.mean().isPresent() ? other.mean() : other.middle();
        boolean known = from.isPresent() && to.isPresent() && from.getAsDouble() > 0 && to.getAsDouble() > 0;
        return known ? OptionalDouble.of(from.getAsDouble() / to.getAsDouble()) : OptionalDouble.empty();
    }

    private static List<Range> ranges(HopVariety variety) {
        return List.of(
                new Range(ALPHA, variety.alphaLow(), variety.alphaHigh(), variety.alphaMean()),
                new Range(OIL, variety.oilLow(), variety.oilHigh(), OptionalDouble.empty()),
                new Range(COHUMULONE, variety.cohumuloneLow(), variety.cohumuloneHigh(), OptionalDouble.empty()));
    }
}
