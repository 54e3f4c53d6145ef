package costrel.brewery;

import costrel.buying.NoPriceException;
import costrel.buying.PackUnit;
import costrel.harvest.HouseRules;
import costrel.harvest.PlanAddition;
import costrel.harvest.PlanGyle;
import costrel.harvest.PlanLot;
import costrel.harvest.PlannedBrew;
import costrel.hops.AlphaMethod;
import costrel.hops.HopForm;
import costrel.hops.HopLot;
import costrel.hops.HopUse;
import costrel.measure.Amounts;
import costrel.recipe.Holds;
import costrel.recipe.Names;
import costrel.recipe.Resolver;
import costrel.scaling.Gyle;
import costrel.scaling.Intent;
import costrel.scaling.Scaler;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Writes a brewing plan as what the planner asks for: gyles with their additions, lots with their alpha acid on each day. */
record HarvestInput(Brewery brewery, List<PlannedBrew> brews, HouseRules rules) {

    private static final Set<HopForm> COPPER_FORMS =
            Set.of(HopForm.LEAF, HopForm.T90, HopForm.T45, HopForm.CO2_EXTRACT);
    private static final Set<HopForm> DRY_FORMS = Set.of(HopForm.LEAF, HopForm.T90, HopForm.T45);

    Gyle gyle(PlannedBrew brew) {
        return brewery.brew(brew.beer())
                .on(brew.plant())
                .length(Amounts.ofLitres(brew.litres()))
                .day(brew.day())
                .insist()
                .gyle();
    }

    PlanGyle planGyle(PlannedBrew brew, Gyle gyle) {
        Gyle before = Scaler.scale(
                gyle.intent()
                        .withHops(gyle.intent().hops().stream()
                                .map(Intent.Hop::asRead)
                                .toList()),
                gyle.plant(),
                gyle.brewLength(),
                new Scaler.Options(brewery.alphaMethodFactors(), true));
        List<PlanAddition> additions = new ArrayList<>();
        for (int i = 0; i < gyle.hops().size(); i++) {
            additions.add(addition(
                    i + 1,
                    gyle,
                    gyle.hops().get(i),
                    gyle.intent().hops().get(i),
                    before.hops().get(i).kg()));
        }
        AlphaMethod method = gyle.intent().hops().isEmpty()
                ? AlphaMethod.UNSTATED
                : gyle.intent().hops().get(0).asRead().method();
        return new PlanGyle(
                brew.id(),
                gyle.beerName(),
                brew.day(),
                brew.litres(),
                method,
                gyle.intent().ebu(),
                rules.toleranceEbu(),
                gyle.plant().hopback().leastLeafKg().orElse(0),
                additions);
    }

    private PlanAddition addition(int number, Gyle gyle, Gyle.Hop hop, Intent.Hop intent, double beforeKg) {
        String variety = intent.asRead().variety();
        double doseL = hop.use() instanceof HopUse.DryHopCask ? gyle.beer().rackedL() : gyle.collectedL();
        boolean byOil = hop.holds() == Holds.OIL && intent.oilMlPerHl().isPresent();
        boolean bitter = hop.holds() == Holds.BITTERNESS;
        Optional<PlanAddition.LastYear> last = intent.gramsPerHl().isPresent()
                ? Optional.of(new PlanAddition.LastYear(
                        intent.asRead().lot(),
                        beforeKg,
                        OptionalDouble.of(intent.asRead().alpha()),
                        intent.asRead().oilMlPer100g()))
                : Optional.empty();
        return new PlanAddition(
                number + " " + hop.use().text(),
                variety,
                allowedFor(variety),
                hop.use().isDryHop() ? DRY_FORMS : COPPER_FORMS,
                bitter ? Holds.BITTERNESS : byOil ? Holds.OIL : Holds.DOSE,
                bitter || byOil ? OptionalDouble.empty() : OptionalDouble.of(hop.kg()),
                byOil ? OptionalDouble.of(intent.oilMlPerHl().getAsDouble() * doseL / 100) : OptionalDouble.empty(),
                bitter && intent.ebu().isPresent() ? intent.ebu() : OptionalDouble.empty(),
                1e6 * hop.utilisation() / gyle.collectedL(),
                hop.use().holdsWort(),
                last);
    }

    private Set<String> allowedFor(String variety) {
        return Names.find(rules.substitutes(), variety).orElse(Set.of());
    }

    List<PlanLot> lots() {
        LocalDate first = brews.stream()
                .map(PlannedBrew::day)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        return brewery.catalogue().hopLots().values().stream()
                .sorted(Comparator.comparing(HopLot::cropYear).thenComparing(HopLot::id))
                .map(lot -> planLot(lot, first))
                .toList();
    }

    private PlanLot planLot(HopLot lot, LocalDate pricedOn) {
        LocalDate from = lot.analyses().get(0).date();
        Map<String, Double> alpha = new HashMap<>();
        for (PlannedBrew brew : brews) {
            if (!brew.day().isBefore(from)) {
                alpha.put(
                        brew.id(),
                        Resolver.onTheDay(lot, brewery.catalogue(), brew.day()).alpha());
            }
        }
        LocalDate last = brews.stream()
                .map(PlannedBrew::day)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        OptionalDouble oil = from.isAfter(last)
                ? OptionalDouble.empty()
                : Resolver.onTheDay(lot, brewery.catalogue(), last).oilMlPer100g();
        return new PlanLot(
                lot.id(),
                lot.variety(),
                lot.form(),
                lot.cropYear(),
                from,
                lot.analyses().get(0).method(),
                alpha,
                oil,
                lot.stockKg().orElse(0),
                lot.wholePackKg(),
                price(lot, pricedOn));
    }

    private OptionalDouble price(HopLot lot, LocalDate day) {
        try {
            return OptionalDouble.of(brewery.prices()
                    .choose(
                            List.of(lot.id(), lot.variety() + " " + lot.form().label(), lot.variety()),
                            day,
                            BigDecimal.ONE,
                            PackUnit.KILOGRAM,
                            brewery.currency())
                    .unitPrice()
                    .value()
                    .doubleValue());
        } catch (NoPriceException none) {
            return OptionalDouble.empty();
        }
    }
}
