package costrel.recipe;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Anything that is neither grist nor hops: yeast, a salt, an acid, finings.
 *
 * @param name the name that recipes use
 * @param kind what it is
 * @param cellsPerKilogram live yeast cells in a kilogram; empty where unknown or not yeast
 * @param ions milligrams per litre of each ion brought by one gram (or millilitre) per hectolitre
 * @param normality equivalents per litre of an acid; empty where unknown or no acid
 * @param allergens declarable allergens it brings, in words
 * @param source where the figures come from
 */
public record Supply(
        String name,
        Kind kind,
        OptionalDouble cellsPerKilogram,
        List<Ion> ions,
        OptionalDouble normality,
        List<String> allergens,
        String source) {

    /** What a supply is. */
    public enum Kind {
        /** Yeast. */
        YEAST("yeast"),
        /** A salt or acid for the liquor. */
        LIQUOR_TREATMENT("liquor treatment"),
        /** Finings, yeast food and the like. */
        PROCESS_AID("process aid");

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

    /**
     * An ion that a salt brings.
     *
     * @param symbol such as Ca or SO4
     * @param mgPerLitre mg/L of the ion from 1 g/hL of the salt
     */
    public record Ion(String symbol, double mgPerLitre) {}

    public Supply {
        ions = List.copyOf(ions);
        allergens = List.copyOf(allergens);
        if (cellsPerKilogram.isPresent() && !(cellsPerKilogram.getAsDouble() > 0)) {
            throw new IllegalArgumentException(
                    name + ": expected more than 0 cells per kg, found " + cellsPerKilogram.getAsDouble());
        }
    }
}
