package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.pricing.Price;
import costrel.pricing.StrengthStep;
import costrel.wort.Gravity;
import costrel.wort.StrengthFactorTable;
import costrel.wort.StrengthForDuty;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/**
 * Prices of the sample brewery from one line. A firkin of the bitter costs £33.8975, as another program worked it out (see
 * {@link LanternfoldTest}); what follows from that is reckoned by hand. Of the £9.40 of overhead for each of 49.097772 hL
 * (30 barrels of 163.65924 L), £461.52, the firkins bear nine tenths: £4.15368 each, which leaves £29.74382 variable.
 */
class SellingPricesTest {

    private static final Brewery LANTERNFOLD = Brewery.open(LanternfoldTest.FOLDER);
    private static final SellingPrices BITTER = bitter(LANTERNFOLD).pricing();

    @TempDir
    private Path folder;

    private static Brew bitter(Brewery brewery) {
        return brewery.brew("Wickgate Bitter").on("Main").length("30 brl").day("2026-11-25");
    }

    private static Price firkin(SellingPrices prices) {
        return prices.price(prices.sheet().containers().get(0)).orElseThrow();
    }

    private static Money gbp(String amount) {
        return Money.parse("GBP " + amount);
    }

    private static void assertRefused(String words, Executable asked) {
        String message = String.valueOf(
                assertThrows(IllegalArgumentException.class, asked).getMessage());
        assertTrue(message.contains(words), message);
    }

    private static void assertFigure(String expected, BigDecimal found, int places) {
        assertEquals(new BigDecimal(expected), found.setScale(places, RoundingMode.HALF_UP));
    }

    @Test
    void every_rule_gives_its_price() {
        // 33.8975 / 0.65; 33.8975 × 1.6
        assertEquals(gbp("52.15"), firkin(BITTER.margin("35 %")).net());
        assertEquals(gbp("54.24"), firkin(BITTER.markUp("60 %")).net());
        // Duty is 14.0124: 14.0124 + (33.8975 - 14.0124) / 0.5
        assertEquals(gbp("53.78"), firkin(BITTER.marginWithoutDuty("50 %")).net());
        // 40.91481 - 1.6 = 39.31481 L can be sold: 29.74382 + 120 × 0.3931481
        assertEquals(gbp("76.92"), firkin(BITTER.contributionPerHl("£120")).net());
        // 8 days × 0.9 / 100 firkins = 0.072 tank-days: 29.74382 + 500 × 0.072
        assertEquals(gbp("65.74"), firkin(BITTER.contributionPerTankDay("£500")).net());
    }

    @Test
    void a_price_that_is_asked_for_leaves_the_others_alone() {
        SellingPrices prices = BITTER.margin("35 %").at("Firkin", "£95.00");
        assertEquals(gbp("95.00"), firkin(prices).net());
        assertFigure("65.2562", firkin(prices).contribution(), 4);
        // 65.25618 / 0.072
        assertFigure("906.34", firkin(prices).contributionPerTankDay().orElseThrow(), 2);
        assertTrue(prices.price(prices.sheet().containers().get(1)).isPresent());
        assertFalse(BITTER.at("firkin", "£95")
                .price(BITTER.sheet().containers().get(1))
                .isPresent());
        assertEquals(
                OptionalInt.of(12),
                BITTER.caseOf(BITTER.sheet().containers().get(1).container()));
        assertEquals(
                OptionalInt.empty(),
                BITTER.caseOf(BITTER.sheet().containers().get(0).container()));
    }

    @Test
    void a_price_under_variable_cost_must_be_asked_for() {
        assertRefused("variable cost of 29.7438 GBP", () -> BITTER.at("firkin", "£29.74"));
        assertEquals(
                gbp("29.74"),
                firkin(BITTER.evenUnderVariableCost().at("firkin", "£29.74")).net());
        assertEquals(gbp("29.75"), firkin(BITTER.at("firkin", "£29.75")).net());
    }

