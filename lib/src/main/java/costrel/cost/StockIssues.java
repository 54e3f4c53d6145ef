package costrel.cost;

import costrel.buying.PackUnit;
import costrel.buying.UnitPrice;
import costrel.figures.Figures;
import costrel.stock.IssueCost;
import costrel.stock.Movement;
import costrel.stock.StockLedger;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a gyle takes out of store: first everything is gathered, then the ledger is valued once. */
final class StockIssues {
    private final Optional<StockBasis> basis;
    private final Batch batch;
    private final List<Movement.Issue> issues = new ArrayList<>();
    private final IdentityHashMap<Movement.Issue, IssueCost> costs = new IdentityHashMap<>(0);

    StockIssues(CostOptions options, Batch batch) {
        this.basis = options.stock();
        this.batch = batch;
        basis.ifPresent(stock -> {
            if (!stock.ledger().currency().equals(options.currency())) {
                throw new IllegalArgumentException("the stock ledger is in "
                        + stock.ledger().currency() + ", the sheet is in " + options.currency()
                        + "; keep it in " + options.currency());
            }
        });
    }

    boolean given() {
        return basis.isPresent();
    }

    /** An issue of the first of the names that the ledger holds; null where it holds none of them. */
    Movement.@Nullable Issue want(List<String> names, BigDecimal amount, PackUnit unit) {
        if (basis.isEmpty()) {
            return null;
        }
        StockLedger ledger = basis.get().ledger();
        for (String name : names) {
            if (!ledger.movementsOf(name).isEmpty()) {
                Movement.Issue issue = new Movement.Issue(
                        batch.costedOn(), name, amount, unit.label(), batch.beer() + " brewed on " + batch.brewedOn());
                issues.add(issue);
                return issue;
            }
        }
        return null;
    }

    /** Values what was wanted. */
    void value() {
        if (issues.isEmpty()) {
            return;
        }
        StockBasis stock = basis.orElseThrow();
        StockLedger after = stock.ledger().with(issues);
        issues.stream()
                .map(Movement.Issue::item)
                .distinct()
                .flatMap(item -> after.value(item, stock.valuation()).issues().stream())
                .forEach(cost -> costs.put(cost.issue(), cost));
    }

    CostLine line(CostGroup group, String item, Movement.Issue issue, String remark) {
        IssueCost cost = Objects.requireNonNull(costs.get(issue));
        String by = basis.orElseThrow().valuation().label()
                + (cost.residue().isZero() ? "" : ", with " + Figures.text(cost.residue()) + " of roundings");
        return new CostLine(
                group,
                item,
                issue.quantity(),
                issue.unit(),
                Optional.of(new UnitPrice(cost.unrounded(), issue.quantity(), issue.unit())),
                "",
                "stock ledger",
                cost.value(),
                Optional.empty(),
                false,
                remark.isEmpty() ? by : remark + "; " + by,
                List.of());
    }
}
