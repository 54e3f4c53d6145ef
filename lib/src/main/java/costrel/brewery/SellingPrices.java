package costrel.brewery;

import costrel.cost.ContainerCost;
import costrel.cost.CostSheet;
import costrel.cost.PackageItem;
import costrel.packaging.Container;
import costrel.pricing.BreakEven;
import costrel.pricing.DiscountLadder;
import costrel.pricing.LossWorth;
import costrel.pricing.Price;
import costrel.pricing.Pricing;
import costrel.pricing.PubPrice;
import costrel.pricing.UnitCost;
import costrel.recipe.Names;
import costrel.tables.MoneyText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * What to charge for the containers of a gyle: from its cost to a price for the trade, to the bar, to the volume that pays. Each
 * call gives a changed copy or an answer. Prices are without value added tax and duty is in the cost. An aid to pricing: no
 * duty return and no tax advice.
 *
 * <pre>{@code
 * SellingPrices prices = brew.pricing().margin("35 %").at("firkin", "£95.00");
 * }</pre>
 */
public final class SellingPrices {

    private final Brew brew;
    private final CostSheet sheet;
    private final boolean mayBeUnderVariableCost;
    private final Map<String, Price> prices;

    private SellingPrices(Brew brew, CostSheet sheet, boolean mayBeUnderVariableCost, Map<String, Price> prices) {
        this.brew = brew;
        this.sheet = sheet;
        this.mayBeUnderVariableCost = mayBeUnderVariableCost;
        this.prices = prices;
    }

    static SellingPrices of(Brew brew) {
        return new SellingPrices(brew, brew.cost(), false, Map.of());
    }

    /**
     * With leave to sell under variable cost, for prices that are asked for after this.
     *
     * @return the same prices with leave
     */
    public SellingPrices evenUnderVariableCost() {
        return new SellingPrices(brew, sheet, true, prices);
    }

    /**
     * Every container at a margin on the price, duty in price and cost.
     *
     * @param share such as "35 %", under 100 %
     * @return the containers priced so
     * @throws IllegalArgumentException if it is no such share
     */
    public SellingPrices margin(String share) {
        BigDecimal margin = Terms.share("margin", share);
        return all(pricing -> pricing.atMargin(margin));
    }

    /**
     * Every container at a margin on what the brewery keeps when duty is paid.
     *
     * @param share such as "45 %", under 100 %
     * @return the containers priced so
     * @throws IllegalArgumentException if it is no such share
     */
    public SellingPrices marginWithoutDuty(String share) {
        BigDecimal margin = Terms.share("margin", share);
        return all(pricing -> pricing.atMarginExDuty(margin));
    }

    /**
     * Every container at its cost and a mark-up.
     *
     * @param share of the cost, such as "60 %"
     * @return the containers priced so
     * @throws IllegalArgumentException if it is no share, or puts a price under variable cost without leave
     */
    public SellingPrices markUp(String share) {
        BigDecimal markUp = Terms.share("mark-up", share);
        return all(pricing -> pricing.atMarkUp(markUp));
    }

    /**
     * Every container at a contribution for each hectolitre that can be sold.
     *
     * @param money such as "£120"
     * @return the containers priced so
     * @throws IllegalArgumentException if it is no amount, or puts a price under variable cost without leave
     */
    public SellingPrices contributionPerHl(String money) {
        BigDecimal perHl = money("contribution", money).getAmount();
        return all(pricing -> pricing.atContributionPerHl(perHl));
    }

    /**
     * Every container at a contribution for each day of its tank.
     *
     * @param money such as "£350"
     * @return the containers priced so
     * @throws IllegalArgumentException if it is no amount, the recipe states no tank time, or a price comes to lie under
     *     variable cost without leave
     */
    public SellingPrices contributionPerTankDay(String money) {
        BigDecimal perTankDay = money("contribution", money).getAmount();
        return all(pricing -> pricing.atContributionPerTankDay(perTankDay));
    }

    /**
     * One container at a price; the others stay as they are.
     *
     * @param container its name
     * @param price such as "£95.00", without value added tax
     * @return with that price
     * @throws IllegalArgumentException if the beer isn't filled into it, it is no price, or it is under variable cost
     *     without leave
     */
    public SellingPrices at(String container, String price) {
        Map<String, Price> more = new LinkedHashMap<>(prices);
        Price asked = priced(container, price);
        more.put(folded(found(container)), asked);
        return new SellingPrices(brew, sheet, mayBeUnderVariableCost, Map.copyOf(more));
    }

