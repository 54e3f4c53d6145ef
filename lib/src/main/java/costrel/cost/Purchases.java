package costrel.cost;

import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a gyle buys: first everything that is wanted is gathered, then each thing is priced at the quantity that all its
 * lines take together. Faults are kept until the end, so that all missing prices are told at once.
 */
final class Purchases {

    /** A thing as price lists know it. */
    private record Thing(String foldedName, PackUnit unit) {}

    private final PriceList prices;
    private final LocalDate day;
    private final CostOptions options;
    private final Map<Thing, BigDecimal> wanted = new HashMap<>();
    private final Map<String, BigDecimal> boughtAtATime = new HashMap<>();
    private final List<String> faults = new ArrayList<>();
    private final Set<CostFinding> findings = new LinkedHashSet<>();

    Purchases(PriceList prices, LocalDate day, CostOptions options) {
        this.prices = prices;
        this.day = day;
        this.options = options;
        options.purchaseQuantities().forEach((item, quantity) -> boughtAtATime.put(Names.folded(item), quantity));
    }

    void want(List<String> names, BigDecimal quantity, PackUnit unit) {
        wanted.merge(thing(names, unit), quantity, BigDecimal::add);
    }

    /** The price of a thing that was wanted, or null where there is a fault, which is then kept. */
    @Nullable
    Choice price(List<String> names, PackUnit unit) {
        Thing thing = thing(names, unit);
        BigDecimal quantity =
                boughtAtATime.getOrDefault(thing.foldedName(), wanted.getOrDefault(thing, BigDecimal.ZERO));
        try {
            Choice choice = prices.choose(names, day, quantity, unit, options.currency());
            findings.addAll(choice.findings());
            return choice;
        } catch (NoPriceException none) {
            none.faults().stream().filter(fault -> !faults.contains(fault)).forEach(faults::add);
            return null;
        }
    }

    private Thing thing(List<String> names, PackUnit unit) {
        String known = names.stream()
                .filter(name -> !prices.rowsOf(name).isEmpty())
                .findFirst()
                .orElse(names.get(0));
        return new Thing(Names.folded(known), unit);
    }

    Set<CostFinding> findings() {
        return findings;
    }

    void refuseFaults() {
        if (!faults.isEmpty()) {
            throw new NoPriceException(faults);
        }
    }
}
