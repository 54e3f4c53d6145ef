package costrel.cost;

import static costrel.cost.Given.A_420;
import static costrel.cost.Given.GBP;
import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.assertSays;
import static costrel.cost.Given.container;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.made;
import static costrel.cost.Given.price;
import static costrel.cost.Given.rate;
import static costrel.cost.Given.uk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.buying.NoPriceException;
import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.PriceRow;
import costrel.packaging.PackagingShare;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** One small gyle of an invented brewery, worked with pencil and paper; duty by the tables of Finance Act 2026. */
class CosterTest {
    private static final LocalDate BREWED = day("2026-11-10");
    private static final LocalDate DUTY = day("2026-11-25");

    private static BillLine bill(BillGroup group, String item, double kg) {
        return new BillLine(group, item, List.of(item), kg, PackUnit.KILOGRAM, "");
    }

    private static List<BillLine> bill() {
        return List.of(
                bill(BillGroup.HOPS, "Hop lot 7", 0.75),
                bill(BillGroup.MASHED_GOODS, "Pale malt", 172.5),
                bill(BillGroup.MASHED_GOODS, "Crystal malt", 7.5),
                bill(BillGroup.HOPS, "Hop lot 7", 0.5),
                bill(BillGroup.YEAST, "Yeast", 0.5));
    }

    private static List<PackagingShare> ninetyTen() {
        return List.of(
                new PackagingShare(container("firkin"), 0.9, 0),
                new PackagingShare(container("500 mL bottle"), 0.1, 0.01));
    }

    private static Batch batch(List<BillLine> bill, List<PackagingShare> packaging) {
        return new Batch(
                "Sheepwash Bitter",
                BREWED,
                DUTY,
                DUTY,
                1000,
                950,
                180,
                OptionalDouble.of(10),
                Gravity.of(1.040),
                Gravity.of(1.008),
                Optional.of(dec("4.2")),
                bill,
                packaging,
                List.of("barley"));
    }

    private static List<PriceRow> priceRows() {
        return List.of(
                price("Pale malt", "Ash", "25", PackUnit.KILOGRAM, "18.40"),
                price("Crystal malt", "Ash", "25", PackUnit.KILOGRAM, "24.10"),
                price("Hop lot 7", "Hopyard", "1", PackUnit.KILOGRAM, "14.99"),
                price("Yeast", "Birch", "0.5", PackUnit.KILOGRAM, "96.00"),
                price("Shive", "Cedar", "1000", PackUnit.EACH, "110.00"),
                price("Keystone", "Cedar", "1000", PackUnit.EACH, "60.00"),
                price("Bottle", "Glassworks", "1000", PackUnit.EACH, "230.00"),
                price("Crown", "Cedar", "1000", PackUnit.EACH, "9.50"),
                price("Carton", "Cedar", "1", PackUnit.EACH, "0.84"));
    }

    private static List<Rate> rates() {
        return List.of(
                rate("gas", RateGroup.ENERGY, "3.15", RateBasis.PER_HL_COLLECTED),
                rate("brewers", RateGroup.LABOUR, "140", RateBasis.PER_GYLE),
                rate("rent", RateGroup.OVERHEAD, "6.25", RateBasis.PER_HL_RACKED),
                rate("tank", RateGroup.CLEANING, "0", RateBasis.PER_TANK_DAY),
                rate("spent grain", RateGroup.CREDIT, "0.015", RateBasis.PER_KG_OF_GRIST),
                rate("cask washing", RateGroup.PACKAGING, "1.35", RateBasis.PER_CASK));
    }

    private static List<PackageItem> packages() {
        return List.of(
                each("firkin", "Shive"),
                each("firkin", "Keystone"),
                each("500 mL bottle", "Bottle"),
                each("500 mL bottle", "Crown"),
                new PackageItem("500 mL bottle", "Carton", BigDecimal.ONE, dec("12"), PackUnit.EACH));
    }

    private static PackageItem each(String container, String item) {
        return new PackageItem(container, item, BigDecimal.ONE, BigDecimal.ONE, PackUnit.EACH);
    }

    private static CostSheet sheet(List<BillLine> bill, List<PackagingShare> packaging) {
        return sheet(bill, packaging, CostOptions.in(GBP));
    }

