package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceRow;
import costrel.cost.CostBasis;
import costrel.cost.PackageItem;
import costrel.cost.Rate;
import costrel.cost.RateBasis;
import costrel.cost.RateGroup;
import costrel.duty.YearVolume;
import costrel.hops.AlphaMethod;
import costrel.hops.HopAnalysis;
import costrel.hops.HopForm;
import costrel.hops.HopLot;
import costrel.hops.MoistureBasis;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.pricing.ListPrice;
import costrel.recipe.Catalogue.MaltLot;
import costrel.recipe.GristMaterial;
import costrel.recipe.Supply;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class BreweryTablesTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    @Test
    void a_delivery_keeps_what_its_certificate_leaves_out() {
        GristMaterial pale = new GristMaterial(
                "pale ale malt",
                GristMaterial.Kind.MALT,
                OptionalDouble.of(296),
                OptionalDouble.of(0.04),
                OptionalDouble.of(5),
                List.of("barley (gluten)"),
                "a book");
        List<MaltLot> lots =
                MaltLotReader.read(table("""
                                lot,material,in use from,HWE,basis,moisture,colour
                                A1,Pale Ale Malt,2026-09-28,310 L°/kg,dry,3 %,
                                A2,pale ale malt,2026-10-28,310 L°/kg,dry,,4.5 EBC
                                A3,pale ale malt,2026-11-28,,,,6 EBC
                                """), Map.of(pale.name(), pale)).orThrow();
        assertEquals(LocalDate.of(2026, 9, 28), lots.get(0).inUseFrom());
        assertEquals("pale ale malt", lots.get(0).analysis().name());
        assertEquals(310 * 0.97, lots.get(0).analysis().hweOrRefuse(), 1e-9);
        assertEquals(OptionalDouble.of(5), lots.get(0).analysis().ebc());
        assertEquals(310 * 0.96, lots.get(1).analysis().hweOrRefuse(), 1e-9, "dried by the material's moisture");
        assertEquals(OptionalDouble.of(296), lots.get(2).analysis().hwe());
        assertEquals(OptionalDouble.of(6), lots.get(2).analysis().ebc());
        assertEquals(List.of("barley (gluten)"), lots.get(2).analysis().allergens());
    }

    @Test
    void later_rows_of_a_hop_lot_are_later_analyses() {
        List<HopLot> lots = HopLotReader.read(table("""
                                lot,variety,crop year,form,analysed,alpha,method,basis,moisture,oil,storage index,stock,store,packing
                                FU-1,Fuggle,2025,leaf,2026-10-20,,,,,,0.35,4 kg,,
                                FU-1,fuggle,2025,Leaf,2025-09-26,4.7 %,EBC 7.4,as is,10.1 %,0.62 mL/100 g,0.27,9 kg,2 °C,air
                                TA-1,Target,2025,T90,2025-10-28,12.6 %,EBC 7.7,at 10 %,8 %,,,,36 °F,inert
                                """)).orThrow();
        HopLot fuggle = lots.get(0);
        assertEquals(
                List.of(
                        new HopAnalysis(
                                LocalDate.of(2025, 9, 26),
                                OptionalDouble.of(0.047),
                                AlphaMethod.LEAD_CONDUCTANCE,
                                MoistureBasis.AS_IS,
                                OptionalDouble.of(0.101),
                                OptionalDouble.of(0.62),
                                OptionalDouble.of(0.27)),
                        new HopAnalysis(
                                LocalDate.of(2026, 10, 20),
                                NONE,
                                AlphaMethod.UNSTATED,
                                MoistureBasis.AS_IS,
                                NONE,
                                NONE,
                                OptionalDouble.of(0.35))),
                fuggle.analyses());
        assertEquals(OptionalDouble.of(4), fuggle.stockKg(), "the stock of the row analysed last");
        assertEquals(OptionalDouble.of(2), fuggle.storeCelsius());
        assertEquals(HopLot.Packing.AIR, fuggle.packing());
        HopLot target = lots.get(1);
        assertEquals(HopForm.T90, target.form());
        assertEquals(2026 - 1, target.cropYear());
        // From the basis of 10 % of moisture to as is: 12.6 % / 0.9 × 0.92.
        assertEquals(0.1288, target.analyses().get(0).alphaAsIs().orElseThrow(), 1e-12);
    }

    @Test
    void prices_are_exact_and_by_the_pack_or_the_unit() {
        List<PriceRow> rows = PriceReader.read(table("""
                                item,supplier,pack,price,currency,valid from,valid until,minimum quantity,delivery
                                pale ale malt,Hollin,25 kg,£21.45,,2026-09-01,2026-12-31,1 t,£0.85
                                wheat malt,Hollin,1 cwt,20.10,GBP,2026-09-01,,,
                                Target,Hollin,,£13.60/kg,GBP,2026-09-01,,,
                                Fuggle,Hollin,5 kg,15.333 GBP/kg,,2026-09-01,,,
                                crown,Hollin,10000 each,EUR 61.00,,2026-09-01,,50000 each,
                                gas,Hollin,,£0.07 per kWh,,2026-09-01,,,
                                """)).orThrow();
        PriceRow malt = rows.get(0);
        assertEquals(new Pack(new BigDecimal("25"), PackUnit.KILOGRAM), malt.pack());
        assertEquals(new BigDecimal("21.45"), malt.price());
        assertEquals(CurrencyUnit.GBP, malt.currency());
        assertEquals(new BigDecimal("1000"), malt.minimumQuantity());
        assertEquals(new BigDecimal("0.85"), malt.deliveryPerPack());
        assertEquals(Optional.of(LocalDate.of(2026, 12, 31)), malt.validUntil());
        assertEquals("t.csv:2", malt.origin());
        // A hundredweight is 112 lb of 0.45359237 kg: Weights and Measures Act 1985.
        assertEquals(
                new Pack(new BigDecimal("50.80234544"), PackUnit.KILOGRAM),
                rows.get(1).pack());
        assertEquals(new Pack(BigDecimal.ONE, PackUnit.KILOGRAM), rows.get(2).pack());
        assertEquals(new BigDecimal("13.60"), rows.get(2).price());
        assertEquals(0, new BigDecimal("76.665").compareTo(rows.get(3).price()), "5 kg at £15.333 a kg");
        assertEquals(CurrencyUnit.EUR, rows.get(4).currency());
        assertEquals(PackUnit.KILOWATT_HOUR, rows.get(5).pack().unit());
    }

    @Test
    void rates_say_what_they_are_charged_by() {
        List<Rate> rates = RateReader.read(table("""
                                item,group,amount,basis,kind,valid from,valid until
                                hands,labour,£214.00,per gyle,fixed,2026-01-01,2026-06-30
                                hands,labour,£220.00,per gyle,fixed,2026-07-01,
                                spent grain,credit,£0.022,per kg of grist,variable,2026-01-01,
                                """)).orThrow();
        assertEquals(
                new Rate(
                        "hands",
                        RateGroup.LABOUR,
                        new BigDecimal("214.00"),
                        CurrencyUnit.GBP,
                        RateBasis.PER_GYLE,
                        true,
                        LocalDate.of(2026, 1, 1),
                        Optional.of(LocalDate.of(2026, 6, 30)),
                        "t.csv:2"),
                rates.get(0));
        assertEquals(RateBasis.PER_KG_OF_GRIST, rates.get(2).basis());
        assertFalse(rates.get(2).fixed());
    }

    @Test
    void containers_and_what_they_take() {
        Container firkin = ContainerReader.read(table("""
                                name,kind,nominal,label,sediment,undrinkable,conditioned,draught,allergens
                                firkin,cask,9 gal,40.91 L,1.7 L,,yes,TRUE,sulphites
                                """)).orThrow().get(0);
        assertEquals(ContainerKind.CASK, firkin.kind());
        assertEquals(new BigDecimal("40.91481"), firkin.nominalL());
        assertEquals(List.of("undrinkable 0 L, not stated"), firkin.defaultsUsed());
        assertEquals(List.of("sulphites"), firkin.allergens());
        assertTrue(firkin.conditioned() && firkin.draught());
        assertEquals(
                List.of(
                        new PackageItem("firkin", "shive", BigDecimal.ONE, BigDecimal.ONE, PackUnit.EACH),
                        new PackageItem("bottle", "carton", BigDecimal.ONE, new BigDecimal("12"), PackUnit.EACH),
                        new PackageItem("bottle", "glue", new BigDecimal("0.002"), BigDecimal.ONE, PackUnit.KILOGRAM)),
                PackageReader.read(
                                table(
                                        "container,item,quantity\nfirkin,shive,1 each\nbottle,carton,1/12 each\nbottle,glue,2 g\n"))
                        .orThrow());
    }

    @Test
    void plans_production_and_settings() {
        Map<String, List<PackagingPlanReader.Planned>> plans = PackagingPlanReader.read(
                        table("beer,container,share\nBitter,firkin,90 %\nMild,pin,100 %\nbitter,500 mL bottle,10 %\n"))
                .orThrow();
        assertEquals(List.of("Bitter", "Mild"), List.copyOf(plans.keySet()));
        assertEquals(
                List.of(
                        new PackagingPlanReader.Planned("firkin", 0.9),
                        new PackagingPlanReader.Planned("500 mL bottle", 0.1)),
                plans.get("Bitter"));
        assertEquals(
                Map.of(LocalDate.of(2026, 2, 1), new BigDecimal("412.5")),
                ProductionReader.read(table("production year from,pure alcohol\n2026-02-01,412.5 hL\n"))
                        .orThrow()
                        .pureAlcoholHl());
        BrewerySettings settings = BrewerySettingsReader.read(
                        table("property,value\nname,Cresset\nCurrency,GBP\ncountry,UK\nvat,20 %\n"))
                .orThrow();
        assertEquals("Cresset", settings.name());
        assertEquals("UK", settings.country());
        assertEquals(CurrencyUnit.GBP, settings.currency());
        assertEquals(0, new BigDecimal("0.2").compareTo(settings.vat()));
        assertEquals(CostSettings.USUAL, settings.costing());
    }

    @Test
    void how_a_brewery_wants_its_cost_sheets() {
        CostSettings costing = BrewerySettingsReader.read(table("""
                        property,value
                        name,Cresset
                        currency,USD
                        country,United States
                        VAT,0 %
                        cost basis,weighted average
                        claim relief,no
                        normal loss,4.5 %
                        unsold,2 %
                        beer made in the year,4500 hL
                        beer released so far,120.5 hL
                        exchange rate age,30 d
                        """)).orThrow().costing();
        assertEquals(CostBasis.AVERAGE, costing.basis());
        assertFalse(costing.claimRelief());
        assertEquals(
                0, new BigDecimal("0.045").compareTo(costing.normalLossShare().orElseThrow()));
        assertEquals(0, new BigDecimal("0.02").compareTo(costing.unsoldShare()));
        YearVolume year = costing.yearVolume().orElseThrow();
        assertEquals(0, new BigDecimal("4500").compareTo(year.annualHl()));
        assertEquals(0, new BigDecimal("120.5").compareTo(year.alreadyHl()));
        assertEquals(OptionalInt.of(30), costing.exchangeRateAgeDays());
    }

    @Test
    void a_brewerys_own_prices_with_what_it_sells_in_a_year() {
        assertEquals(
                List.of(
                        new ListPrice("Bitter", "firkin", Money.parse("GBP 86.00"), "Main", 4909.7772, 1650),
                        new ListPrice("Bitter", "pin", Money.parse("EUR 48.50"), "Main", 4909.7772, 0)),
                ListPriceReader.read(table("""
                                beer,container,price,currency,plant,brew length,sold
                                Bitter,firkin,£86,,Main,30 brl,1650
                                Bitter,pin,48.50,EUR,Main,30 brl,0
                                """)).orThrow());
    }

    @Test
    void money_that_is_typed_has_its_currency() {
        assertEquals(Money.parse("GBP 95.00"), MoneyText.parse("price", " £95 ", CurrencyUnit.GBP));
        assertEquals(Money.parse("GBP 95.50"), MoneyText.parse("price", "95.50 GBP", CurrencyUnit.GBP));
        for (String wrong : List.of("95", "95.00", "€95.00", "£95.005", "£95/kg", "£", "ninety", "£9,5")) {
            IllegalArgumentException refused = assertThrows(
                    IllegalArgumentException.class, () -> MoneyText.parse("price", wrong, CurrencyUnit.GBP));
            assertEquals(
                    "price: expected an amount in GBP such as £95.00 or 95.00 GBP, found '" + wrong + "'",
                    refused.getMessage());
        }
    }

    @Test
    void a_brewerys_own_yeast_and_acid() {
        List<Supply> supplies = SupplyReader.read(table("""
                                name,kind,cells,ions,normality,allergens,source
                                house yeast,yeast,6900 billion/kg,,,,counted
                                liquor acid,liquor treatment,,Cl 0.461; SO4 0.624,2.6 N,,data sheet
                                finings,process aid,,,,fish; sulphites,data sheet
                                """)).orThrow();
        assertEquals(OptionalDouble.of(6.9e12), supplies.get(0).cellsPerKilogram());
        assertEquals(
                List.of(new Supply.Ion("Cl", 0.461), new Supply.Ion("SO4", 0.624)),
                supplies.get(1).ions());
        assertEquals(OptionalDouble.of(2.6), supplies.get(1).normality());
        assertEquals(List.of("fish", "sulphites"), supplies.get(2).allergens());
    }

    private static CsvSource table(String text) {
        return CsvSource.text("t.csv", text);
    }
}
