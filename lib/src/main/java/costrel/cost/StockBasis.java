package costrel.cost;

import costrel.stock.StockLedger;
import costrel.stock.Valuation;

/**
 * Costs a gyle by what its materials cost in store, in place of today's price lists. What the ledger doesn't name is
 * still costed by the lists, and the sheet says so.
 *
 * @param ledger receipts and issues up to the day of the sheet, the gyle's own issues not among them
 * @param valuation the basis of cost
 */
public record StockBasis(StockLedger ledger, Valuation valuation) {}
