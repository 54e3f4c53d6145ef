package costrel.cost;

import static costrel.cost.Given.A_420;
import static costrel.cost.Given.GBP;
import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.assertSays;
import static costrel.cost.Given.assertSilent;
import static costrel.cost.Given.container;
import static costrel.cost.Given.day;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.made;
import static costrel.cost.Given.price;
import static costrel.cost.Given.rate;
import static costrel.cost.Given.uk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.buying.ExchangeRate;
import costrel.buying.ExchangeRates;
import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.PriceTerms;
import costrel.buying.UnitPrice;
import costrel.cost.ContainerCharges.PackageWeight;
import costrel.cost.ContainerCharges.PackagingFee;
import costrel.cost.ContainerCharges.TripLoss;
import costrel.duty.DutyTables;
import costrel.duty.ProductionYears;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.packaging.PackagingShare;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Findings, parts left out and shares of a sheet at the corners; an invented brewery, every figure worked on paper. */
class CornersOfASheetTest {
    private static final PackUnit KG = PackUnit.KILOGRAM;
    private static final List<BillLine> MALT =
            List.of(new BillLine(BillGroup.MASHED_GOODS, "Pale malt", List.of("Pale malt"), 100, KG, ""));
    private static final PriceList PRICES = PriceList.of(List.of(price("Pale malt", "Ash", "25", KG, "18.00")));

    private static Batch batch(double rackedL, OptionalDouble tankDays, String declared, PackagingShare... packaging) {
        return new Batch(
                "Sheepwash Bitter",
                day("2026-11-10"),
                day("2026-11-25"),
                day("2026-11-25"),
                1000,
                rackedL,
                180,
                tankDays,
                Gravity.of(1.040),
                Gravity.of(1.008),
                Optional.of(declared).filter(text -> !text.isEmpty()).map(BigDecimal::new),
                MALT,
                List.of(packaging),
                List.of("barley"));
    }

    private static Batch batch(double rackedL, PackagingShare... packaging) {
        return batch(rackedL, OptionalDouble.empty(), "4.2", packaging);
    }

    private static CostSheet sheet(Batch batch, Rate... rates) {
        return Coster.cost(
                batch, PRICES, List.of(rates), List.of(), uk(), made(day("2026-11-10"), A_420), CostOptions.in(GBP));
    }

    private static PackagingShare share(String name, double share) {
        return new PackagingShare(container(name), share, 0);
    }

    @Test
    void beer_of_a_container_that_stays_empty_bears_its_cost_with_the_next_smaller() {
        // 50 L fill no hogshead of 245 L: firkins get 300 of 500 L, 7 and 13.596 over; pins 213.596, 10 and 9.02 over.
        CostSheet sheet = sheet(batch(500, share("firkin", 0.5), share("pin", 0.4), share("hogshead", 0.1)));

        assertEquals(
                List.of("firkin 7 0.6", "pin 10 0.4"),
                sheet.containers().stream()
                        .map(one -> one.container().name() + " " + one.count() + " "
                                + one.share().stripTrailingZeros().toPlainString())
                        .toList());
        assertEquals(Money.parse("GBP 43.20"), sheet.containers().get(0).gyleShare()); // 72.00 × 0.6
        assertTrue(sheet.findings().stream()
                .anyMatch(finding -> finding.what().equals("hogshead: 50 L fills not one")
                        && finding.suggestion()
                                .equals("the beer goes on to firkin and its share of the cost with it")));
        assertSays("firkin: 13.6 L is left that fills not one more", sheet.findings());
        assertSays("9.02 L is left after the smallest container and is lost", sheet.findings());
        assertSilent("pin: ", sheet.findings());
    }