    private static CostSheet sheet(List<BillLine> bill, List<PackagingShare> packaging, CostOptions options) {
        return Coster.cost(
                batch(bill, packaging),
                PriceList.of(priceRows()),
                rates(),
                packages(),
                uk(),
                made(BREWED, A_420),
                options);
    }

    private static String values(List<CostLine> lines) {
        List<String> values = new ArrayList<>();
        lines.forEach(line -> values.add(line.item() + " " + line.value().getAmount()));
        return String.join(", ", values);
    }

    @Test
    void the_lines_before_packaging_are_as_worked_on_paper() {
        CostSheet sheet = sheet(bill(), ninetyTen());

        // 172.5 × 18.40/25 · 7.5 × 24.10/25 · 1.25 × 14.99 = 18.7375 · 0.5 × 96/0.5 · 10 × 3.15 · 140 · 9.5 × 6.25 =
        // 59.375
        assertEquals(
                "Pale malt 126.96, Crystal malt 7.23, Hop lot 7 18.74, Yeast 96.00, gas 31.50, tank 0.00, brewers 140.00, "
                        + "rent 59.38, FV, tank and dry hops 0.00, filling 0.00, left after the smallest container 0.00, "
                        + "spent grain -2.70",
                values(sheet.gyleLines()));
        assertEquals(Money.parse("GBP 477.11"), sheet.gyleCost());
    }

    @Test
    void nine_tenths_cask_and_one_tenth_bottle_are_as_worked_on_paper() {
        CostSheet sheet = sheet(bill(), ninetyTen());
        ContainerCost cask = sheet.containers().get(0);
        ContainerCost bottle = sheet.containers().get(1);

        // 855 L fill 20 firkins and leave 36.7038 L; 95 × 0.99 + 36.7038 = 130.7538 L fill 261 bottles, 0.2538 L is
        // left.
        assertEquals(20, cask.count());
        assertEquals(261, bottle.count());
        assertFigure("0.2538", sheet.yieldChain().leftL());
        // 0.9 × 477.11 = 429.399; the rest to the last.
        assertEquals(Money.parse("GBP 429.40"), cask.gyleShare());
        assertEquals(Money.parse("GBP 47.71"), bottle.gyleShare());
        // Duty: 20 × 40.91 × 0.042 × (19.45 − 7.43) = 413.060088; 130.5 × 0.042 × (22.58 − 8.62) = 76.51476.
        assertEquals("Shive 2.20, Keystone 1.20, cask washing 27.00, beer duty at 4.2 % 413.06", values(cask.lines()));
        assertEquals("Bottle 60.03, Crown 2.48, Carton 18.27, beer duty at 4.2 % 76.51", values(bottle.lines()));
        assertEquals(Money.parse("GBP 872.86"), cask.total());
        assertEquals(Money.parse("GBP 205.00"), bottle.total());
        // 872.86 / 20 = 43.643; / 72 pints = 0.606153; 205.00 × 0.56826125 / 130.5 = 0.892671.
        assertFigure("43.643", cask.unroundedPerContainer());
        assertEquals(Money.parse("GBP 43.64"), cask.perContainer());
        assertFigure("60.62", cask.pencePerPint());
        assertFigure("89.27", bottle.pencePerPint());
        // 1077.86 × 0.56826125 / (818.2962 + 130.5) = 0.645561.
        assertEquals(Money.parse("GBP 1077.86"), sheet.total());
        assertFigure("64.56", sheet.pencePerPint());
    }

    @Test
    void the_pint_that_is_sold_bears_the_pint_that_never_is() {
        CostSheet sheet = sheet(bill(), ninetyTen(), CostOptions.in(GBP).withUnsold(dec("0.02")));
        YieldChain.Step last = sheet.yieldChain().steps().get(5);
        // 948.7962 L can be sold: 18.975924 L never are; 1077.86 × 0.56826125 / 929.820276 = 0.658736.
        assertEquals("sold", last.label());
        assertFigure("929.820276", last.litres());
        assertFigure("18.975924", last.lossL());
        assertFigure("64.56", sheet.pencePerPint());
        assertFigure("65.87", CostSheet.pence(sheet.unroundedPerPintSold(), GBP));
        assertRefused(
                "unsold: expected a share under 1", () -> CostOptions.in(GBP).withUnsold(BigDecimal.ONE));
    }

