package costrel.recipe;

import costrel.hops.HopUse;
import costrel.wort.Gravity;
import costrel.wort.TemperatureCourse;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A beer as its file states it: names, not things. Resolving it against a {@link Catalogue} is what can meet an unknown name.
 *
 * @param name the beer
 * @param home the plant it was brewed on; empty where the recipe states targets
 * @param brewed the day it was brewed, which decides on analyses and alpha; empty where not stated
 * @param brewLengthL brew length at home, litres; empty where the recipe states rates and targets only
 * @param targets what the beer is to be, where stated
 * @param method how it is mashed, boiled and fermented
 * @param grist grist materials
 * @param hops hop additions
 * @param yeasts yeast, mostly one
 * @param additions liquor treatment, process aids, finings and primings
 */
public record Recipe(
        String name,
        Optional<String> home,
        Optional<LocalDate> brewed,
        OptionalDouble brewLengthL,
        Targets targets,
        Method method,
        List<Grist> grist,
        List<Hop> hops,
        List<Yeast> yeasts,
        List<Addition> additions) {

    public Recipe {
        grist = List.copyOf(grist);
        hops = List.copyOf(hops);
        yeasts = List.copyOf(yeasts);
        additions = List.copyOf(additions);
        if (grist.isEmpty()) {
            throw new IllegalArgumentException(name + ": expected at least one grist material, found none");
        }
        if (brewLengthL.isPresent() && !(brewLengthL.getAsDouble() > 0 && brewLengthL.getAsDouble() < 1e9)) {
            throw new IllegalArgumentException(
                    name + ": expected a brew length over 0 L, found " + brewLengthL.getAsDouble() + " L");
        }
    }

    /**
     * What a beer is to be. A recipe that states its original gravity is taken at its word.
     *
     * @param og original gravity
     * @param ebu total bitterness, EBU
     * @param apparentAttenuation share of the excess degrees fermented
     * @param declaredStrength strength on the label, % vol
     * @param volumesOfCondition carbon dioxide wanted, volumes
     */
    public record Targets(
            Optional<Gravity> og,
            OptionalDouble ebu,
            OptionalDouble apparentAttenuation,
            OptionalDouble declaredStrength,
            OptionalDouble volumesOfCondition) {

        public Targets {
            checkShare("apparent attenuation", apparentAttenuation);
            if (ebu.isPresent() && !(ebu.getAsDouble() >= 0 && ebu.getAsDouble() <= 1000)) {
                throw new IllegalArgumentException("bitterness: expected 0 to 1000 EBU, found " + ebu.getAsDouble());
            }
        }
    }

    /**
     * How the beer is made.
     *
     * @param liquorToGrist mash liquor, litres at 20 °C per kg of mashed goods
     * @param initialHeatC temperature of the mash just after mashing in, °C
     * @param boilMinutes length of the boil
     * @param castShare litres cast over litres collected (V_s/B), 1 without liquoring back
     * @param stand temperature course after the boil that replaces the plant's; empty keeps the plant's
     * @param tankDays days that a gyle holds its vessels, for what is charged by the tank-day; empty where not stated
     * @param hold what of the grist is kept when the beer moves
     */
    public record Method(
            OptionalDouble liquorToGrist,
            OptionalDouble initialHeatC,
            double boilMinutes,
            double castShare,
            Optional<TemperatureCourse> stand,
            OptionalDouble tankDays,
            GristHold hold) {

        public Method {
            if (!(boilMinutes >= 0 && boilMinutes <= 600)) {
                throw new IllegalArgumentException("boil: expected 0 to 600 min, found " + boilMinutes + " min");
            }
            if (!(castShare > 0 && castShare <= 1)) {
                throw new IllegalArgumentException(
                        "liquoring back: expected a cast share over 0 and at most 1, found " + castShare);
            }
            if (tankDays.isPresent() && !(tankDays.getAsDouble() >= 0 && tankDays.getAsDouble() <= 1000)) {
                throw new IllegalArgumentException(
                        "tank time: expected 0 to 1000 d, found " + tankDays.getAsDouble() + " d");
            }
            if (liquorToGrist.isPresent() && !(liquorToGrist.getAsDouble() > 0 && liquorToGrist.getAsDouble() <= 20)) {
                throw new IllegalArgumentException(
                        "liquor:grist: expected over 0 to 20 L/kg, found " + liquorToGrist.getAsDouble() + " L/kg");
            }
        }
    }

    /** What of the grist is kept when the beer moves to another plant. */
    public enum GristHold {
        /** The share of extract by each material. */
        EXTRACT,
        /** The colour: materials marked for colour keep their weight for each hectolitre. */
        COLOUR
    }

    /**
     * A grist material in a recipe.
     *
     * @param material name of the material
     * @param amount mass or share of the grist
     * @param minutesBeforeCast for a copper sugar: minutes of boil left when it goes in; empty is the start of the boil
     * @param forColour whether it is there for colour
     */
    public record Grist(String material, Amount amount, OptionalDouble minutesBeforeCast, boolean forColour) {
        public Grist {
            if (!(amount instanceof Amount.OfMass || amount instanceof Amount.OfGrist)) {
                throw new IllegalArgumentException(
                        material + ": expected a mass or a share of the grist, found '" + amount.text() + "'");
            }
        }
    }

    /**
     * A hop addition in a recipe.
     *
     * @param variety name of the variety
     * @param lot lot number used when the beer was brewed; empty takes the lot in use on the day
     * @param statedAlpha alpha acid the recipe itself states, mass fraction as is
     * @param use where and when it goes in
     * @param amount mass, rate, bitterness or oil
     * @param holds what the addition keeps
     */
    public record Hop(
            String variety, Optional<String> lot, OptionalDouble statedAlpha, HopUse use, Amount amount, Holds holds) {
        public Hop {
            boolean known = amount instanceof Amount.OfMass
                    || amount instanceof Amount.OfRate
                    || amount instanceof Amount.OfBitterness
                    || amount instanceof Amount.OfOil;
            if (!known) {
                throw new IllegalArgumentException(
                        variety + ": expected a mass, a rate, EBU or hop oil, found '" + amount.text() + "'");
            }
        }

        /**
         * What an addition keeps where a recipe doesn't say: mash, first wort and copper of 20 minutes or more hold bitterness,
         * the others their dose.
         *
         * @param use where and when it goes in
         * @return the trade's default
         */
        public static Holds defaultFor(HopUse use) {
            boolean bittering = use instanceof HopUse.Mash
                    || use instanceof HopUse.FirstWort
                    || (use instanceof HopUse.Copper copper && copper.minutesBeforeCast() >= 20);
            return bittering ? Holds.BITTERNESS : Holds.DOSE;
        }
    }

    /**
     * Yeast in a recipe.
     *
     * @param name name of the yeast
     * @param amount mass, rate or cells
     */
    public record Yeast(String name, Amount amount) {
        public Yeast {
            boolean known = amount instanceof Amount.OfMass
                    || amount instanceof Amount.OfRate
                    || amount instanceof Amount.OfCells;
            if (!known) {
                throw new IllegalArgumentException(
                        name + ": expected a mass, a rate or cells, found '" + amount.text() + "'");
            }
        }
    }

    /**
     * Liquor treatment, a process aid, finings or primings.
     *
     * @param name name of the item
     * @param into what it goes into, which decides on the hectolitres that a rate speaks of
     * @param amount mass, volume or a rate of either
     */
    public record Addition(String name, Into into, Amount amount) {
        public Addition {
            boolean known = amount instanceof Amount.OfMass
                    || amount instanceof Amount.OfRate
                    || amount instanceof Amount.OfVolume
                    || amount instanceof Amount.OfVolumeRate;
            if (!known) {
                throw new IllegalArgumentException(
                        name + ": expected a mass, a volume or a rate, found '" + amount.text() + "'");
            }
        }
    }

    /** What an addition goes into. */
    public enum Into {
        /** The mash liquor, per hL of it. */
        MASH_LIQUOR("mash liquor"),
        /** The sparge liquor, per hL of it. */
        SPARGE_LIQUOR("sparge liquor"),
        /** All brewing liquor of mash and sparge, per hL of it. */
        ALL_LIQUOR("all liquor"),
        /** The liquor added after the boil, per hL of it. */
        LIQUORING_BACK("liquoring back"),
        /** The copper, per hL collected. */
        COPPER("copper"),
        /** The fermenting vessel, per hL collected. */
        FV("FV"),
        /** The conditioning tank, per hL racked. */
        TANK("tank"),
        /** The casks at racking: finings, per hL racked. */
        CASK("cask"),
        /** Primings at racking, per hL racked: a sugar that ferments in the container. */
        PRIMINGS("primings");

        private final String label;

        Into(String label) {
            this.label = label;
        }

        /**
         * The words used in recipe files.
         *
         * @return the label
         */
        public String label() {
            return label;
        }
    }

    static void checkShare(String what, OptionalDouble share) {
        if (share.isPresent() && !(share.getAsDouble() >= 0 && share.getAsDouble() <= 1)) {
            throw new IllegalArgumentException(
                    what + ": expected 0 % to 100 %, found " + share.getAsDouble() * 100 + " %");
        }
    }
}
