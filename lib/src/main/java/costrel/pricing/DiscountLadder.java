package costrel.pricing;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * Discounts for larger orders. A step's discount is taken off the list price of every container of the order, and the
 * price of each step is rounded once, halves up.
 *
 * @param list the price without discount
 * @param rungs the steps with what each leaves, smallest order first
 */
public record DiscountLadder(Money list, List<Rung> rungs) {

    /**
     * A step of a discount ladder.
     *
     * @param from the smallest order that gets it, containers, 1 or more
     * @param discount the share that is taken off the list price, 0 to less than 1
     */
    public record Step(int from, BigDecimal discount) {

        public Step {
            if (from < 1) {
                throw new IllegalArgumentException("discount from: expected 1 container or more, found " + from);
            }
            Figures.zeroOrMore("discount from " + from, discount, "");
            Figures.underOne("discount from " + from, discount);
        }
    }

    /**
     * A step and what it leaves.
     *
     * @param step the step
     * @param price the price with its margin and contribution
     */
    public record Rung(Step step, Price price) {}

    public DiscountLadder {
        rungs = List.copyOf(rungs);
        requireOrder(rungs.stream().map(Rung::step).toList());
    }

    /**
     * What each step of a ladder leaves.
     *
     * @param pricing what the container costs, and whether a step may be under variable cost
     * @param list the price without discount
     * @param steps the steps, orders and discounts both rising
     * @return the ladder
     * @throws IllegalArgumentException when there are no steps, they are out of order, or one is under variable cost
     *     without leave
     */
    public static DiscountLadder of(Pricing pricing, Money list, List<Step> steps) {
        Figures.same(pricing.cost().name() + ": list price", pricing.cost().currency(), list.getCurrencyUnit());
        requireOrder(steps);
        List<Rung> rungs = new ArrayList<>();
        for (Step step : steps) {
            rungs.add(new Rung(
                    step, pricing.unrounded(list.getAmount().multiply(BigDecimal.ONE.subtract(step.discount())))));
        }
        return new DiscountLadder(list, rungs);
    }

    private static void requireOrder(List<Step> steps) {
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("discounts: expected a step or more, found none");
        }
        for (int i = 1; i < steps.size(); i++) {
            Step before = steps.get(i - 1);
            Step step = steps.get(i);
            if (step.from() <= before.from()) {
                throw new IllegalArgumentException("discounts: expected orders that rise, found " + step.from()
                        + " containers after " + before.from());
            }
            if (step.discount().compareTo(before.discount()) <= 0) {
                throw new IllegalArgumentException("discounts: expected more than " + Figures.plain(before.discount())
                        + " from " + step.from() + " containers, found " + Figures.plain(step.discount()));
            }
        }
    }

    /**
     * The price that an order pays for each container.
     *
     * @param containers how many are ordered, 1 or more
     * @return the list price under the first step, else the price of the last step that the order reaches
     * @throws IllegalArgumentException when fewer than 1 is ordered
     */
    public Money netFor(int containers) {
        if (containers < 1) {
            throw new IllegalArgumentException("order: expected 1 container or more, found " + containers);
        }
        Money net = list;
        for (Rung rung : rungs) {
            if (containers >= rung.step().from()) {
                net = rung.price().net();
            }
        }
        return net;
    }
}