    @Test
    void what_is_lost_has_its_worth_beside_and_nothing_in_the_sum() {
        List<CostLine> lost = sheet(bill(), ninetyTen()).gyleLines().stream()
                .filter(line -> line.group() == CostGroup.LOSSES)
                .toList();

        // 477.11 × 50/1000 = 23.8555; × 0.95/950 = 0.47711; × 0.2538/950 = 0.12746.
        assertEquals(
                List.of("GBP 23.86", "GBP 0.48", "GBP 0.13"),
                lost.stream()
                        .map(line -> line.beside().orElseThrow().toString())
                        .toList());
        lost.forEach(line -> assertTrue(line.value().isZero()));
    }

    @Test
    void the_yield_runs_from_collected_to_saleable_without_a_gap() {
        CostSheet sheet = sheet(bill(), List.of(new PackagingShare(container("firkin", "1.70"), 1, 0)));
        List<YieldChain.Step> steps = sheet.yieldChain().steps();

        assertEquals(
                List.of("collected", "racked", "filled", "packaged", "saleable"),
                steps.stream().map(YieldChain.Step::label).toList());
        for (int i = 1; i < steps.size(); i++) {
            assertEquals(
                    0,
                    steps.get(i - 1)
                            .litres()
                            .subtract(steps.get(i).lossL())
                            .compareTo(steps.get(i).litres()),
                    steps.get(i).label());
        }
        // 23 firkins of 40.91481 − 1.70 L.
        assertFigure("901.94063", steps.get(4).litres());
    }

    @Test
    void a_line_shows_its_price_its_supplier_and_its_row() {
        CostLine malt = sheet(bill(), ninetyTen()).gyleLines().get(0);

        assertEquals("Ash", malt.supplier());
        assertEquals("prices.csv:Pale malt", malt.origin());
        assertFigure("172.5", malt.amount());
        assertFigure("0.736", malt.unitPrice().orElseThrow().value());
    }

    @Test
    void the_order_of_the_bill_changes_no_total() {
        List<BillLine> turned = new ArrayList<>(bill());
        Collections.reverse(turned);

        assertEquals(
                sheet(bill(), ninetyTen()).total(), sheet(turned, ninetyTen()).total());
    }

    @Test
    void all_missing_prices_are_told_at_once() {
        List<BillLine> bill = new ArrayList<>(bill());
        bill.add(bill(BillGroup.SUGARS, "Invert sugar", 5));
        bill.add(bill(BillGroup.PRIMINGS, "Glucose", 1));

        NoPriceException none = assertThrows(NoPriceException.class, () -> sheet(bill, ninetyTen()));

        assertEquals(2, none.faults().size(), none.faults().toString());
        assertTrue(none.faults().get(0).startsWith("Invert sugar: no price list names it"));
        assertTrue(none.faults().get(1).startsWith("Glucose: no price list names it"));
    }

    @Test
    void parts_that_were_not_given_are_named() {
        CostSheet sheet = Coster.cost(
                batch(bill(), ninetyTen()),
                PriceList.of(priceRows()),
                List.of(new Rate(
                        "gas",
                        RateGroup.ENERGY,
                        dec("3"),
                        GBP,
                        RateBasis.PER_GYLE,
                        false,
                        day("2025-01-01"),
                        Optional.of(day("2025-12-31")),
                        "rates.csv:2")),
                packages().subList(0, 2),
                uk(),
                made(BREWED, A_420),
                CostOptions.in(GBP));

        assertTrue(
                sheet.leftOut().contains("labour: no rate given"),
                sheet.leftOut().toString());
        assertTrue(
                sheet.leftOut().contains("credit: no rate given"),
                sheet.leftOut().toString());
        assertTrue(
                sheet.leftOut()
                        .contains("energy: no rate applies on 2026-11-25; rates.csv:2 holds 2025-01-01 to 2025-12-31"),
                sheet.leftOut().toString());
        assertTrue(
                sheet.leftOut().contains("packaging of 500 mL bottle: no items given"),
                sheet.leftOut().toString());
        assertTrue(
                sheet.leftOut().contains("process aids: none on the bill of materials"),
                sheet.leftOut().toString());
    }

