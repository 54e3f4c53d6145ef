package costrel.pricing;

import static costrel.cost.Given.dec;

import costrel.buying.Pack;
import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.PriceRow;
import costrel.cost.Batch;
import costrel.cost.BillGroup;
import costrel.cost.BillLine;
import costrel.cost.CostOptions;
import costrel.cost.CostSheet;
import costrel.cost.Coster;
import costrel.cost.PackageItem;
import costrel.cost.Rate;
import costrel.cost.RateBasis;
import costrel.cost.RateGroup;
import costrel.duty.DutySchedule;
import costrel.duty.ProductionYears;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.packaging.PackagingShare;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Assertions;

/** What the tests of this package start from: an invented beer with its prices, and short ways to write figures. */
final class Given {
    static final CurrencyUnit GBP = CurrencyUnit.GBP;
    static final LocalDate DAY = LocalDate.parse("2026-11-25");
    static final long SEED = Long.getLong("seed", 4L);

    /** The duty tables of the United Kingdom as they ship. */
    static final DutySchedule UK = costrel.cost.Given.uk();

    private Given() {}

    static Money gbp(String text) {
        return Money.of(GBP, dec(text));
    }

    static Container firkin(String sedimentL) {
        return container("firkin", ContainerKind.CASK, "40.91481", sedimentL, true, true);
    }

    static Container keg() {
        return container("30 L keg", ContainerKind.KEG, "30", "0", false, true);
    }

    static Container bottle() {
        return container("500 mL bottle", ContainerKind.BOTTLE, "0.5", "0.01", true, false);
    }

    private static Container container(
            String name, ContainerKind kind, String litres, String sedimentL, boolean conditioned, boolean draught) {
        return new Container(
                name,
                kind,
                dec(litres),
                dec(litres),
                dec(sedimentL),
                BigDecimal.ZERO,
                conditioned,
                draught,
                List.of(),
                List.of());
    }

    static BillLine uses(BillGroup group, String item, double kg) {
        return new BillLine(group, item, List.of(item), kg, PackUnit.KILOGRAM, "");
    }

    static PriceRow price(String item, PackUnit unit, String perUnit) {
        return new PriceRow(
                item,
                "Ash & Sons",
                new Pack(BigDecimal.ONE, unit),
                dec(perUnit),
                GBP,
                LocalDate.parse("2020-01-01"),
                Optional.empty(),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                "prices.csv:" + item);
    }

    static Rate rate(String item, RateGroup group, String amount, RateBasis basis, boolean fixed) {
        return new Rate(
                item,
                group,
                dec(amount),
                GBP,
                basis,
                fixed,
                LocalDate.parse("2020-01-01"),
                Optional.empty(),
                "rates.csv:" + item);
    }

    /** A gyle with all that is needed to cost it. */
    record Gyle(
            double collectedL,
            double rackedL,
            String strength,
            double tankDays,
            List<BillLine> bill,
            List<PriceRow> prices,
            List<Rate> rates,
            List<PackagingShare> plan,
            List<PackageItem> packages,
            BigDecimal madeHl) {

        CostSheet sheet() {
            return sheet(CostOptions.in(GBP));
        }

        CostSheet sheet(CostOptions options) {
            Batch batch = new Batch(
                    "Dray Bitter",
                    DAY,
                    DAY,
                    DAY,
                    collectedL,
                    rackedL,
                    200,
                    OptionalDouble.of(tankDays),
                    // Weaker than any label here, so that the label is what duty goes by.
                    Gravity.ofDegrees(12),
                    Gravity.ofDegrees(10),
                    Optional.of(dec(strength)),
                    bill,
                    plan,
                    List.of());
            return Coster.cost(
                    batch,
                    PriceList.of(prices),
                    rates,
                    packages,
                    UK,
                    new ProductionYears(Map.of(ProductionYears.yearOf(DAY).minusYears(1), madeHl)),
                    options);
        }

        Gyle at(String otherStrength) {
            return new Gyle(collectedL, rackedL, otherStrength, tankDays, bill, prices, rates, plan, packages, madeHl);
        }

        Gyle racking(double litres) {
            return new Gyle(collectedL, litres, strength, tankDays, bill, prices, rates, plan, packages, madeHl);
        }

        Gyle with(List<BillLine> otherBill) {
            return new Gyle(collectedL, rackedL, strength, tankDays, otherBill, prices, rates, plan, packages, madeHl);
        }

        Gyle buying(List<PriceRow> otherPrices) {
            return new Gyle(collectedL, rackedL, strength, tankDays, bill, otherPrices, rates, plan, packages, madeHl);
        }

        Gyle into(List<PackagingShare> otherPlan) {
            return new Gyle(collectedL, rackedL, strength, tankDays, bill, prices, rates, otherPlan, packages, madeHl);
        }
    }

    /** An invented bitter of 1,640 L in firkins, kegs and bottles. */
    static Gyle bitter() {
        return new Gyle(
                1640,
                1560,
                "4.2",
                14,
                List.of(
                        uses(BillGroup.MASHED_GOODS, "pale malt", 230),
                        uses(BillGroup.MASHED_GOODS, "crystal malt", 18),
                        uses(BillGroup.HOPS, "Goldings", 3.4),
                        uses(BillGroup.YEAST, "yeast", 2)),
                List.of(
                        price("pale malt", PackUnit.KILOGRAM, "0.82"),
                        price("crystal malt", PackUnit.KILOGRAM, "1.24"),
                        price("Goldings", PackUnit.KILOGRAM, "17.5"),
                        price("yeast", PackUnit.KILOGRAM, "9.1"),
                        price("shive", PackUnit.EACH, "0.11"),
                        price("collar", PackUnit.EACH, "0.9"),
                        price("bottle and crown", PackUnit.EACH, "0.23")),
                List.of(
                        rate("gas", RateGroup.ENERGY, "2.4", RateBasis.PER_HL_COLLECTED, false),
                        rate("brewer", RateGroup.LABOUR, "160", RateBasis.PER_GYLE, false),
                        rate("rent", RateGroup.OVERHEAD, "9", RateBasis.PER_TANK_DAY, true),
                        rate("spent grain", RateGroup.CREDIT, "0.02", RateBasis.PER_KG_OF_GRIST, false),
                        rate("cask washing", RateGroup.PACKAGING, "0.7", RateBasis.PER_CASK, false)),
                List.of(
                        new PackagingShare(firkin("1.7"), 0.6, 0.01),
                        new PackagingShare(keg(), 0.25, 0.02),
                        new PackagingShare(bottle(), 0.15, 0.03)),
                List.of(
                        new PackageItem("firkin", "shive", BigDecimal.ONE, BigDecimal.ONE, PackUnit.EACH),
                        new PackageItem("30 L keg", "collar", BigDecimal.ONE, BigDecimal.ONE, PackUnit.EACH),
                        new PackageItem(
                                "500 mL bottle", "bottle and crown", BigDecimal.ONE, BigDecimal.ONE, PackUnit.EACH)),
                dec("420"));
    }

    /** Equal within so much. */
    static void assertNear(BigDecimal expected, BigDecimal found, BigDecimal within, String which) {
        Assertions.assertTrue(
                expected.subtract(found).abs().compareTo(within) <= 0,
                () -> which + ": expected " + expected + ", found " + found);
    }
}
