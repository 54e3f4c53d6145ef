package costrel.pricing;

import costrel.cost.ContainerCost;
import costrel.cost.CostGroup;
import costrel.cost.CostSheet;
import costrel.cost.YieldChain;
import costrel.duty.DutyFigure;
import costrel.packaging.Container;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The cost of a pint of two sheets as sums of products with the same factors. For each container and line of the gyle:
 * the container's share of the pints × amount per litre collected × unit price × rate of exchange × the steps of the yield
 * chain; for its own lines and its duty the amount or the duty per litre in full containers.
 */
final class ComparedTerms {
    private static final BigDecimal PERCENT = BigDecimal.valueOf(100);

    /** The part of the cost that lines of the mix belong to. */
    static final String CONTAINERS = "containers";

    /** A part of a factor's difference, and the line that it is shown in. */
    record Part(String part, String item, BigDecimal difference) {}

    /** A factor of a product, before and after; its parts sum to its difference. */
    record Factor(Effect effect, BigDecimal before, BigDecimal after, List<Part> parts) {
        static Factor of(Effect effect, String part, String item, BigDecimal before, BigDecimal after) {
            return new Factor(effect, before, after, List.of(new Part(part, item, after.subtract(before))));
        }
    }

    private final CostSheet before;
    private final CostSheet after;
    private final ComparisonOptions options;
    private final List<List<Factor>> terms = new ArrayList<>();

    ComparedTerms(CostSheet before, CostSheet after, ComparisonOptions options) {
        this.before = before;
        this.after = after;
        this.options = options;
        Map<String, ContainerCost> first = containers(before);
        Map<String, ContainerCost> second = containers(after);
        Set<String> names = new TreeSet<>(first.keySet());
        names.addAll(second.keySet());
        for (String name : names) {
            container(first.get(name), second.get(name));
        }
    }

    /** The products, in an order that doesn't hang on that of the lines. */
    List<List<Factor>> terms() {
        return terms;
    }

    /** The container types of a sheet with what a pint takes of them. */
    static Map<String, ContainerCost> containers(CostSheet sheet) {
        Map<String, ContainerCost> byName = new TreeMap<>();
        sheet.containers()
                .forEach(container -> byName.put(
                        ComparisonOptions.folded(container.container().name()), container));
        return byName;
    }

    static BigDecimal shareOfPints(CostSheet sheet, @Nullable ContainerCost container) {
        return container == null
                ? BigDecimal.ZERO
                : saleableL(container).divide(sheet.yieldChain().saleableL(), Pints.WORKING);
    }

    /** The line that a container's part of the mix stands in. */
    static String nameOf(@Nullable ContainerCost first, @Nullable ContainerCost second) {
        return present(second != null ? second : first).container().name();
    }

    private static BigDecimal packagedL(ContainerCost container) {
        return container.filled().packagedL();
    }

    private static BigDecimal saleableL(ContainerCost container) {
        return packagedL(container).subtract(container.filled().sedimentL());
    }

    private void container(@Nullable ContainerCost first, @Nullable ContainerCost second) {
        // A container that one sheet lacks has no pints there; all else about it is taken as it is on the other.
        ContainerCost was = first != null ? first : present(second);
        ContainerCost is = second != null ? second : was;
        String name = is.container().name();
        Factor mix =
                Factor.of(Effect.MIX, "containers", name, shareOfPints(before, first), shareOfPints(after, second));
        Factor sediment = Factor.of(Effect.YIELD, "losses", "sediment", pintsWorth(was), pintsWorth(is));
        for (List<Factor> line : lines(
                new ComparedLines(before.gyleLines(), item -> item),
                new ComparedLines(after.gyleLines(), options::nameBefore),
                before.yieldChain().collectedL(),
                after.yieldChain().collectedL(),
                "")) {
            List<Factor> term = new ArrayList<>(List.of(mix, sediment));
            term.addAll(yieldSteps());
            term.addAll(line);
            terms.add(term);
        }
        for (List<Factor> line : lines(
                new ComparedLines(was.lines(), item -> item),
                new ComparedLines(is.lines(), first != null && second != null ? options::nameBefore : item -> item),
                packagedL(was),
                packagedL(is),
                ", " + name)) {
            List<Factor> term = new ArrayList<>(List.of(mix, sediment));
            term.addAll(line);
            terms.add(term);
        }
        List<Factor> duty = new ArrayList<>(List.of(mix, sediment));
        duty.addAll(duty(was, is, name));
        terms.add(duty);
    }

    private static ContainerCost present(@Nullable ContainerCost container) {
        if (container == null) {
            throw new IllegalArgumentException("container: expected it on one of two sheets");
        }
        return container;
    }

    /** Litres in full containers for one pint that can be sold. */
    private static BigDecimal pintsWorth(ContainerCost container) {
        return packagedL(container).multiply(Container.PINT_L).divide(saleableL(container), Pints.WORKING);
    }

