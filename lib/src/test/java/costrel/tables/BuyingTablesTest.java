package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.buying.Carriage;
import costrel.buying.ExchangeRate;
import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceAdjustment;
import costrel.buying.PriceRow;
import costrel.buying.PriceVat;
import costrel.stock.Movement;
import costrel.stock.StockLedger;
import costrel.stock.UnitCost;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What the tables of buying and of the store say, cell by cell. */
class BuyingTablesTest {

    private static final CurrencyUnit GBP = CurrencyUnit.GBP;

    @Test
    void a_price_says_what_of_its_tax_is_a_cost_and_what_is_contracted() {
        List<PriceRow> rows = PriceReader.read(table("""
                                item,supplier,pack,price,valid from,VAT,price with VAT,VAT recoverable,contract quantity
                                pale ale malt,Hollin,25 kg,£24.00,2026-02-01,20 %,yes,,10 t
                                wheat malt,Hollin,25 kg,£20.00,2026-02-01,20 %,,no,
                                rye malt,Hollin,25 kg,£20.00,2026-02-01,,no,yes,
                                """)).orThrow();
        assertEquals(
                Optional.of(new PriceVat(dec("20"), true, true)), rows.get(0).vat());
        assertEquals(0, dec("10000").compareTo(rows.get(0).contractQuantity().orElseThrow()));
        assertEquals("0.8", rows.get(0).landed().value().stripTrailingZeros().toPlainString(), "24 ÷ 1.2 ÷ 25");
        assertEquals(
                Optional.of(new PriceVat(dec("20"), false, false)), rows.get(1).vat());
        assertEquals("0.96", rows.get(1).landed().value().stripTrailingZeros().toPlainString(), "20 × 1.2 ÷ 25");
        assertEquals(Optional.empty(), rows.get(2).vat());
        assertEquals(Optional.empty(), rows.get(2).contractQuantity());
    }

    @Test
    void a_contract_stands_beside_the_price_without_one() {
        List<PriceRow> rows = PriceReader.read(table("""
                                item,supplier,pack,price,valid from,minimum quantity,contract quantity
                                pale ale malt,Hollin,25 kg,£20.00,2026-02-01,,
                                pale ale malt,Hollin,25 kg,£22.00,2026-02-01,,10 t
                                pale ale malt,Hollin,25 kg,£23.00,2026-02-01,1 t,5 t
                                """)).orThrow();
        assertEquals(3, rows.size(), "neither two prices that both apply nor a break out of order");
    }

    @Test
    void surcharges_are_by_the_share_or_by_the_unit_and_rebates_are_taken_off() {
        List<PriceAdjustment> adjustments = AdjustmentReader.read(table("""
                                name,supplier,item,kind,amount,valid from,valid until
                                energy,Hollin,,surcharge,4 %,2026-02-01,2026-08-31
                                energy,Hollin,,surcharge,£12.00/t,2026-09-01,
                                loyalty,Hollin,pale ale malt,Rebate,2.5 %,2026-02-01,
                                loyalty,Hollin,wheat malt,rebate,£0.05/each,2026-02-01,
                                """)).orThrow();
        PriceAdjustment energy = adjustments.get(0);
        assertEquals(0, dec("4").compareTo(energy.percent()));
        assertEquals(Optional.empty(), energy.item());
        assertEquals(Optional.of(LocalDate.of(2026, 8, 31)), energy.validUntil());
        assertEquals("t.csv:2", energy.origin());
        PriceAdjustment byWeight = adjustments.get(1);
        assertEquals(0, dec("0.012").compareTo(byWeight.perUnit()), "£12 a tonne is 1.2p a kilogram");
        assertEquals(Optional.of(PackUnit.KILOGRAM), byWeight.unit());
        assertEquals(Optional.of(GBP), byWeight.currency());
        assertEquals(0, dec("-2.5").compareTo(adjustments.get(2).percent()));
        assertEquals(Optional.of("pale ale malt"), adjustments.get(2).item());
        assertEquals(0, dec("-0.05").compareTo(adjustments.get(3).perUnit()));
        assertEquals(Optional.of(PackUnit.EACH), adjustments.get(3).unit());
    }

