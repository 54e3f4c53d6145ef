package costrel.harvest;

import costrel.harvest.HarvestPlan.AdditionTotal;
import costrel.harvest.HarvestPlan.Allocation;
import costrel.harvest.HarvestPlan.Change;
import costrel.harvest.HarvestPlan.GyleTotal;
import costrel.harvest.HarvestPlan.LotUse;
import costrel.harvest.PlanAddition.LastYear;
import costrel.harvest.PlanModel.Use;
import costrel.recipe.Holds;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns weights by column into what a brewer reads. */
final class PlanReport {

    /** Less than this is no weight at all: rounding of the arithmetic. */
    private static final double NOTHING_KG = 1e-11;

    /** A lot is used up when no more than this part of it is left. */
    private static final double USED_UP = 1e-9;

    private final PlanModel model;
    private final double[] kg;
    private final double[] weighed;

    PlanReport(PlanModel model, double[] x, List<String> remarks) {
        this.model = model;
        this.kg = new double[model.uses().size()];
        for (int i = 0; i < kg.length; i++) {
            kg[i] = x[i] > NOTHING_KG ? x[i] : 0;
        }
        this.weighed = WeighedOut.of(model, kg, remarks);
    }

    double[] kg() {
        return kg;
    }

    List<Allocation> allocations() {
        List<Allocation> allocations = new ArrayList<>();
        for (int i = 0; i < kg.length; i++) {
            if (kg[i] == 0) {
                continue;
            }
            Use use = model.uses().get(i);
            PlanGyle gyle = model.gyle(use.gyle());
            PlanLot lot = model.lot(use.lot());
            double mass = kg[i];
            allocations.add(new Allocation(
                    gyle.id(),
                    gyle.beer(),
                    gyle.day(),
                    label(use),
                    lot.id(),
                    lot.variety(),
                    mass,
                    weighed[i],
                    use.alpha(),
                    use.ebuPerKg() * mass,
                    times(lot.oilMlPer100g(), 10 * mass),
                    use.heldPerKg() * mass / model.held(use.gyle(), use.addition(), kg),
                    times(lot.pricePerKg(), mass)));
        }
        return allocations;
    }

    List<AdditionTotal> additions() {
        List<AdditionTotal> totals = new ArrayList<>();
        for (int g = 0; g < model.gyles().size(); g++) {
            double bittering = 0;
            double shares = 0;
            for (int a = 0; a < model.gyle(g).additions().size(); a++) {
                OptionalDouble share = model.addition(g, a).bitteringShare();
                bittering += share.isPresent() ? model.held(g, a, kg) : 0;
                shares += share.orElse(0);
            }
            for (int a = 0; a < model.gyle(g).additions().size(); a++) {
                PlanAddition addition = model.addition(g, a);
                double reached = model.held(g, a, kg);
                double wanted = addition.holds() != Holds.BITTERNESS
                        ? PlanModel.holdsAtMost(model.gyle(g), addition)
                        : addition.bitteringShare().isEmpty() || shares == 0
                                ? reached
                                : bittering * addition.bitteringShare().getAsDouble() / shares;
                totals.add(new AdditionTotal(
                        model.gyle(g).id(),
                        addition.label(),
                        addition.holds(),
                        wanted,
                        reached,
                        model.held(g, a, weighed)));
            }
        }
        return totals;
    }

    List<GyleTotal> gyles() {
        List<GyleTotal> totals = new ArrayList<>();
        for (int g = 0; g < model.gyles().size(); g++) {
            PlanGyle gyle = model.gyle(g);
            double[] sums = new double[6];
            boolean priced = true;
            for (int i = 0; i < kg.length; i++) {
                Use use = model.uses().get(i);
                if (use.gyle() != g) {
                    continue;
                }
                double leaf = model.isLeafBed(use) ? 1 : 0;
                OptionalDouble price = model.lot(use.lot()).pricePerKg();
                priced &= price.isPresent() || kg[i] == 0;
                sums[0] += use.ebuPerKg() * kg[i];
                sums[1] += use.ebuPerKg() * weighed[i];
                sums[2] += leaf * kg[i];
                sums[3] += leaf * weighed[i];
                sums[4] += kg[i];
                sums[5] += price.orElse(0) * kg[i];
            }
            totals.add(new GyleTotal(
                    gyle.id(),
                    gyle.beer(),
                    gyle.day(),
                    gyle.targetEbu(),
                    gyle.toleranceEbu(),
                    sums[0],
                    sums[1],
                    gyle.leastLeafKg(),
                    sums[2],
                    sums[3],
                    sums[4],
                    priced ? OptionalDouble.of(sums[5]) : OptionalDouble.empty()));
        }
        return totals;
    }

