package costrel.harvest;

import costrel.explain.Explanation;
import costrel.recipe.Holds;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which lots go into which gyles, and what comes of it.
 *
 * @param status whether the plan is the best there is
 * @param objective what the best was
 * @param goals the objective in figures, in the order in which they were sought; empty where there is no plan
 * @param allocations gyle by gyle in the order of brewing, addition by addition, the lots and their weights; empty where there
 *     is no plan
 * @param additions what each addition holds against what it has to hold
 * @param gyles totals of each gyle against its targets
 * @param lots what each lot gives and when it is used up, in the order given
 * @param changes what is different from last year and why
 * @param largestChange the largest change of a lot's share of an addition from one gyle of a beer to the next; empty where no
 *     beer is brewed twice
 * @param shortfalls where there is no plan: what is short, by how much and what would mend it
 * @param remarks what else a brewer must know: conversions, defaults, lots that could not be used
 */
public record HarvestPlan(
        Status status,
        Objective objective,
        List<Goal> goals,
        List<Allocation> allocations,
        List<AdditionTotal> additions,
        List<GyleTotal> gyles,
        List<LotUse> lots,
        List<Change> changes,
        Optional<ShareChange> largestChange,
        List<Shortfall> shortfalls,
        List<String> remarks) {

    /** Whether a plan is the best there is. */
    public enum Status {
        /** Proved: no plan does better. */
        OPTIMAL("optimal"),
        /** It meets every requirement; each goal says how much better another plan could be at most. */
        FEASIBLE("feasible"),
        /** No plan meets every requirement; the shortfalls say why. */
        INFEASIBLE("infeasible");

        private final String label;

        Status(String label) {
            this.label = label;
        }

        /**
         * The word used in answers.
         *
         * @return the label
         */
        public String label() {
            return label;
        }
    }

    /**
     * One goal of an objective.
     *
     * @param what the goal, such as "cost of the hops"
     * @param reached what the plan reaches
     * @param bound what no plan can better, proved from the multipliers of the linear program
     */
    public record Goal(String what, double reached, double bound) {

        /**
         * How much better another plan could be at most.
         *
         * @return the difference, 0 where the goal is proved
         */
        public double gap() {
            return Math.abs(reached - bound);
        }
    }

    /**
     * A lot in an addition.
     *
     * @param gyle id of the gyle
     * @param beer the beer
     * @param day the brewing day
     * @param addition label of the addition
     * @param lot the lot
     * @param variety its variety
     * @param kg weight as computed
     * @param weighedKg weight as weighed out
     * @param alpha alpha acid on the day, mass fraction by the method of the gyle
     * @param ebu bitterness it brings, EBU
     * @param oilMl hop oil it brings, mL; empty where the lot's oil is unknown
     * @param share its share of what the addition holds
     * @param cost price of the weight as computed; empty where the lot has no price
     */
    public record Allocation(
            String gyle,
            String beer,
            LocalDate day,
            String addition,
            String lot,
            String variety,
            double kg,
            double weighedKg,
            double alpha,
            double ebu,
            OptionalDouble oilMl,
            double share,
            OptionalDouble cost) {}

    /**
     * What an addition holds.
     *
     * @param gyle id of the gyle
     * @param addition label of the addition
     * @param holds what it keeps
     * @param wanted EBU, kg or mL of oil that it has to hold; for bitterness what its share of the plan's bittering comes to
     * @param reached the same of the plan
     * @param weighed the same of the weights as weighed out
     */
    public record AdditionTotal(
            String gyle, String addition, Holds holds, double wanted, double reached, double weighed) {

        /**
         * What weighing out changes.
         *
         * @return weighed less reached, in the same unit
         */
        public double drift() {
            return weighed - reached;
        }
    }

    /**
     * Totals of a gyle.
     *
     * @param gyle id of the gyle
     * @param beer the beer
     * @param day the brewing day
     * @param targetEbu bitterness wanted, EBU
     * @param toleranceEbu how far it may stand off, EBU
     * @param ebu bitterness of the plan
     * @param weighedEbu bitterness of the weights as weighed out
     * @param leastLeafKg leaf hops that the bed needs, kg
     * @param leafKg leaf hops of the plan
     * @param weighedLeafKg leaf hops as weighed out
     * @param kg weight of all hops of the plan
     * @param cost price of the hops of the plan; empty where a lot in it has no price
     */
    public record GyleTotal(
            String gyle,
            String beer,
            LocalDate day,
            double targetEbu,
            double toleranceEbu,
            double ebu,
            double weighedEbu,
            double leastLeafKg,
            double leafKg,
            double weighedLeafKg,
            double kg,
            OptionalDouble cost) {

        /**
         * What weighing out changes in the bitterness.
         *
         * @return EBU, weighed less planned
         */
        public double driftEbu() {
            return weighedEbu - ebu;
        }
    }

    /**
     * What a lot gives.
     *
     * @param lot the lot
     * @param variety its variety
     * @param stockKg what was on hand
     * @param usedKg what the plan uses
     * @param weighedKg the same as weighed out
     * @param openedKg what is taken from the store: more than is used where packs have to be used up once open
     * @param usedUpOn the brewing day on which the last of it goes; empty where some is left
     * @param cost price of what is taken from the store; empty where the lot has no price
     */
    public record LotUse(
            String lot,
            String variety,
            double stockKg,
            double usedKg,
            double weighedKg,
            double openedKg,
            Optional<LocalDate> usedUpOn,
            OptionalDouble cost) {

        /**
         * What is left of opened packs and can't be kept.
         *
         * @return kg
         */
        public double wasteKg() {
            return openedKg - usedKg;
        }

        /**
         * What stays in the store.
         *
         * @return kg
         */
        public double leftKg() {
            return stockKg - openedKg;
        }
    }

    /**
     * What is different from last year in an addition.
     *
     * @param gyle id of the gyle
     * @param beer the beer
     * @param addition label of the addition
     * @param lastLot last year's lot
     * @param lots the lots of the plan
     * @param lastKg last year's weight
     * @param kg weight of the plan
     * @param hopFactor what the weight is multiplied by for the hops' sake: alpha acid of last year over alpha acid of the
     *     blend, or oil likewise, or 1 for a dose; empty where last year's figure is unknown
     * @param heldFactor what the weight is multiplied by because the addition has to hold more or less than last year; empty
     *     where last year's figure is unknown
     * @param why the factors in words
     */
    public record Change(
            String gyle,
            String beer,
            String addition,
            String lastLot,
            List<String> lots,
            double lastKg,
            double kg,
            OptionalDouble hopFactor,
            OptionalDouble heldFactor,
            String why) {
        public Change {
            lots = List.copyOf(lots);
        }
    }

    /**
     * A change of a lot's share of an addition from a gyle to the next of the same beer.
     *
     * @param beer the beer
     * @param addition label of the addition
     * @param lot the lot
     * @param fromGyle id of the earlier gyle
     * @param toGyle id of the later gyle
     * @param fromShare share in the earlier gyle
     * @param toShare share in the later gyle
     */
    public record ShareChange(
            String beer,
            String addition,
            String lot,
            String fromGyle,
            String toGyle,
            double fromShare,
            double toShare) {

        /**
         * How much the share changes.
         *
         * @return 0 to 1
         */
        public double size() {
            return Math.abs(toShare - fromShare);
        }
    }

    public HarvestPlan {
        goals = List.copyOf(goals);
        allocations = List.copyOf(allocations);
        additions = List.copyOf(additions);
        gyles = List.copyOf(gyles);
        lots = List.copyOf(lots);
        changes = List.copyOf(changes);
        shortfalls = List.copyOf(shortfalls);
        remarks = List.copyOf(remarks);
    }

    /**
     * Price of all hops taken from the store, waste of packs among them.
     *
     * @return the sum; empty where a lot that is used has no price
     */
    public OptionalDouble cost() {
        double sum = 0;
        for (LotUse lot : lots) {
            if (lot.openedKg() > 0) {
                if (lot.cost().isEmpty()) {
                    return OptionalDouble.empty();
                }
                sum += lot.cost().getAsDouble();
            }
        }
        return OptionalDouble.of(sum);
    }

    /**
     * How the figures of the plan came about: goals, and below each gyle its additions, lots and formulas.
     *
     * @return the tree
     */
    public Explanation explanation() {
        return PlanExplained.of(this);
    }
}
