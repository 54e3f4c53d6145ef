package costrel.recipe;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Something that brings extract: a malt, an adjunct or a copper sugar, with today's analysis.
 *
 * @param name the name that recipes use
 * @param kind whether it is mashed or goes into the copper
 * @param hwe hot water extract as is, L°/kg; empty where no figure is known
 * @param moisture moisture, mass fraction; empty where no figure is known
 * @param ebc colour of the material, EBC units; empty where no figure is known
 * @param allergens declarable allergens it brings, in words
 * @param source where the figures come from
 */
public record GristMaterial(
        String name,
        Kind kind,
        OptionalDouble hwe,
        OptionalDouble moisture,
        OptionalDouble ebc,
        List<String> allergens,
        String source) {

    /** Where a material's extract comes from. */
    public enum Kind {
        /** Malted grain: its extract is won in the mash. */
        MALT("malt"),
        /** Unmalted or prepared grain, mashed with the malt. */
        ADJUNCT("adjunct"),
        /** Dissolved in the copper: no mash efficiency applies. */
        COPPER_SUGAR("copper sugar");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /**
         * The word used in tables.
         *
         * @return the label
         */
        public String label() {
            return label;
        }
    }

    public GristMaterial {
        check(name, "hot water extract", hwe, 0, 450, "L°/kg");
        check(name, "moisture", moisture, 0, 0.999, "as a fraction");
        check(name, "colour", ebc, 0, 5000, "EBC");
        allergens = List.copyOf(allergens);
    }

    /**
     * Whether the material is mashed.
     *
     * @return true for malts and adjuncts
     */
    public boolean mashed() {
        return kind != Kind.COPPER_SUGAR;
    }

    /**
     * Hot water extract for a calculation.
     *
     * @return L°/kg as is
     * @throws MissingFigureException if the table has none
     */
    public double hweOrRefuse() {
        return hwe.orElseThrow(() -> new MissingFigureException(name, "hot water extract", "300 L°/kg"));
    }

    /**
     * Colour for a calculation.
     *
     * @return EBC units
     * @throws MissingFigureException if the table has none
     */
    public double ebcOrRefuse() {
        return ebc.orElseThrow(() -> new MissingFigureException(name, "colour", "5 EBC"));
    }

    /**
     * Moisture for a calculation.
     *
     * @return mass fraction
     * @throws MissingFigureException if the table has none
     */
    public double moistureOrRefuse() {
        return moisture.orElseThrow(() -> new MissingFigureException(name, "moisture", "3.5 %"));
    }

    private static void check(String name, String what, OptionalDouble figure, double low, double high, String unit) {
        if (figure.isPresent() && !(figure.getAsDouble() >= low && figure.getAsDouble() <= high)) {
            throw new IllegalArgumentException(what + " of " + name + ": expected " + low + " to " + high + " " + unit
                    + ", found " + figure.getAsDouble());
        }
    }
}
