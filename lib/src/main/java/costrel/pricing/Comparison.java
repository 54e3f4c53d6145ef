package costrel.pricing;

import costrel.cost.ContainerCost;
import costrel.cost.CostSheet;
import costrel.figures.Figures;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.joda.money.CurrencyUnit;

/**
 * Why a pint of one cost sheet costs more or less than a pint of another: an exact decomposition of the difference by
 * {@linkplain #METHOD the Shapley value}. The cost of a pint is a sum of products (share of the pints × use × price × rate of
 * exchange × yield, and so for containers and duty), and each factor of each product bears its own part of the difference,
 * whatever the order of the lines. The two sheets change places, and every effect changes its sign.
 *
 * <p>What only one sheet has is an effect of usage; a container that only one has is one of mix. The mix is reckoned against
 * the mean cost of a pint: more beer in dear containers makes it dearer. The loss in filling is one of the yield, also where
 * another mix brought it about. Duty as charged, lines as printed and unrounded prices differ by less than a penny a line;
 * that has a line of its own.
 *
 * <p>Sources of the method: L. S. Shapley, "A value for n-person games", Annals of Mathematics Studies 28 (1953), 307–317;
 * J. W. Sun, "Changes in energy consumption and energy intensity: a complete decomposition model", Energy Economics 20 (1998),
 * 85–100; for two factors T. L. Bennet, "The theory of measurement of changes in cost of living", Journal of the Royal
 * Statistical Society 83 (1920), 455–462.
 *
 * @param before the sheet that is compared with
 * @param after the sheet whose cost is explained
 * @param effects every effect, in order; they sum to the difference of a pint
 */
public record Comparison(CostSheet before, CostSheet after, List<Moved> effects) {

    /** The method, to be shown with the result. */
    public static final String METHOD = "Shapley value over the factors of each line (Shapley 1953; Sun 1998);"
            + " with two factors the mean of both weights (Bennet 1920)";

    /** Far under any printed digit: what is left of a sum that is 0 but for the last digits of its quotients. */
    private static final BigDecimal NOTHING = new BigDecimal("1e-30");

