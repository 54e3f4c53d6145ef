package costrel.cost;

import static costrel.cost.Given.GBP;
import static costrel.cost.Given.container;
import static costrel.cost.Given.day;
import static costrel.cost.Given.made;
import static costrel.cost.Given.price;
import static costrel.cost.Given.rate;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.PriceRow;
import costrel.duty.DutySchedule;
import costrel.duty.ProductionYears;
import costrel.packaging.PackagingShare;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** What must hold on any sheet, tried on random gyles; {@code -Dseed=} repeats one. */
class CostSheetInvariantsTest {
    private static final LocalDate DAY = day("2026-11-25");
    private static final long SEED = Long.getLong("seed", 4L);
    private static final DutySchedule UK = Given.uk();

    /** A random gyle with everything it needs. */
    record Case(
            Batch batch, List<PriceRow> prices, List<Rate> rates, List<PackageItem> packages, ProductionYears made) {

        CostSheet sheet() {
            return Coster.cost(batch, PriceList.of(prices), rates, packages, UK, made, CostOptions.in(GBP));
        }

        Case with(List<BillLine> bill) {
            Batch b = batch;
            return new Case(
                    new Batch(
                            b.beer(),
                            b.brewedOn(),
                            b.costedOn(),
                            b.dutyOn(),
                            b.collectedL(),
                            b.rackedL(),
                            b.gristKg(),
                            b.tankDays(),
                            b.og(),
                            b.pg(),
                            b.declaredStrength(),
                            bill,
                            b.packaging(),
                            b.allergens()),
                    prices,
                    rates,
                    packages,
                    made);
        }
    }

    private static String money(Random random, int most) {
        return BigDecimal.valueOf(1 + random.nextInt(most * 1000), 3).toPlainString();
    }

    static Case random(Random random) {
        List<BillLine> bill = new ArrayList<>();
        List<PriceRow> prices = new ArrayList<>();
        BillGroup[] groups = BillGroup.values();
        int lines = 1 + random.nextInt(20);
        for (int i = 0; i < lines; i++) {
            String item = "thing " + i;
            bill.add(new BillLine(
                    groups[random.nextInt(groups.length)],
                    item,
                    List.of(item),
                    200 * random.nextDouble(),
                    PackUnit.KILOGRAM,
                    ""));
            prices.add(
                    price(item, "Ash", String.valueOf(1 + random.nextInt(30)), PackUnit.KILOGRAM, money(random, 40)));
        }
        List<Rate> rates = new ArrayList<>();
        RateGroup[] rateGroups = RateGroup.values();
        RateBasis[] bases = RateBasis.values();
        for (int i = 0; i < random.nextInt(10); i++) {
            rates.add(rate(
                    "rate " + i,
                    rateGroups[random.nextInt(rateGroups.length)],
                    money(random, 3),
                    bases[random.nextInt(bases.length)]));
        }
        List<PackagingShare> plan = new ArrayList<>();
        List<PackageItem> packages = new ArrayList<>();
        List<String> names = List.of("firkin", "30 L keg", "500 mL bottle", "pin", "500 mL bottle-conditioned");
        int types = 1 + random.nextInt(names.size());
        double left = 1;
        for (int i = 0; i < types; i++) {
            double share = i == types - 1 ? left : left * (0.05 + 0.9 * random.nextDouble());
            left -= share;
            plan.add(new PackagingShare(
                    container(names.get(i), i % 2 == 0 ? "0.01" : "0"), share, 0.03 * random.nextDouble()));
            packages.add(new PackageItem(
                    names.get(i),
                    "part " + i,
                    BigDecimal.ONE,
                    BigDecimal.valueOf(1 + random.nextInt(13)),
                    PackUnit.EACH));
            prices.add(price("part " + i, "Cedar", "1000", PackUnit.EACH, money(random, 300)));
        }
        double collectedL = 400 + 5000 * random.nextDouble();
        Batch batch = new Batch(
                "beer",
                DAY,
                DAY,
                DAY,
                collectedL,
                collectedL * (0.85 + 0.15 * random.nextDouble()),
                900 * random.nextDouble(),
                OptionalDouble.of(random.nextInt(30)),
                Gravity.ofDegrees(30 + random.nextInt(40)),
                Gravity.ofDegrees(8),
                random.nextBoolean() ? Optional.of(BigDecimal.valueOf(28 + random.nextInt(50), 1)) : Optional.empty(),
                bill,
                plan,
                List.of());
        return new Case(batch, prices, rates, packages, made(DAY, BigDecimal.valueOf(1 + random.nextInt(6000))));
    }

    private static Money sum(List<CostLine> lines) {
        return lines.stream().map(CostLine::value).reduce(Money.zero(GBP), Money::plus);
    }