    @Test
    void a_container_that_stays_empty_takes_no_parts_and_leaves_the_others_theirs() {
        PackageItem label = new PackageItem("hogshead", "Label", BigDecimal.ONE, BigDecimal.ONE, PackUnit.EACH);
        PackageItem shive = new PackageItem("firkin", "Shive", dec("2"), BigDecimal.ONE, PackUnit.EACH);
        CostSheet sheet = Coster.cost(
                batch(500, share("hogshead", 0.1), share("firkin", 0.9)),
                PriceList.of(List.of(
                        price("Pale malt", "Ash", "25", KG, "18.00"),
                        price("Label", "Ash", "1", PackUnit.EACH, "0.50"),
                        price("Shive", "Ash", "1", PackUnit.EACH, "0.11"))),
                List.of(),
                List.of(label, shive),
                uk(),
                made(day("2026-11-10"), A_420),
                CostOptions.in(GBP));

        // 500 L fill 12 firkins of 40.91481 L: 24 shives.
        assertEquals(1, sheet.containers().size());
        CostLine first = sheet.containers().get(0).lines().get(0);
        assertEquals("Shive 2.64", first.item() + " " + first.value().getAmount());
        assertTrue(sheet.lines().stream().noneMatch(line -> line.item().equals("Label")));
    }

    @Test
    void the_last_container_takes_the_penny_that_the_first_rounded_up() {
        // 72.01 for two halves: 36.005, up to 36.01, and 36.00. 20 and 30 L kegs of 300 L each leave nothing.
        CostSheet sheet = sheet(
                batch(600, share("30 L keg", 0.5), share("20 L keg", 0.5)),
                rate("gas", RateGroup.ENERGY, "0.01", RateBasis.PER_GYLE));

        assertEquals(Money.parse("GBP 72.01"), sheet.gyleCost());
        assertEquals(
                List.of(Money.parse("GBP 36.01"), Money.parse("GBP 36.00")),
                sheet.containers().stream().map(ContainerCost::gyleShare).toList());
        assertSilent("is left", sheet.findings());
        assertEquals(
                List.of("FV, tank and dry hops"),
                sheet.gyleLines().stream()
                        .filter(line -> line.group() == CostGroup.LOSSES)
                        .map(CostLine::item)
                        .toList());
    }

    @Test
    void what_is_given_is_not_among_the_parts_left_out() {
        CostSheet sheet = sheet(
                batch(600, share("30 L keg", 1)),
                rate("gas", RateGroup.ENERGY, "3", RateBasis.PER_GYLE),
                rate("tank", RateGroup.CLEANING, "2", RateBasis.PER_TANK_DAY));
        String leftOut = String.join("; ", sheet.leftOut());

        assertFalse(leftOut.contains("mashed goods") || leftOut.contains("energy:"), leftOut);
        assertTrue(leftOut.contains("hops: none on the bill") && leftOut.contains("labour: no rate given"), leftOut);
        assertTrue(leftOut.contains("tank: charged per tank-day, and the days in tank are not given"), leftOut);
        assertFalse(leftOut.contains("gas: charged"), leftOut);
        assertEquals(Money.parse("GBP 3.00"), sheet.sumOf(CostGroup.ENERGY));
        assertEquals(Money.parse("GBP 0.00"), sheet.sumOf(CostGroup.CLEANING));

        CostSheet known = sheet(
                batch(600, OptionalDouble.of(7), "4.2", share("30 L keg", 1)),
                rate("tank", RateGroup.CLEANING, "2.50", RateBasis.PER_TANK_DAY));
        assertEquals(Money.parse("GBP 17.50"), known.sumOf(CostGroup.CLEANING));
        assertTrue(known.leftOut().stream().noneMatch(words -> words.contains("tank-day")));
    }

    @Test
    void rates_are_written_with_what_they_go_by() {
        CostSheet sheet = sheet(
                batch(600, share("30 L keg", 1)),
                rate("gas", RateGroup.ENERGY, "3", RateBasis.PER_HL_COLLECTED),
                rate("washing", RateGroup.PACKAGING, "1.35", RateBasis.PER_KEG));
        CostLine gas = sheet.gyleLines().stream()
                .filter(line -> line.item().equals("gas"))
                .findFirst()
                .orElseThrow();
        CostLine washing = sheet.containers().get(0).lines().get(0);

        assertEquals("per hL collected, hL", gas.remark() + ", " + gas.unit());
        assertEquals("per keg, container", washing.remark() + ", " + washing.unit());
        assertEquals(Money.parse("GBP 27.00"), washing.value()); // 20 kegs
        assertEquals("FIFO", CostBasis.FIFO.label());
        assertEquals("standard cost", CostBasis.STANDARD.label());
    }

