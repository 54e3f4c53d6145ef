package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.harvest.HarvestPlan.Allocation;
import costrel.harvest.HarvestPlan.Status;
import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import costrel.recipe.Holds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Every requirement that a plan is to meet, written down afresh and held to the weights of plans for all objectives: varieties
 * and substitutes, forms, laboratory methods, doses, oil, proportions, leaf, solubility, shares, changes, packs and steps.
 */
class PlanRequirementsTest {

    private static final long SEED = Long.getLong("seed", 16490130L);
    private static final double MET = 1e-6;
    private static final double HPLC_TO_LEAD = 1.08;
    private static final AlphaMethodFactors FACTORS = new AlphaMethodFactors(List.of(new AlphaMethodFactors.Factor(
            AlphaMethod.HPLC, AlphaMethod.LEAD_CONDUCTANCE, HPLC_TO_LEAD, "stated by the brewery")));
    private static final List<String> VARIETIES = List.of("Fuggle", "Challenger", "Cascade");

    /** A year of a small brewery: two beers in turn, lots of three varieties and two laboratory methods. */
    private record Year(List<PlanGyle> gyles, List<PlanLot> lots, PlanRules rules) {

        static Year any(Random random) {
            boolean change = random.nextInt(4) == 0;
            PlanRules rules = new PlanRules(
                    random.nextBoolean() ? 1 : 0.7 + 0.3 * random.nextDouble(),
                    random.nextBoolean() ? Double.POSITIVE_INFINITY : 120 + 150 * random.nextDouble(),
                    change ? 0.5 + 0.5 * random.nextDouble() : 1,
                    random.nextBoolean() ? 0 : 0.05,
                    FACTORS);
            OptionalDouble packKg = random.nextInt(3) == 0 ? Plans.some(1 + random.nextInt(4)) : Plans.none();
            List<PlanLot> lots = new ArrayList<>();
            for (int l = 0; l < 7; l++) {
                lots.add(lot(random, l, packKg));
            }
            List<PlanGyle> gyles = new ArrayList<>();
            double oil = 5 + 10 * random.nextDouble();
            double dose = 0.2 + random.nextDouble();
            for (int g = 0; g < 5; g++) {
                boolean bitter = g % 2 == 0;
                Set<String> substitutes = random.nextBoolean() ? Set.of("Challenger") : Set.of();
                PlanAddition start = PlanAddition.bittering("start", "Fuggle", Plans.some(0.7), SmallHarvest.START)
                        .allowing(substitutes);
                PlanAddition half = PlanAddition.bittering("half", "Challenger", Plans.some(0.3), SmallHarvest.HALF)
                        .allowing(Set.of("Fuggle"));
                PlanAddition late = bitter
                        ? PlanAddition.dose("late", "Cascade", dose, SmallHarvest.LATE)
                        : PlanAddition.oil("late", "Cascade", oil, SmallHarvest.LATE);
                PlanAddition dry = PlanAddition.dose("dry", "Fuggle", 0.4, 0).allowing(Set.of("Cascade"));
                gyles.add(Plans.gyle(
                        g + 1,
                        bitter ? "bitter" : "golden",
                        22 + 4 * (g % 2),
                        random.nextInt(3) == 0 ? 0.5 : 0,
                        random.nextInt(3) == 0 ? 0.5 : 0,
                        start,
                        half,
                        late,
                        dry));
            }
            return new Year(gyles, lots, rules);
        }

        private static PlanLot lot(Random random, int l, OptionalDouble packKg) {
            double alpha = 0.03 + 0.08 * random.nextDouble();
            Map<String, Double> alphas = new HashMap<>();
            for (int g = 1; g <= 5; g++) {
                alphas.put("G" + g, alpha * Math.pow(0.995, g));
            }
            return new PlanLot(
                    "L" + l,
                    VARIETIES.get(l % VARIETIES.size()),
                    random.nextInt(3) > 0 ? HopForm.LEAF : HopForm.T90,
                    2024 + random.nextInt(3),
                    Plans.NEW_YEAR.plusWeeks(random.nextInt(4) == 0 ? 3 : 0),
                    random.nextBoolean() ? AlphaMethod.HPLC : AlphaMethod.LEAD_CONDUCTANCE,
                    alphas,
                    Plans.some(0.5 + random.nextDouble()),
                    2 + 12 * random.nextDouble(),
                    packKg,
                    Plans.some(8 + 12 * random.nextDouble()));
        }

        PlanLot lot(String id) {
            return lots.stream().filter(lot -> lot.id().equals(id)).findFirst().orElseThrow();
        }

        /** Alpha acid as the gyle's own method would find it. */
        double alpha(PlanLot lot, PlanGyle gyle) {
            double found = lot.alphaByGyle().getOrDefault(gyle.id(), Double.NaN);
            return lot.method() == AlphaMethod.HPLC ? found * HPLC_TO_LEAD : found;
        }
    }

