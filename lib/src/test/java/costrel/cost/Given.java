package costrel.cost;

import costrel.ReferenceTable;
import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceRow;
import costrel.duty.DraughtRule;
import costrel.duty.DutyInput;
import costrel.duty.DutyRate;
import costrel.duty.DutySchedule;
import costrel.duty.ProductionYears;
import costrel.duty.ReliefBand;
import costrel.explain.CostFinding;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.wort.Gravity;
import costrel.wort.StrengthFactor;
import costrel.wort.StrengthFactorTable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Assertions;

/** What the tests of buying, duty and costs start from: the shipped duty tables and short ways to write prices and containers. */
public final class Given {
    public static final CurrencyUnit GBP = CurrencyUnit.GBP;

    /** An invented A: a brewery of 10,000 hL a year at 4.2 % makes 420 hL of pure alcohol. */
    public static final BigDecimal A_420 = BigDecimal.valueOf(420);

    private static final List<Map<String, String>> CONTAINERS = ReferenceTable.read("ingredient-tables/containers.csv");

    private Given() {}

    public static BigDecimal dec(String text) {
        return new BigDecimal(text);
    }

    public static LocalDate day(String iso) {
        return LocalDate.parse(iso);
    }

    public static String cell(Map<String, String> row, String column) {
        String cell = row.get(column);
        if (cell == null) {
            throw new AssertionError("expected a column '" + column + "', found " + row.keySet());
        }
        return cell;
    }

    /** The number of a cell such as "19.45 GBP" or "3.5 %". */
    public static BigDecimal figure(Map<String, String> row, String column) {
        return dec(cell(row, column).split(" ", 2)[0]);
    }

    private static Optional<LocalDate> until(Map<String, String> row) {
        return Optional.of(cell(row, "valid until"))
                .filter(text -> !text.isEmpty())
                .map(LocalDate::parse);
    }

    /** The tables of the United Kingdom as they ship. */
    public static DutySchedule uk() {
        return new DutySchedule("UK", GBP, rates("UK"), bands("UK"), List.of(factors()));
    }

    public static List<DutyRate> rates(String country) {
        return ReferenceTable.read("ingredient-tables/duty-rates.csv").stream()
                .filter(row -> cell(row, "country").equals(country))
                .map(row -> new DutyRate(
                        day(cell(row, "valid from")),
                        until(row),
                        figure(row, "strength from"),
                        Optional.of(cell(row, "strength under"))
                                .filter(text -> !text.isEmpty())
                                .map(text -> figure(row, "strength under")),
                        DraughtRule.valueOf(cell(row, "draught").toUpperCase(Locale.ROOT)),
                        figure(row, "rate"),
                        cell(row, "source")))
                .toList();
    }

    public static List<ReliefBand> bands(String country) {
        return ReferenceTable.read("ingredient-tables/duty-reliefs.csv").stream()
                .filter(row -> cell(row, "country").equals(country))
                .map(row -> new ReliefBand(
                        day(cell(row, "valid from")),
                        until(row),
                        figure(row, "strength from"),
                        figure(row, "strength under"),
                        cell(row, "draught").equals("yes"),
                        figure(row, "over"),
                        figure(row, "up to"),
                        figure(row, "marginal"),
                        figure(row, "cumulative"),
                        cell(row, "source")))
                .toList();
    }

    public static StrengthFactorTable factors() {
        List<StrengthFactor> factors = new ArrayList<>();
        for (Map<String, String> row : ReferenceTable.read("ingredient-tables/strength-factors.csv")) {
            factors.add(new StrengthFactor(
                    figure(row, "difference from").doubleValue(),
                    figure(row, "difference to").doubleValue(),
                    figure(row, "factor").doubleValue()));
        }
        return new StrengthFactorTable("HMRC", day("2023-08-01"), Optional.empty(), factors, "HMRC Notice 226");
    }

    /** A shipped container. */
    public static Container container(String name) {
        return container(name, "0");
    }

    /** A shipped container with so many litres of sediment. */
    public static Container container(String name, String sedimentL) {
        Map<String, String> row = CONTAINERS.stream()
                .filter(candidate -> cell(candidate, "name").equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("expected a container '" + name + "'"));
        return new Container(
                name,
                ContainerKind.valueOf(cell(row, "kind").toUpperCase(Locale.ROOT)),
                litres(row, "nominal"),
                litres(row, "label"),
                dec(sedimentL),
                BigDecimal.ZERO,
                cell(row, "conditioned").equals("yes"),
                cell(row, "draught").equals("yes"),
                List.of(),
                List.of());
    }

    private static BigDecimal litres(Map<String, String> row, String column) {
        BigDecimal figure = figure(row, column);
        return cell(row, column).endsWith(" mL") ? figure.movePointLeft(3) : figure;
    }

    /** A container that holds and declares so many litres. */
    public static Container holding(String litres, boolean conditioned, boolean draught) {
        return new Container(
                litres + " L",
                ContainerKind.KEG,
                dec(litres),
                dec(litres),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                conditioned,
                draught,
                List.of(),
                List.of());
    }

    /** Production of the year that counts for beer brewed on a day. */
    public static ProductionYears made(LocalDate brewedOn, BigDecimal hl) {
        return new ProductionYears(Map.of(ProductionYears.yearOf(brewedOn).minusYears(1), hl));
    }

    /** A weak beer, so that a declared strength is never under the expected one: 30 less 25 degrees is 0.6 %. */
    public static DutyInput declared(
            Container container, int count, String strength, LocalDate day, ProductionYears production) {
        return new DutyInput(
                container,
                count,
                Gravity.ofDegrees(30),
                Gravity.ofDegrees(25),
                Optional.of(dec(strength)),
                day,
                day,
                day,
                production,
                true,
                Optional.empty());
    }

    /** A price of one supplier, valid all of 2026, with no minimum and no delivery. */
    public static PriceRow price(String item, String supplier, String content, PackUnit unit, String price) {
        return new PriceRow(
                item,
                supplier,
                new Pack(dec(content), unit),
                dec(price),
                GBP,
                day("2026-01-01"),
                Optional.of(day("2026-12-31")),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                "prices.csv:" + item);
    }

    public static Rate rate(String item, RateGroup group, String amount, RateBasis basis) {
        return new Rate(
                item, group, dec(amount), GBP, basis, false, day("2026-01-01"), Optional.empty(), "rates.csv:" + item);
    }

    public static void assertFigure(String expected, BigDecimal found) {
        Assertions.assertEquals(0, dec(expected).compareTo(found), "expected " + expected + ", found " + found);
    }

    public static void assertSays(String words, List<CostFinding> findings) {
        Assertions.assertTrue(
                findings.stream().anyMatch(finding -> finding.text().contains(words)),
                () -> "expected one that says '" + words + "', found "
                        + findings.stream().map(CostFinding::text).toList());
    }

    public static void assertSilent(String words, List<CostFinding> findings) {
        Assertions.assertTrue(
                findings.stream().noneMatch(finding -> finding.text().contains(words)),
                () -> "expected none that says '" + words + "', found "
                        + findings.stream().map(CostFinding::text).toList());
    }

    public static void assertRefused(String words, Runnable refused) {
        IllegalArgumentException fault = Assertions.assertThrows(IllegalArgumentException.class, refused::run);
        String message = String.valueOf(fault.getMessage());
        Assertions.assertTrue(message.contains(words), () -> "expected '" + words + "', found '" + message + "'");
    }
}
