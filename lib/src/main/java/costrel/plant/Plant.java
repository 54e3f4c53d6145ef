package costrel.plant;

import costrel.hops.HopForm;
import costrel.hops.Utilisation;
import costrel.wort.TemperatureCourse;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A brewing plant: vessels with their limits, losses, efficiency and utilisation.
 *
 * @param name the plant
 * @param mashTun the mash tun
 * @param copper the copper
 * @param hopback the hopback, or the strainer that takes its place
 * @param stand temperature course of the wort from the end of the boil to the cooler
 * @param fv the fermenting vessel
 * @param losses what is lost after collecting
 * @param efficiency mash efficiency
 * @param utilisation the hop utilisation convention of this plant
 * @param bitternessCorrection factor fitted to laboratory EBU that multiplies every utilisation; 1 where none was fitted
 * @param weighing what can be weighed out
 * @param heldCarbonDioxide carbon dioxide measured in the beer before racking, volumes; empty takes the equilibrium
 * @param warmestCelsius warmest temperature of the beer since gas stopped rising, °C; empty where not stated
 * @param copperDips what the copper's dipstick reads
 * @param fvDips what that of the fermenting vessel reads
 */
public record Plant(
        String name,
        MashTun mashTun,
        Copper copper,
        Hopback hopback,
        TemperatureCourse stand,
        Fv fv,
        Losses losses,
        MashEfficiency efficiency,
        Utilisation utilisation,
        double bitternessCorrection,
        Weighing weighing,
        OptionalDouble heldCarbonDioxide,
        OptionalDouble warmestCelsius,
        DipTable copperDips,
        DipTable fvDips) {

    /** Water in the wet grains, litres gross for each kilogram of grist, where a plant states none: Metzger, Brauerei-Forum 6/96. */
    public static final double DEFAULT_GRAIN_RETENTION = 0.96;

    /** Litres that a kilogram of grist takes in the mash, where a plant states none: Metzger, Brauerei-Forum 6/96. */
    public static final double DEFAULT_DISPLACEMENT = 0.7;

    /** Litres of wort held by a kilogram of drained hops, where a plant states none: brewing supply-trade catalogue. */
    public static final double DEFAULT_HOP_RETENTION = 6;

    /** Litres of beer held by a kilogram of dry hops, where a plant states none: supplier trial at 250 g/hL of T90. */
    public static final double DEFAULT_DRY_HOP_RETENTION = 8;

    public Plant {
        if (!(bitternessCorrection > 0 && bitternessCorrection <= 10)) {
            throw new IllegalArgumentException(
                    "bitterness correction: expected over 0 to 10, found " + bitternessCorrection);
        }
    }

    /**
     * The mash tun.
     *
     * @param volumeL full volume, litres; empty where not stated
     * @param greatestGristKg most grist it takes, kg; empty where not stated
     * @param deadL liquor left under the plates, litres
     * @param heatAllowanceK added to the strike heat for what the vessel takes up, K
     * @param grainRetentionLPerKg water in the wet grains, litres for each kg of grist
     * @param displacementLPerKg litres that a kg of grist takes in the mash
     * @param gristCelsius temperature of the grist, °C; empty where not stated
     */
    public record MashTun(
            OptionalDouble volumeL,
            OptionalDouble greatestGristKg,
            double deadL,
            double heatAllowanceK,
            double grainRetentionLPerKg,
            double displacementLPerKg,
            OptionalDouble gristCelsius) {
        public MashTun {
            notNegative("mash tun volume", volumeL, "L");
            notNegative("greatest grist", greatestGristKg, "kg");
            notNegative("mash tun dead space", deadL, "L");
            notNegative("grain retention", grainRetentionLPerKg, "L/kg");
            notNegative("displacement", displacementLPerKg, "L/kg");
            if (!(Math.abs(heatAllowanceK) <= 20)) {
                throw new IllegalArgumentException(
                        "mash heat allowance: expected −20 to 20 °C, found " + heatAllowanceK + " °C");
            }
        }
    }

    /**
     * The copper.
     *
     * @param volumeL full volume, litres; empty where not stated
     * @param headspaceShare share of the volume to be left free, 0 to under 1
     * @param boilingCelsius temperature of the boil, °C
     * @param evaporationLPerHour water boiled off in an hour, litres at 20 °C
     * @param leftL wort left behind after casting, litres at 20 °C
     */
    public record Copper(
            OptionalDouble volumeL,
            double headspaceShare,
            double boilingCelsius,
            double evaporationLPerHour,
            double leftL) {
        public Copper {
            notNegative("copper volume", volumeL, "L");
            shareUnderOne("copper headspace", headspaceShare);
            notNegative("evaporation", evaporationLPerHour, "L/h");
            notNegative("wort left in the copper", leftL, "L");
            if (!(boilingCelsius >= 80 && boilingCelsius <= 120)) {
                throw new IllegalArgumentException(
                        "boiling temperature: expected 80 to 120 °C, found " + boilingCelsius + " °C");
            }
        }
    }

    /**
     * The hopback.
     *
     * @param deadL wort left behind, litres at 20 °C
     * @param retentionLPerKg litres of wort held by a kg of spent hops, by form
     * @param contactMinutes contact time of the wort with hops laid in it
     * @param contactCelsius temperature there, °C
     * @param leastLeafKg least leaf hops in copper and hopback for a bed that strains; empty where not stated
     */
    public record Hopback(
            double deadL,
            Map<HopForm, Double> retentionLPerKg,
            double contactMinutes,
            double contactCelsius,
            OptionalDouble leastLeafKg) {
        public Hopback {
            retentionLPerKg = Map.copyOf(retentionLPerKg);
            notNegative("hopback dead space", deadL, "L");
            notNegative("hopback contact", contactMinutes, "min");
            notNegative("least leaf hops", leastLeafKg, "kg");
            retentionLPerKg.forEach((form, litres) -> notNegative("hop retention of " + form.label(), litres, "L/kg"));
        }

        /**
         * Litres held by a kilogram of spent hops.
         *
         * @param form the form of the hops
         * @return L/kg
         */
        public double retention(HopForm form) {
            return retentionLPerKg.getOrDefault(form, DEFAULT_HOP_RETENTION);
        }
    }

    /**
     * The fermenting vessel.
     *
     * @param volumeL full volume, litres; empty where not stated
     * @param headspaceShare share of the volume to be left free for the head, 0 to under 1
     */
    public record Fv(OptionalDouble volumeL, double headspaceShare) {
        public Fv {
            notNegative("FV volume", volumeL, "L");
            shareUnderOne("FV headspace", headspaceShare);
        }
    }

    /**
     * What is lost after collecting.
     *
     * @param fvShare share of the collected wort left in the FV with yeast and trub
     * @param tankShare share of what leaves the FV that is left in the conditioning tank
     * @param dryHopRetentionLPerKg litres of beer held by a kg of dry hops in the tank, by form
     * @param fillLossShare share lost in filling, by container name; "" stands for every other container
     */
    public record Losses(
            double fvShare,
            double tankShare,
            Map<HopForm, Double> dryHopRetentionLPerKg,
            Map<String, Double> fillLossShare) {
        public Losses {
            shareUnderOne("FV loss", fvShare);
            shareUnderOne("tank loss", tankShare);
            dryHopRetentionLPerKg = Map.copyOf(dryHopRetentionLPerKg);
            fillLossShare = Map.copyOf(fillLossShare);
            fillLossShare.forEach((container, share) -> shareUnderOne("fill loss of " + container, share));
        }

        /**
         * Litres of beer held by a kilogram of dry hops in the tank.
         *
         * @param form the form of the hops
         * @return L/kg
         */
        public double dryHopRetention(HopForm form) {
            return dryHopRetentionLPerKg.getOrDefault(form, DEFAULT_DRY_HOP_RETENTION);
        }

        /**
         * Share lost in filling a container.
         *
         * @param container name of the container
         * @return 0 to under 1
         */
        public double fillLoss(String container) {
            return fillLossShare.getOrDefault(container, fillLossShare.getOrDefault("", 0.0));
        }
    }

    /**
     * What can be weighed out. A step of 0 means as computed.
     *
     * @param maltStepKg malt and adjuncts
     * @param sugarStepKg copper sugars
     * @param hopStepKg hops
     * @param otherStepKg yeast, liquor treatment and process aids
     * @param sackKg weight of a full sack of malt, for the sheet; empty where not stated
     */
    public record Weighing(
            double maltStepKg, double sugarStepKg, double hopStepKg, double otherStepKg, OptionalDouble sackKg) {
        public Weighing {
            notNegative("malt weighed to", maltStepKg, "kg");
            notNegative("sugar weighed to", sugarStepKg, "kg");
            notNegative("hops weighed to", hopStepKg, "kg");
            notNegative("others weighed to", otherStepKg, "kg");
        }

        /**
         * Everything as computed.
         *
         * @return steps of 0
         */
        public static Weighing exact() {
            return new Weighing(0, 0, 0, 0, OptionalDouble.empty());
        }
    }

    private static void notNegative(String what, OptionalDouble figure, String unit) {
        if (figure.isPresent()) {
            notNegative(what, figure.getAsDouble(), unit);
        }
    }

    private static void notNegative(String what, double figure, String unit) {
        if (!(figure >= 0 && figure < 1e9)) {
            throw new IllegalArgumentException(
                    what + ": expected 0 " + unit + " or more, found " + figure + " " + unit);
        }
    }

    private static void shareUnderOne(String what, double share) {
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException(what + ": expected 0 % to under 100 %, found " + share * 100 + " %");
        }
    }
}