    @Test
    void every_sheet_carries_its_cautions() {
        CostSheet sheet = sheet(bill(), ninetyTen());

        assertSays("not a duty return or tax advice", sheet.cautions());
        assertSays("HM Revenue & Customs", sheet.cautions());
        assertSays("rates in force from 2026-02-01", sheet.cautions());
        assertSays("420 hL", sheet.cautions());
        assertSays("firkin: costed as draught", sheet.cautions());
        assertSays("500 mL bottle: costed as not draught", sheet.cautions());
        assertSays("allergens to declare: barley", sheet.cautions());
        assertSays("no sediment is taken off", sheet.cautions());
        assertSays("within 0.5 of the measured strength", sheet.cautions());
    }

    @Test
    void a_break_goes_by_what_the_whole_gyle_takes_or_by_what_is_bought() {
        List<PriceRow> rows = new ArrayList<>(priceRows());
        rows.add(new PriceRow(
                "Hop lot 7",
                "Hopyard",
                new Pack(BigDecimal.ONE, PackUnit.KILOGRAM),
                dec("10.00"),
                GBP,
                day("2026-01-01"),
                Optional.empty(),
                dec("1.25"),
                BigDecimal.ZERO,
                "prices.csv:20"));
        rows.add(new PriceRow(
                "Yeast",
                "Birch",
                new Pack(dec("0.5"), PackUnit.KILOGRAM),
                dec("90.00"),
                GBP,
                day("2026-01-01"),
                Optional.empty(),
                dec("2"),
                BigDecimal.ZERO,
                "prices.csv:21"));

        CostSheet sheet = Coster.cost(
                batch(bill(), ninetyTen()),
                PriceList.of(rows),
                rates(),
                packages(),
                uk(),
                made(BREWED, A_420),
                new CostOptions(GBP, Map.of("yeast", dec("2")), true, Optional.empty()));

        // Two additions of 0.75 and 0.5 kg meet the minimum of 1.25 kg together.
        assertEquals(Money.parse("GBP 12.50"), sheet.sumOf(CostGroup.HOPS));
        assertEquals(Money.parse("GBP 90.00"), sheet.sumOf(CostGroup.YEAST));
    }

    @Test
    void a_container_that_is_not_filled_passes_its_share_on_with_its_beer() {
        CostSheet sheet = sheet(
                bill(),
                List.of(
                        new PackagingShare(container("kilderkin"), 0.05, 0),
                        new PackagingShare(container("firkin"), 0.95, 0)));

        assertEquals(1, sheet.containers().size());
        assertEquals("firkin", sheet.containers().get(0).container().name());
        assertEquals(sheet.gyleCost(), sheet.containers().get(0).gyleShare());
        assertSays("kilderkin: 47.5 L fills not one", sheet.findings());
    }

    @Test
    void rates_by_the_container_are_borne_by_its_kind_or_by_all() {
        List<Rate> rates = List.of(
                rate("handling", RateGroup.LABOUR, "0.50", RateBasis.PER_CONTAINER),
                rate("filling line", RateGroup.ENERGY, "0.01", RateBasis.PER_BOTTLE),
                rate("cask washing", RateGroup.PACKAGING, "1.35", RateBasis.PER_CASK));

        CostSheet sheet = Coster.cost(
                batch(bill(), ninetyTen()),
                PriceList.of(priceRows()),
                rates,
                List.of(),
                uk(),
                made(BREWED, A_420),
                CostOptions.in(GBP));

        assertTrue(
                sheet.gyleLines().stream()
                        .allMatch(line -> line.origin().startsWith("prices.csv")
                                || line.origin().isEmpty()),
                "no rate by the container among the gyle's lines");
        assertEquals(
                "handling 10.00, cask washing 27.00, beer duty at 4.2 % 413.06",
                values(sheet.containers().get(0).lines()));
        assertEquals(
                "handling 130.50, filling line 2.61, beer duty at 4.2 % 76.51",
                values(sheet.containers().get(1).lines()));
    }

    @Test
    void rates_and_prices_are_those_of_the_day_of_the_sheet() {
        Rate before = new Rate(
                "rent",
                RateGroup.OVERHEAD,
                dec("100"),
                GBP,
                RateBasis.PER_GYLE,
                true,
                day("2026-01-01"),
                Optional.of(day("2026-11-24")),
                "rates.csv:2");
        Rate after = new Rate(
                "rent",
                RateGroup.OVERHEAD,
                dec("120"),
                GBP,
                RateBasis.PER_GYLE,
                true,
                day("2026-11-25"),
                Optional.empty(),
                "rates.csv:3");

        CostSheet sheet = Coster.cost(
                batch(bill(), ninetyTen()),
                PriceList.of(priceRows()),
                List.of(before, after),
                packages(),
                uk(),
                made(BREWED, A_420),
                CostOptions.in(GBP));

        assertEquals(Money.parse("GBP 120.00"), sheet.sumOf(CostGroup.OVERHEAD));
        assertTrue(sheet.lines().stream().anyMatch(CostLine::fixed));
    }