    @Test
    void carriage_is_by_the_order_or_by_the_pallet() {
        List<Carriage> carriages = CarriageReader.read(table("""
                                supplier,amount,pallet,valid from,valid until,currency
                                Hollin,45.00,,2026-02-01,,GBP
                                Hollin,€62.50,1 t,2026-02-01,2026-08-31,
                                """)).orThrow();
        assertEquals(Optional.empty(), carriages.get(0).pallet());
        assertEquals(GBP, carriages.get(0).currency());
        Pack pallet = carriages.get(1).pallet().orElseThrow();
        assertEquals(0, dec("1000").compareTo(pallet.content()));
        assertEquals(PackUnit.KILOGRAM, pallet.unit());
        assertEquals(CurrencyUnit.EUR, carriages.get(1).currency());
    }

    @Test
    void both_ways_of_a_pair_may_be_quoted_on_one_day() {
        List<ExchangeRate> rates = ExchangeRateReader.read(table("""
                                from,to,date,rate
                                EUR,GBP,2026-02-02,0.8642
                                GBP,EUR,2026-02-02,1.1571
                                """)).orThrow();
        assertEquals(
                new ExchangeRate(CurrencyUnit.EUR, GBP, LocalDate.of(2026, 2, 2), dec("0.8642"), "t.csv:2"),
                rates.get(0));
        assertEquals(GBP, rates.get(1).from());
    }

    @Test
    void a_ledger_counts_in_the_units_of_packs_whatever_its_cells_are_in() {
        List<Movement> rows = StockReader.read(table("""
                                date,item,kind,quantity,cost
                                2026-02-01,pale ale malt,opening,0.5 t,£400
                                2026-02-03,pale ale malt,receipt,500 kg,£425.00
                                2026-02-04,Pale ale malt,issue,600 kg,
                                """)).orThrow();
        assertEquals(
                new Movement.Issue(LocalDate.of(2026, 2, 4), "Pale ale malt", dec("600"), "kg", "t.csv:4"),
                rows.get(2));
        Movement.Receipt opening = (Movement.Receipt) rows.get(0);
        assertTrue(opening.opening());
        assertEquals(0, dec("500").compareTo(opening.quantity()));
        assertEquals(Money.of(GBP, dec("400.00")), opening.cost());
        assertFalse(((Movement.Receipt) rows.get(1)).opening());
        StockLedger ledger = StockReader.ledger(GBP, rows).orThrow();
        assertEquals(List.of("pale ale malt"), ledger.items());
    }

    @Test
    void a_ledger_in_several_files_says_which_row_of_which_file_is_short() {
        List<Movement> rows = new java.util.ArrayList<>(
                StockReader.read(CsvSource.text("stock: store.csv", """
                                date,item,kind,quantity,cost
                                2026-02-01,pale ale malt,opening,500 kg,£400
                                """)).orThrow());
        rows.addAll(StockReader.read(CsvSource.text("stock: 2.csv", """
                                date,item,kind,quantity
                                2026-02-04,pale ale malt,issue,400 kg
                                2026-01-04,pale ale malt,issue,1 kg
                                """)).orThrow());
        List<TableProblem> problems = StockReader.ledger(GBP, rows).problems();
        assertEquals(
                List.of(
                        "stock: 2.csv:3: quantity: pale ale malt: 1 kg issued on 2026-01-04, 0 kg there: short of 1 kg"),
                problems.stream().map(TableProblem::text).toList(),
                "by their days, not by the order of the rows");
    }

    @Test
    void standard_costs_are_by_the_unit_that_the_ledger_counts_in() {
        StockLedger ledger =
                StockReader.ledger(GBP, StockReader.read(table("""
                                date,item,kind,quantity,cost
                                2026-02-01,pale ale malt,opening,500 kg,£400
                                2026-02-01,crown,opening,500 each,£6
                                """)).orThrow()).orThrow();
        String rows = """
                item,from,cost
                Pale Ale Malt,2026-02-01,£620/t
                crown,2026-02-01,£0.012/%s
                """;
        List<UnitCost> costs = StandardCostReader.read(
                        table(rows.formatted("each")), Optional.of(GBP), Optional.of(ledger))
                .orThrow();
        assertEquals(0, dec("0.62").compareTo(costs.get(0).cost()));
        assertEquals(LocalDate.of(2026, 2, 1), costs.get(0).from());
        List<TableProblem> problems = StandardCostReader.read(
                        table(rows.formatted("kg")), Optional.of(GBP), Optional.of(ledger))
                .problems();
        assertEquals(
                List.of("t.csv:3: cost: expected a cost by the each as the stock ledger counts it, found '£0.012/kg'"),
                problems.stream().map(TableProblem::text).toList());
    }

    private static BigDecimal dec(String number) {
        return new BigDecimal(number);
    }

    private static CsvSource table(String text) {
        return CsvSource.text("t.csv", text);
    }
}
