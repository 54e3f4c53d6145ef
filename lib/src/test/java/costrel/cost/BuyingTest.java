package costrel.cost;

import static costrel.cost.Given.A_420;
import static costrel.cost.Given.GBP;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.assertSays;
import static costrel.cost.Given.cell;
import static costrel.cost.Given.container;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.figure;
import static costrel.cost.Given.made;
import static costrel.cost.Given.price;
import static costrel.cost.Given.uk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.buying.Carriage;
import costrel.buying.ExchangeRate;
import costrel.buying.ExchangeRates;
import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.PriceRow;
import costrel.buying.PriceTerms;
import costrel.duty.DutyTables;
import costrel.duty.ProductionYears;
import costrel.packaging.PackagingShare;
import costrel.stock.Movement;
import costrel.stock.StockLedger;
import costrel.stock.Valuation;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** A small gyle of an invented brewery: what it buys, what comes with it, what it draws from store; worked on paper. */
class BuyingTest {

    private static Batch batch() {
        return new Batch(
                "Sheepwash Bitter",
                day("2026-11-10"),
                day("2026-11-25"),
                day("2026-11-25"),
                1000,
                950,
                180,
                OptionalDouble.empty(),
                Gravity.of(1.040),
                Gravity.of(1.008),
                Optional.of(dec("4.2")),
                List.of(
                        bill(BillGroup.MASHED_GOODS, "Pale malt", 100),
                        bill(BillGroup.MASHED_GOODS, "Crystal malt", 50),
                        bill(BillGroup.HOPS, "Hop lot 7", 1)),
                List.of(new PackagingShare(container("firkin"), 1, 0)),
                List.of());
    }

    private static BillLine bill(BillGroup group, String item, double kg) {
        return new BillLine(group, item, List.of(item), kg, PackUnit.KILOGRAM, "");
    }

    private static List<PriceRow> rows() {
        return List.of(
                price("Pale malt", "Ash", "25", PackUnit.KILOGRAM, "18.00"),
                price("Crystal malt", "Ash", "25", PackUnit.KILOGRAM, "24.00"),
                price("Hop lot 7", "Hopyard", "1", PackUnit.KILOGRAM, "15.00"));
    }

    private static PriceRow contract(String kg, String price, String origin) {
        return new PriceRow(
                "Pale malt",
                "Maltster",
                new Pack(dec("1000"), PackUnit.KILOGRAM),
                dec(price),
                GBP,
                day("2026-01-01"),
                Optional.of(day("2026-12-31")),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                Optional.empty(),
                Optional.of(dec(kg)),
                origin);
    }

    private static CostSheet sheet(PriceList prices, CostOptions options) {
        return Coster.cost(batch(), prices, List.of(), List.of(), uk(), made(day("2026-11-10"), A_420), options);
    }

    private static CostSheet sheet(List<Carriage> carriages, CostOptions options) {
        return sheet(PriceList.of(rows()).with(new PriceTerms(List.of(), carriages, ExchangeRates.none())), options);
    }

    private static Carriage carriage(String supplier, String amount, Optional<Pack> pallet) {
        return new Carriage(
                supplier, dec(amount), GBP, pallet, day("2026-01-01"), Optional.empty(), "carriage.csv:" + supplier);
    }

    private static List<String> materials(CostSheet sheet) {
        List<String> lines = new ArrayList<>();
        sheet.gyleLines().stream()
                .filter(line -> line.group() != CostGroup.LOSSES)
                .forEach(line -> lines.add(line.item() + " " + line.value().getAmount()));
        return lines;
    }

    @Test
    void carriage_of_an_order_is_shared_by_value_and_the_last_line_takes_what_is_left() {
        CostSheet sheet = sheet(List.of(carriage("ASH", "25.00", Optional.empty())), CostOptions.in(GBP));

        // 72.00 and 48.00 of 120.00: 25 × 0.6 and the rest; the hops come from another.
        assertEquals(
                List.of(
                        "Pale malt 72.00",
                        "carriage on Pale malt 15.00",
                        "Crystal malt 48.00",
                        "carriage on Crystal malt 10.00",
                        "Hop lot 7 15.00"),
                materials(sheet));
        assertEquals(Money.parse("GBP 160.00"), sheet.gyleCost());
    }