    @Test
    void every_total_is_the_sum_of_its_printed_lines() {
        Random random = new Random(SEED);
        for (int i = 0; i < Cases.upTo(300); i++) {
            CostSheet sheet = random(random).sheet();
            String which = "seed " + SEED + ", case " + i;
            assertEquals(sheet.gyleCost(), sum(sheet.gyleLines()), which);
            assertEquals(sheet.total(), sum(sheet.lines()), which);
            Money shares = Money.zero(GBP);
            Money totals = Money.zero(GBP);
            Money groups = Money.zero(GBP);
            for (ContainerCost container : sheet.containers()) {
                assertEquals(container.total(), container.gyleShare().plus(sum(container.lines())), which);
                shares = shares.plus(container.gyleShare());
                totals = totals.plus(container.total());
            }
            for (CostGroup group : CostGroup.values()) {
                groups = groups.plus(sheet.sumOf(group));
            }
            assertEquals(sheet.gyleCost(), shares, which);
            assertEquals(sheet.total(), totals, which);
            assertEquals(sheet.total(), groups, which);
        }
    }

    @Test
    void each_line_is_its_amount_at_its_price_to_half_a_penny() {
        Random random = new Random(SEED);
        BigDecimal halfAPenny = new BigDecimal("0.005");
        for (int i = 0; i < Cases.upTo(300); i++) {
            for (CostLine line : random(random).sheet().lines()) {
                if (line.unitPrice().isPresent() && line.group() != CostGroup.DUTY) {
                    BigDecimal exact = line.unitPrice().get().value().multiply(line.amount());
                    BigDecimal off = exact.subtract(line.value().getAmount()).abs();
                    assertTrue(
                            off.setScale(12, RoundingMode.HALF_UP).compareTo(halfAPenny) <= 0,
                            "seed " + SEED + ", case " + i + ": " + line.item() + " off by " + off);
                }
            }
        }
    }

    @Test
    void every_share_but_the_last_is_rounded_halves_up_and_the_last_takes_what_is_left() {
        Random random = new Random(SEED);
        for (int i = 0; i < Cases.upTo(300); i++) {
            CostSheet sheet = random(random).sheet();
            List<ContainerCost> containers = sheet.containers();
            for (ContainerCost container : containers.subList(0, containers.size() - 1)) {
                assertEquals(
                        sheet.gyleCost().multipliedBy(container.share(), RoundingMode.HALF_UP),
                        container.gyleShare(),
                        "seed " + SEED + ", case " + i);
            }
        }
    }

    @Test
    void neither_the_order_of_the_bill_nor_that_of_the_lists_changes_a_total() {
        Random random = new Random(SEED);
        for (int i = 0; i < Cases.upTo(100); i++) {
            Case given = random(random);
            List<BillLine> bill = new ArrayList<>(given.batch().bill());
            Collections.shuffle(bill, random);
            List<PriceRow> prices = new ArrayList<>(given.prices());
            Collections.shuffle(prices, random);
            List<Rate> rates = new ArrayList<>(given.rates());
            Collections.shuffle(rates, random);
            Case turned = new Case(given.batch(), prices, rates, given.packages(), given.made()).with(bill);
            assertEquals(given.sheet().total(), turned.sheet().total(), "seed " + SEED + ", case " + i);
        }
    }

    @Test
    void a_bill_in_two_parts_costs_what_its_parts_cost() {
        Random random = new Random(SEED);
        for (int i = 0; i < Cases.upTo(100); i++) {
            Case given = random(random);
            List<BillLine> bill = given.batch().bill();
            int cut = random.nextInt(bill.size() + 1);
            Money whole = given.sheet().gyleCost();
            Money first = given.with(bill.subList(0, cut)).sheet().gyleCost();
            Money second = given.with(bill.subList(cut, bill.size())).sheet().gyleCost();
            Money ratesOnly = given.with(List.of()).sheet().gyleCost();
            assertEquals(whole, first.plus(second).minus(ratesOnly), "seed " + SEED + ", case " + i);
        }
    }

    @Test
    void the_mix_lies_between_its_cheapest_and_its_dearest_pint() {
        Random random = new Random(SEED);
        for (int i = 0; i < Cases.upTo(200); i++) {
            CostSheet sheet = random(random).sheet();
            BigDecimal least = sheet.containers().stream()
                    .map(ContainerCost::unroundedPerPint)
                    .reduce(BigDecimal::min)
                    .orElseThrow();
            BigDecimal most = sheet.containers().stream()
                    .map(ContainerCost::unroundedPerPint)
                    .reduce(BigDecimal::max)
                    .orElseThrow();
            BigDecimal mix = sheet.unroundedPerPint().setScale(20, RoundingMode.HALF_UP);
            String which = "seed " + SEED + ", case " + i + ": " + least + " to " + most + ", mix " + mix;
            assertTrue(mix.compareTo(least.setScale(20, RoundingMode.HALF_UP)) >= 0, which);
            assertTrue(mix.compareTo(most.setScale(20, RoundingMode.HALF_UP)) <= 0, which);
        }
    }
}
