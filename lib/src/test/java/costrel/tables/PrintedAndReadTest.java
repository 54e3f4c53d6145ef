package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceRow;
import costrel.buying.PriceVat;
import costrel.duty.DutyRounding;
import costrel.duty.ProductionYears;
import costrel.harvest.PlannedBrew;
import costrel.recipe.Amount;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What is printed reads back as it was: to the last digit, cent and character. */
class PrintedAndReadTest {
    private static final long SEED = Long.getLong("seed", 4180L);
    private static final List<CurrencyUnit> CURRENCIES =
            List.of(CurrencyUnit.GBP, CurrencyUnit.EUR, CurrencyUnit.USD, CurrencyUnit.JPY, CurrencyUnit.of("KWD"));

    private interface Trial {
        void run(Random random, String at);
    }

    private static void each(int cases, Trial trial) {
        for (int i = 0; i < cases; i++) {
            long seed = SEED + i;
            String at = "-Dseed=" + seed;
            try {
                trial.run(new Random(seed), at);
            } catch (RuntimeException e) {
                throw new AssertionError(at + ": " + e.getMessage(), e);
            }
        }
    }

    /** A number of any size that a table holds, down to a millionth and up to a million. */
    private static double number(Random random) {
        return random.nextInt(20) == 0 ? random.nextInt(1000) : Math.pow(10, 12 * random.nextDouble() - 6);
    }

    private static BigDecimal decimal(Random random, int digits, int most) {
        return new BigDecimal(new java.math.BigInteger(digits * 3, random), random.nextInt(most + 1));
    }

    private static LocalDate date(Random random) {
        return LocalDate.of(2000, 1, 1).plusDays(random.nextInt(36_525));
    }

    @Test
    void money_in_any_currency() {
        each(3000, (random, at) -> {
            CurrencyUnit currency = CURRENCIES.get(random.nextInt(CURRENCIES.size()));
            Money money = Money.ofMinor(currency, random.nextLong(2_000_000_000_000L) - 1_000_000_000_000L);
            String amount = money.getAmount().toPlainString();
            assertEquals(money, MoneyText.parse("price", amount + " " + currency, currency), at);
            assertEquals(money, MoneyText.parse("price", money.toString(), currency), at);
            if (currency.equals(CurrencyUnit.GBP)) {
                assertEquals(money, MoneyText.parse("price", amount.replaceFirst("^(-?)", "$1£"), currency), at);
            }
        });
    }

    @Test
    void every_day_of_a_century() {
        each(3000, (random, at) -> {
            LocalDate day = date(random);
            assertEquals(day, Cells.DATE.read(day.toString()), at);
        });
    }

    @Test
    void amounts_of_every_kind_to_the_last_digit() {
        each(3000, (random, at) -> {
            double figure = number(random);
            for (Amount amount : List.of(
                    new Amount.OfMass(figure),
                    new Amount.OfVolume(figure),
                    new Amount.OfRate(figure),
                    new Amount.OfVolumeRate(figure),
                    new Amount.OfOil(figure),
                    new Amount.OfCells(figure),
                    new Amount.OfBitterness(random.nextDouble() * 90),
                    new Amount.OfGrist(random.nextDouble()))) {
                assertEquals(amount, AmountText.parse(AmountText.print(amount)), at);
            }
        });
    }

    @Test
    void roundings_of_every_kind() {
        for (RoundingMode mode : new RoundingMode[] {RoundingMode.DOWN, RoundingMode.UP, RoundingMode.HALF_UP}) {
            for (int places = 0; places <= 9; places++) {
                DutyRounding rounding = new DutyRounding(places, mode);
                assertEquals(rounding, DutyRounding.parse(rounding.label()));
            }
        }
    }

    /** RFC 4180 lets a quoted cell hold anything; what a spreadsheet would run is guarded on the way and freed again. */
    @Test
    void rows_of_any_characters() {
        String[] pieces = {
            "\"",
            ",",
            "\r",
            "\n",
            "\r\n",
            "'",
            "=",
            "+",
            "-",
            "@",
            "#",
            "\t",
            " ",
            "",
            "a",
            "7",
            "£",
            "°",
            "\u00a0",
            "käse",
            "\ud83c\udf7a",
            ";",
            "\\",
            "1.5 kg",
            "-2.50",
            "NULL",
            "\u2028"
        };
        each(4000, (random, at) -> {
            List<List<String>> rows = new ArrayList<>();
            CsvOut out = new CsvOut();
            for (int r = 1 + random.nextInt(4); r > 0; r--) {
                List<String> row = new ArrayList<>();
                for (int c = 1 + random.nextInt(4); c > 0; c--) {
                    StringBuilder cell = new StringBuilder();
                    for (int p = random.nextInt(5); p > 0; p--) {
                        cell.append(pieces[random.nextInt(pieces.length)]);
                    }
                    row.add(cell.toString());
                }
                out.row(row.toArray());
                rows.add(row);
            }
            assertEquals(rows, CsvIn.rows(out.text()), at);
        });
    }

