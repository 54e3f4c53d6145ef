package costrel.harvest;

import costrel.hops.HopForm;
import costrel.recipe.Holds;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One hop addition of a gyle that is to be filled from lots.
 *
 * @param label what the brewer calls it, such as "copper start"; additions of a beer's gyles are matched by it
 * @param variety the recipe's variety
 * @param substitutes other varieties that the brewer has allowed here; none is ever added silently
 * @param forms the forms that can go in here
 * @param holds what the addition keeps
 * @param doseKg weight that a dose keeps, kg; for {@link Holds#DOSE} only
 * @param oilMl hop oil that the addition keeps, mL; for {@link Holds#OIL} only
 * @param bitteringShare weight of the addition among those of its gyle that hold bitterness, 0 or more: they keep these
 *     proportions of EBU; empty where the addition may take any part; for {@link Holds#BITTERNESS} only
 * @param ebuPerKgAlpha EBU that a kilogram of alpha acid brings here: 10⁶ · utilisation · correction / litres collected; 0 for
 *     dry hops
 * @param inTheCopper whether the hops lie in wort on its way to the fermenting vessel: leaf of such additions makes the bed in
 *     the hopback, and alpha acid of such additions has to dissolve
 * @param lastYear what went in last year, to compare with
 */
public record PlanAddition(
        String label,
        String variety,
        Set<String> substitutes,
        Set<HopForm> forms,
        Holds holds,
        OptionalDouble doseKg,
        OptionalDouble oilMl,
        OptionalDouble bitteringShare,
        double ebuPerKgAlpha,
        boolean inTheCopper,
        Optional<LastYear> lastYear) {

    /**
     * What went into the same addition last year, for the same litres.
     *
     * @param lot the lot
     * @param kg its weight, 0 or more
     * @param alpha its alpha acid on the day, mass fraction by the method of the gyle
     * @param oilMlPer100g its oil, mL per 100 g
     */
    public record LastYear(String lot, double kg, OptionalDouble alpha, OptionalDouble oilMlPer100g) {
        public LastYear {
            Figures.named("last year's lot", lot);
            kg = Figures.notNegative("last year's weight of " + lot, kg, " kg");
            alpha.ifPresent(found -> Figures.shareUnderOne("alpha acid of " + lot, found));
            oilMlPer100g.ifPresent(found -> Figures.notNegative("oil of " + lot, found, " mL/100 g"));
        }
    }

    public PlanAddition {
        Figures.named("hop addition", label);
        Figures.named("variety of " + label, variety);
        substitutes = Set.copyOf(substitutes);
        forms = Set.copyOf(forms);
        if (forms.isEmpty()) {
            throw new IllegalArgumentException(label + ": expected at least one form of hops, found none");
        }
        only(label, "dose", doseKg, holds == Holds.DOSE, true, " kg");
        only(label, "dose of oil", oilMl, holds == Holds.OIL, true, " mL");
        only(label, "share of the bitterness", bitteringShare, holds == Holds.BITTERNESS, false, "");
        ebuPerKgAlpha = Figures.notNegative("EBU of a kilogram of alpha acid in " + label, ebuPerKgAlpha, " EBU");
        if (holds == Holds.BITTERNESS && ebuPerKgAlpha == 0) {
            throw new IllegalArgumentException(
                    label + ": expected a utilisation over 0, since it holds bitterness, found 0");
        }
    }

    /**
     * An addition that holds bitterness.
     *
     * @param label what the brewer calls it
     * @param variety the recipe's variety
     * @param bitteringShare its weight among the bittering additions of the gyle; empty where it is free
     * @param ebuPerKgAlpha EBU of a kilogram of alpha acid, over 0
     * @return the addition: leaf or T90, in the copper, without substitutes or last year's weight
     * @throws IllegalArgumentException for figures outside their range
     */
    public static PlanAddition bittering(
            String label, String variety, OptionalDouble bitteringShare, double ebuPerKgAlpha) {
        return new PlanAddition(
                label,
                variety,
                Set.of(),
                Set.of(HopForm.LEAF, HopForm.T90),
                Holds.BITTERNESS,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                bitteringShare,
                ebuPerKgAlpha,
                true,
                Optional.empty());
    }

    /**
     * An addition that holds its weight.
     *
     * @param label what the brewer calls it
     * @param variety the recipe's variety
     * @param doseKg weight, kg, 0 or more
     * @param ebuPerKgAlpha EBU of a kilogram of alpha acid, 0 for dry hops
     * @return the addition: leaf or T90, in the copper where it brings bitterness, without substitutes or last year's weight
     * @throws IllegalArgumentException for figures outside their range
     */
    public static PlanAddition dose(String label, String variety, double doseKg, double ebuPerKgAlpha) {
        return new PlanAddition(
                label,
                variety,
                Set.of(),
                Set.of(HopForm.LEAF, HopForm.T90),
                Holds.DOSE,
                OptionalDouble.of(doseKg),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                ebuPerKgAlpha,
                ebuPerKgAlpha > 0,
                Optional.empty());
    }

    /**
     * An addition that holds its hop oil.
     *
     * @param label what the brewer calls it
     * @param variety the recipe's variety
     * @param oilMl oil, mL, 0 or more
     * @param ebuPerKgAlpha EBU of a kilogram of alpha acid, 0 for dry hops
     * @return the addition: leaf or T90, in the copper where it brings bitterness, without substitutes or last year's weight
     * @throws IllegalArgumentException for figures outside their range
     */
    public static PlanAddition oil(String label, String variety, double oilMl, double ebuPerKgAlpha) {
        return new PlanAddition(
                label,
                variety,
                Set.of(),
                Set.of(HopForm.LEAF, HopForm.T90),
                Holds.OIL,
                OptionalDouble.empty(),
                OptionalDouble.of(oilMl),
                OptionalDouble.empty(),
                ebuPerKgAlpha,
                ebuPerKgAlpha > 0,
                Optional.empty());
    }

    /**
     * The same addition with varieties that the brewer allows in place of its own.
     *
     * @param varieties names of varieties
     * @return the addition
     */
    public PlanAddition allowing(Set<String> varieties) {
        return new PlanAddition(
                label,
                variety,
                varieties,
                forms,
                holds,
                doseKg,
                oilMl,
                bitteringShare,
                ebuPerKgAlpha,
                inTheCopper,
                lastYear);
    }

    /**
     * The same addition with what went in last year.
     *
     * @param last last year's lot and weight
     * @return the addition
     */
    public PlanAddition after(LastYear last) {
        return new PlanAddition(
                label,
                variety,
                substitutes,
                forms,
                holds,
                doseKg,
                oilMl,
                bitteringShare,
                ebuPerKgAlpha,
                inTheCopper,
                Optional.of(last));
    }

    /**
     * Whether a lot may go in here by its variety and form.
     *
     * @param lot a lot
     * @return true where both are allowed
     */
    public boolean allows(PlanLot lot) {
        return forms.contains(lot.form()) && (lot.variety().equals(variety) || substitutes.contains(lot.variety()));
    }

    private static void only(
            String label, String what, OptionalDouble figure, boolean mine, boolean needed, String unit) {
        if (!mine && figure.isPresent()) {
            throw new IllegalArgumentException(label + ": expected no " + what + " for what the addition holds, found "
                    + Figures.plain(figure.getAsDouble()) + unit);
        }
        if (mine && needed && figure.isEmpty()) {
            throw new IllegalArgumentException(label + ": expected a " + what + ", found nothing");
        }
        figure.ifPresent(found -> Figures.notNegative(what + " of " + label, found, unit));
    }
}