    @Test
    void every_plan_meets_every_requirement_whatever_is_best() {
        Map<Objective, Integer> planned = new EnumMap<>(Objective.class);
        for (int i = 0; i < Cases.upTo(40); i++) {
            long seed = SEED + i;
            Year year = Year.any(new Random(seed));
            Status status = null;
            for (Objective objective : Objective.values()) {
                String at = "-Dseed=" + seed + ", " + objective.label();
                HarvestPlan plan = HarvestPlanner.plan(year.gyles(), year.lots(), year.rules(), objective);
                boolean feasible = plan.status() != Status.INFEASIBLE;
                assertTrue(
                        status == null || (status != Status.INFEASIBLE) == feasible,
                        at + ": whether there is a plan doesn't hang on what is best");
                status = plan.status();
                if (feasible) {
                    assertMet(year, plan, at);
                    planned.merge(objective, 1, Integer::sum);
                }
            }
        }
        for (Objective objective : Objective.values()) {
            assertTrue(
                    planned.getOrDefault(objective, 0) >= Cases.upTo(40) / 4,
                    "-Dseed=" + SEED + ": few plans: " + planned);
        }
    }

    private static void assertMet(Year year, HarvestPlan plan, String at) {
        for (PlanGyle gyle : year.gyles()) {
            double ebu = 0;
            double leafKg = 0;
            Map<String, Double> ebuOf = new HashMap<>();
            for (PlanAddition addition : gyle.additions()) {
                List<Allocation> lines = lines(plan, gyle, addition);
                String where = at + ", " + gyle.id() + " " + addition.label();
                double kg = 0;
                double alphaKg = 0;
                double oilMl = 0;
                for (Allocation line : lines) {
                    PlanLot lot = year.lot(line.lot());
                    boolean variety = lot.variety().equals(addition.variety())
                            || addition.substitutes().contains(lot.variety());
                    assertTrue(variety, where + ": " + lot.variety());
                    assertTrue(!gyle.day().isBefore(lot.availableFrom()), where + ": " + lot.id() + " before its day");
                    assertTrue(line.kg() >= 0, where);
                    kg += line.kg();
                    alphaKg += line.kg() * year.alpha(lot, gyle);
                    oilMl += line.kg() * lot.oilMlPer100g().orElseThrow() * 10;
                    leafKg += lot.form() == HopForm.LEAF && addition.ebuPerKgAlpha() > 0 ? line.kg() : 0;
                }
                double brought = alphaKg * addition.ebuPerKgAlpha();
                ebuOf.put(addition.label(), brought);
                ebu += brought;
                double held =
                        addition.holds() == Holds.BITTERNESS ? brought : addition.holds() == Holds.OIL ? oilMl : kg;
                addition.doseKg().ifPresent(dose -> assertEquals(dose, held, MET, where));
                addition.oilMl().ifPresent(oil -> assertEquals(oil, held, MET * Math.max(1, oil), where));
                if (addition.ebuPerKgAlpha() > 0) {
                    assertTrue(
                            alphaKg * 1e6 / gyle.collectedL() <= year.rules().alphaSolubleMgPerL() + MET,
                            where + ": more alpha acid than dissolves");
                }
                for (Allocation line : lines) {
                    double share = shareOf(year, gyle, addition, line) / held;
                    assertTrue(share <= year.rules().mostShare() + MET, where + ": share " + share);
                    assertEquals(share, line.share(), MET, where);
                }
            }
            assertTrue(
                    Math.abs(ebu - gyle.targetEbu()) <= gyle.toleranceEbu() + MET, at + ", " + gyle.id() + ": " + ebu);
            assertEquals(
                    0.3 * ebuOf.getOrDefault("start", 0.0), 0.7 * ebuOf.getOrDefault("half", 0.0), MET, at + gyle.id());
            assertTrue(leafKg >= gyle.leastLeafKg() - MET, at + ", " + gyle.id() + ": leaf " + leafKg);
        }
        assertStock(year, plan, at);
        assertChanges(year, plan, at);
    }

    private static double shareOf(Year year, PlanGyle gyle, PlanAddition addition, Allocation line) {
        PlanLot lot = year.lot(line.lot());
        return switch (addition.holds()) {
            case BITTERNESS -> line.kg() * year.alpha(lot, gyle) * addition.ebuPerKgAlpha();
            case OIL -> line.kg() * lot.oilMlPer100g().orElseThrow() * 10;
            case DOSE -> line.kg();
        };
    }

    private static List<Allocation> lines(HarvestPlan plan, PlanGyle gyle, PlanAddition addition) {
        return plan.allocations().stream()
                .filter(line -> line.gyle().equals(gyle.id()) && line.addition().equals(addition.label()))
                .toList();
    }