    /** Regulation (EU) No 1169/2011 Annex XII: 0.5 % vol. up to 5.5 %, 1 % vol. above; 32 × 0.129 is 4.128. */
    @Test
    void a_label_may_miss_by_its_tolerance_and_no_more() {
        assertSilent("from the expected", declaring("4.628").findings());
        assertSays(
                "is more than 0.5 from the expected 4.13 %", declaring("4.629").findings());
        assertSays("a label of 5.5 % must be within 0.5 of", declaring("5.5").cautions());
        assertSays("a label of 5.6 % must be within 1 of", declaring("5.6").cautions());
    }

    private static CostSheet declaring(String strength) {
        return sheet(batch(600, OptionalDouble.empty(), strength, share("30 L keg", 1)));
    }

    @Test
    void what_duty_found_and_what_was_taken_by_default_stand_on_the_sheet() {
        CostSheet silent = declaring("");

        assertSays("no strength is declared", silent.findings());
        assertEquals(List.of("declared strength: none given, the expected strength taken"), silent.defaultsUsed());
        assertEquals(List.of(), declaring("4.2").defaultsUsed());
    }

    @Test
    void allergens_and_defaults_of_the_containers_are_the_sheet_s() {
        Container cask = new Container(
                "firkin",
                ContainerKind.CASK,
                dec("40.91481"),
                dec("40.91"),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                true,
                true,
                List.of("fish", "barley"),
                List.of("firkin: sediment: none given, 0 L taken"));
        CostSheet sheet = sheet(batch(600, new PackagingShare(cask, 1, 0)));

        assertEquals(List.of("barley", "fish"), sheet.allergens());
        assertEquals(List.of("firkin: sediment: none given, 0 L taken"), sheet.defaultsUsed());
        assertSays("allergens to declare: barley, fish", sheet.cautions());
    }

    @Test
    void a_gyle_racked_to_the_last_litre_loses_none_and_one_that_grows_is_refused() {
        CostSheet sheet = sheet(batch(1000, share("50 L keg", 1)));

        assertTrue(sheet.gyleLines().stream().noneMatch(line -> line.group() == CostGroup.LOSSES));
        assertRefused("racked: expected no more than the 1000.0 L", () -> batch(1000.1, share("50 L keg", 1)));
        assertRefused(
                "declared strength: expected 0 to 100 %, found 101",
                () -> batch(600, OptionalDouble.empty(), "101", share("30 L keg", 1)));
    }

    @Test
    void losses_of_trips_and_weights_are_asked_for_where_containers_come_back() {
        List<String> ofKegs = leftOut(ContainerCharges.none(), "30 L keg");
        List<String> ofBottles = leftOut(ContainerCharges.none(), "500 mL bottle");

        assertTrue(ofKegs.contains("loss of 30 L keg on trips: no share lost is given"));
        assertTrue(ofBottles.stream().noneMatch(words -> words.startsWith("loss of")));
        ContainerCharges glass = new ContainerCharges(
                List.of(), List.of(new PackageWeight("500 mL bottle", "glass", dec("0.3"), BigDecimal.ONE)), List.of());
        assertEquals(
                List.of(
                        "loss of 30 L keg on trips: no share lost is given",
                        "packaging fees on 30 L keg: no weights given"),
                leftOut(glass, "30 L keg"));
    }

    private static List<String> leftOut(ContainerCharges charges, String container) {
        List<String> leftOut = new ArrayList<>();
        charges.lines(container(container), 10, day("2026-11-25"), GBP, leftOut);
        return leftOut;
    }

    private static TripLoss loss(String shareLost, String until) {
        return new TripLoss(
                "firkin",
                Money.parse("GBP 60"),
                dec(shareLost),
                day("2026-01-01"),
                Optional.of(day(until)),
                "losses.csv:2");
    }

