package costrel.brewery;

import costrel.cost.ContainerCost;
import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.pricing.CostVector;
import costrel.pricing.Driver;
import costrel.pricing.Pricing;
import costrel.pricing.Risk;
import costrel.pricing.RiskPlan;
import costrel.pricing.RiskResult;
import costrel.pricing.Spread;
import costrel.pricing.UnitCost;
import costrel.recipe.Holds;
import costrel.recipe.Names;
import costrel.scaling.Gyle;
import costrel.tables.MoneyText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleConsumer;

/**
 * What could happen to the cost of a pint: named spreads, drawn many times. Prices, alpha acid, losses and rates of exchange are
 * lognormal about what the sheet reckoned with, so that a tenth dearer is as likely as a tenth cheaper and nothing falls under 0;
 * efficiency is normal. Each call gives a changed copy; the same spreads in the same order, draws and seed give the same
 * figures again.
 *
 * <pre>{@code
 * RiskResult result = brew.risk().price("mashed goods", "10 %").alpha("15 %").loss("1 %").result();
 * }</pre>
 */
public final class RiskStudy {

    private static final int USUAL_DRAWS = 100_000;

    /** A price, and the margin that it is to leave, as they were asked for. */
    private record Asked(ContainerCost container, RiskPlan.Target target) {}

    private final Brew brew;
    private final Gyle gyle;
    private final CostSheet sheet;
    private final Optional<Asked> asked;
    private final RiskPlan plan;
    private final DoubleConsumer shareDone;

    private RiskStudy(
            Brew brew, Gyle gyle, CostSheet sheet, Optional<Asked> asked, RiskPlan plan, DoubleConsumer shareDone) {
        this.brew = brew;
        this.gyle = gyle;
        this.sheet = sheet;
        this.asked = asked;
        this.plan = plan;
        this.shareDone = shareDone;
    }

    static RiskStudy of(Brew brew) {
        Gyle gyle = brew.gyle();
        return new RiskStudy(
                brew,
                gyle,
                brew.costOf(gyle),
                Optional.empty(),
                new RiskPlan(List.of(), List.of(), Optional.empty(), USUAL_DRAWS, 1),
                share -> {});
    }

    /**
     * Prices that may come out otherwise.
     *
     * @param name an item of the cost sheet, or a part of it such as "mashed goods", whose prices go up and down together
     * @param spread how far, such as "10 %": about two draws in three lie within it
     * @return the study with it
     * @throws costrel.recipe.UnknownNameException if the sheet has no such item or part; the nearest are offered
     */
    public RiskStudy price(String name, String spread) {
        Spread lognormal = relative("price of " + name, spread);
        Map<String, Driver> known = new LinkedHashMap<>();
        for (CostLine line : sheet.lines()) {
            if (line.value().isZero()) {
                continue;
            }
            known.putIfAbsent(line.group().label(), Driver.prices(line.group(), 1, lognormal));
            known.putIfAbsent(
                    line.item(),
                    new Driver(
                            "price of " + line.item(),
                            Driver.Kind.PRICE,
                            1,
                            lognormal,
                            Set.of(),
                            Set.of(line.item(), forBitterness(line.item()))));
        }
        return with(Names.require("item or part of the cost sheet", known, name));
    }

    /**
     * Alpha acid of the hops that hold the bitterness, all of them together: the lower it comes out, the more is taken.
     *
     * @param spread a part of the alpha acid, such as "15 %"
     * @return the study with it
     * @throws IllegalArgumentException if no hops hold the bitterness
     */
    public RiskStudy alpha(String spread) {
        Set<String> items = new LinkedHashSet<>();
        for (String item : bitterShares().keySet()) {
            items.add(forBitterness(item));
        }
        if (items.isEmpty()) {
            throw new IllegalArgumentException("alpha acid: expected hops that hold the bitterness of "
                    + sheet.batch().beer() + ", found none");
        }
        return with(Driver.alpha("alpha acid", 1, relative("alpha acid", spread), items));
    }

