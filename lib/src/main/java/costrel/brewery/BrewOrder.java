package costrel.brewery;

import costrel.cost.CostBasis;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was said about a brewing.
 *
 * @param plant where
 * @param litres cold wort to collect, L
 * @param day the day of the mash
 * @param dutyDay the day on which the beer passes the duty point, where it isn't the day of the mash
 * @param lots lots by the folded name of their variety
 * @param sameHops whether the hops are those of the recipe as it was brewed
 * @param insist whether it is weighed out on an upper bound of the utilisation
 * @param basis what its goods are costed at; empty for the brewery's own
 */
record BrewOrder(
        Optional<String> plant,
        OptionalDouble litres,
        Optional<LocalDate> day,
        Optional<LocalDate> dutyDay,
        Map<String, String> lots,
        boolean sameHops,
        boolean insist,
        Optional<CostBasis> basis) {

    BrewOrder {
        lots = Map.copyOf(lots);
    }

    static BrewOrder of(Optional<String> plant, OptionalDouble litres) {
        return new BrewOrder(
                plant, litres, Optional.empty(), Optional.empty(), Map.of(), false, false, Optional.empty());
    }

    BrewOrder on(String name) {
        return new BrewOrder(Optional.of(name), litres, day, dutyDay, lots, sameHops, insist, basis);
    }

    BrewOrder length(double brewLengthL) {
        return new BrewOrder(plant, OptionalDouble.of(brewLengthL), day, dutyDay, lots, sameHops, insist, basis);
    }

    BrewOrder day(LocalDate mash) {
        return new BrewOrder(plant, litres, Optional.of(mash), dutyDay, lots, sameHops, insist, basis);
    }

    BrewOrder dutyDay(LocalDate dutyPoint) {
        return new BrewOrder(plant, litres, day, Optional.of(dutyPoint), lots, sameHops, insist, basis);
    }

    BrewOrder lots(Map<String, String> byVariety) {
        return new BrewOrder(plant, litres, day, dutyDay, byVariety, false, insist, basis);
    }

    BrewOrder withSameHops() {
        return new BrewOrder(plant, litres, day, dutyDay, Map.of(), true, insist, basis);
    }

    BrewOrder insisted() {
        return new BrewOrder(plant, litres, day, dutyDay, lots, sameHops, true, basis);
    }

    BrewOrder basis(CostBasis costBasis) {
        return new BrewOrder(plant, litres, day, dutyDay, lots, sameHops, insist, Optional.of(costBasis));
    }
}
