package costrel.brewery;

import costrel.measure.Amounts;
import costrel.measure.QuantityText;
import costrel.packaging.Container;
import costrel.packaging.PackagingRun;
import costrel.plant.Plant;
import costrel.recipe.GristMaterial;
import costrel.recipe.Names;
import costrel.scaling.Gyle;
import costrel.wort.Condition;
import costrel.wort.Gravity;
import costrel.wort.HeldGas;
import costrel.wort.PrimingSugar;
import costrel.wort.Racking;
import costrel.wort.TemperatureCourse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * At what gravity a beer is racked, and with what primings, so that it gains its condition in cask and bottle. The wanted
 * condition is that of the recipe, and what the beer holds is as its plant states it, until something else is said. Each call
 * gives a changed copy.
 *
 * <p>Over-primed bottles burst. Let fermentation finish, weigh primings, and go by a measured sample and the bottle maker's figure
 * before any figure of this plan.
 *
 * <pre>{@code
 * RackingSheet sheet = brew.racking().at("1.0115").warmest("19 °C").wanted("firkin", "1.2 volumes").sheet();
 * }</pre>
 */
public final class RackingPlan {

    private final Brewery brewery;
    private final Gyle gyle;
    private final Gravity fg;
    private final PackagingRun run;
    private final Optional<HeldGas> held;
    private final Optional<Gravity> at;
    private final OptionalDouble wanted;
    private final Map<String, Double> wantedIn;
    private final Map<String, Double> ratings;
    private final Optional<String> sugar;

    private RackingPlan(
            Brewery brewery,
            Gyle gyle,
            Gravity fg,
            PackagingRun run,
            Optional<HeldGas> held,
            Optional<Gravity> at,
            OptionalDouble wanted,
            Map<String, Double> wantedIn,
            Map<String, Double> ratings,
            Optional<String> sugar) {
        this.brewery = brewery;
        this.gyle = gyle;
        this.fg = fg;
        this.run = run;
        this.held = held;
        this.at = at;
        this.wanted = wanted;
        this.wantedIn = wantedIn;
        this.ratings = ratings;
        this.sugar = sugar;
    }

    static RackingPlan of(Brew brew) {
        Gyle gyle = brew.gyle();
        Gravity fg = gyle.beer()
                .fg()
                .orElseThrow(() -> new IllegalArgumentException(gyle.beerName()
                        + ": expected an apparent attenuation or FG in the recipe to rack by, found none"));
        return new RackingPlan(
                brew.brewery(),
                gyle,
                fg,
                PackagingRun.of(gyle.beer().rackedL(), Costing.packaging(brew.brewery(), gyle)),
                heldAt(gyle.plant()),
                Optional.empty(),
                gyle.intent().recipe().targets().volumesOfCondition(),
                Map.of(),
                Map.of(),
                Optional.empty());
    }

    private static Optional<HeldGas> heldAt(Plant plant) {
        if (plant.heldCarbonDioxide().isPresent()) {
            return Optional.of(HeldGas.measured(plant.heldCarbonDioxide().getAsDouble()));
        }
        return plant.warmestCelsius().isPresent()
                ? Optional.of(HeldGas.atWarmest(plant.warmestCelsius().getAsDouble()))
                : Optional.empty();
    }

    private RackingPlan holding(HeldGas gas) {
        return new RackingPlan(brewery, gyle, fg, run, Optional.of(gas), at, wanted, wantedIn, ratings, sugar);
    }

    /**
     * With the condition that was measured before racking.
     *
     * @param volumes such as "0.9 volumes"
     * @return the plan with it
     * @throws IllegalArgumentException if it is no condition of 0 to 10 volumes
     */
    public RackingPlan held(String volumes) {
        return holding(HeldGas.measured(Condition.parseVolumes("condition held", volumes)));
    }