    /**
     * One effect.
     *
     * @param effect which
     * @param perPint what it comes to, money per saleable pint, unrounded
     * @param lines what it is made of; none where nothing moved
     */
    public record Moved(Effect effect, BigDecimal perPint, List<Line> lines) {
        public Moved {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One line of an effect.
     *
     * @param part the part of the cost that it belongs to
     * @param item what it is
     * @param perPint what it comes to, money per saleable pint, unrounded
     */
    public record Line(String part, String item, BigDecimal perPint) {}

    private record LineKey(String part, String item) implements Comparable<LineKey> {
        @Override
        public int compareTo(LineKey other) {
            int byPart = part.compareTo(other.part);
            return byPart != 0 ? byPart : item.compareTo(other.item);
        }
    }

    public Comparison {
        effects = List.copyOf(effects);
    }

    /**
     * Compares two sheets, taking items for the same where they are called the same.
     *
     * @param before the sheet that is compared with
     * @param after the sheet whose cost is to be explained
     * @return the comparison
     * @throws IllegalArgumentException when the sheets are in two currencies
     */
    public static Comparison between(CostSheet before, CostSheet after) {
        return between(before, after, ComparisonOptions.plain());
    }

    /**
     * Compares two sheets.
     *
     * @param before the sheet that is compared with
     * @param after the sheet whose cost is to be explained
     * @param options what counts as the same, and how foreign money moved
     * @return the comparison
     * @throws IllegalArgumentException when the sheets are in two currencies
     */
    public static Comparison between(CostSheet before, CostSheet after, ComparisonOptions options) {
        Figures.same(
                "comparison", before.total().getCurrencyUnit(), after.total().getCurrencyUnit());
        Sums sums = new Sums();
        for (List<ComparedTerms.Factor> term : new ComparedTerms(before, after, options).terms()) {
            share(term, sums);
        }
        againstTheMean(before, after, sums);
        BigDecimal left = after.unroundedPerPint().subtract(before.unroundedPerPint());
        for (Effect effect : Effect.values()) {
            left = left.subtract(Pints.sum(List.copyOf(sums.of(effect).values())));
        }
        sums.add(Effect.ROUNDING, "rounding", "pennies of the lines and of the duty", left);

        List<Moved> effects = new ArrayList<>();
        for (Effect effect : Effect.values()) {
            effects.add(moved(effect, sums.of(effect)));
        }
        return new Comparison(before, after, effects);
    }

    /** What each effect's lines come to, in an order that doesn't hang on that of the sheets. */
    private static final class Sums {
        private final Map<Effect, Map<LineKey, BigDecimal>> byEffect = new EnumMap<>(Effect.class);

        Map<LineKey, BigDecimal> of(Effect effect) {
            return byEffect.computeIfAbsent(effect, none -> new TreeMap<>());
        }

        void add(Effect effect, String part, String item, BigDecimal amount) {
            of(effect).merge(new LineKey(part, item), amount, BigDecimal::add);
        }
    }

    private static void share(List<ComparedTerms.Factor> term, Sums sums) {
        List<BigDecimal> weights = ShapleyProduct.weights(
                term.stream().map(ComparedTerms.Factor::before).toList(),
                term.stream().map(ComparedTerms.Factor::after).toList());
        for (int i = 0; i < term.size(); i++) {
            for (ComparedTerms.Part part : term.get(i).parts()) {
                sums.add(
                        term.get(i).effect(),
                        part.part(),
                        part.item(),
                        weights.get(i).multiply(part.difference(), Pints.WORKING));
            }
        }
    }

    /** What one container gains in pints the others lose: reckoned against the mean pint, a line says if it is a dear one. */
    private static void againstTheMean(CostSheet before, CostSheet after, Sums sums) {
        BigDecimal mean =
                before.unroundedPerPint().add(after.unroundedPerPint()).divide(BigDecimal.valueOf(2), Pints.WORKING);
        Map<String, ContainerCost> first = ComparedTerms.containers(before);
        Map<String, ContainerCost> second = ComparedTerms.containers(after);
        Set<String> names = new TreeSet<>(first.keySet());
        names.addAll(second.keySet());
        for (String name : names) {
            ContainerCost was = first.get(name);
            ContainerCost is = second.get(name);
            BigDecimal gained = ComparedTerms.shareOfPints(after, is).subtract(ComparedTerms.shareOfPints(before, was));
            sums.add(
                    Effect.MIX,
                    ComparedTerms.CONTAINERS,
                    ComparedTerms.nameOf(was, is),
                    gained.multiply(mean, Pints.WORKING).negate());
        }
    }

    private static Moved moved(Effect effect, Map<LineKey, BigDecimal> sums) {
        List<Line> lines = sums.entrySet().stream()
                .filter(entry -> entry.getValue().abs().compareTo(NOTHING) > 0)
                .map(entry -> new Line(entry.getKey().part(), entry.getKey().item(), entry.getValue()))
                .toList();
        return new Moved(effect, Pints.sum(lines.stream().map(Line::perPint).toList()), lines);
    }

    /**
     * How the cost of a pint moved.
     *
     * @return after less before, money per saleable pint, unrounded
     */
    public BigDecimal perPint() {
        return after.unroundedPerPint().subtract(before.unroundedPerPint());
    }

    /**
     * What an effect comes to.
     *
     * @param effect the effect
     * @return it with its lines
     * @throws IllegalArgumentException when the comparison was made without it
     */
    public Moved of(Effect effect) {
        return effects.stream()
                .filter(moved -> moved.effect() == effect)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(effect.label() + ": expected it among the effects"));
    }

    /**
     * The comparison as printed, by the pint.
     *
     * @return pence (the currency's smallest unit) per pint, to two decimals
     */
    public ComparisonStatement pencePerPint() {
        return ComparisonStatement.of(
                "pence per pint",
                before.pencePerPint(),
                after.pencePerPint(),
                effects,
                BigDecimal.ONE.movePointRight(currency().getDecimalPlaces()));
    }

    /**
     * The comparison as printed, for so many pints of either.
     *
     * @param pints saleable pints, more than 0
     * @return money, to the penny
     */
    public ComparisonStatement forPints(BigDecimal pints) {
        Figures.overZero("pints", pints, "");
        int places = currency().getDecimalPlaces();
        return ComparisonStatement.of(
                currency() + " for " + Figures.plain(pints) + " pints",
                before.unroundedPerPint().multiply(pints).setScale(places, RoundingMode.HALF_UP),
                after.unroundedPerPint().multiply(pints).setScale(places, RoundingMode.HALF_UP),
                effects,
                pints);
    }

    private CurrencyUnit currency() {
        return after.total().getCurrencyUnit();
    }
}
