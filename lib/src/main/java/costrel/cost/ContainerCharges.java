package costrel.cost;

import costrel.buying.PackUnit;
import costrel.buying.UnitPrice;
import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.packaging.ContainerKind;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What containers cost beside what is bought for them: casks and kegs that don't come back, and fees on packaging by
 * weight. Who is liable for such fees depends on turnover and tonnage: ask the authority.
 *
 * @param losses what is lost of each container a trip
 * @param weights what the packaging of each container weighs
 * @param fees the dated fees
 */
public record ContainerCharges(List<TripLoss> losses, List<PackageWeight> weights, List<PackagingFee> fees) {

    /**
     * Containers that don't come back.
     *
     * @param container the container's name
     * @param value what a new one costs, more than 0
     * @param shareLost the share that is lost on a trip, more than 0 and less than 1
     * @param validFrom the first day the figures hold
     * @param validUntil the last day, that day included; empty where no end is known
     * @param origin where the row stands
     */
    public record TripLoss(
            String container,
            Money value,
            BigDecimal shareLost,
            LocalDate validFrom,
            Optional<LocalDate> validUntil,
            String origin) {
        public TripLoss {
            container = Figures.named(origin + ": container", container);
            Figures.overZero(origin + ": value of " + container, value.getAmount(), "");
            Figures.overZero(origin + ": share of " + container + " lost on a trip", shareLost, "");
            if (shareLost.compareTo(BigDecimal.ONE) >= 0) {
                throw new IllegalArgumentException(origin + ": share of " + container
                        + " lost on a trip: expected less than 1, found " + Figures.plain(shareLost));
            }
            Figures.ordered(origin + ": loss of " + container, validFrom, validUntil);
        }
    }

    /**
     * What a container's packaging weighs of one material.
     *
     * @param container the container's name
     * @param material what it is made of, as the fees call it
     * @param massKg kilograms, more than 0
     * @param forContainers how many containers that mass is for: 12 for a carton of twelve, else 1
     */
    public record PackageWeight(String container, String material, BigDecimal massKg, BigDecimal forContainers) {
        public PackageWeight {
            container = Figures.named("packaging weight: container", container);
            material = Figures.named("packaging weight of " + container + ": material", material);
            Figures.overZero("packaging weight of " + container + ": " + material, massKg, " kg");
            Figures.overZero("packaging weight of " + container + ": containers", forContainers, "");
        }
    }

    /**
     * A fee on packaging by weight.
     *
     * @param material what it is on
     * @param perTonne money per 1000 kg, 0 or more
     * @param currency what the money is in
     * @param validFrom the first day it applies
     * @param validUntil the last day it applies, that day included; empty where no end is known
     * @param source who published it
     */
    public record PackagingFee(
            String material,
            BigDecimal perTonne,
            CurrencyUnit currency,
            LocalDate validFrom,
            Optional<LocalDate> validUntil,
            String source) {
        public PackagingFee {
            material = Figures.named("packaging fee: material", material);
            Figures.zeroOrMore("packaging fee on " + material, perTonne, "");
            Figures.ordered("packaging fee on " + material, validFrom, validUntil);
            source = Figures.named("packaging fee on " + material + ": source", source);
        }
    }

    public ContainerCharges {
        losses = List.copyOf(losses);
        weights = List.copyOf(weights);
        fees = List.copyOf(fees);
    }

    /**
     * None of them: the sheet says that they are left out.
     *
     * @return empty tables
     */
    public static ContainerCharges none() {
        return new ContainerCharges(List.of(), List.of(), List.of());
    }

    /** The lines of a run of containers; what is left out is told in words. */
    List<CostLine> lines(Container container, int count, LocalDate day, CurrencyUnit currency, List<String> leftOut) {
        List<CostLine> lines = new ArrayList<>();
        boolean returns = container.kind() == ContainerKind.CASK || container.kind() == ContainerKind.KEG;
        List<TripLoss> ofContainer = new ArrayList<>();
        for (TripLoss loss : losses) {
            if (same(loss.container(), container.name()) && Figures.holds(loss.validFrom(), loss.validUntil(), day)) {
                ofContainer.add(loss);
            }
        }
        if (ofContainer.size() > 1) {
            throw new IllegalArgumentException("two losses of " + container.name() + " that both apply on " + day + ": "
                    + ofContainer.get(0).origin() + " and " + ofContainer.get(1).origin());
        }
        ofContainer.forEach(loss -> lines.add(lost(loss, container, count, currency)));
        if (returns && ofContainer.isEmpty()) {
            leftOut.add("loss of " + container.name() + " on trips: no share lost is given");
        }
        Map<String, UnitWeight> byMaterial = new LinkedHashMap<>();
        for (PackageWeight weight : weights) {
            if (same(weight.container(), container.name())) {
                byMaterial.merge(Names.folded(weight.material()), UnitWeight.of(weight), UnitWeight::plus);
            }
        }
        if (byMaterial.isEmpty()) {
            leftOut.add("packaging fees on " + container.name() + ": no weights given");
        }
        byMaterial
                .values()
                .forEach(weight ->
                        fee(weight, container, count, day, currency, leftOut).ifPresent(lines::add));
        return lines;
    }