    private static PackagingFee fee(String from, String until) {
        return new PackagingFee("glass", dec("192"), GBP, day(from), Optional.of(day(until)), "invented");
    }

    @Test
    void charges_that_cannot_be_are_refused() {
        assertRefused("lost on a trip: expected less than 1, found 1", () -> loss("1", "2026-12-31"));
        assertFigure("0.999", loss("0.999", "2026-01-01").shareLost());
        assertRefused("losses.csv:2: loss of firkin: valid until", () -> loss("0.02", "2025-12-31"));
        assertRefused("packaging fee on glass: valid until", () -> fee("2026-01-02", "2026-01-01"));
        assertRefused(
                "rate of gas: valid until",
                () -> new Rate(
                        "gas",
                        RateGroup.ENERGY,
                        dec("3"),
                        GBP,
                        RateBasis.PER_GYLE,
                        false,
                        day("2026-01-02"),
                        Optional.of(day("2026-01-01")),
                        "rates.csv:2"));
    }

    @Test
    void an_amount_that_is_none_is_refused_by_its_line_and_unit() {
        GoodsAtPrices goods = GoodsAtPrices.of(
                List.of(
                        new UnitPrice(dec("18.00"), dec("25"), "kg"),
                        new UnitPrice(dec("0.20"), BigDecimal.ONE, "each")),
                GBP);

        assertEquals(Money.parse("GBP 7.60"), goods.total(10, 2)); // 7.20 and 0.40
        assertEquals(Money.parse("GBP 0.00"), goods.total(0, 0));
        assertRefused("amount of line 2: expected 0 each or more, found -1.0", () -> goods.total(10, -1));
        assertRefused("amount of line 1: expected 0 kg or more, found NaN", () -> goods.total(Double.NaN, 1));
        assertRefused("amounts: expected 2, one a line, found 1", () -> goods.total(10));
    }

    @Test
    void the_tree_of_a_sheet_has_each_line_once_and_its_pint_in_pence() {
        CostSheet sheet =
                sheet(batch(600, share("30 L keg", 1)), rate("gas", RateGroup.ENERGY, "3", RateBasis.PER_GYLE));
        String text = sheet.explanation().text();

        // 20 kegs, 600 L × 4.2 % = 25.2 L of pure alcohol
        assertTrue(text.contains("20 × 30 L keg") && text.contains("duty on 20 × 30 L keg"), text);
        assertFalse(text.contains("duty: beer duty"), text);
        assertTrue(text.contains("400 L lost: FV, tank and dry hops"), text);
        assertFalse(text.contains("0 L lost: filling"), text);
        assertTrue(text.contains("1 gyle, per gyle"), text);
        assertFalse(text.contains("100 kg,"), text);
        assertEquals(
                sheet.pencePerPint().toPlainString() + " p",
                sheet.explanation()
                        .find("cost of a saleable pint")
                        .orElseThrow()
                        .figure());
    }

    @Test
    void in_another_currency_a_pint_costs_so_much_of_it() {
        PriceTerms euro = new PriceTerms(
                List.of(),
                List.of(),
                new ExchangeRates(
                        List.of(new ExchangeRate(
                                GBP, CurrencyUnit.EUR, day("2026-11-24"), dec("1.25"), "exchange.csv:2")),
                        OptionalInt.empty()));
        CostSheet sheet = Coster.cost(
                batch(600, share("30 L keg", 1)),
                PRICES.with(euro),
                List.of(),
                List.of(),
                DutyTables.shipped("Germany"),
                ProductionYears.unknown(),
                CostOptions.in(CurrencyUnit.EUR));

        // 90.00 and, at 9 degrees Plato, 6 hL × 7.08 = 42.48: 132.48 × 0.56826125 / 600 = 0.12547 a pint.
        assertEquals(Money.parse("EUR 132.48"), sheet.total());
        assertEquals(
                "0.1255 EUR",
                sheet.explanation()
                        .find("cost of a saleable pint")
                        .orElseThrow()
                        .figure());
        CostLine duty = sheet.containers().get(0).lines().get(0);
        assertFigure("7.08", duty.unitPrice().orElseThrow().value());
    }
}