    @Test
    void a_penny_that_cannot_be_shared_goes_to_the_last_line() {
        // 0.03 × 72 / 120 = 0.018.
        assertEquals(
                List.of("0.02", "0.01"),
                sheet(List.of(carriage("Ash", "0.03", Optional.empty())), CostOptions.in(GBP)).gyleLines().stream()
                        .filter(line -> line.item().startsWith("carriage"))
                        .map(line -> line.value().getAmount().toPlainString())
                        .toList());
    }

    @Test
    void goods_in_two_orders_pay_carriage_twice() {
        CostSheet sheet = sheet(
                List.of(carriage("Ash", "25.00", Optional.empty())),
                CostOptions.in(GBP).withOrders(Map.of("crystal MALT", "second lorry")));

        assertEquals(
                List.of(
                        "Pale malt 72.00",
                        "carriage on Pale malt 25.00",
                        "Crystal malt 48.00",
                        "carriage on Crystal malt 25.00",
                        "Hop lot 7 15.00"),
                materials(sheet));
    }

    @Test
    void an_order_for_more_than_this_gyle_leaves_its_carriage_to_the_rest() {
        // 1000 kg of pale malt are ordered, a tenth is used: ordered 720 + 48 = 768, used 120; 25 × 120 / 768 =
        // 3.90625.
        CostSheet sheet = sheet(
                List.of(carriage("Ash", "25.00", Optional.empty())),
                new CostOptions(GBP, Map.of("Pale malt", dec("1000")), true, Optional.empty()));

        assertEquals(
                List.of(
                        "Pale malt 72.00",
                        "carriage on Pale malt 2.35",
                        "Crystal malt 48.00",
                        "carriage on Crystal malt 1.56",
                        "Hop lot 7 15.00"),
                materials(sheet));
    }

    @Test
    void every_pallet_that_is_begun_is_charged() {
        Pack pallet = new Pack(dec("75"), PackUnit.KILOGRAM);
        // 150 kg are two pallets of 75 kg; with 74 kg they would be three.
        assertTrue(materials(sheet(List.of(carriage("Ash", "10.00", Optional.of(pallet))), CostOptions.in(GBP)))
                .contains("carriage on Crystal malt 8.00"));
        Pack smaller = new Pack(dec("74"), PackUnit.KILOGRAM);
        assertTrue(materials(sheet(List.of(carriage("Ash", "10.00", Optional.of(smaller))), CostOptions.in(GBP)))
                .contains("carriage on Crystal malt 12.00"));
    }

    @Test
    void goods_that_go_on_no_known_pallet_are_told_and_two_charges_at_once_are_refused() {
        Pack bottles = new Pack(dec("1200"), PackUnit.EACH);
        assertSays(
                "no carriage per pallet is known for goods by kg",
                sheet(List.of(carriage("Ash", "10.00", Optional.of(bottles))), CostOptions.in(GBP))
                        .findings());
        Carriage order = carriage("Ash", "10.00", Optional.empty());
        assertRefused(
                "two charges for carriage that both apply", () -> sheet(List.of(order, order), CostOptions.in(GBP)));
    }

    @Test
    void a_contract_is_drawn_down_before_anything_is_bought_at_today_s_price() {
        List<PriceRow> rows = new ArrayList<>(rows());
        rows.add(contract("60", "650.00", "contract.csv:2"));
        CostSheet sheet = sheet(PriceList.of(rows), CostOptions.in(GBP));

        // 60 × 0.65 and 40 × 0.72.
        assertEquals(
                List.of("Pale malt 39.00", "Pale malt 28.80", "Crystal malt 48.00", "Hop lot 7 15.00"),
                materials(sheet));
        assertEquals(
                "contract of 60 kg, 0 kg left after it",
                sheet.gyleLines().get(0).remark());
        assertEquals("contract.csv:2", sheet.gyleLines().get(0).origin());
        assertEquals("beyond the contract", sheet.gyleLines().get(1).remark());
    }