    @Test
    void what_makes_no_sense_is_refused_in_words() {
        assertRefused("margin: expected under 100 %, found 100 %", () -> BITTER.margin("100 %"));
        assertRefused("margin", () -> BITTER.margin("35"));
        assertRefused("price: expected an amount in GBP", () -> BITTER.at("firkin", "95"));
        assertRefused("price: expected an amount in GBP", () -> BITTER.at("firkin", "€95.00"));
        assertRefused("(firkin, 500 mL bottle), found 'pin'", () -> BITTER.at("pin", "£50.00"));
        assertRefused("price: expected one to reckon the pub's by", () -> BITTER.pub("60 %"));
        assertRefused("discounts: expected steps such as", () -> BITTER.discounts("firkin", "£95.00", "5 %"));
        assertRefused("day: expected a date", () -> bitter(LANTERNFOLD).day("25 November"));
    }

    /** £60 for 69.1844 pints (39.31481 / 0.56826125) at 60 %: 60 × 1.2 / (69.1844 × 0.4) = 2.6017. */
    @Test
    void the_pub_pays_by_the_container_and_charges_by_the_pint() {
        BarPrices bar = BITTER.pub("firkin", "£60.00", "60 %");
        assertEquals(gbp("2.60"), bar.lines().get(0).price().pump());
        assertEquals("pint", bar.lines().get(0).soldBy());
        BarPrices both = BITTER.at("firkin", "£60").at("500 mL bottle", "£1.50").pub("60 %");
        assertEquals(2, both.lines().size());
        // A bottle is sold as it is: 1.50 / 0.4 × 1.2
        assertEquals(gbp("4.50"), both.lines().get(1).price().pump());
        assertEquals("bottle", both.lines().get(1).soldBy());
    }

    /**
     * The trade's worked example: a £60 firkin that gives 70 pints at £3.20 leaves 67.857 % ; and £1.00 a pint at 60 % is
     * £3.00 on the bar. A sediment of 40.91481 - 70 × 0.56826125 = 1.1365225 L leaves those 70 pints.
     */
    @Test
    void seventy_pints_at_three_pounds_twenty_leave_the_gross_profit_of_the_example() throws IOException {
        copySample();
        Path containers = folder.resolve("containers.csv");
        Files.writeString(
                containers,
                Files.readString(containers)
                        .replace("firkin,cask,40.91481 L,40.91 L,1.6 L", "firkin,cask,40.91481 L,40.91 L,1.1365225 L"));
        SellingPrices prices = bitter(Brewery.open(folder)).pricing();
        BigDecimal left = prices.pumpAt("firkin", "£60.00", "£3.20")
                .lines()
                .get(0)
                .price()
                .grossProfit();
        assertFigure("67.857", left.movePointRight(2), 3);
        assertEquals(gbp("70.00"), prices.mostFor("firkin", "£3.00", "60 %"));
    }

    @Test
    void break_even_is_whole_firkins() {
        // 48000 / 65.25618 = 735.56; 54000 / 65.25618 = 827.51
        assertEquals(
                736,
                BITTER.breakEven("firkin", "£95.00", "£48000")
                        .breakEven()
                        .containers()
                        .intValueExact());
        assertEquals(
                828,
                BITTER.breakEven("firkin", "£95.00", "£48000", "£6000")
                        .breakEven()
                        .containers()
                        .intValueExact());
    }

    @Test
    void discounts_come_off_the_list_price() {
        assertEquals(
                List.of(gbp("90.25"), gbp("85.50")),
                BITTER.discounts("firkin", "£95.00", "10: 5 %; 50: 10 %").rungs().stream()
                        .map(rung -> rung.price().net())
                        .toList());
    }

    @Test
    void every_step_of_the_yield_has_its_worth() {
        assertEquals(4, BITTER.losses().rows().size());
    }

