package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.cost.CostBasis;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.report.CostText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What suppliers put on their prices, and what the store paid, in the sample brewery; worked on paper from its files. */
class StoreAndTermsTest {

    private static final Brewery LANTERNFOLD = Brewery.open(LanternfoldTest.FOLDER);

    private static Brew brew(Brewery brewery, String beer) {
        return brewery.brew(beer).on("Main").length("30 brl").day(LanternfoldTest.DAY);
    }

    private static Money value(CostSheet sheet, String item) {
        return sheet.lines().stream()
                .filter(line -> line.item().equals(item))
                .map(CostLine::value)
                .findFirst()
                .orElseThrow();
    }

    /**
     * 617 kg leave a store of 983 kg at £0.858 and 1000 kg at £0.771, after 617 kg at £0.824 and 740 kg of which 223 at £0.824.
     * FIFO: £2750.16 paid in all less £508.41, £627.34 and closing £1085.03, with the penny of the roundings. Weighted average:
     * £1610.088336 for 1983 kg. Periodic: £2750.16 for 3340 kg, less £508.04, £609.32 and closing £1124.77. IAS 2.25 and 2.27.
     */
    @ParameterizedTest
    @CsvSource({
        "FIFO, 529.38",
        "weighted average, 500.97",
        "periodic average, 508.03",
        "standard cost, 518.28",
        "replacement, 529.39"
    })
    void the_malt_of_the_bitter_by_each_basis_of_cost(String basis, String malt) {
        CostSheet sheet = brew(LANTERNFOLD, "Wickgate Bitter").basis(basis).cost();
        assertEquals(Money.parse("GBP " + malt), value(sheet, "pale ale malt"));
    }

    @Test
    void another_basis_is_refused_and_those_there_are_are_named() {
        Brew bitter = brew(LANTERNFOLD, "Wickgate Bitter");
        String told = String.valueOf(assertThrows(IllegalArgumentException.class, () -> bitter.basis("LIFO"))
                .getMessage());
        assertEquals(
                "cost basis: expected one of replacement, FIFO, weighted average, periodic average, standard cost;"
                        + " found 'LIFO'",
                told);
        assertEquals(CostBasis.REPLACEMENT, bitter.basis());
    }

    /** (€92.00 × 102 % / 5 kg − €0.60/kg) × 0.8735 = £15.869748 a kg; carriage €24.00; kegs 53 × £82.00 × 1.5 %. */
    @Test
    void hops_in_euros_with_surcharge_rebate_and_carriage_and_kegs_that_stay_away() {
        CostSheet sheet = brew(LANTERNFOLD, "Trimwick Pale").cost();
        assertEquals(Money.parse("GBP 107.91"), value(sheet, "Cascade CA26-P03"));
        assertEquals(Money.parse("GBP 20.96"), value(sheet, "carriage on Cascade CA26-P03"));
        assertEquals(Money.parse("GBP 65.19"), value(sheet, "loss of 30 L keg on the trip"));
    }

    @Test
    void a_store_without_a_ledger_can_not_cost_by_it(@TempDir Path inner) throws IOException {
        Path folder = SampleFolder.copiedInto(inner);
        Files.delete(folder.resolve("stock.csv"));
        Brew bitter = brew(Brewery.open(folder), "Wickgate Bitter").basis(CostBasis.FIFO);
        String told = String.valueOf(
                assertThrows(IllegalArgumentException.class, bitter::cost).getMessage());
        assertTrue(told.contains("receipts and issues in stock.csv"), told);
    }

    @Test
    void more_than_the_store_holds_is_told() {
        Brew large = LANTERNFOLD
                .brew("Wickgate Bitter")
                .on("Main")
                .length("30 brl")
                .day("2026-10-25")
                .basis(CostBasis.FIFO);
        String told = String.valueOf(assertThrows(
                        RuntimeException.class,
                        () -> large.length("48 brl").insist().cost())
                .getMessage());
        assertTrue(told.contains("short of"), told);
    }

    /**
     * Normal loss of 4 % of the 49.09777 hL collected: what is lost beyond it is valued at the unit cost of the normal output
     * and expensed (IAS 2.16). Unsold 2 %: a pint that is sold bears 1 / 0.98 of one that can be sold.
     */
    @Test
    void normal_loss_and_unsold_beer_from_brewery_csv(@TempDir Path inner) throws IOException {
        Path folder = SampleFolder.copiedInto(inner);
        Files.writeString(
                folder.resolve("brewery.csv"),
                Files.readString(folder.resolve("brewery.csv")) + "normal loss,4 %\nunsold,2 %\n");
        CostSheet before = brew(LANTERNFOLD, "Wickgate Bitter").cost();
        CostSheet after = brew(Brewery.open(folder), "Wickgate Bitter").cost();
        double collectedHl = 49.097772;
        double racked = 46.04300682;
        double perHl = before.gyleCost().getAmount().doubleValue() / (collectedHl * 0.96);
        // The credit for spent grain is in the gyle's cost already, as in the unit cost of normal output.
        double expensed = perHl * (collectedHl * 0.96 - racked);
        assertEquals(
                expensed, -value(after, "abnormal loss, expensed").getAmount().doubleValue(), 0.006);
        assertEquals(
                after.unroundedPerPint().doubleValue() / 0.98,
                after.unroundedPerPintSold().doubleValue(),
                1e-12);
        assertTrue(CostText.of(after).contains("a pint that is sold bears"), CostText.of(after));
    }

    /**
     * The bitter in the United States: $3.50 a barrel of 31 US gallons for the first 60,000 of a brewer under 2 million (26 USC
     * 5051(a)(2)).
     */
    @Test
    void the_same_beer_under_another_countrys_duty(@TempDir Path inner) throws IOException {
        Path folder = SampleFolder.copiedInto(inner);
        Files.writeString(folder.resolve("brewery.csv"), """
                property,value
                name,Lanternfold
                currency,USD
                country,United States
                VAT,0 %
                beer made in the year,9000 hL
                """);
        Files.delete(folder.resolve("stock.csv"));
        Files.delete(folder.resolve("standard-costs.csv"));
        Files.delete(folder.resolve("container-losses.csv"));
        Files.delete(folder.resolve("list-prices.csv"));
        Files.writeString(folder.resolve("exchange-rates.csv"), """
                from,to,date,rate
                GBP,USD,2026-11-20,1.31
                EUR,USD,2026-11-20,1.15
                """);
        Files.writeString(
                folder.resolve("rates-2026.csv"),
                Files.readString(folder.resolve("rates-2026.csv")).replaceAll("£([0-9.]+)", "$1 USD"));
        CostSheet sheet = brew(Brewery.open(folder), "Wickgate Bitter").cost();
        String text = CostText.of(sheet);
        assertTrue(text.contains("price USD/unit"), text);
        assertTrue(text.contains("US barrel at 3.50 USD by US barrel"), text);
        assertTrue(!text.contains("£"), text);
        List<CostLine> lines = sheet.lines();
        Money sum = lines.stream()
                .map(CostLine::value)
                .reduce(Money.zero(sheet.gyleCost().getCurrencyUnit()), Money::plus);
        assertEquals(sheet.total(), sum);
    }
}
