package costrel.wort;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The strength that duty and the label go by: (original gravity − present gravity) × factor, in exact decimals. It is
 * not the true strength; see {@link TrueStrength}.
 *
 * <p>The difference is first taken to a tenth of a degree, halves up, because the published bands have gaps of a tenth
 * (6.9, then 7.0). That difference picks the factor and is multiplied by it, and the strength is cut down to one
 * decimal.
 *
 * <p>Sources: HM Revenue &amp; Customs, Excise Notice 226 <em>Beer duty</em>, paragraphs 30.2 and 30.3 (table of the
 * Laboratory of the Government Chemist); <em>Alcoholic products technical guide</em>, section 11 ("7.59% becomes
 * 7.5%"). The table is guidance; the actual strength prevails. Confirm duty and labels with the authority.
 */
public final class StrengthForDuty {
    /** Binary noise of a computed gravity is far under this; a real reading is never finer. */
    private static final int NOISE_PLACES = 9;

    private StrengthForDuty() {}

    /**
     * A strength for duty and how it came about.
     *
     * @param difference original less present gravity in degrees, to one decimal
     * @param factor per cent by volume in a degree, from the table
     * @param unroundedStrength difference times factor, exact, in per cent by volume
     * @param strength the same cut down to one decimal
     */
    public record Result(BigDecimal difference, BigDecimal factor, BigDecimal unroundedStrength, BigDecimal strength) {}

    /**
     * The strength for duty of a beer.
     *
     * @param og original gravity
     * @param pg present gravity, after any condition was gained; not above the original
     * @param table the factors that hold for the duty date
     * @return the strength with its difference and factor
     * @throws IllegalArgumentException when the present gravity is above the original, or the table does not reach the
     * difference
     */
    public static Result of(Gravity og, Gravity pg, StrengthFactorTable table) {
        BigDecimal exact = BigDecimal.valueOf(og.excessDegrees()).subtract(BigDecimal.valueOf(pg.excessDegrees()));
        BigDecimal difference =
                exact.setScale(NOISE_PLACES, RoundingMode.HALF_UP).setScale(1, RoundingMode.HALF_UP);
        Attenuation.requireFermented(og, pg);
        double degrees = difference.doubleValue(); // of one decimal, as the bands are: equal where the decimals are
        for (StrengthFactor row : table.rows()) {
            if (degrees <= row.toDegrees()) {
                BigDecimal factor = BigDecimal.valueOf(row.factor());
                BigDecimal unrounded = difference.multiply(factor);
                return new Result(difference, factor, unrounded, unrounded.setScale(1, RoundingMode.DOWN));
            }
        }
        throw new IllegalArgumentException(
                "strength for duty: expected a difference of original and present gravity up to "
                        + ScaleText.plain(table.mostDegrees()) + " degrees, where the table '" + table.name()
                        + "' ends, found " + difference.toPlainString()
                        + "; supply the strength as measured in the laboratory");
    }
}
