package costrel.cost;

import static costrel.cost.Given.GBP;
import static costrel.cost.Given.price;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.buying.PriceRow;
import costrel.cost.CostSheetInvariantsTest.Case;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Which way a sheet goes when one price or rate changes, and that the costs of two gyles add up. */
class CostDirectionTest {
    private static final long SEED = Long.getLong("seed", 1971L);
    private static final int CASES = Cases.upTo(40);
    private static final Money A_PENNY = Money.ofMinor(GBP, 1);

    private interface Trial {
        void run(Random random, Case given, String at);
    }

    private static void each(Trial trial) {
        for (int i = 0; i < CASES; i++) {
            long seed = SEED + i;
            Random random = new Random(seed);
            Case given = CostSheetInvariantsTest.random(random);
            List<PriceRow> prices = new ArrayList<>(given.prices());
            for (PriceRow row : given.prices()) {
                if (random.nextInt(3) == 0) {
                    BigDecimal other = row.price().multiply(BigDecimal.valueOf(50 + random.nextInt(100), 2));
                    prices.add(price(
                            row.item(),
                            "Rowan",
                            row.pack().content().toPlainString(),
                            row.pack().unit(),
                            other.setScale(3, RoundingMode.UP).toPlainString()));
                }
            }
            trial.run(
                    random,
                    new Case(given.batch(), prices, given.rates(), given.packages(), given.made()),
                    "-Dseed=" + seed);
        }
    }

    private static PriceRow at(PriceRow row, BigDecimal dearer) {
        return price(
                row.item(),
                row.supplier(),
                row.pack().content().toPlainString(),
                row.pack().unit(),
                dearer.toPlainString());
    }

    /** Of the lines of one item, none falls; of all others, none moves. */
    private static void assertOnly(String item, int way, CostSheet before, CostSheet after, String at) {
        assertEquals(before.lines().size(), after.lines().size(), at);
        for (int i = 0; i < before.lines().size(); i++) {
            CostLine was = before.lines().get(i);
            CostLine is = after.lines().get(i);
            assertEquals(was.item(), is.item(), at);
            int moved = is.value().compareTo(was.value());
            if (was.item().equals(item)) {
                assertTrue(moved * way >= 0, at + ": " + was.item() + " from " + was.value() + " to " + is.value());
            } else {
                assertEquals(was.value(), is.value(), at + ": " + was.item());
            }
        }
        assertTrue(
                after.total().compareTo(before.total()) * way >= 0,
                at + ": total from " + before.total() + " to " + after.total());
    }

    @Test
    void no_price_that_rises_lowers_a_cost_or_moves_what_others_cost() {
        TreeSet<Integer> moved = new TreeSet<>();
        each((random, given, at) -> {
            CostSheet before = given.sheet();
            for (int i = 0; i < given.prices().size(); i++) {
                PriceRow row = given.prices().get(i);
                List<PriceRow> dearer = new ArrayList<>(given.prices());
                dearer.set(i, at(row, row.price().multiply(BigDecimal.valueOf(101 + random.nextInt(400), 2))));
                CostSheet after =
                        new Case(given.batch(), dearer, given.rates(), given.packages(), given.made()).sheet();
                assertOnly(row.item(), 1, before, after, at + ", " + row.item() + " of " + row.supplier());
                moved.add(after.total().compareTo(before.total()));
            }
        });
        assertEquals(List.of(0, 1), List.copyOf(moved), "some prices are not the cheapest and move nothing");
    }

    @Test
    void no_rate_that_rises_lowers_a_cost_and_a_credit_never_raises_one() {
        each((random, given, at) -> {
            CostSheet before = given.sheet();
            for (int i = 0; i < given.rates().size(); i++) {
                Rate rate = given.rates().get(i);
                List<Rate> dearer = new ArrayList<>(given.rates());
                dearer.set(
                        i,
                        Given.rate(
                                rate.item(),
                                rate.group(),
                                rate.amount()
                                        .multiply(BigDecimal.valueOf(101 + random.nextInt(400), 2))
                                        .toPlainString(),
                                rate.basis()));
                CostSheet after =
                        new Case(given.batch(), given.prices(), dearer, given.packages(), given.made()).sheet();
                assertOnly(
                        rate.item(),
                        rate.group() == RateGroup.CREDIT ? -1 : 1,
                        before,
                        after,
                        at + ", " + rate.item() + " " + rate.basis().label());
            }
        });
    }

