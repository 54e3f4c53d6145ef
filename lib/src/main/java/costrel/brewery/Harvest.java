package costrel.brewery;

import costrel.harvest.Cover;
import costrel.harvest.HarvestPlan;
import costrel.harvest.HarvestPlanner;
import costrel.harvest.HouseRules;
import costrel.harvest.Objective;
import costrel.harvest.PlanGyle;
import costrel.harvest.PlanRules;
import costrel.harvest.PlannedBrew;
import costrel.harvest.Substitutes;
import costrel.hops.AlphaBalance;
import costrel.hops.HopLot;
import costrel.hops.HopVariety;
import costrel.recipe.Names;
import costrel.recipe.Resolver;
import costrel.scaling.Gyle;
import costrel.tables.IngredientTables;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The hops of the year's brewing plan: the lots on hand into every gyle. Each call gives a changed copy.
 *
 * <pre>{@code
 * HarvestPlan plan = brewery.harvest().objective(Objective.STEADIEST).plan();
 * }</pre>
 */
public final class Harvest {

    private final Brewery brewery;
    private final List<PlannedBrew> brews;
    private final HouseRules rules;
    private final Objective objective;

    private Harvest(Brewery brewery, List<PlannedBrew> brews, HouseRules rules, Objective objective) {
        this.brewery = brewery;
        this.brews = brews;
        this.rules = rules;
        this.objective = objective;
    }

    static Harvest of(Brewery brewery) {
        return new Harvest(brewery, brewery.brewingPlan(), brewery.hopRules(), Objective.LEAST_COST);
    }

    /**
     * For another best.
     *
     * @param best what is best
     * @return the changed harvest
     */
    public Harvest objective(Objective best) {
        return new Harvest(brewery, brews, rules, best);
    }

    /**
     * For another best, by its name.
     *
     * @param best "least cost", "oldest first" or "steadiest"
     * @return the changed harvest
     * @throws IllegalArgumentException if no objective is called so
     */
    public Harvest objective(String best) {
        for (Objective known : Objective.values()) {
            if (Names.folded(known.label()).equals(Names.folded(best))) {
                return objective(known);
            }
        }
        throw new IllegalArgumentException(
                "objective: expected least cost, oldest first or steadiest, found '" + best + "'");
    }

    /**
     * By other rules than those of hop-rules.csv.
     *
     * @param house the rules
     * @return the changed harvest
     */
    public Harvest rules(HouseRules house) {
        return new Harvest(brewery, brews, house, objective);
    }

    /**
     * Letting one variety stand in for another. Nothing stands in for anything unless it is allowed.
     *
     * @param gone the variety of the recipes
     * @param instead the variety that may take its place
     * @return the changed harvest
     * @throws costrel.recipe.UnknownNameException if a variety has no lot and is in no table
     */
    public Harvest allow(String gone, String instead) {
        Map<String, Set<String>> more = new TreeMap<>(rules.substitutes());
        Set<String> standIns = new TreeSet<>(more.getOrDefault(gone, Set.of()));
        standIns.add(Names.require("hop variety", brewery.catalogue().varieties(), instead)
                .name());
        more.put(
                Names.require("hop variety", brewery.catalogue().varieties(), gone)
                        .name(),
                standIns);
        return rules(new HouseRules(rules.toleranceEbu(), rules.mostShare(), rules.mostChange(), more));
    }

    /**
     * Only one beer.
     *
     * @param name name of the beer
     * @return the changed harvest
     * @throws costrel.recipe.UnknownNameException if no beer is called so
     */
    public Harvest beer(String name) {
        String wanted = brewery.recipe(name).name();
        return only(brew -> Names.folded(brew.beer()).equals(Names.folded(wanted)));
    }

    /**
     * Only one gyle.
     *
     * @param id its number in the brewing plan
     * @return the changed harvest
     */
    public Harvest gyle(String id) {
        return only(brew -> brew.id().equals(id));
    }

    /**
     * Only gyles of some days.
     *
     * @param first the first day
     * @param last the last day
     * @return the changed harvest
     */
    public Harvest between(LocalDate first, LocalDate last) {
        return only(brew -> !brew.day().isBefore(first) && !brew.day().isAfter(last));
    }

    private Harvest only(Predicate<PlannedBrew> wanted) {
        List<PlannedBrew> some = brews.stream().filter(wanted).toList();
        if (some.isEmpty()) {
            throw new IllegalArgumentException("brewing plan: expected at least one such gyle, found none");
        }
        return new Harvest(brewery, some, rules, objective);
    }