    /**
     * With the most that a beer can hold which has been so warm since gas stopped rising.
     *
     * @param temperatures the warmest, or several of which the warmest counts, such as "18 °C", "20 °C", "12 °C"
     * @return the plan with it
     * @throws IllegalArgumentException if there is none, or one is no temperature of -1 to 40 °C
     */
    public RackingPlan warmest(String... temperatures) {
        double warmest = Double.NEGATIVE_INFINITY;
        for (String temperature : temperatures) {
            warmest = Math.max(warmest, Amounts.celsius(QuantityText.temperature(temperature)));
        }
        if (temperatures.length == 0) {
            throw new IllegalArgumentException("warmest temperature: expected one such as 19 °C, found none");
        }
        return holding(HeldGas.atWarmest(warmest));
    }

    /**
     * With the most that a beer can hold after a course of temperatures, the warmest of which counts.
     *
     * @param sinceGasStopped such as "hold 20 °C 2880 min; linear 20 °C to 11 °C 1440 min"
     * @return the plan with it
     * @throws IllegalArgumentException if it is no course, or its warmest is outside -1 to 40 °C
     */
    public RackingPlan course(String sinceGasStopped) {
        return holding(HeldGas.after(TemperatureCourse.parse(sinceGasStopped)));
    }

    /**
     * Racked at a present gravity instead of fermented out.
     *
     * @param presentGravity such as "1.0115"
     * @return the plan with it
     * @throws IllegalArgumentException if it is no gravity, or above the original gravity
     */
    public RackingPlan at(String presentGravity) {
        Gravity found = Gravity.parse(presentGravity);
        if (!(found.excessDegrees() <= gyle.og().excessDegrees())) {
            throw new IllegalArgumentException("present gravity: expected at most the original gravity of "
                    + Gravity.ofDegrees(Math.rint(gyle.og().excessDegrees() * 10) / 10) + ", found " + found);
        }
        return new RackingPlan(brewery, gyle, fg, run, held, Optional.of(found), wanted, wantedIn, ratings, sugar);
    }

    /**
     * With another condition wanted in every container that the beer gains it in and of which nothing of its own was said.
     *
     * @param volumes such as "1.2 volumes"
     * @return the plan with it
     * @throws IllegalArgumentException if it is no condition of 0 to 10 volumes
     */
    public RackingPlan wanted(String volumes) {
        OptionalDouble all = OptionalDouble.of(Condition.parseVolumes("wanted condition", volumes));
        return new RackingPlan(brewery, gyle, fg, run, held, at, all, wantedIn, ratings, sugar);
    }

    /**
     * With a condition of its own wanted in a container.
     *
     * @param container its name
     * @param volumes such as "2.4 volumes"
     * @return the plan with it
     * @throws IllegalArgumentException if the beer is not filled into it, or it is no condition of 0 to 10 volumes
     */
    public RackingPlan wanted(String container, String volumes) {
        Container found = container(container);
        double own = Condition.parseVolumes("wanted condition in " + found.name(), volumes);
        return new RackingPlan(
                brewery, gyle, fg, run, held, at, wanted, with(wantedIn, found.name(), own), ratings, sugar);
    }

    /**
     * With the condition that the maker rates a bottle for, in place of what containers.csv says.
     *
     * @param container a bottle that the beer is filled into
     * @param volumes such as "4.5 volumes", by the maker's own data sheet
     * @return the plan with it
     * @throws IllegalArgumentException if the beer is not filled into it, it is no bottle, or it is no rating over 0 to 10 volumes
     */
    public RackingPlan rating(String container, String volumes) {
        Container found = container(container);
        double rated = Condition.parseVolumes("rating of " + found.name(), volumes);
        Container checked = found.ratedFor(rated);
        return new RackingPlan(
                brewery, gyle, fg, run, held, at, wanted, wantedIn, with(ratings, checked.name(), rated), sugar);
    }