    @Test
    void a_part_of_a_container_that_costs_more_raises_only_the_containers_that_take_it() {
        TreeSet<Boolean> raised = new TreeSet<>();
        each((random, given, at) -> {
            CostSheet before = given.sheet();
            PackageItem part =
                    given.packages().get(random.nextInt(given.packages().size()));
            List<PriceRow> dearer = given.prices().stream()
                    .map(row ->
                            row.item().equals(part.item()) ? at(row, row.price().multiply(BigDecimal.valueOf(3))) : row)
                    .toList();
            CostSheet after = new Case(given.batch(), dearer, given.rates(), given.packages(), given.made()).sheet();
            assertEquals(before.gyleCost(), after.gyleCost(), at);
            for (int i = 0; i < before.containers().size(); i++) {
                ContainerCost was = before.containers().get(i);
                ContainerCost is = after.containers().get(i);
                if (was.container().name().equals(part.container())) {
                    assertTrue(!is.total().isLessThan(was.total()), at + ": " + part.item());
                    raised.add(is.total().isGreaterThan(was.total()));
                } else {
                    assertEquals(
                            was.total(), is.total(), at + ": " + was.container().name());
                }
            }
        });
        assertTrue(raised.contains(true), "-Dseed=" + SEED + ": nothing rose");
    }

    @Test
    void two_gyles_cost_what_one_of_their_sum_costs_to_a_penny_a_line() {
        each((random, given, at) -> {
            double share = 0.1 + 0.8 * random.nextDouble();
            CostSheet whole = given.sheet();
            CostSheet first = part(given, share).sheet();
            CostSheet second = part(given, 1 - share).sheet();
            assertEquals(whole.gyleLines().size(), first.gyleLines().size(), at);
            Money most = Money.zero(GBP);
            Money once = Money.zero(GBP);
            for (int i = 0; i < whole.gyleLines().size(); i++) {
                CostLine line = whole.gyleLines().get(i);
                Money parts = first.gyleLines()
                        .get(i)
                        .value()
                        .plus(second.gyleLines().get(i).value());
                boolean bothBear = given.rates().stream()
                        .anyMatch(rate -> rate.item().equals(line.item())
                                && (rate.basis() == RateBasis.PER_GYLE || rate.basis() == RateBasis.PER_TANK_DAY));
                if (bothBear) {
                    assertEquals(line.value().multipliedBy(2), parts, at + ": " + line.item());
                    once = once.plus(line.value());
                } else {
                    assertTrue(
                            !parts.minus(line.value()).abs().isGreaterThan(A_PENNY),
                            at + ": " + line.item() + ", " + line.value() + " whole, " + parts + " in two");
                    most = most.plus(A_PENNY);
                }
            }
            Money off = first.gyleCost()
                    .plus(second.gyleCost())
                    .minus(once)
                    .minus(whole.gyleCost())
                    .abs();
            assertTrue(
                    !off.isGreaterThan(most),
                    at + ": off by " + off + " over " + whole.gyleLines().size());
        });
    }

    /** A share of a gyle: so much of its malts and hops, of its wort and of its beer, for as many days. */
    private static Case part(Case given, double share) {
        Batch whole = given.batch();
        List<BillLine> bill = whole.bill().stream()
                .map(line -> new BillLine(
                        line.group(), line.item(), List.of(line.item()), line.amount() * share, line.unit(), ""))
                .toList();
        Batch batch = new Batch(
                whole.beer(),
                whole.brewedOn(),
                whole.costedOn(),
                whole.dutyOn(),
                whole.collectedL() * share,
                whole.rackedL() * share,
                whole.gristKg() * share,
                whole.tankDays(),
                whole.og(),
                whole.pg(),
                whole.declaredStrength(),
                bill,
                whole.packaging(),
                whole.allergens());
        return new Case(batch, given.prices(), given.rates(), given.packages(), given.made());
    }
}
