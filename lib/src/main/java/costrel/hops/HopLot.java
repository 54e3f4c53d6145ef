package costrel.hops;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A hop lot in store, with its certificate and any later analyses.
 *
 * @param id the brewery's or merchant's lot number
 * @param variety name of the variety
 * @param cropYear the year of the harvest, 1900 to 2200
 * @param form leaf, pellets or extract
 * @param analyses at least one; sorted by date, those of one day in the order given
 * @param stockKg kilograms on hand, 0 or more; empty where not stated
 * @param storeCelsius temperature of the store, °C, −40 to 50; empty where not stated
 * @param packing how the lot is packed
 * @param statedYearlyLoss share of the alpha acid that the supplier states is lost in a year in the sealed pack; empty where not
 *     stated
 * @param wholePackKg weight of a pack that has to be used up once it is open, kg; empty where an open pack keeps
 */
public record HopLot(
        String id,
        String variety,
        int cropYear,
        HopForm form,
        List<HopAnalysis> analyses,
        OptionalDouble stockKg,
        OptionalDouble storeCelsius,
        Packing packing,
        OptionalDouble statedYearlyLoss,
        OptionalDouble wholePackKg) {

    /**
     * A lot of which the supplier states no loss and whose packs keep once open.
     *
     * @param id lot number
     * @param variety name of the variety
     * @param cropYear the year of the harvest
     * @param form leaf, pellets or extract
     * @param analyses at least one
     * @param stockKg kilograms on hand
     * @param storeCelsius temperature of the store, °C
     * @param packing how the lot is packed
     */
    public HopLot(
            String id,
            String variety,
            int cropYear,
            HopForm form,
            List<HopAnalysis> analyses,
            OptionalDouble stockKg,
            OptionalDouble storeCelsius,
            Packing packing) {
        this(
                id,
                variety,
                cropYear,
                form,
                analyses,
                stockKg,
                storeCelsius,
                packing,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

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

        /**
         * Reads a label back, without regard to case and blanks.
         *
         * @param text a label
         * @return the packing
         * @throws IllegalArgumentException for any other text; the message lists the labels
         */
        public static Packing parse(String text) {
            return Labels.parse("packing of hops", values(), Packing::label, text);
        }
    }

    public HopLot {
        statedYearlyLoss.ifPresent(loss -> Limits.shareUnderOne("stated loss of lot " + id, loss));
        if (wholePackKg.isPresent() && !(wholePackKg.getAsDouble() > 0 && wholePackKg.getAsDouble() < 1e6)) {
            throw new IllegalArgumentException(
                    "pack of lot " + id + ": expected over 0 kg, found " + wholePackKg.getAsDouble() + " kg");
        }
        if (id.isBlank()) {
            throw new IllegalArgumentException("hop lot: expected a lot number, found nothing");
        }
        if (analyses.isEmpty()) {
            throw new IllegalArgumentException("hop lot " + id + ": expected at least one analysis, found none");
        }
        if (variety.isBlank()) {
            throw new IllegalArgumentException("hop lot " + id + ": expected a variety, found nothing");
        }
        if (!(cropYear >= 1900 && cropYear <= 2200)) {
            throw new IllegalArgumentException(
                    "hop lot " + id + ": expected a crop year such as 2026, found " + cropYear);
        }
        if (stockKg.isPresent()) {
            Limits.within("stock of hop lot " + id, stockKg.getAsDouble(), 0, 1e9, " kg");
        }
        if (storeCelsius.isPresent()) {
            Limits.within("store of hop lot " + id, storeCelsius.getAsDouble(), -40, 50, " °C");
        }
        analyses = analyses.stream()
                .sorted(Comparator.comparing(HopAnalysis::date))
                .toList();
    }
}
