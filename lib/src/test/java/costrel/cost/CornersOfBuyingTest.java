package costrel.cost;

import static costrel.cost.Given.A_420;
import static costrel.cost.Given.GBP;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.assertSays;
import static costrel.cost.Given.assertSilent;
import static costrel.cost.Given.container;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.made;
import static costrel.cost.Given.price;
import static costrel.cost.Given.uk;
import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.buying.Carriage;
import costrel.buying.ExchangeRates;
import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceAdjustment;
import costrel.buying.PriceList;
import costrel.buying.PriceRow;
import costrel.buying.PriceTerms;
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
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Lines that share carriage, contracts and breaks, at the corners; an invented brewery, every figure worked on paper. */
class CornersOfBuyingTest {
    private static final PackUnit KG = PackUnit.KILOGRAM;

    private static BillLine bill(BillGroup group, String item, String priced, double kg, String remark) {
        return new BillLine(group, item, List.of(priced), kg, KG, remark);
    }

    private static BillLine malt(String item, double kg) {
        return bill(BillGroup.MASHED_GOODS, item, item, kg, "");
    }

    /** 950 L in firkins: 23 of 40.91481 L. */
    private static CostSheet sheet(
            List<BillLine> bill,
            List<PriceRow> rows,
            PriceTerms terms,
            List<PackageItem> packages,
            CostOptions options) {
        return Coster.cost(
                new Batch(
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
                        bill,
                        List.of(new PackagingShare(container("firkin"), 1, 0)),
                        List.of()),
                PriceList.of(rows).with(terms),
                List.of(),
                packages,
                uk(),
                made(day("2026-11-10"), A_420),
                options);
    }

    private static CostSheet sheet(List<BillLine> bill, List<PriceRow> rows) {
        return sheet(bill, rows, PriceTerms.none(), List.of(), CostOptions.in(GBP));
    }

    private static PriceTerms carriages(Carriage... carriages) {
        return new PriceTerms(List.of(), List.of(carriages), ExchangeRates.none());
    }

    private static Carriage carriage(String amount, String pallet, PackUnit unit) {
        return new Carriage(
                "Ash",
                dec(amount),
                GBP,
                Optional.of(pallet).filter(text -> !text.isEmpty()).map(text -> new Pack(dec(text), unit)),
                day("2026-01-01"),
                Optional.empty(),
                "carriage.csv:2");
    }