    /** Kilograms of a material for so many containers, as a pair because a twelfth has no end in decimals. */
    private record UnitWeight(String material, BigDecimal massKg, BigDecimal forContainers) {
        static UnitWeight of(PackageWeight weight) {
            return new UnitWeight(weight.material(), weight.massKg(), weight.forContainers());
        }

        UnitWeight plus(UnitWeight other) {
            return new UnitWeight(
                    material,
                    massKg.multiply(other.forContainers).add(other.massKg.multiply(forContainers)),
                    forContainers.multiply(other.forContainers));
        }
    }

    private static CostLine lost(TripLoss loss, Container container, int count, CurrencyUnit currency) {
        if (!loss.value().getCurrencyUnit().equals(currency)) {
            throw new IllegalArgumentException(loss.origin() + ": value of " + container.name() + " is in "
                    + loss.value().getCurrencyUnit() + ", the sheet is in " + currency + "; supply it in " + currency);
        }
        UnitPrice price =
                new UnitPrice(loss.value().getAmount().multiply(loss.shareLost()), BigDecimal.ONE, "container");
        String percent = Figures.plain(loss.shareLost().movePointRight(2));
        return line(
                "loss of " + container.name() + " on the trip",
                BigDecimal.valueOf(count),
                price,
                loss.origin(),
                percent + " % of " + Figures.text(loss.value()),
                currency);
    }

    private Optional<CostLine> fee(
            UnitWeight weight,
            Container container,
            int count,
            LocalDate day,
            CurrencyUnit currency,
            List<String> leftOut) {
        List<PackagingFee> known = fees.stream()
                .filter(fee -> same(fee.material(), weight.material()))
                .toList();
        List<PackagingFee> onTheDay = known.stream()
                .filter(fee -> Figures.holds(fee.validFrom(), fee.validUntil(), day))
                .toList();
        String what = "packaging fee on " + weight.material() + " of " + container.name();
        if (onTheDay.size() > 1) {
            throw new IllegalArgumentException("two fees on " + weight.material() + " that both apply on " + day
                    + ": from " + onTheDay.get(0).validFrom() + " and from "
                    + onTheDay.get(1).validFrom());
        }
        if (onTheDay.isEmpty()) {
            leftOut.add(what + ": none is known for " + day
                    + known.stream()
                            .map(fee -> "; there is one for " + Figures.span(fee.validFrom(), fee.validUntil()))
                            .reduce("", (a, b) -> b)
                    + "; supply it by the tonne");
            return Optional.empty();
        }
        PackagingFee fee = onTheDay.get(0);
        if (!fee.currency().equals(currency)) {
            throw new IllegalArgumentException(
                    what + " is in " + fee.currency() + ", the sheet is in " + currency + "; supply it in " + currency);
        }
        BigDecimal kg =
                weight.massKg().multiply(BigDecimal.valueOf(count)).divide(weight.forContainers(), Figures.SHOWN);
        UnitPrice perContainer = new UnitPrice(
                fee.perTonne().multiply(weight.massKg()), weight.forContainers().movePointRight(3), "container");
        BigDecimal value = perContainer.times(BigDecimal.valueOf(count), currency.getDecimalPlaces());
        return Optional.of(new CostLine(
                CostGroup.PACKAGING,
                "packaging fee on " + weight.material(),
                kg,
                PackUnit.KILOGRAM.label(),
                Optional.of(new UnitPrice(fee.perTonne(), BigDecimal.valueOf(1000), PackUnit.KILOGRAM.label())),
                "",
                fee.source(),
                Money.of(currency, value),
                Optional.empty(),
                false,
                "by weight; who is liable depends on turnover and tonnage",
                List.of()));
    }

    private static CostLine line(
            String item, BigDecimal amount, UnitPrice price, String origin, String remark, CurrencyUnit currency) {
        return new CostLine(
                CostGroup.PACKAGING,
                item,
                amount,
                price.unit(),
                Optional.of(price),
                "",
                origin,
                Money.of(currency, price.times(amount, currency.getDecimalPlaces())),
                Optional.empty(),
                false,
                remark,
                List.of());
    }

    private static boolean same(String name, String other) {
        return Names.same(name, other);
    }
}