    private SellingPrices all(Function<Pricing, Price> rule) {
        Map<String, Price> every = new LinkedHashMap<>();
        sheet.containers().forEach(container -> every.put(folded(container), rule.apply(pricing(container))));
        return new SellingPrices(brew, sheet, mayBeUnderVariableCost, Map.copyOf(every));
    }

    /**
     * The pump price of every container that is priced, from the pub's gross profit and the pints that can be sold from it. A
     * bottle or a can is sold as it is.
     *
     * @param grossProfit such as "60 %", a share of the pump price without value added tax
     * @return the prices on the bar
     * @throws IllegalArgumentException if nothing is priced yet, or it is no share under 100 %
     */
    public BarPrices pub(String grossProfit) {
        BigDecimal share = Terms.share("gross profit", grossProfit);
        List<BarPrices.Line> lines = new ArrayList<>();
        for (ContainerCost container : sheet.containers()) {
            price(container).ifPresent(price -> lines.add(bar(container, price, share)));
        }
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("price: expected one to reckon the pub's by, such as margin(\"35 %\") or"
                    + " pub(\"firkin\", \"£95.00\", \"60 %\"), found none");
        }
        return new BarPrices(beer(), lines);
    }

    /**
     * The pump price of one container.
     *
     * @param container its name
     * @param price what the pub pays, such as "£95.00", without value added tax
     * @param grossProfit such as "60 %"
     * @return the price on the bar
     * @throws IllegalArgumentException if a figure is none
     */
    public BarPrices pub(String container, String price, String grossProfit) {
        BigDecimal share = Terms.share("gross profit", grossProfit);
        return new BarPrices(beer(), List.of(bar(found(container), priced(container, price), share)));
    }

    private BarPrices.Line bar(ContainerCost container, Price price, BigDecimal grossProfit) {
        return new BarPrices.Line(
                container.container(), PubPrice.atGrossProfit(price.net(), sold(container), grossProfit, vat()));
    }

    /**
     * What a pump price leaves the pub.
     *
     * @param container the container's name
     * @param price what the pub pays, such as "£95.00", without value added tax
     * @param pump what a pint costs on the bar, such as "£4.20", with value added tax
     * @return the price on the bar with the gross profit it leaves
     * @throws IllegalArgumentException if a figure is none
     */
    public BarPrices pumpAt(String container, String price, String pump) {
        ContainerCost found = found(container);
        PubPrice left =
                PubPrice.atPumpPrice(priced(container, price).net(), sold(found), money("pump price", pump), vat());
        return new BarPrices(beer(), List.of(new BarPrices.Line(found.container(), left)));
    }

    /**
     * The most a pub can pay for a container at a pump price and a gross profit.
     *
     * @param container the container's name
     * @param pump what a pint costs on the bar, such as "£4.20", with value added tax
     * @param grossProfit such as "60 %"
     * @return the price without value added tax
     * @throws IllegalArgumentException if a figure is none
     */
    public Money mostFor(String container, String pump, String grossProfit) {
        return PubPrice.containerPriceFor(
                money("pump price", pump), sold(found(container)), Terms.share("gross profit", grossProfit), vat());
    }

    /** What the pub sells from one container: pints, or the one bottle or can. */
    private static BigDecimal sold(ContainerCost container) {
        return BarPrices.byThePint(container.container())
                ? container.container().saleablePints()
                : BigDecimal.ONE;
    }

    /**
     * How many of a container pay for a fixed cost.
     *
     * @param container its name
     * @param price such as "£95.00"
     * @param fixed the fixed cost of a period, such as "£48000"
     * @return whole containers, rounded up
     * @throws IllegalArgumentException if a figure is none, or the price is no more than the variable cost
     */
    public VolumeNeeded breakEven(String container, String price, String fixed) {
        return volume(container, price, fixed, BigDecimal.ZERO);
    }

    /**
     * How many of a container pay for a fixed cost and leave a profit.
     *
     * @param container its name
     * @param price such as "£95.00"
     * @param fixed the fixed cost of a period, such as "£48000"
     * @param profit the profit that is wanted of it, such as "£6000"
     * @return whole containers, rounded up
     * @throws IllegalArgumentException if a figure is none, or the price is no more than the variable cost
     */
    public VolumeNeeded breakEven(String container, String price, String fixed, String profit) {
        return volume(container, price, fixed, money("profit", profit).getAmount());
    }

    private VolumeNeeded volume(String container, String price, String fixed, BigDecimal profit) {
        Price asked = priced(container, price);
        return new VolumeNeeded(
                asked, BreakEven.of(asked, money("fixed cost", fixed).getAmount(), profit));
    }

    /**
     * What discounts for larger orders leave.
     *
     * @param container its name
     * @param list the price without discount, such as "£95.00"
     * @param steps smallest orders and their discounts, such as "10: 5 %; 50: 10 %"
     * @return the ladder
     * @throws IllegalArgumentException if a figure is none, steps are out of order, or one is under variable cost without
     *     leave
     */
    public DiscountLadder discounts(String container, String list, String steps) {
        List<DiscountLadder.Step> ladder = new ArrayList<>();
        for (String step : steps.split(";", -1)) {
            int colon = step.indexOf(':');
            String from = colon < 0 ? "" : step.substring(0, colon).strip();
            if (!from.matches("[0-9]{1,9}")) {
                throw new IllegalArgumentException(
                        "discounts: expected steps such as '10: 5 %; 50: 10 %', found '" + step.strip() + "'");
            }
            ladder.add(new DiscountLadder.Step(
                    Integer.parseInt(from), Terms.share("discount from " + from, step.substring(colon + 1))));
        }
        return DiscountLadder.of(pricing(found(container)), money("price", list), ladder);
    }

    /**
     * What one point of each loss is worth.
     *
     * @return from the FV to what can be sold
     */
    public LossTable losses() {
        return new LossTable(sheet, LossWorth.of(sheet));
    }

    /**
     * What the beer would cost at other strengths, with both sides of each step of duty.
     *
     * @param least the weakest, such as "3.0 %"
     * @param most the strongest, such as "5.0 %"
     * @param step how far apart, in tenths of a per cent, such as "0.2 %"
     * @return a row for each strength
     * @throws IllegalArgumentException if a figure is none, or the beer can't be brewed or costed at one
     */
    public StrengthTable strengths(String least, String most, String step) {
        return StrengthTable.of(
                brew,
                Terms.percent("strength", least),
                Terms.percent("strength", most),
                Terms.percent("strength", step));
    }

    /**
     * The cost it all goes by.
     *
     * @return the cost sheet of the gyle
     */
    public CostSheet sheet() {
        return sheet;
    }

    /**
     * What one of each container costs.
     *
     * @return unrounded, in the order of the sheet
     */
    public List<UnitCost> costs() {
        return sheet.containers().stream()
                .map(container -> UnitCost.of(sheet, container))
                .toList();
    }

    /**
     * The price of a container.
     *
     * @param container a container of the sheet
     * @return empty where it isn't priced yet
     */
    public Optional<Price> price(ContainerCost container) {
        return Optional.ofNullable(prices.get(folded(container)));
    }

    /**
     * The rate of value added tax.
     *
     * @return a share, as brewery.csv states it
     */
    public BigDecimal vat() {
        return brew.brewery().settings().vat();
    }

    /**
     * How many of a container go into one case.
     *
     * @param container the container
     * @return what packages.csv shares one package over; empty where it is sold singly
     */
    public OptionalInt caseOf(Container container) {
        return brew.brewery().packages().stream()
                .filter(item -> Names.folded(item.container()).equals(Names.folded(container.name())))
                .map(PackageItem::forContainers)
                .filter(count -> count.compareTo(BigDecimal.ONE) > 0)
                .mapToInt(BigDecimal::intValue)
                .max();
    }

    private String beer() {
        return sheet.batch().beer();
    }

    private ContainerCost found(String container) {
        return Terms.container(sheet, container);
    }

    private Pricing pricing(ContainerCost container) {
        return new Pricing(UnitCost.of(sheet, container), mayBeUnderVariableCost);
    }

    private Price priced(String container, String price) {
        return pricing(found(container)).at(money("price", price));
    }

    private Money money(String what, String text) {
        return MoneyText.parse(what, text, sheet.total().getCurrencyUnit());
    }

    private static String folded(ContainerCost container) {
        return Names.folded(container.container().name());
    }
}