    /** Regulation (EU) No 1169/2011 Annex XII; 1040 to 1008 is 32 × 0.129 = 4.128 by HMRC Notice 226 para 30.3. */
    @Test
    void a_label_far_from_the_expected_strength_is_told() {
        Given.assertSilent("from the expected", declaring("4.6").findings());
        assertSays(
                "the declared 4.7 % is more than 0.5 from the expected 4.13 %",
                declaring("4.7").findings());
        assertSays(
                "the declared 5.6 % is more than 1 from the expected 4.13 %",
                declaring("5.6").findings());
    }

    private static CostSheet declaring(String strength) {
        Batch b = batch(bill(), ninetyTen());
        return Coster.cost(
                new Batch(
                        b.beer(),
                        BREWED,
                        DUTY,
                        DUTY,
                        b.collectedL(),
                        b.rackedL(),
                        b.gristKg(),
                        b.tankDays(),
                        b.og(),
                        b.pg(),
                        Optional.of(dec(strength)),
                        b.bill(),
                        b.packaging(),
                        b.allergens()),
                PriceList.of(priceRows()),
                rates(),
                packages(),
                uk(),
                made(BREWED, A_420),
                CostOptions.in(GBP));
    }

    @Test
    void sheets_in_a_currency_that_the_duty_is_not_in_are_refused() {
        assertRefused(
                "duty of UK is in GBP, the sheet is in EUR",
                () -> Coster.cost(
                        batch(bill(), ninetyTen()),
                        PriceList.of(priceRows()),
                        rates(),
                        packages(),
                        uk(),
                        made(BREWED, A_420),
                        CostOptions.in(CurrencyUnit.EUR)));
    }

    @Test
    void two_rates_of_one_thing_are_refused() {
        List<Rate> twice = new ArrayList<>(rates());
        twice.add(rate("GAS", RateGroup.ENERGY, "3.25", RateBasis.PER_HL_COLLECTED));

        assertRefused(
                "two rates that both apply on 2026-11-25: rates.csv:gas and rates.csv:GAS",
                () -> Coster.cost(
                        batch(bill(), ninetyTen()),
                        PriceList.of(priceRows()),
                        twice,
                        packages(),
                        uk(),
                        made(BREWED, A_420),
                        CostOptions.in(GBP)));
    }

    @Test
    void a_bill_of_nonsense_is_refused() {
        assertRefused("Pale malt: amount", () -> bill(BillGroup.MASHED_GOODS, "Pale malt", Double.NaN));
        assertRefused("Pale malt: amount", () -> bill(BillGroup.MASHED_GOODS, "Pale malt", -1));
        assertRefused(
                "racked: expected no more than the 1000.0 L collected",
                () -> new Batch(
                        "B",
                        BREWED,
                        DUTY,
                        DUTY,
                        1000,
                        1001,
                        180,
                        OptionalDouble.empty(),
                        Gravity.of(1.040),
                        Gravity.of(1.008),
                        Optional.empty(),
                        bill(),
                        ninetyTen(),
                        List.of()));
        assertRefused(
                "duty point: expected a day not before the brewing",
                () -> new Batch(
                        "B",
                        DUTY,
                        DUTY,
                        BREWED,
                        1000,
                        950,
                        180,
                        OptionalDouble.empty(),
                        Gravity.of(1.040),
                        Gravity.of(1.008),
                        Optional.empty(),
                        bill(),
                        ninetyTen(),
                        List.of()));
    }

    @Test
    void the_total_can_be_followed_to_a_row_of_a_price_list() {
        CostSheet sheet = sheet(bill(), ninetyTen());

        assertEquals("1077.86 GBP", sheet.explanation().figure());
        assertEquals(
                "126.96 GBP",
                sheet.explanation()
                        .find("mashed goods: Pale malt")
                        .orElseThrow()
                        .figure());
        assertTrue(sheet.explanation().text().contains("0.736 per kg (Ash, prices.csv:Pale malt)"));
    }
}