    private static PriceRow contract(String supplier, String kg, String perKg) {
        return new PriceRow(
                "Pale malt",
                supplier,
                new Pack(dec("1"), KG),
                dec(perKg),
                GBP,
                day("2026-01-01"),
                Optional.empty(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                Optional.empty(),
                Optional.of(dec(kg)),
                "contract.csv:" + supplier);
    }

    private static List<String> gyle(CostSheet sheet) {
        return words(sheet.gyleLines());
    }

    private static List<String> words(List<CostLine> lines) {
        return lines.stream()
                .filter(line -> line.group() != CostGroup.LOSSES && line.group() != CostGroup.DUTY)
                .map(line -> line.item() + " " + line.value().getAmount())
                .toList();
    }

    private static final List<PriceRow> TWO_MALTS =
            List.of(price("Pale malt", "Ash", "25", KG, "18.00"), price("Crystal malt", "Ash", "25", KG, "24.00"));

    @Test
    void the_last_line_takes_the_penny_that_the_others_rounded_up() {
        // 100 kg at 0.72 and 75 kg at 0.96 are 72.00 each; half of 0.05 is 0.025, up to 0.03: 0.02 is left.
        CostSheet sheet = sheet(
                List.of(malt("Pale malt", 100), malt("Crystal malt", 75)),
                TWO_MALTS,
                carriages(carriage("0.05", "", KG)),
                List.of(),
                CostOptions.in(GBP));

        assertEquals(
                List.of(
                        "Pale malt 72.00",
                        "carriage on Pale malt 0.03",
                        "Crystal malt 72.00",
                        "carriage on Crystal malt 0.02"),
                gyle(sheet));
        assertSilent("no carriage per pallet", sheet.findings());
        assertEquals(
                "share by value of 0.05 GBP, carriage of an order",
                sheet.gyleLines().get(1).remark());
    }

    @Test
    void whichever_group_of_the_bill_is_written_first_the_lines_are_the_same() {
        List<PriceRow> rows = new ArrayList<>(TWO_MALTS);
        rows.add(price("Hop lot 7", "Ash", "1", KG, "72.00"));
        BillLine hops = bill(BillGroup.HOPS, "Hop lot 7", "Hop lot 7", 1, "");
        BillLine malt = malt("Pale malt", 100);
        for (List<BillLine> bill : List.of(List.of(hops, malt), List.of(malt, hops))) {
            assertEquals(
                    List.of(
                            "Pale malt 72.00",
                            "carriage on Pale malt 0.03",
                            "Hop lot 7 72.00",
                            "carriage on Hop lot 7 0.02"),
                    gyle(sheet(bill, rows, carriages(carriage("0.05", "", KG)), List.of(), CostOptions.in(GBP))));
        }
    }

    @Test
    void pallets_are_paid_for_by_what_stands_on_them() {
        List<PriceRow> rows = new ArrayList<>(TWO_MALTS);
        rows.add(price("Shive", "Ash", "1000", PackUnit.EACH, "110.00"));
        List<PackageItem> shives =
                List.of(new PackageItem("firkin", "Shive", BigDecimal.ONE, BigDecimal.ONE, PackUnit.EACH));

        // 100 kg are two pallets of 60 kg; 23 shives at 0.11 are 2.53, on one pallet of 5000.
        CostSheet both = sheet(
                List.of(malt("Pale malt", 100)),
                rows,
                carriages(carriage("10.00", "60", KG), carriage("3.00", "5000", PackUnit.EACH)),
                shives,
                CostOptions.in(GBP));
        assertEquals(List.of("Pale malt 72.00", "carriage on Pale malt 20.00"), gyle(both));
        assertEquals(
                List.of("Shive 2.53", "carriage on Shive 3.00"),
                words(both.containers().get(0).lines()));
        assertEquals(
                "share by value of 20.00 GBP, carriage of 2 pallets of 60 kg",
                both.gyleLines().get(1).remark());
        assertEquals(
                "share by value of 3.00 GBP, carriage of 1 pallet of 5000 each",
                both.containers().get(0).lines().get(1).remark());
        assertSilent("no carriage per pallet", both.findings());

        CostSheet malts = sheet(
                List.of(malt("Pale malt", 100)),
                rows,
                carriages(carriage("10.00", "60", KG)),
                shives,
                CostOptions.in(GBP));
        assertEquals(List.of("Pale malt 72.00", "carriage on Pale malt 20.00"), gyle(malts));
        assertEquals(List.of("Shive 2.53"), words(malts.containers().get(0).lines()));
        assertSays("Shive from Ash: no carriage per pallet is known for goods by each", malts.findings());
        assertSilent("Pale malt from Ash: no carriage", malts.findings());
    }

    @Test
    void two_lots_of_one_price_reach_its_break_together() {
        PriceRow small = price("Fuggle", "Hopyard", "1", KG, "15.00");
        PriceRow large = new PriceRow(
                "Fuggle",
                "Hopyard",
                new Pack(dec("1"), KG),
                dec("12.00"),
                GBP,
                day("2026-01-01"),
                Optional.empty(),
                dec("5"),
                BigDecimal.ZERO,
                "prices.csv:9");
        List<BillLine> lots = List.of(
                bill(BillGroup.HOPS, "Fuggle lot 7", "Fuggle", 3, ""),
                bill(BillGroup.HOPS, "Fuggle lot 8", "Fuggle", 2, ""));

        assertEquals(List.of("Fuggle lot 7 36.00", "Fuggle lot 8 24.00"), gyle(sheet(lots, List.of(small, large))));
        assertEquals(List.of("Fuggle lot 7 45.00"), gyle(sheet(lots.subList(0, 1), List.of(small, large))));
    }

    @Test
    void a_contract_that_is_drawn_empty_leaves_no_empty_line() {
        List<PriceRow> rows =
                List.of(contract("Maltster", "100", "0.60"), contract("Reeve", "100", "0.65"), TWO_MALTS.get(0));
        List<BillLine> bill = List.of(
                bill(BillGroup.MASHED_GOODS, "Pale, silo 1", "Pale malt", 100, ""),
                bill(BillGroup.MASHED_GOODS, "Pale, silo 2", "Pale malt", 150, "ground on the day"));
        CostSheet sheet = sheet(bill, rows);

        // 100 × 0.60; 100 × 0.65; 50 × 0.72.
        assertEquals(List.of("Pale, silo 1 60.00", "Pale, silo 2 65.00", "Pale, silo 2 36.00"), gyle(sheet));
        assertEquals(
                List.of(
                        "contract of 100 kg, 0 kg left after it",
                        "ground on the day; contract of 100 kg, 0 kg left after it",
                        "ground on the day; beyond the contract"),
                sheet.gyleLines().stream()
                        .filter(line -> line.group() == CostGroup.MASHED_GOODS)
                        .map(CostLine::remark)
                        .toList());
    }

    @Test
    void a_contract_at_the_price_of_the_day_is_not_above_it() {
        List<BillLine> bill = List.of(malt("Pale malt", 100));

        assertSilent(
                "is above today's",
                sheet(bill, List.of(contract("Maltster", "50", "0.72"), TWO_MALTS.get(0)))
                        .findings());
        assertSays(
                "is above today's",
                sheet(bill, List.of(contract("Maltster", "50", "0.721"), TWO_MALTS.get(0)))
                        .findings());
    }

    @Test
    void parts_of_a_container_are_drawn_from_a_contract_too() {
        PriceRow contracted = new PriceRow(
                "Shive",
                "Cooper",
                new Pack(dec("1"), PackUnit.EACH),
                dec("0.10"),
                GBP,
                day("2026-01-01"),
                Optional.empty(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                Optional.empty(),
                Optional.of(dec("20")),
                "contract.csv:2");
        CostSheet sheet = sheet(
                List.of(malt("Pale malt", 100)),
                List.of(TWO_MALTS.get(0), contracted, price("Shive", "Ash", "1", PackUnit.EACH, "0.20")),
                PriceTerms.none(),
                List.of(new PackageItem("FIRKIN", "Shive", BigDecimal.ONE, BigDecimal.ONE, PackUnit.EACH)),
                CostOptions.in(GBP));

        // 20 of 23 at 0.10, 3 at 0.20.
        assertEquals(
                List.of("Shive 2.00", "Shive 0.60"),
                words(sheet.containers().get(0).lines()));
    }

    @Test
    void equal_lines_are_one_with_the_remarks_of_both() {
        List<BillLine> bill = List.of(
                bill(BillGroup.MASHED_GOODS, "Pale malt", "Pale malt", 50, ""),
                bill(BillGroup.MASHED_GOODS, "Pale malt", "Pale malt", 25, "first mash"),
                bill(BillGroup.MASHED_GOODS, "Pale malt", "Pale malt", 12.5, "first mash"),
                bill(BillGroup.MASHED_GOODS, "Pale malt", "Pale malt", 12.5, ""),
                bill(BillGroup.MASHED_GOODS, "Pale malt", "Pale malt", 25, "second mash"));
        CostSheet sheet = sheet(bill, TWO_MALTS);

        assertEquals(List.of("Pale malt 90.00"), gyle(sheet)); // 125 kg at 0.72
        assertEquals("first mash; second mash", sheet.gyleLines().get(0).remark());
    }

    @Test
    void lines_of_one_name_that_differ_otherwise_stand_apart_and_nothing_of_nothing_is_a_line() {
        List<PriceRow> rows = new ArrayList<>(TWO_MALTS);
        rows.add(price("Caramalt", "Birch", "25", KG, "25.00"));
        List<BillLine> bill = List.of(
                bill(BillGroup.MASHED_GOODS, "Malt", "Pale malt", 50, ""),
                bill(BillGroup.MASHED_GOODS, "Malt", "Caramalt", 25, ""),
                bill(BillGroup.SUGARS, "Malt", "Pale malt", 25, ""),
                bill(BillGroup.MASHED_GOODS, "Malt", "Caramalt", 25, ""),
                malt("Crystal malt", 0));

        assertEquals(List.of("Malt 36.00", "Malt 50.00", "Malt 18.00"), gyle(sheet(bill, rows)));
    }

    @Test
    void what_was_done_to_a_price_stands_behind_the_remark() {
        PriceTerms surcharge = new PriceTerms(
                List.of(PriceAdjustment.percent(
                        "energy",
                        "Ash",
                        Optional.empty(),
                        dec("4"),
                        day("2026-01-01"),
                        Optional.empty(),
                        "terms.csv:2")),
                List.of(),
                ExchangeRates.none());
        CostSheet sheet = sheet(
                List.of(
                        bill(BillGroup.MASHED_GOODS, "Pale malt", "Pale malt", 100, "first mash"),
                        malt("Crystal malt", 25)),
                TWO_MALTS,
                surcharge,
                List.of(),
                CostOptions.in(GBP));

        assertEquals(List.of("Pale malt 74.88", "Crystal malt 24.96"), gyle(sheet)); // 72 and 24 × 1.04
        assertEquals(
                "first mash; energy: plus 4 % (terms.csv:2)",
                sheet.gyleLines().get(0).remark());
        assertEquals("energy: plus 4 % (terms.csv:2)", sheet.gyleLines().get(1).remark());
    }

    @Test
    void a_ledger_in_another_currency_is_refused_and_without_one_no_price_is_a_stand_in() {
        StockLedger euro = StockLedger.of(
                CurrencyUnit.EUR,
                List.of(new Movement.Receipt(
                        day("2026-09-01"), "Pale malt", dec("400"), "kg", Money.parse("EUR 240.00"), false, "s:2")));
        List<BillLine> bill = List.of(malt("Pale malt", 100));

        assertRefused(
                "the stock ledger is in EUR, the sheet is in GBP; keep it in GBP",
                () -> sheet(
                        bill,
                        TWO_MALTS,
                        PriceTerms.none(),
                        List.of(),
                        CostOptions.in(GBP).with(new StockBasis(euro, Valuation.FIFO))));
        assertEquals(List.of(), sheet(bill, TWO_MALTS).defaultsUsed());
    }

    @Test
    void quantities_and_discounts_that_cannot_be_are_refused() {
        assertRefused(
                "Pale malt: purchase quantity: expected more than 0, found 0",
                () -> new CostOptions(GBP, Map.of("Pale malt", BigDecimal.ZERO), true, Optional.empty()));
        assertRefused(
                "stated discount: expected 0 per litre of pure alcohol or more, found -1",
                () -> new CostOptions(GBP, Map.of(), true, Optional.of(dec("-1"))));
        assertRefused("Pale malt: amount: expected 0 kg or more, found -1.0", () -> malt("Pale malt", -1));
    }
}
