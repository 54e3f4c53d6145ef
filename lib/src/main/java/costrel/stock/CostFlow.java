package costrel.stock;

import java.math.BigDecimal;
import java.util.List;

/**
 * How a basis of cost parts what came in, before any rounding.
 *
 * @param issues what each issue costs, in the order of the ledger
 * @param closing what is left in store
 */
public record CostFlow(List<BigDecimal> issues, BigDecimal closing) {

    public CostFlow {
        issues = List.copyOf(issues);
    }
}
