package costrel.hops;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A hop lot in store, with its certificate and any later analyses.
 *
 * @param id the brewery's or merchant's lot number
 * @param variety name of the variety
 * @param cropYear the year of the harvest
 * @param form leaf, pellets or extract
 * @param analyses at least one, sorted by date
 * @param stockKg kilograms on hand; empty where not stated
 * @param storeCelsius temperature of the store; empty where not stated
 * @param packing how the lot is packed
 */
public record HopLot(
        String id,
        String variety,
        int cropYear,
        HopForm form,
        List<HopAnalysis> analyses,
        OptionalDouble stockKg,
        OptionalDouble storeCelsius,
        Packing packing) {

    /** What surrounds the hops in their pack. */
    public enum Packing {
        /** Bale, pocket or opened pack: air gets at the hops. */
        AIR("air"),
        /** Sealed under vacuum, nitrogen or carbon dioxide. */
        INERT("inert"),
        /** Not stated. */
        UNSTATED("unstated");

        private final String label;

        Packing(String label) {
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

    public HopLot {
        if (id.isBlank()) {
            throw new IllegalArgumentException("hop lot: expected a lot number, found nothing");
        }
        if (analyses.isEmpty()) {
            throw new IllegalArgumentException("hop lot " + id + ": expected at least one analysis, found none");
        }
        if (stockKg.isPresent() && !(stockKg.getAsDouble() >= 0 && stockKg.getAsDouble() < 1e9)) {
            throw new IllegalArgumentException(
                    "hop lot " + id + ": expected a stock of 0 kg or more, found " + stockKg.getAsDouble());
        }
        analyses = analyses.stream().sorted(Comparator.comparing(HopAnalysis::date)).toList();
    }
}
