package costrel.wort;

/**
 * One line of a table of strength factors: within this band of original less present gravity, strength is the
 * difference times the factor.
 *
 * @param fromDegrees the least difference, in degrees to one decimal, 0 or more
 * @param toDegrees the greatest difference, in degrees to one decimal, not less than the least
 * @param factor per cent by volume in a degree, over 0 and under 1
 */
public record StrengthFactor(double fromDegrees, double toDegrees, double factor) {
    public StrengthFactor {
        fromDegrees = Limits.within("strength factor: from", fromDegrees, 0, 200, " degrees");
        toDegrees = Limits.within("strength factor: to", toDegrees, fromDegrees, 200, " degrees");
        if (!(factor > 0 && factor < 1)) {
            throw new IllegalArgumentException(
                    "strength factor: expected more than 0 and less than 1 % vol per degree, found "
                            + ScaleText.plain(factor));
        }
    }
}