    private static void assertStock(Year year, HarvestPlan plan, String at) {
        double paid = 0;
        for (PlanLot lot : year.lots()) {
            String where = at + ", " + lot.id();
            List<Allocation> lines = plan.allocations().stream()
                    .filter(line -> line.lot().equals(lot.id()))
                    .toList();
            double usedKg = lines.stream().mapToDouble(Allocation::kg).sum();
            double weighedKg = lines.stream().mapToDouble(Allocation::weighedKg).sum();
            assertTrue(usedKg <= lot.stockKg() + MET, where + ": used " + usedKg);
            assertTrue(weighedKg <= lot.stockKg() + MET, where + ": weighed " + weighedKg);
            double step = year.rules().weighedToKg();
            for (Allocation line : lines) {
                double steps = step == 0 ? 0 : line.weighedKg() / step;
                assertEquals(Math.rint(steps), steps, MET, where);
                assertTrue(line.weighedKg() <= line.kg() + step / 2 + MET, where + ": weighed up by over half a step");
            }
            double openedKg = usedKg;
            if (lot.wholePackKg().isPresent()) {
                double packKg = lot.wholePackKg().getAsDouble();
                openedKg = Math.min(lot.stockKg(), Math.ceil(usedKg / packKg - MET) * packKg);
                double oddKg = lot.stockKg() % packKg;
                double withOdd = usedKg <= oddKg ? oddKg : oddKg + Math.ceil((usedKg - oddKg) / packKg - MET) * packKg;
                openedKg = usedKg < MET ? 0 : Math.min(openedKg, withOdd);
            }
            paid += openedKg * lot.pricePerKg().orElseThrow();
        }
        assertTrue(
                plan.cost().orElseThrow() >= paid - MET * paid,
                at + ": told " + plan.cost() + ", the least for such weights is " + paid);
        if (year.lots().get(0).wholePackKg().isEmpty() || plan.objective() == Objective.LEAST_COST) {
            assertEquals(paid, plan.cost().orElseThrow(), MET * paid, at + ": cost");
        }
    }

    private static void assertChanges(Year year, HarvestPlan plan, String at) {
        for (String beer : List.of("bitter", "golden")) {
            List<PlanGyle> gyles = year.gyles().stream()
                    .filter(gyle -> gyle.beer().equals(beer))
                    .toList();
            for (int g = 1; g < gyles.size(); g++) {
                for (PlanAddition addition : gyles.get(g).additions()) {
                    Map<String, Double> change = new HashMap<>();
                    lines(plan, gyles.get(g), addition)
                            .forEach(line -> change.merge(line.lot(), line.share(), Double::sum));
                    lines(plan, gyles.get(g - 1), addition)
                            .forEach(line -> change.merge(line.lot(), -line.share(), Double::sum));
                    for (Map.Entry<String, Double> entry : change.entrySet()) {
                        assertTrue(
                                Math.abs(entry.getValue()) <= year.rules().mostChange() + MET,
                                at + ", " + gyles.get(g).id() + " " + addition.label() + ": " + entry);
                    }
                }
            }
        }
    }

    /** One bittering addition is filled best by the cheapest alpha acid first: what is left over goes to the next. */
    @Test
    void one_addition_takes_the_cheapest_alpha_acid_among_the_lots_that_may_go_in() {
        int planned = 0;
        for (int i = 0; i < Cases.upTo(300); i++) {
            long seed = SEED + i;
            Random random = new Random(seed);
            Year year = Year.any(random);
            Set<String> substitutes = random.nextBoolean() ? Set.of("Cascade") : Set.of();
            Set<HopForm> forms = random.nextBoolean() ? Set.of(HopForm.LEAF) : Set.of(HopForm.LEAF, HopForm.T90);
            PlanAddition start = new PlanAddition(
                    "start",
                    "Fuggle",
                    substitutes,
                    forms,
                    Holds.BITTERNESS,
                    Plans.none(),
                    Plans.none(),
                    Plans.none(),
                    SmallHarvest.START,
                    true,
                    java.util.Optional.empty());
            PlanGyle gyle = Plans.gyle(1, "bitter", 60 + 250 * random.nextDouble(), start);
            List<PlanLot> loose = year.lots().stream().map(Plans::unpacked).toList();
            List<PlanLot> open = loose.stream()
                    .filter(lot -> (lot.variety().equals("Fuggle") || substitutes.contains(lot.variety()))
                            && forms.contains(lot.form())
                            && !gyle.day().isBefore(lot.availableFrom()))
                    .sorted(Comparator.comparingDouble(lot -> lot.pricePerKg().orElseThrow() / year.alpha(lot, gyle)))
                    .toList();
            double wanted = gyle.targetEbu();
            double cost = 0;
            for (PlanLot lot : open) {
                double perKg = year.alpha(lot, gyle) * SmallHarvest.START;
                double kg = Math.min(lot.stockKg(), wanted / perKg);
                wanted -= kg * perKg;
                cost += kg * lot.pricePerKg().orElseThrow();
            }
            PlanRules rules = new PlanRules(1, Double.POSITIVE_INFINITY, 1, 0, FACTORS);
            HarvestPlan plan = HarvestPlanner.plan(List.of(gyle), loose, rules, Objective.LEAST_COST);
            String at = "-Dseed=" + seed;
            assertEquals(wanted > MET ? Status.INFEASIBLE : Status.OPTIMAL, plan.status(), at);
            if (wanted <= MET) {
                assertEquals(cost, plan.cost().orElseThrow(), MET * Math.max(1, cost), at);
                planned++;
            }
        }
        assertTrue(planned > Cases.upTo(300) / 5, "-Dseed=" + SEED + ": only " + planned + " have a plan");
    }
}