    private List<Factor> yieldSteps() {
        List<YieldChain.Step> was = before.yieldChain().steps();
        List<YieldChain.Step> is = after.yieldChain().steps();
        List<Factor> factors = new ArrayList<>();
        // The last step is sediment, which each container has its own of.
        for (int i = 1; i < was.size() - 1; i++) {
            factors.add(
                    Factor.of(Effect.YIELD, "losses", is.get(i).lostIn(), perLitreLeft(was, i), perLitreLeft(is, i)));
        }
        return factors;
    }

    private static BigDecimal perLitreLeft(List<YieldChain.Step> steps, int step) {
        return steps.get(step - 1).litres().divide(steps.get(step).litres(), Pints.WORKING);
    }

    private List<List<Factor>> lines(
            ComparedLines was, ComparedLines is, BigDecimal litresBefore, BigDecimal litresAfter, String of) {
        Set<ComparedLines.Key> keys = new TreeSet<>(was.byKey().keySet());
        keys.addAll(is.byKey().keySet());
        List<List<Factor>> products = new ArrayList<>();
        for (ComparedLines.Key key : keys) {
            ComparedLines.Used first = was.byKey().get(key);
            ComparedLines.Used second = is.byKey().get(key);
            products.add(line(key.group(), first, second, litresBefore, litresAfter, of));
        }
        return products;
    }

    private List<Factor> line(
            CostGroup group,
            ComparedLines.@Nullable Used first,
            ComparedLines.@Nullable Used second,
            BigDecimal litresBefore,
            BigDecimal litresAfter,
            String of) {
        ComparedLines.Used shown = second != null ? second : first;
        if (shown == null) {
            throw new IllegalArgumentException("line: expected it on one of two sheets");
        }
        String item = shown.item() + of;
        String part = group.label();
        Optional<CurrencyMove> move = options.currencyOf(shown.item());
        // What one sheet lacks is a matter of usage alone: its price and its currency are taken as they are on the
        // other.
        BigDecimal exchangeAfter = move.map(second != null ? CurrencyMove::after : CurrencyMove::before)
                .orElse(BigDecimal.ONE);
        BigDecimal exchangeBefore = move.map(first != null ? CurrencyMove::before : CurrencyMove::after)
                .orElse(BigDecimal.ONE);
        BigDecimal priceBefore = (first != null ? first : shown).unitPrice().divide(exchangeBefore, Pints.WORKING);
        BigDecimal priceAfter = (second != null ? second : shown).unitPrice().divide(exchangeAfter, Pints.WORKING);
        return List.of(
                Factor.of(Effect.USAGE, part, item, perLitre(first, litresBefore), perLitre(second, litresAfter)),
                Factor.of(Effect.PRICE, part, item, priceBefore, priceAfter),
                Factor.of(Effect.EXCHANGE_RATE, part, item, exchangeBefore, exchangeAfter));
    }

    private static BigDecimal perLitre(ComparedLines.@Nullable Used used, BigDecimal litres) {
        return used == null ? BigDecimal.ZERO : used.amount().divide(litres, Pints.WORKING);
    }

    private static List<Factor> duty(ContainerCost was, ContainerCost is, String name) {
        DutyFigure first = was.duty();
        DutyFigure second = is.duty();
        if (!byStrength(first) || !byStrength(second)) {
            return List.of(Factor.of(
                    Effect.DUTY,
                    "duty",
                    "duty, " + name,
                    first.unrounded().divide(packagedL(was), Pints.WORKING),
                    second.unrounded().divide(packagedL(is), Pints.WORKING)));
        }
        BigDecimal rates = second.rate().ratePerLpa().subtract(first.rate().ratePerLpa());
        BigDecimal payable = second.payableRate().subtract(first.payableRate());
        return List.of(
                Factor.of(
                        Effect.DUTY,
                        "duty",
                        "litres charged, " + name,
                        first.dutiableL().divide(packagedL(was), Pints.WORKING),
                        second.dutiableL().divide(packagedL(is), Pints.WORKING)),
                Factor.of(
                        Effect.DUTY,
                        "duty",
                        "strength, " + name,
                        first.strength().divide(PERCENT),
                        second.strength().divide(PERCENT)),
                new Factor(
                        Effect.DUTY,
                        first.payableRate(),
                        second.payableRate(),
                        List.of(
                                new Part("duty", "rate of duty, " + name, rates),
                                new Part("duty", "small producer's discount, " + name, payable.subtract(rates)))));
    }

    /** Whether the duty is litres × strength × rate, as where it goes by pure alcohol. */
    private static boolean byStrength(DutyFigure duty) {
        return duty.dutiableL()
                        .multiply(duty.strength())
                        .movePointLeft(2)
                        .multiply(duty.payableRate())
                        .compareTo(duty.unrounded())
                == 0;
    }
}