    /**
     * Efficiency of the mash.
     *
     * @param points a standard deviation in points of per cent, such as "2 %" for 91 % give or take 2
     * @return the study with it
     */
    public RiskStudy efficiency(String points) {
        double base = gyle.mashEfficiency();
        return with(Driver.efficiency(base, new Spread.Normal(base, Terms.spread("efficiency", points))));
    }

    /**
     * Beer lost between FV and full containers.
     *
     * @param points in points of per cent of what is collected, such as "1 %"
     * @return the study with it
     */
    public RiskStudy loss(String points) {
        double share = 1
                - sheet.yieldChain().packagedL().doubleValue()
                        / sheet.yieldChain().collectedL().doubleValue();
        double spread = Terms.spread("loss", points);
        if (!(share > 0)) {
            throw new IllegalArgumentException("loss: expected beer that is lost on the sheet, found none");
        }
        return with(Driver.loss(share, new Spread.Lognormal(share, spread / share)));
    }

    /**
     * What a foreign currency costs.
     *
     * @param currency its name, such as "EUR"
     * @param spread a part of the rate, such as "8 %"
     * @param items items of the sheet that are priced in it
     * @return the study with it
     */
    public RiskStudy exchangeRate(String currency, String spread, String... items) {
        return with(Driver.exchangeRate(currency, 1, relative("exchange rate of " + currency, spread), Set.of(items)));
    }

    /**
     * Any other driver, such as one with a distribution of your own.
     *
     * @param driver the driver
     * @return the study with it
     * @throws IllegalArgumentException if one of that name is there already
     */
    public RiskStudy with(Driver driver) {
        List<Driver> more = new ArrayList<>(plan.drivers());
        more.add(driver);
        return changed(new RiskPlan(more, plan.correlations(), plan.target(), plan.draws(), plan.seed()));
    }

    /**
     * Two of the spreads that go together.
     *
     * @param first the name of one, such as "mashed goods"
     * @param second the name of another, such as "hops"
     * @param coefficient −1 to 1: the correlation of their standard normal scores
     * @return the study with it
     * @throws costrel.recipe.UnknownNameException if no spread is called so
     */
    public RiskStudy correlated(String first, String second, double coefficient) {
        List<RiskPlan.Correlation> more = new ArrayList<>(plan.correlations());
        more.add(new RiskPlan.Correlation(driver(first), driver(second), coefficient));
        return changed(new RiskPlan(plan.drivers(), more, plan.target(), plan.draws(), plan.seed()));
    }

