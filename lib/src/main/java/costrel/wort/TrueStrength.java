package costrel.wort;

/**
 * The strength a beer really has, and its real extract, from original and present gravity. Three published relations
 * are solved together for the alcohol by weight A (per cent):
 *
 * <pre>
 * Balling   RE = OE (100 + 1.0665 A) / 100 − 2.0665 A           2.0665 g extract give 1 g ethanol
 * Tabarié   SG(beer) = SG(extract) + SG(alcohol) − 1
 * OIML R 22 SG(alcohol) = ρ(p, 20 °C) / 998.2012                 see {@link EthanolWater}
 * ABV = A · SG(beer) · 998.2012 / 789.2390
 * </pre>
 *
 * <p>Duty and the label go by {@link StrengthForDuty}, which mostly reads a few hundredths lower. The two are never
 * mixed.
 *
 * <p>Sources: Nielsen, Kristiansen, Krieger Lassen and Erikstrøm, "Balling's Formula: scrutiny of a brewing dogma"
 * (Scandinavian School of Brewing, 2007), whose one line with 0.9695 g CO2 is a misprint for 0.9565; Tabarié in the
 * MEBAK methods; OIML R 22.
 */
public final class TrueStrength {
    private static final double TOLERANCE_PERCENT = 1e-12;
    private static final double TOLERANCE_SG = 1e-15;

    private TrueStrength() {}

    /** What is held the same when extract and alcohol of a beer are thought of as two separate solutions. */
    public enum Basis {
        /** Grams in a litre; the default, borne out by the means of Cutaia, Reid and Speers (2009). */
        VOLUME,
        /** Grams in 100 grams; reads 0.01 to 0.1 % vol higher. */
        WEIGHT
    }

    /**
     * What a beer holds.
     *
     * @param abv true strength
     * @param abwPercent g of ethanol in 100 g of beer
     * @param realExtractPlato g of extract in 100 g of beer once the alcohol is away
     * @param apparentExtractPlato what the present gravity reads on the Plato scale, 0 when lighter than water
     * @param originalExtractPlato extract of the wort
     * @param basis the basis it was computed on
     */
    public record Result(
            Strength abv,
            double abwPercent,
            double realExtractPlato,
            double apparentExtractPlato,
            double originalExtractPlato,
            Basis basis) {}

    /**
     * True strength on the volume basis.
     *
     * @param og original gravity, that of water to SG 1.17874
     * @param pg present gravity, not above the original nor below a beer with no extract left
     * @return strength and extracts
     * @throws IllegalArgumentException outside those ranges
     */
    public static Result of(Gravity og, Gravity pg) {
        return of(og, pg, Basis.VOLUME);
    }

    /**
     * True strength on a named basis.
     *
     * @param og original gravity, that of water to SG 1.17874
     * @param pg present gravity, not above the original nor below a beer with no extract left
     * @param basis volume or weight
     * @return strength and extracts
     * @throws IllegalArgumentException outside those ranges
     */
    public static Result of(Gravity og, Gravity pg, Basis basis) {
        Attenuation.requireFermented(og, pg);
        double original = requireOriginal(og);
        double abw = alcohol(original, og, pg, basis);
        Strength abv = new Strength(abv(abw, pg.sg()));
        return new Result(abv, abw, realExtract(original, abw), pg.plato(), original, basis);
    }

    /**
     * Refuses an original gravity from which no true strength can be told, before any is worked out.
     *
     * @param og original gravity
     * @return its extract in °P
     * @throws IllegalArgumentException unless it is that of water to SG 1.17874
     */
    public static double requireOriginal(Gravity og) {
        if (!(og.excessDegrees() >= 0)) {
            throw new IllegalArgumentException("original gravity: expected that of water or more, found " + og);
        }
        return og.plato();
    }

    private static double alcohol(double original, Gravity og, Gravity pg, Basis basis) {
        double sg = pg.sg();
        if (og.excessDegrees() == pg.excessDegrees() || excessSg(0, original, sg, basis) <= 0) {
            return 0;
        }
        double mostAbw = original / (2.0665 - 0.010665 * original);
        if (!(excessSg(mostAbw, original, sg, basis) <= 0)) {
            throw new IllegalArgumentException("present gravity: expected at least that of a beer from " + og
                    + " with no extract left, found " + pg);
        }
        return Roots.between(
                "alcohol by weight", 0, mostAbw, TOLERANCE_PERCENT, abw -> excessSg(abw, original, sg, basis));
    }

    /** By how much the gravity that follows from so much alcohol is above the one found; falls as alcohol rises. */
    private static double excessSg(double abw, double original, double sg, Basis basis) {
        double real = realExtract(original, abw);
        double ofExtract;
        double alcoholShare;
        if (basis == Basis.WEIGHT) {
            ofExtract = PlatoScale.sgOf(real);
            alcoholShare = abw / 100;
        } else {
            ofExtract = sgOfSameExtractPerLitre(real * sg);
            alcoholShare = EthanolWater.massFromVolumePercent(abv(abw, sg));
        }
        return ofExtract + EthanolWater.at20(alcoholShare) / EthanolWater.WATER_KG_PER_M3 - 1 - sg;
    }

    /** The solution with °P · SG as given, that is with the same grams of extract in a litre. */
    private static double sgOfSameExtractPerLitre(double platoTimesSg) {
        return Roots.between(
                "extract alone", 1, PlatoScale.MOST_SG, TOLERANCE_SG, s -> PlatoScale.scale(s) * s - platoTimesSg);
    }

    private static double realExtract(double original, double abw) {
        return Math.max(0, original * (100 + 1.0665 * abw) / 100 - 2.0665 * abw);
    }

    private static double abv(double abw, double sg) {
        return abw * sg * EthanolWater.WATER_KG_PER_M3 / EthanolWater.ETHANOL_KG_PER_M3;
    }
}