    /** The bands of Finance (No. 2) Act 2023 Sch. 7 begin at 3.5 and 8.5 %. */
    @Test
    void duty_steps_show_in_a_table_of_strengths() {
        assertEquals(List.of("3.0", "3.4", "3.5", "4.0", "4.5"), strengths("3.0 %", "4.5 %", "0.5 %"));
        assertEquals(List.of("8.0", "8.4", "8.5", "8.8"), strengths("8.0 %", "8.8 %", "0.8 %"));
        for (StrengthTable table :
                List.of(BITTER.strengths("3.0 %", "4.5 %", "0.5 %"), BITTER.strengths("8.0 %", "8.8 %", "0.8 %"))) {
            assertEquals(
                    List.of(table.rows().get(2).step().strength()),
                    table.rows().stream()
                            .map(StrengthTable.Row::step)
                            .filter(row -> row.stepPerPint().isPresent())
                            .map(StrengthStep.Row::strength)
                            .toList());
        }
    }

    private static List<String> strengths(String least, String most, String step) {
        return BITTER.strengths(least, most, step).rows().stream()
                .map(row -> row.step().strength().toPlainString())
                .toList();
    }

    /** Also for a stout whose primings ferment in the bottle: every row pays duty on its own strength and no other. */
    @Test
    void a_beer_made_to_a_strength_has_it_for_duty() {
        for (String beer : List.of("Wickgate Bitter", "Oatlamp Stout", "Tallow Mild", "Trimwick Pale")) {
            StrengthTable table = LANTERNFOLD
                    .brew(beer)
                    .on("Main")
                    .length("20 brl")
                    .day("2026-11-25")
                    .pricing()
                    .strengths("3.0 %", "5.5 %", "0.1 %");
            assertEquals(26, table.rows().size());
            for (StrengthTable.Row row : table.rows()) {
                row.step().sheet().containers().forEach(container -> {
                    assertEquals(
                            row.step().strength(), container.duty().expected().strength(), beer);
                    assertEquals(row.step().strength(), container.duty().strength(), beer);
                });
            }
        }
    }

    /** 29.5 × 0.129 = 3.8055 and 29.4 × 0.129 = 3.7926 by HMRC's Notice 226 para 30.3: 3.8 % is just reached at 29.5. */
    @Test
    void the_gravity_is_the_least_that_reaches_the_strength() {
        StrengthFactorTable hmrc = LANTERNFOLD.duty().factors().get(0);
        assertEquals(
                29.5 / 0.8,
                StrengthTable.ogFor(new BigDecimal("3.8"), 0.8, 0, hmrc).excessDegrees(),
                1e-9);
        assertEquals(
                (29.5 - 2.5) / 0.8,
                StrengthTable.ogFor(new BigDecimal("3.8"), 0.8, 2.5, hmrc).excessDegrees(),
                1e-9);
        for (int tenths = 1; tenths < 120; tenths++) {
            BigDecimal strength = BigDecimal.valueOf(tenths, 1);
            double fall = StrengthTable.ogFor(strength, 1, 0, hmrc).excessDegrees();
            assertEquals(
                    strength,
                    StrengthForDuty.of(Gravity.ofDegrees(fall), Gravity.ofDegrees(0), hmrc)
                            .strength());
            assertTrue(StrengthForDuty.of(Gravity.ofDegrees(fall - 0.1), Gravity.ofDegrees(0), hmrc)
                            .strength()
                            .compareTo(strength)
                    < 0);
        }
    }

    @Test
    void strengths_that_duty_does_not_know_are_refused() {
        assertRefused("tenths of a per cent", () -> BITTER.strengths("3.05 %", "4 %", "0.1 %"));
        assertRefused("the weakest first", () -> BITTER.strengths("5 %", "4 %", "0.1 %"));
        assertRefused("tenths of a per cent", () -> BITTER.strengths("3 %", "4 %", "0 %"));
        assertRefused("up to 200", () -> BITTER.strengths("0.1 %", "40 %", "0.1 %"));
    }

    private void copySample() throws IOException {
        try (Stream<Path> files = Files.walk(LanternfoldTest.FOLDER)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy =
                        folder.resolve(LanternfoldTest.FOLDER.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
    }
}
