package costrel.wort;

import java.util.Locale;
import java.util.Map;

/**
 * A sugar for priming and the carbon dioxide it gives when it ferments out in the closed container.
 *
 * <p>The most it can give follows from the molar masses: a six-carbon sugar ferments to two molecules of ethanol and two of
 * carbon dioxide, a twelve-carbon sugar takes up water and gives four. Primings are weighed by that figure, so that the beer
 * does not come out above the wanted condition. The least is what Balling's balance finds, 0.46286 g from a gram of dry
 * sugar, since some of it goes to yeast. A degree of gravity that primings bring gives more gas than a degree of the beer's
 * own, for the beer then ferments to below its old final gravity.
 *
 * @param name the sugar
 * @param dryShare its dry part as weighed, over 0 to 1
 * @param mostGasGramsPerGram grams of gas from a gram as weighed, at most; 0 for a sugar that brewing yeast leaves
 * @param how where the figures come from, in words
 */
public record PrimingSugar(String name, double dryShare, double mostGasGramsPerGram, String how) {

    /** Grams of gas from a gram of extract: 0.9565 / 2.0665, the balance of Balling; see {@link TrueStrength}. */
    public static final double BALLING_GRAMS_PER_GRAM = 0.9565 / 2.0665;

    /** Standard atomic weights, abridged: IUPAC Commission on Isotopic Abundances and Atomic Weights, 2021. */
    private static final double CARBON = 12.011;

    private static final double HYDROGEN = 1.008;
    private static final double OXYGEN = 15.999;
    private static final double WATER = 2 * HYDROGEN + OXYGEN;
    private static final double CARBON_DIOXIDE = CARBON + 2 * OXYGEN;
    private static final double SIX_CARBON = 6 * CARBON + 12 * HYDROGEN + 6 * OXYGEN;
    private static final double TWELVE_CARBON = 2 * SIX_CARBON - WATER;

    /** Litre-degrees of a kg of dry sugar in weak solution, as for {@link Sugars}. */
    private static final double DRY_HWE = 386;

    /** A name whose extract is further than this from that of the sugar is another article under its name. */
    private static final double SAME_EXTRACT = 0.03;

    private record Known(double dryMolarMass, double asIsMolarMass, int gas, double hwe) {}

    /** Extracts of solutions of 10 % by weight: CRC Handbook of Chemistry and Physics, 102nd edition. */
    private static final Map<String, Known> KNOWN = Map.of(
            "sucrose", new Known(TWELVE_CARBON, TWELVE_CARBON, 4, 385.0),
            "maltose", new Known(TWELVE_CARBON, TWELVE_CARBON, 4, 388.7),
            "dextrose anhydrous", new Known(SIX_CARBON, SIX_CARBON, 2, 379.4),
            "dextrose monohydrate", new Known(SIX_CARBON, SIX_CARBON + WATER, 2, 345.0),
            "fructose", new Known(SIX_CARBON, SIX_CARBON, 2, 388.7),
            "lactose", new Known(TWELVE_CARBON, TWELVE_CARBON, 0, 393.4),
            "lactose monohydrate", new Known(TWELVE_CARBON, TWELVE_CARBON + WATER, 0, 373.7));

    public PrimingSugar {
        if (name.isBlank()) {
            throw new IllegalArgumentException("priming sugar: expected a name, found none");
        }
        Limits.above("dry part of " + name, dryShare, 0, "");
        Limits.within("dry part of " + name, dryShare, 0, 1, "");
        Limits.within("gas from a gram of " + name, mostGasGramsPerGram, 0, 1, " g");
    }

    /**
     * A sugar by its name and extract. Sucrose, maltose, dextrose anhydrous, dextrose monohydrate, fructose and lactose go by
     * their molar masses; any other goes by its extract, all of its dry part counted as sucrose, which gives most.
     *
     * @param name the sugar
     * @param hweLitreDegreesPerKg its extract as is, over 0 to 400 L°/kg
     * @return the sugar
     * @throws IllegalArgumentException when the extract is outside that range
     */
    public static PrimingSugar of(String name, double hweLitreDegreesPerKg) {
        Limits.above("extract of " + name, hweLitreDegreesPerKg, 0, " L°/kg");
        double hwe = Limits.within("extract of " + name, hweLitreDegreesPerKg, 0, 400, " L°/kg");
        Known known = KNOWN.get(name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
        if (known != null && Math.abs(hwe / known.hwe() - 1) <= SAME_EXTRACT) {
            return new PrimingSugar(
                    name,
                    known.dryMolarMass() / known.asIsMolarMass(),
                    known.gas() * CARBON_DIOXIDE / known.asIsMolarMass(),
                    known.gas() == 0 ? "brewing yeast does not ferment it" : "molar masses");
        }
        double dryShare = Math.min(1, hwe / DRY_HWE);
        return new PrimingSugar(
                name,
                dryShare,
                dryShare * 4 * CARBON_DIOXIDE / TWELVE_CARBON,
                "dry part from its extract, counted as sucrose, which gives most");
    }

    /**
     * Whether it gives gas.
     *
     * @return false for a sugar that brewing yeast leaves
     */
    public boolean ferments() {
        return mostGasGramsPerGram > 0;
    }

    /**
     * The most condition that a dose gives.
     *
     * @param gramsPerLitre grams as weighed for each litre of beer, 0 or more
     * @return volumes
     * @throws IllegalArgumentException when negative
     */
    public double mostVolumes(double gramsPerLitre) {
        return Condition.volumesFromGramsPerLitre(
                Limits.atLeast("primings", gramsPerLitre, 0, " g/L") * mostGasGramsPerGram);
    }

    /**
     * The condition that Balling's balance finds for a dose.
     *
     * @param gramsPerLitre grams as weighed for each litre of beer, 0 or more
     * @return volumes, never above the most
     * @throws IllegalArgumentException when negative
     */
    public double leastVolumes(double gramsPerLitre) {
        double gas = Math.min(mostGasGramsPerGram, BALLING_GRAMS_PER_GRAM * dryShare);
        return Condition.volumesFromGramsPerLitre(Limits.atLeast("primings", gramsPerLitre, 0, " g/L") * gas);
    }

    /**
     * The dose that brings so much condition and never more.
     *
     * @param volumes volumes of CO2 to gain, 0 or more
     * @return grams as weighed for each litre of beer
     * @throws IllegalArgumentException when negative, or the sugar does not ferment
     */
    public double gramsPerLitreFor(double volumes) {
        double gas = Condition.gramsPerLitreFromVolumes(volumes);
        if (!ferments()) {
            throw new IllegalArgumentException(
                    "priming sugar: expected one that brewing yeast ferments, found " + name);
        }
        return gas / mostGasGramsPerGram;
    }
}