    @Test
    void price_lists_row_for_row() {
        PackUnit[] units = {PackUnit.KILOGRAM, PackUnit.LITRE, PackUnit.EACH, PackUnit.KILOWATT_HOUR, PackUnit.HOUR};
        each(150, (random, at) -> {
            CsvOut out = new CsvOut()
                    .row(
                            "item",
                            "supplier",
                            "pack",
                            "price",
                            "currency",
                            "valid from",
                            "valid until",
                            "minimum quantity",
                            "delivery",
                            "VAT",
                            "price with VAT",
                            "VAT recoverable",
                            "contract quantity");
            List<PriceRow> written = new ArrayList<>();
            for (int i = 0; i < 20; i++) {
                PackUnit unit = units[random.nextInt(units.length)];
                LocalDate from = date(random);
                PriceRow row = new PriceRow(
                        "thing, no. " + i,
                        random.nextBoolean() ? "Ash & \"Sons\"" : "=Elm",
                        new Pack(decimal(random, 4, 4).add(BigDecimal.ONE), unit),
                        decimal(random, 6, 4).add(BigDecimal.ONE),
                        CURRENCIES.get(random.nextInt(CURRENCIES.size())),
                        from,
                        random.nextBoolean() ? Optional.empty() : Optional.of(from.plusDays(random.nextInt(900))),
                        random.nextBoolean() ? BigDecimal.ZERO : decimal(random, 4, 2),
                        random.nextBoolean() ? BigDecimal.ZERO : decimal(random, 3, 2),
                        random.nextBoolean()
                                ? Optional.empty()
                                : Optional.of(new PriceVat(
                                        decimal(random, 2, 1).min(BigDecimal.TEN),
                                        random.nextBoolean(),
                                        random.nextBoolean())),
                        random.nextBoolean()
                                ? Optional.empty()
                                : Optional.of(decimal(random, 4, 2).add(BigDecimal.ONE)),
                        "list.csv:" + (i + 2));
                written.add(row);
                out.row(
                        row.item(),
                        row.supplier(),
                        row.pack().content().toPlainString() + " " + unit.label(),
                        row.price().toPlainString(),
                        row.currency(),
                        row.validFrom(),
                        row.validUntil().map(LocalDate::toString).orElse(""),
                        row.minimumQuantity().signum() == 0
                                ? ""
                                : row.minimumQuantity().toPlainString() + " " + unit.label(),
                        row.deliveryPerPack().toPlainString() + " " + row.currency(),
                        row.vat()
                                .map(vat -> vat.percent().toPlainString() + " %")
                                .orElse(""),
                        row.vat().map(vat -> vat.included() ? "yes" : "no").orElse(""),
                        row.vat().map(vat -> vat.recoverable() ? "yes" : "no").orElse(""),
                        row.contractQuantity()
                                .map(quantity -> quantity.toPlainString() + " " + unit.label())
                                .orElse(""));
            }
            List<PriceRow> read =
                    PriceReader.read(CsvSource.text("list.csv", out.text())).orThrow();
            assertEquals(written.size(), read.size(), at);
            for (int i = 0; i < read.size(); i++) {
                assertSamePrice(written.get(i), read.get(i), at + ", row " + i);
            }
        });
    }

    private static void assertSamePrice(PriceRow written, PriceRow read, String at) {
        assertEquals(written.item(), read.item(), at);
        assertEquals(written.supplier(), read.supplier(), at);
        assertEquals(written.pack().unit(), read.pack().unit(), at);
        assertEquals(0, written.pack().content().compareTo(read.pack().content()), at + ": " + read.pack());
        assertEquals(0, written.price().compareTo(read.price()), at + ": " + read.price());
        assertEquals(written.currency(), read.currency(), at);
        assertEquals(written.validFrom(), read.validFrom(), at);
        assertEquals(written.validUntil(), read.validUntil(), at);
        assertEquals(
                0, written.minimumQuantity().compareTo(read.minimumQuantity()), at + ": " + read.minimumQuantity());
        assertEquals(
                0, written.deliveryPerPack().compareTo(read.deliveryPerPack()), at + ": " + read.deliveryPerPack());
        assertEquals(
                written.vat().map(vat -> vat.percent().stripTrailingZeros()),
                read.vat().map(vat -> vat.percent().stripTrailingZeros()),
                at);
        assertEquals(written.vat().map(PriceVat::included), read.vat().map(PriceVat::included), at);
        assertEquals(written.vat().map(PriceVat::recoverable), read.vat().map(PriceVat::recoverable), at);
        assertEquals(
                written.contractQuantity().map(BigDecimal::stripTrailingZeros),
                read.contractQuantity().map(BigDecimal::stripTrailingZeros),
                at);
    }

    @Test
    void years_of_production_and_brewing_plans() {
        each(300, (random, at) -> {
            Map<LocalDate, BigDecimal> made = new TreeMap<>();
            CsvOut years = new CsvOut().row("production year from", "pure alcohol");
            for (int year = 2015; year < 2027; year++) {
                BigDecimal hl = decimal(random, 5, 4).stripTrailingZeros();
                made.put(LocalDate.of(year, 2, 1), hl);
                years.row(LocalDate.of(year, 2, 1), hl.toPlainString() + " hL");
            }
            ProductionYears read = ProductionReader.read(CsvSource.text("production.csv", years.text()))
                    .orThrow();
            assertEquals(made.keySet(), read.pureAlcoholHl().keySet(), at);
            made.forEach((year, hl) -> assertEquals(
                    0,
                    hl.compareTo(read.pureAlcoholHl().getOrDefault(year, BigDecimal.TEN.negate())),
                    at + ", " + year));

            List<PlannedBrew> plan = new ArrayList<>();
            CsvOut rows = new CsvOut().row("gyle", "beer", "plant", "day", "brew length");
            for (int i = 0; i < 10; i++) {
                PlannedBrew brew = new PlannedBrew("G" + i, "+Bitter", "Main, old", date(random), number(random) + 1);
                plan.add(brew);
                rows.row(brew.id(), brew.beer(), brew.plant(), brew.day(), CsvOut.number(brew.litres()) + " L");
            }
            assertEquals(
                    plan,
                    BrewingPlanReader.read(CsvSource.text("plan.csv", rows.text()))
                            .orThrow(),
                    at);
            assertTrue(plan.size() == 10, at);
        });
    }
}