    private String driver(String name) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Driver driver : plan.drivers()) {
            names.put(driver.name(), driver.name());
            names.put(driver.name().replaceFirst("^price of ", ""), driver.name());
        }
        return Names.require("spread of this study", names, name);
    }

    /**
     * How often it is drawn.
     *
     * @param draws 100 to 1,000,000
     * @return the study with it
     */
    public RiskStudy draws(int draws) {
        return changed(new RiskPlan(plan.drivers(), plan.correlations(), plan.target(), draws, plan.seed()));
    }

    /**
     * The seed that makes it come out the same again.
     *
     * @param seed any number
     * @return the study with it
     */
    public RiskStudy seed(long seed) {
        return changed(new RiskPlan(plan.drivers(), plan.correlations(), plan.target(), plan.draws(), seed));
    }

    /**
     * A price that is kept whatever happens, and the margin it is to leave. The study is then about pints from that
     * container.
     *
     * @param container its name
     * @param price such as "£95.00", without value added tax
     * @param margin such as "30 %", a share of the price
     * @return the study with it
     * @throws IllegalArgumentException if a figure is none, or the beer isn't filled into it
     */
    public RiskStudy target(String container, String price, String margin) {
        ContainerCost found = Terms.container(sheet, container);
        RiskPlan.Target target = RiskPlan.Target.of(
                Pricing.of(UnitCost.of(sheet, found))
                        .evenUnderVariableCost()
                        .at(MoneyText.parse("price", price, sheet.total().getCurrencyUnit())),
                Terms.share("margin", margin).doubleValue());
        return new RiskStudy(
                brew,
                gyle,
                sheet,
                Optional.of(new Asked(found, target)),
                new RiskPlan(plan.drivers(), plan.correlations(), Optional.of(target), plan.draws(), plan.seed()),
                shareDone);
    }

    /**
     * Telling somebody who waits how far the draws have come.
     *
     * @param listener is told now and then, on the thread that draws, which share of the work is done, 0 to 1
     * @return the study that tells
     */
    public RiskStudy telling(DoubleConsumer listener) {
        return new RiskStudy(brew, gyle, sheet, asked, plan, listener);
    }

    private RiskStudy changed(RiskPlan other) {
        return new RiskStudy(brew, gyle, sheet, asked, other, shareDone);
    }

    /**
     * Draws.
     *
     * @return what a pint may come to cost
     * @throws IllegalArgumentException if no spread was named, or the correlations can't hold together
     */
    public RiskResult result() {
        if (plan.drivers().isEmpty()) {
            throw new IllegalArgumentException(
                    "risk: expected a spread or more, such as price(\"mashed goods\", \"10 %\"), found none");
        }
        return Risk.of(split(vector()), plan, shareDone);
    }

    private CostVector vector() {
        return asked.isPresent() ? CostVector.of(sheet, asked.get().container()) : CostVector.of(sheet);
    }

    /** Lines of hops cut in two where only a part of the weight is there for the bitterness and goes by alpha acid. */
    private CostVector split(CostVector whole) {
        Map<String, Double> bitter = bitterShares();
        List<CostVector.Line> lines = new ArrayList<>();
        for (CostVector.Line line : whole.lines()) {
            Double share = line.group() == CostGroup.HOPS ? bitter.get(line.item()) : null;
            if (share == null) {
                lines.add(line);
                continue;
            }
            lines.add(new CostVector.Line(
                    line.group(), forBitterness(line.item()), line.ofGyle(), line.perPint() * share));
            if (share < 1) {
                lines.add(new CostVector.Line(line.group(), line.item(), line.ofGyle(), line.perPint() * (1 - share)));
            }
        }
        return new CostVector(whole.name(), lines);
    }

    /** By item, the share of its weight that holds the bitterness. */
    private Map<String, Double> bitterShares() {
        Map<String, Double> bitterKg = new LinkedHashMap<>();
        Map<String, Double> allKg = new LinkedHashMap<>();
        for (Gyle.Hop hop : gyle.hops()) {
            String item = hop.hop().variety() + " " + hop.hop().lot();
            allKg.merge(item, hop.weighedKg(), Double::sum);
            if (hop.holds() == Holds.BITTERNESS && hop.weighedKg() > 0) {
                bitterKg.merge(item, hop.weighedKg(), Double::sum);
            }
        }
        bitterKg.replaceAll((item, kg) -> kg / allKg.getOrDefault(item, kg));
        return bitterKg;
    }

    private static String forBitterness(String item) {
        return item + ", for bitterness";
    }

    private static Spread relative(String what, String spread) {
        return new Spread.Lognormal(1, Terms.spread(what, spread));
    }

    /**
     * The cost it is about.
     *
     * @return the cost sheet of the gyle
     */
    public CostSheet sheet() {
        return sheet;
    }

    /**
     * The container whose pints it is about.
     *
     * @return its cost; empty for the whole mix
     */
    public Optional<ContainerCost> container() {
        return asked.map(Asked::container);
    }

    /**
     * What is drawn.
     *
     * @return the spreads, how they go together, draws and seed
     */
    public RiskPlan plan() {
        return plan;
    }
}