    /**
     * The gyles that are planned.
     *
     * @return in the order of the brewing plan
     */
    public List<PlannedBrew> brews() {
        return brews;
    }

    /**
     * Plans.
     *
     * @return the plan, or what is short
     * @throws IllegalArgumentException if the brewing plan is empty or a figure is missing
     */
    public HarvestPlan plan() {
        if (brews.isEmpty()) {
            throw new IllegalArgumentException(
                    "brewing plan: expected at least one gyle in brewing-plan.csv, found none");
        }
        HarvestInput input = input();
        List<PlanGyle> gyles = new ArrayList<>();
        double step = 0;
        for (PlannedBrew brew : brews) {
            Gyle gyle = input.gyle(brew);
            step = Math.max(step, gyle.plant().weighing().hopStepKg());
            gyles.add(input.planGyle(brew, gyle));
        }
        PlanRules planRules = new PlanRules(
                rules.mostShare(),
                AlphaBalance.DISSOLVES_MG_PER_L,
                rules.mostChange(),
                step,
                brewery.alphaMethodFactors());
        return HarvestPlanner.plan(gyles, input.lots(), planRules, objective);
    }

    /**
     * Hops wanted by variety, in the weights that the lots in use would give.
     *
     * @return kg by variety and brewing day
     */
    public Map<String, Map<LocalDate, Double>> need() {
        HarvestInput input = input();
        Map<String, Map<LocalDate, Double>> need = new TreeMap<>();
        for (PlannedBrew brew : brews) {
            for (Gyle.Hop hop : input.gyle(brew).hops()) {
                need.computeIfAbsent(hop.hop().variety(), variety -> new TreeMap<>())
                        .merge(brew.day(), hop.kg(), Double::sum);
            }
        }
        return need;
    }

    /**
     * Hops on hand against what is planned, variety by variety.
     *
     * @return when each runs out and what is left
     */
    public List<Cover.VarietyCover> cover() {
        LocalDate first = brews.stream()
                .map(PlannedBrew::day)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        List<Cover.Stock> stocks = new ArrayList<>();
        for (HopLot lot : brewery.catalogue().hopLots().values()) {
            if (!lot.analyses().get(0).date().isAfter(first)) {
                stocks.add(new Cover.Stock(
                        lot.id(),
                        lot.variety(),
                        lot.stockKg().orElse(0),
                        Resolver.onTheDay(lot, brewery.catalogue(), first).alpha()));
            }
        }
        return Cover.of(need(), stocks);
    }

    /**
     * What to contract for next harvest to brew as much again, for varieties whose crop years are published.
     *
     * @return ranges from the published crop years
     */
    public List<Cover.Contract> contracts() {
        List<Cover.Contract> contracts = new ArrayList<>();
        for (Cover.VarietyCover cover : cover()) {
            IngredientTables.cropYears().stream()
                    .filter(years -> Names.folded(years.variety()).equals(Names.folded(cover.variety())))
                    .filter(years -> cover.onHandKg() > 0 && cover.totalNeedKg() > 0)
                    .forEach(years -> contracts.add(Cover.contract(cover, years)));
        }
        return contracts;
    }

    /**
     * Varieties that may stand in for one that is gone, the nearest first: a suggestion, never applied by itself.
     *
     * @param variety the variety that is gone
     * @return varieties that have a lot in store, ranked
     * @throws costrel.recipe.UnknownNameException if no variety is called so
     */
    public List<Substitutes.Suggestion> substitutes(String variety) {
        Map<String, HopVariety> all = brewery.catalogue().varieties();
        HopVariety gone = Names.require("hop variety", all, variety);
        List<HopVariety> inStore = brewery.catalogue().varietiesInStore().stream()
                .map(name -> Names.require("hop variety", all, name))
                .toList();
        return Substitutes.rank(gone, inStore);
    }

    private HarvestInput input() {
        return new HarvestInput(brewery, brews, rules);
    }

    /** What is to be planned, in words. */
    @Override
    public String toString() {
        if (brews.isEmpty()) {
            return "no gyles to plan";
        }
        LocalDate first =
                brews.stream().map(PlannedBrew::day).min(LocalDate::compareTo).orElseThrow();
        LocalDate last =
                brews.stream().map(PlannedBrew::day).max(LocalDate::compareTo).orElseThrow();
        return (brews.size() == 1 ? "one gyle, " + first : brews.size() + " gyles, " + first + " to " + last) + ", for "
                + objective.label() + "; plan() tells which lots go where, cover(...) what runs out";
    }
}