    @Test
    void contracts_follow_one_another_and_one_that_is_dear_is_drawn_all_the_same() {
        List<PriceRow> rows = new ArrayList<>(rows());
        rows.add(contract("30", "650.00", "contract.csv:2"));
        rows.add(new PriceRow(
                "Pale malt",
                "Maltster",
                new Pack(dec("500"), PackUnit.KILOGRAM),
                dec("400.00"),
                GBP,
                day("2026-01-01"),
                Optional.empty(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                Optional.empty(),
                Optional.of(dec("50")),
                "contract.csv:3"));
        CostSheet sheet = sheet(PriceList.of(rows), CostOptions.in(GBP));

        // 30 × 0.65, 50 × 0.80, 20 × 0.72.
        assertEquals(
                List.of(
                        "Pale malt 19.50",
                        "Pale malt 40.00",
                        "Pale malt 14.40",
                        "Crystal malt 48.00",
                        "Hop lot 7 15.00"),
                materials(sheet));
        assertSays("the contract price (contract.csv:3) is above today's", sheet.findings());
    }

    @Test
    void beyond_a_contract_with_no_price_of_the_day_is_refused() {
        List<PriceRow> rows = new ArrayList<>(rows().subList(1, 3));
        rows.add(contract("60", "650.00", "contract.csv:2"));

        assertRefused(
                "beyond what is contracted no price applies on 2026-11-25",
                () -> sheet(PriceList.of(rows), CostOptions.in(GBP)));
        rows.set(2, contract("100", "650.00", "contract.csv:2"));
        assertTrue(materials(sheet(PriceList.of(rows), CostOptions.in(GBP))).contains("Pale malt 65.00"));
        assertRefused("contract quantity: expected more than 0", () -> contract("0", "1", "contract.csv:2"));
    }

    private static StockLedger store(String kg) {
        return StockLedger.of(
                GBP,
                List.of(
                        new Movement.Receipt(
                                day("2026-09-01"),
                                "Pale malt",
                                dec("40"),
                                "kg",
                                Money.parse("GBP 24.00"),
                                false,
                                "s:2"),
                        new Movement.Receipt(
                                day("2026-10-01"),
                                "Pale malt",
                                dec(kg),
                                "kg",
                                Money.parse("GBP 80.00"),
                                false,
                                "s:3")));
    }

    @Test
    void a_gyle_is_costed_by_what_its_malt_cost_in_store() {
        // FIFO: 40 kg for 24.00 and 60 of 100 kg for 80.00, so 72.00; average: 104.00 × 100 / 140 = 74.2857.
        CostSheet fifo =
                sheet(PriceList.of(rows()), CostOptions.in(GBP).with(new StockBasis(store("100"), Valuation.FIFO)));
        CostSheet average = sheet(
                PriceList.of(rows()),
                CostOptions.in(GBP).with(new StockBasis(store("100"), Valuation.AVERAGE_PERPETUAL)));

        assertEquals(List.of("Pale malt 72.00", "Crystal malt 48.00", "Hop lot 7 15.00"), materials(fifo));
        assertEquals("purchase FIFO", fifo.gyleLines().get(0).remark());
        assertTrue(materials(average).contains("Pale malt 74.29"));
        assertTrue(fifo.defaultsUsed().contains("Crystal malt: not in the stock ledger, the price of the day taken"));
    }

    @Test
    void a_gyle_that_takes_more_than_is_in_store_is_refused() {
        assertRefused(
                "100 kg issued on 2026-11-25, 90 kg there: short of 10 kg",
                () -> sheet(
                        PriceList.of(rows()), CostOptions.in(GBP).with(new StockBasis(store("50"), Valuation.FIFO))));
    }

    @Test
    void casks_that_do_not_come_back_and_fees_by_weight_are_lines_and_are_missed_where_left_out() {
        ContainerCharges charges = new ContainerCharges(
                List.of(new ContainerCharges.TripLoss(
                        "firkin",
                        Money.parse("GBP 60.00"),
                        dec("0.02"),
                        day("2026-01-01"),
                        Optional.empty(),
                        "losses.csv:2")),
                List.of(new ContainerCharges.PackageWeight("firkin", "plastic", dec("0.012"), BigDecimal.ONE)),
                List.of(new ContainerCharges.PackagingFee(
                        "plastic",
                        dec("423"),
                        GBP,
                        day("2025-04-01"),
                        Optional.of(day("2026-03-31")),
                        "base fees of 2025-26")));
        CostSheet sheet = sheet(PriceList.of(rows()), CostOptions.in(GBP).with(charges));

        // 23 firkins at 2 % of 60.00.
        assertEquals(
                Money.parse("GBP 27.60"),
                sheet.containers().get(0).lines().stream()
                        .filter(line -> line.item().equals("loss of firkin on the trip"))
                        .findFirst()
                        .orElseThrow()
                        .value());
        assertTrue(sheet.leftOut()
                .contains("packaging fee on plastic of firkin: none is known for 2026-11-25; there is one for "
                        + "2025-04-01 to 2026-03-31; supply it by the tonne"));
        CostSheet without = sheet(PriceList.of(rows()), CostOptions.in(GBP));
        assertTrue(without.leftOut().contains("loss of firkin on trips: no share lost is given"));
        assertTrue(without.leftOut().contains("packaging fees on firkin: no weights given"));
    }

    /** Defra and PackUK, base fees of 2025-26 as the trade press reported them: glass at £192 a tonne. */
    @Test
    void a_fee_by_weight_is_kilograms_times_the_fee_of_a_tonne() {
        ContainerCharges charges = new ContainerCharges(
                List.of(),
                List.of(
                        new ContainerCharges.PackageWeight("500 mL bottle", "glass", dec("0.1"), BigDecimal.ONE),
                        new ContainerCharges.PackageWeight("500 mL bottle", "Glass", dec("0.6"), dec("12"))),
                ReferenceTable.read("ingredient-tables/packaging-fees.csv").stream()
                        .map(row -> new ContainerCharges.PackagingFee(
                                cell(row, "material"),
                                figure(row, "fee"),
                                GBP,
                                day(cell(row, "valid from")),
                                Optional.of(day(cell(row, "valid until"))),
                                cell(row, "source")))
                        .toList());

        List<CostLine> lines =
                charges.lines(container("500 mL bottle"), 1000, day("2026-03-31"), GBP, new ArrayList<>());

        // 100 g and a twelfth of 600 g are 150 g; 150 kg at 0.192.
        assertEquals(Money.parse("GBP 28.80"), lines.get(0).value());
        assertEquals(0, dec("150").compareTo(lines.get(0).amount()));
    }

    @Test
    void a_loss_beyond_the_normal_is_expensed_and_not_in_the_pint() {
        // 135.00 for 10 hL, 9.5 racked; 2 % lost is normal, so 9.8 hL carry 135.00 and 0.3 hL are 4.1327.
        CostSheet sheet = sheet(PriceList.of(rows()), CostOptions.in(GBP).withNormalLoss(dec("0.02")));
        CostLine expensed = sheet.gyleLines().stream()
                .filter(line -> line.item().equals("abnormal loss, expensed"))
                .findFirst()
                .orElseThrow();

        assertEquals(Money.parse("GBP -4.13"), expensed.value());
        assertEquals(Money.parse("GBP 130.87"), sheet.gyleCost());
        assertEquals(
                Money.parse("GBP 135.00"),
                sheet(PriceList.of(rows()), CostOptions.in(GBP).withNormalLoss(dec("0.05")))
                        .gyleCost());
        assertRefused(
                "normal loss: expected a share under 1",
                () -> CostOptions.in(GBP).withNormalLoss(BigDecimal.ONE));
    }

    @Test
    void a_gyle_is_costed_in_another_country_and_its_money() {
        PriceTerms euro = new PriceTerms(
                List.of(),
                List.of(),
                new ExchangeRates(
                        List.of(new ExchangeRate(
                                GBP, CurrencyUnit.EUR, day("2026-11-24"), dec("1.25"), "exchange.csv:2")),
                        OptionalInt.of(3)));
        CostSheet sheet = Coster.cost(
                batch(),
                PriceList.of(rows()).with(euro),
                List.of(),
                List.of(),
                DutyTables.shipped("Germany"),
                ProductionYears.unknown(),
                CostOptions.in(CurrencyUnit.EUR));

        // 72.00, 48.00 and 15.00 at 1.25. 1.040 is 9.99 degrees Plato, so 9: 23 × 0.4091 hL × 7.08 = 66.6178.
        assertEquals(Money.parse("EUR 168.75"), sheet.gyleCost());
        CostLine duty = sheet.containers().get(0).lines().get(0);
        assertEquals("beer duty at 9 °P", duty.item());
        assertEquals(Money.parse("EUR 66.61"), duty.value());
        assertEquals(0, dec("9.4093").compareTo(duty.amount()));
        assertEquals(Money.parse("EUR 235.36"), sheet.total());
        assertTrue(sheet.explanation().text().contains("rounded down to 2 decimals"));
    }
}
