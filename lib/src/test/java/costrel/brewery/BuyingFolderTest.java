package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.tables.TableProblem;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The terms of buying and the store, from files to the lines of a sheet. The bitter takes 617 kg of pale ale malt; Sedgeholt asks
 * £21.45 for 25 kg, which is 85.8p a kilogram, Brackenmere 87.2p with its delivery. All sums are worked out by hand.
 */
class BuyingFolderTest {

    private static final String MALT = "prices-malt.csv";
    private static final Pattern OWN =
            Pattern.compile("(surcharges|carriage|exchange-rates|stock.*|standard-costs)\\.csv");

    @TempDir
    private Path folder;

    /** The sample without terms of its own, and with the two prices of pale ale malt in a list by themselves. */
    @BeforeEach
    void copySample() throws IOException {
        try (Stream<Path> files = Files.walk(LanternfoldTest.FOLDER)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy =
                        folder.resolve(LanternfoldTest.FOLDER.relativize(file).toString());
                String name = String.valueOf(file.getFileName());
                if (OWN.matcher(name).matches()) {
                    continue;
                }
                boolean prices = name.startsWith("prices");
                Files.createDirectories(copy.getParent());
                Files.write(
                        copy,
                        Files.readAllLines(file).stream()
                                .filter(line -> !(prices && line.startsWith("pale ale malt,")))
                                .filter(line -> !line.startsWith("exchange rate age,"))
                                .toList());
            }
        }
        write(MALT, """
                item,supplier,pack,price,currency,valid from,delivery,VAT,price with VAT,VAT recoverable
                pale ale malt,Sedgeholt Maltings,25 kg,£21.45,,2026-09-01,,,,
                pale ale malt,Brackenmere Malt,25 kg,£20.95,,2026-09-01,£0.85,,,
                """);
    }

    @Test
    void a_surcharge_sends_the_order_to_the_other_supplier_and_a_rebate_brings_it_back() throws IOException {
        assertMalt(List.of("529.39"), "Sedgeholt Maltings", "617 × 0.858 = 529.386");
        write("surcharges.csv", """
                name,supplier,item,kind,amount,valid from
                energy,Sedgeholt Maltings,,surcharge,4 %,2026-09-01
                """);
        assertMalt(List.of("538.02"), "Brackenmere Malt", "0.858 × 1.04 = 0.89232; 617 × 0.872 = 538.024");
        write("surcharges.csv", """
                name,supplier,item,kind,amount,valid from
                energy,Sedgeholt Maltings,,surcharge,4 %,2026-09-01
                loyalty,Sedgeholt Maltings,pale ale malt,rebate,£21.00/t,2026-09-01
                """);
        assertMalt(List.of("537.60"), "Sedgeholt Maltings", "617 × (0.89232 − 0.021) = 537.60444");
    }

    @Test
    void carriage_is_charged_by_the_order_and_by_every_pallet_begun() throws IOException {
        write("carriage.csv", """
                supplier,amount,pallet,valid from
                Sedgeholt Maltings,£48.00,,2026-09-01
                Sedgeholt Maltings,£30.00,500 kg,2026-09-01
                """);
        List<CostLine> lines = bitter().lines();
        BigDecimal kg = lines.stream()
                .filter(line -> line.supplier().equals("Sedgeholt Maltings")
                        && line.unit().equals("kg"))
                .map(CostLine::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal pallets = kg.divide(new BigDecimal("500"), 0, RoundingMode.CEILING);
        BigDecimal carriage = lines.stream()
                .filter(line -> line.item().startsWith("carriage on "))
                .map(line -> line.value().getAmount())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertTrue(pallets.signum() > 0);
        assertEquals(new BigDecimal("48.00").add(new BigDecimal("30.00").multiply(pallets)), carriage);
    }

    @Test
    void tax_that_is_recovered_is_no_cost_and_tax_that_is_not_is_one() throws IOException {
        change(MALT, "£21.45,,2026-09-01,,,,", "£25.74,,2026-09-01,,20 %,yes,");
        assertMalt(List.of("529.39"), "Sedgeholt Maltings", "25.74 ÷ 1.2 = 21.45");
        change(MALT, ",20 %,yes,", ",20 %,yes,no");
        assertMalt(List.of("538.02"), "Brackenmere Malt", "25.74 ÷ 25 = 1.0296");
    }

    @Test
    void a_contract_is_drawn_before_the_price_of_the_day() throws IOException {
        write("prices-contracts.csv", """
                item,supplier,pack,price,valid from,contract quantity
                pale ale malt,Sedgeholt Maltings,25 kg,£17.50,2026-09-01,400 kg
                """);
        assertMalt(List.of("280.00", "186.19"), "Sedgeholt Maltings", "400 × 0.70, 217 × 0.858 = 186.186");
    }

    @Test
    void a_foreign_price_is_turned_at_the_newest_rate_and_a_hole_in_the_rates_is_told() throws IOException {
        change(MALT, "£21.45", "€25.00");
        write("exchange-rates.csv", "from,to,date,rate\nEUR,GBP,2026-11-02,0.86\nEUR,GBP,2026-11-26,0.99\n");
        assertMalt(List.of("530.62"), "Sedgeholt Maltings", "25 × 0.86 ÷ 25 × 617");
        Files.writeString(
                folder.resolve("brewery.csv"),
                Files.readString(folder.resolve("brewery.csv")).stripTrailing() + "\nexchange rate age,20 d\n");
        assertRefused("is of 2026-11-02 (exchange-rates.csv:2), 23 days old; expected no more than 20 days");
        write("exchange-rates.csv", "from,to,date,rate\nEUR,GBP,2026-11-26,0.86\n");
        assertRefused("rate of exchange from EUR to GBP: none on or before 2026-11-25; the first is of 2026-11-26;"
                + " supply the rate of 2026-11-25");
    }

    @Test
    void goods_in_store_cost_what_was_paid_for_them_or_what_is_set() throws IOException {
        write("stock-2026.csv", """
                date,item,kind,quantity,cost
                2026-11-01,pale ale malt,opening,500 kg,£400.00
                """);
        write("stock-2026-november.csv", """
                date,item,kind,quantity,cost
                2026-11-02,pale ale malt,receipt,500 kg,£425.00
                """);
        write("standard-costs.csv", "item,from,cost\npale ale malt,2026-01-01,£810.00/t\n");
        assertStored("FIFO", "499.45", "400 + 117 × 0.85");
        assertStored("standard cost", "499.77", "617 × 0.81");
        change("stock-2026-november.csv", "receipt,500 kg", "receipt,100 kg");
        assertEquals(List.of(), Brewery.load(folder).problems());
        RuntimeException refusal = assertThrows(
                IllegalArgumentException.class, () -> brew().basis("FIFO").cost());
        assertTrue(String.valueOf(refusal.getMessage()).contains("short of 17 kg"), refusal.getMessage());
    }

    @Test
    void a_ledger_that_gives_out_more_than_it_holds_is_told_by_line() throws IOException {
        write("stock-a.csv", "date,item,kind,quantity,cost\n2026-11-01,crown,opening,500 each,£6.00\n");
        write(
                "stock-b.csv",
                "date,item,kind,quantity\n2026-11-02,crown,issue,200 each\n2026-11-03,crown,issue,301 each\n");
        assertProblems(
                "stock-b.csv:3: quantity: crown: 301 each issued on 2026-11-03, 300 each there: short of 1 each");
    }

    @Test
    void a_misspelt_supplier_is_not_left_without_its_surcharge_in_silence() throws IOException {
        write("surcharges.csv", """
                name,supplier,item,kind,amount,valid from
                energy,Sedgehot Maltings,,surcharge,4 %,2026-09-01
                fuel,Sedgeholt Maltings,pale ale matl,surcharge,4 %,2026-09-01
                """);
        write("carriage.csv", "supplier,amount,valid from\nBrakenmere Malt,£40.00,2026-09-01\n");
        assertProblems(
                "surcharges.csv:2: supplier: expected a known supplier of the price lists, the nearest being"
                        + " Sedgeholt Maltings, found 'Sedgehot Maltings'",
                "surcharges.csv:3: item: expected a known item of the price lists, the nearest being pale ale malt",
                "carriage.csv:2: supplier: expected a known supplier of the price lists, the nearest being Brackenmere Malt");
    }

    @Test
    void a_break_of_another_list_that_makes_more_dearer_is_told_by_line() throws IOException {
        write("prices-extra.csv", """
                item,supplier,pack,price,valid from,minimum quantity
                pale ale malt,Sedgeholt Maltings,1 t,£860.00,2026-09-01,5 t
                """);
        assertProblems(
                "prices-extra.csv:2: minimum quantity: expected a larger order that is no dearer by the unit, found"
                        + " quantity breaks out of order: pale ale malt from Sedgeholt Maltings: the price for 5000 kg or more"
                        + " (prices-extra.csv:2) is dearer than that for less");
    }

    @Test
    void relief_by_a_production_of_nothing_asks_for_the_estimate() throws IOException {
        write("production.csv", "production year from,pure alcohol\n2025-02-01,0 hL\n");
        assertRefused("a production of 0 hL is in no band");
    }

    @Test
    void a_duty_point_after_the_day_of_costing_warns_that_rates_may_change() {
        CostSheet sheet = Brewery.open(folder)
                .brew("Wickgate Bitter")
                .on("Main")
                .length("30 brl")
                .day(LanternfoldTest.DAY)
                .dutyDay(LanternfoldTest.DAY.plusDays(1))
                .cost();
        assertTrue(sheet.cautions().toString().contains("a Budget may change them: check before pricing"));
    }

    private Brew brew() {
        return Brewery.open(folder)
                .brew("Wickgate Bitter")
                .on("Main")
                .length("30 brl")
                .day(LanternfoldTest.DAY);
    }

    private CostSheet bitter() {
        return brew().basis("replacement").cost();
    }

    private void assertMalt(List<String> values, String supplier, String sum) {
        List<CostLine> malt = malt(bitter());
        assertEquals(
                values,
                malt.stream()
                        .map(line -> line.value().getAmount().toPlainString())
                        .toList(),
                sum);
        malt.forEach(line -> assertEquals(supplier, line.supplier(), sum));
    }

    private void assertStored(String basis, String value, String sum) {
        List<CostLine> malt = malt(brew().basis(basis).cost());
        assertEquals(
                List.of(value),
                malt.stream()
                        .map(line -> line.value().getAmount().toPlainString())
                        .toList(),
                sum);
    }

    private static List<CostLine> malt(CostSheet sheet) {
        return sheet.lines().stream()
                .filter(line -> line.item().startsWith("pale ale malt"))
                .toList();
    }

    private void assertRefused(String words) {
        RuntimeException refusal = assertThrows(RuntimeException.class, this::bitter);
        assertTrue(String.valueOf(refusal.getMessage()).contains(words), refusal.getMessage());
    }

    private void assertProblems(String... starts) {
        List<String> problems =
                Brewery.load(folder).problems().stream().map(TableProblem::text).toList();
        assertEquals(starts.length, problems.size(), problems.toString());
        for (int i = 0; i < starts.length; i++) {
            assertTrue(problems.get(i).startsWith(starts[i]), problems.get(i));
        }
    }

    private void change(String file, String from, String to) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(from), file + " has no '" + from + "'");
        Files.writeString(path, text.replace(from, to));
    }

    private void write(String file, String text) throws IOException {
        Files.writeString(folder.resolve(file), text);
    }
}