    /**
     * Primed with one sugar; without this every copper sugar that ferments is told.
     *
     * @param name a copper sugar
     * @return the plan with it
     * @throws costrel.recipe.UnknownNameException if no copper sugar that ferments is called so; the nearest are offered
     */
    public RackingPlan sugar(String name) {
        PrimingSugar found = Names.require("copper sugar that ferments", sugars(), name);
        return new RackingPlan(brewery, gyle, fg, run, held, at, wanted, wantedIn, ratings, Optional.of(found.name()));
    }

    private static Map<String, Double> with(Map<String, Double> old, String name, double value) {
        Map<String, Double> more = new TreeMap<>(old);
        more.put(name, value);
        return Map.copyOf(more);
    }

    private Container container(String name) {
        Map<String, Container> planned = new LinkedHashMap<>();
        run.filled()
                .forEach(filled -> planned.put(
                        filled.plan().container().name(), filled.plan().container()));
        return Names.require("container of " + gyle.beerName(), planned, name);
    }

    private Map<String, PrimingSugar> sugars() {
        Map<String, PrimingSugar> sugars = new LinkedHashMap<>();
        for (GristMaterial material : brewery.catalogue().materials().values()) {
            if (!material.mashed() && material.hwe().orElse(0) > 0) {
                PrimingSugar found =
                        PrimingSugar.of(material.name(), material.hwe().getAsDouble());
                if (found.ferments()) {
                    sugars.put(found.name(), found);
                }
            }
        }
        return sugars;
    }

    /**
     * The sheet: every container with what is left to ferment, the condition it comes to and its primings.
     *
     * @return the sheet with its findings
     * @throws IllegalArgumentException if it is not known what the beer holds, or what is wanted in a container
     */
    public RackingSheet sheet() {
        HeldGas gas = held.orElseThrow(() -> new IllegalArgumentException(gyle.beerName() + " on "
                + gyle.plant().name()
                + ": expected what the beer holds before racking, such as held(\"0.9 volumes\") or warmest(\"19 °C\"),"
                + " found none"));
        List<PrimingSugar> sugars = sugars().values().stream()
                .filter(known -> sugar.isEmpty() || known.name().equals(sugar.get()))
                .toList();
        double recipeVolumes = gyle.beer().primingVolumes();
        List<RackingSheet.Line> lines = new ArrayList<>();
        for (PackagingRun.Filled filled : run.filled()) {
            Container container = rated(filled.plan().container());
            OptionalDouble asked = asked(container);
            if (asked.isPresent()) {
                Racking racking = new Racking(fg, at.orElse(fg), gas.volumes(), asked.getAsDouble());
                lines.add(RackingSheet.Line.of(container, filled.count(), racking, recipeVolumes, sugars));
            } else {
                Racking racking = new Racking(fg, at.orElse(fg), gas.volumes(), gas.volumes());
                lines.add(RackingSheet.Line.unconditioned(container, filled.count(), racking, recipeVolumes));
            }
        }
        return new RackingSheet(gyle, fg, at.orElse(fg), gas, recipeVolumes, lines);
    }

    private Container rated(Container container) {
        Double rating = ratings.get(container.name());
        return rating == null ? container : container.ratedFor(rating);
    }

    /** What is wanted in a container: its own, else that of all; nothing where the beer gains no condition in it. */
    private OptionalDouble asked(Container container) {
        Double own = wantedIn.get(container.name());
        if (own != null && container.conditioned()) {
            return OptionalDouble.of(own);
        }
        if (own != null) {
            throw new IllegalArgumentException(
                    "wanted condition in " + container.name()
                            + ": expected a container that the beer gains its condition in, found one that is not (conditioned: no)");
        }
        if (container.conditioned() && wanted.isEmpty()) {
            throw new IllegalArgumentException(
                    gyle.beerName() + " in " + container.name()
                            + ": expected a wanted condition in the recipe or here, such as wanted(\"1.1 volumes\"), found none");
        }
        return container.conditioned() ? wanted : OptionalDouble.empty();
    }
}