    List<LotUse> lots() {
        List<LotUse> uses = new ArrayList<>();
        for (int l = 0; l < model.lots().size(); l++) {
            PlanLot lot = model.lot(l);
            double used = 0;
            double weighedKg = 0;
            Optional<LocalDate> usedUp = Optional.empty();
            for (int column : model.columnsOfLot(l)) {
                used += kg[column];
                weighedKg += weighed[column];
                if (usedUp.isEmpty() && kg[column] > 0 && used >= lot.stockKg() * (1 - USED_UP)) {
                    usedUp = Optional.of(
                            model.gyle(model.uses().get(column).gyle()).day());
                }
            }
            double opened = used;
            if (lot.wholePackKg().isPresent()) {
                Packs packs = Packs.of(lot);
                opened = Math.max(used, packs.kgOf(packs.fewestFor(used)));
            }
            uses.add(new LotUse(
                    lot.id(),
                    lot.variety(),
                    lot.stockKg(),
                    used,
                    weighedKg,
                    opened,
                    usedUp,
                    times(lot.pricePerKg(), opened)));
        }
        return uses;
    }

    List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        for (int g = 0; g < model.gyles().size(); g++) {
            for (int a = 0; a < model.gyle(g).additions().size(); a++) {
                Optional<LastYear> last = model.addition(g, a).lastYear();
                if (last.isPresent()) {
                    changes.add(change(g, a, last.get()));
                }
            }
        }
        return changes;
    }

    private Change change(int g, int a, LastYear last) {
        PlanAddition addition = model.addition(g, a);
        double sumKg = 0;
        double sumOil = 0;
        double sumAlpha = 0;
        List<String> lots = new ArrayList<>();
        for (int column : model.columnsOf(g, a)) {
            if (kg[column] > 0) {
                Use use = model.uses().get(column);
                lots.add(model.lot(use.lot()).id());
                sumKg += kg[column];
                sumAlpha += use.alpha() * kg[column];
                sumOil += model.lot(use.lot()).oilMlPer100g().orElse(0) * kg[column];
            }
        }
        double held = addition.holds() == Holds.DOSE ? 1 : addition.holds() == Holds.OIL ? sumOil : sumAlpha;
        OptionalDouble then = switch (addition.holds()) {
            case BITTERNESS -> last.alpha();
            case DOSE -> OptionalDouble.of(1);
            case OIL -> last.oilMlPer100g();
        };
        OptionalDouble hopFactor = OptionalDouble.empty();
        OptionalDouble heldFactor = OptionalDouble.empty();
        if (then.isPresent() && then.getAsDouble() > 0 && last.kg() > 0 && sumKg > 0) {
            double now = addition.holds() == Holds.DOSE ? 1 : held / sumKg;
            hopFactor = OptionalDouble.of(then.getAsDouble() / now);
            heldFactor = OptionalDouble.of(sumKg * now / (last.kg() * then.getAsDouble()));
        }
        return new Change(
                model.gyle(g).id(),
                model.gyle(g).beer(),
                addition.label(),
                last.lot(),
                lots,
                last.kg(),
                sumKg,
                hopFactor,
                heldFactor,
                why(addition, then, hopFactor, heldFactor));
    }

    private static String why(
            PlanAddition addition, OptionalDouble then, OptionalDouble hopFactor, OptionalDouble heldFactor) {
        if (hopFactor.isEmpty() || heldFactor.isEmpty()) {
            return "last year's " + (addition.holds() == Holds.OIL ? "oil" : "alpha acid")
                    + " or weight is unknown, or nothing goes in now";
        }
        String hops = " (kg × " + Figures.fixed(hopFactor.getAsDouble(), 4) + ")";
        String held = "; kg × " + Figures.fixed(heldFactor.getAsDouble(), 4) + " for ";
        return switch (addition.holds()) {
            case DOSE -> "the dose is held" + held + "the dose of last year";
            case BITTERNESS ->
                "alpha acid " + Figures.percent(then.getAsDouble()) + " last year, "
                        + Figures.percent(then.getAsDouble() / hopFactor.getAsDouble()) + " now" + hops + held
                        + "the bitterness that is left to bring";
            case OIL ->
                "oil " + Figures.fixed(then.getAsDouble(), 2) + " mL/100 g last year, "
                        + Figures.fixed(then.getAsDouble() / hopFactor.getAsDouble(), 2) + " now" + hops + held
                        + "the dose of oil";
        };
    }

    private String label(Use use) {
        return model.addition(use.gyle(), use.addition()).label();
    }

    private static OptionalDouble times(OptionalDouble figure, double factor) {
        return figure.isEmpty() ? figure : OptionalDouble.of(figure.getAsDouble() * factor);
    }
}
