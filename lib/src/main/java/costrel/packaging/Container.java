package costrel.packaging;

import costrel.figures.Figures;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A container and its four volumes, in litres.
 *
 * <p>Whether draught relief may be claimed is stated, never inferred: besides holding 20 litres or more, the container
 * must be made to connect to a pump or to gas for serving drinks (Finance (No. 2) Act 2023 s.51).
 *
 * @param name what it is called, such as firkin
 * @param kind what it is
 * @param nominalL what it holds when full
 * @param labelL what labels and papers say it holds; duty goes by it
 * @param sedimentL what can't be sold from it, 0 or more and less than it holds
 * @param undrinkableL what duty isn't charged on, as agreed with the authority; 0 where nothing is agreed
 * @param conditioned whether the beer gains its condition in it
 * @param draught whether draught relief is claimed for it; it must then hold 20 L or more
 * @param allergens declarable allergens that it brings to the beer, in words
 * @param defaultsUsed figures that the table left blank and what was taken instead, in words
 * @param ratedVolumes volumes of carbon dioxide that the maker rates a bottle for, over 0 to 10; empty for ordinary glass of
 *     no stated rating, and for anything that is no bottle
 */
public record Container(
        String name,
        ContainerKind kind,
        BigDecimal nominalL,
        BigDecimal labelL,
        BigDecimal sedimentL,
        BigDecimal undrinkableL,
        boolean conditioned,
        boolean draught,
        List<String> allergens,
        List<String> defaultsUsed,
        OptionalDouble ratedVolumes) {

    /** Litres in an imperial pint: an eighth of a gallon of 4.54609 L, Weights and Measures Act 1985 Sch. 1. */
    public static final BigDecimal PINT_L = new BigDecimal("0.56826125");

    /** Least capacity of a large draught container: Finance (No. 2) Act 2023 s.51(3)(a). */
    private static final BigDecimal LEAST_DRAUGHT_L = BigDecimal.valueOf(20);

    public Container {
        name = Figures.named("container", name);
        Figures.overZero(name + ": nominal volume", nominalL, " L");
        Figures.overZero(name + ": label volume", labelL, " L");
        Figures.zeroOrMore(name + ": sediment", sedimentL, " L");
        Figures.zeroOrMore(name + ": undrinkable volume", undrinkableL, " L");
        if (sedimentL.compareTo(nominalL) >= 0) {
            throw new IllegalArgumentException(name + ": sediment: expected less than the " + Figures.plain(nominalL)
                    + " L it holds, found " + Figures.plain(sedimentL) + " L");
        }
        if (undrinkableL.compareTo(labelL) >= 0) {
            throw new IllegalArgumentException(name + ": undrinkable volume: expected less than the "
                    + Figures.plain(labelL) + " L on its label, found " + Figures.plain(undrinkableL) + " L");
        }
        if (draught && nominalL.compareTo(LEAST_DRAUGHT_L) < 0) {
            throw new IllegalArgumentException(name + ": draught relief asks for 20 L or more, found "
                    + Figures.plain(nominalL) + " L; enter it as not draught");
        }
        if (ratedVolumes.isPresent()) {
            if (kind != ContainerKind.BOTTLE) {
                throw new IllegalArgumentException("rated for: " + name
                        + ": expected a rating for a bottle only, found one for a " + kind.label());
            }
            if (!(ratedVolumes.getAsDouble() > 0 && ratedVolumes.getAsDouble() <= 10)) {
                throw new IllegalArgumentException("rated for: " + name + ": expected more than 0 to 10 volumes, found "
                        + Figures.plain(BigDecimal.valueOf(ratedVolumes.getAsDouble())));
            }
        }
        allergens = List.copyOf(allergens);
        defaultsUsed = List.copyOf(defaultsUsed);
    }

    /**
     * A container without a stated rating.
     *
     * @param name what it is called, such as firkin
     * @param kind what it is
     * @param nominalL what it holds when full
     * @param labelL what labels and papers say it holds; duty goes by it
     * @param sedimentL what can't be sold from it, 0 or more and less than it holds
     * @param undrinkableL what duty isn't charged on, as agreed with the authority; 0 where nothing is agreed
     * @param conditioned whether the beer gains its condition in it
     * @param draught whether draught relief is claimed for it; it must then hold 20 L or more
     * @param allergens declarable allergens that it brings to the beer, in words
     * @param defaultsUsed figures that the table left blank and what was taken instead, in words
     * @throws IllegalArgumentException if a figure is out of its range
     */
    public Container(
            String name,
            ContainerKind kind,
            BigDecimal nominalL,
            BigDecimal labelL,
            BigDecimal sedimentL,
            BigDecimal undrinkableL,
            boolean conditioned,
            boolean draught,
            List<String> allergens,
            List<String> defaultsUsed) {
        this(
                name,
                kind,
                nominalL,
                labelL,
                sedimentL,
                undrinkableL,
                conditioned,
                draught,
                allergens,
                defaultsUsed,
                OptionalDouble.empty());
    }

    /**
     * The same bottle with the condition that its maker rates it for.
     *
     * @param volumes volumes of carbon dioxide, over 0 to 10
     * @return with that rating
     * @throws IllegalArgumentException if it is no bottle or the rating is out of range
     */
    public Container ratedFor(double volumes) {
        return new Container(
                name,
                kind,
                nominalL,
                labelL,
                sedimentL,
                undrinkableL,
                conditioned,
                draught,
                allergens,
                defaultsUsed,
                OptionalDouble.of(volumes));
    }

    /**
     * Pints that can be sold from one container.
     *
     * @return what it holds less its sediment, in imperial pints, to 34 digits
     */
    public BigDecimal saleablePints() {
        return nominalL.subtract(sedimentL).divide(PINT_L, Figures.SHOWN);
    }

    /**
     * Litres that duty is charged on.
     *
     * @return what the label says less what is agreed to be undrinkable
     */
    public BigDecimal dutiableL() {
        return labelL.subtract(undrinkableL);
    }
}
