package costrel.harvest;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * A plant's correction of calculated bitterness, fitted to laboratory EBU of past gyles: laboratory = factor × calculated, by
 * least squares through the origin, with gyles − 1 degrees of freedom.
 *
 * @param factor what calculated EBU are multiplied by, over 0
 * @param low lower end of the 95 % confidence interval of the factor; under 0 where few gyles say too little
 * @param high upper end of the 95 % confidence interval of the factor
 * @param gyles number of gyles, 2 or more
 * @param residualEbu standard deviation of the laboratory's EBU about the line, EBU, 0 or more
 */
public record HopCorrection(double factor, double low, double high, int gyles, double residualEbu) {

    private static final int LEAST_GYLES = 2;
    private static final double MOST_EBU = 1000;

    /** Each tail of a two-sided 95 % interval leaves 2.5 % outside. */
    private static final double UPPER_TAIL_FROM = 0.975;

    public HopCorrection {
        Figures.positive("bitterness correction", factor, "");
        if (!(low <= factor && factor <= high && low >= -Double.MAX_VALUE && high <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("bitterness correction: expected an interval about "
                    + Figures.plain(factor) + ", found " + Figures.plain(low) + " to " + Figures.plain(high));
        }
        requireGyles(gyles);
        residualEbu = Figures.notNegative("bitterness left over", residualEbu, " EBU");
    }

    /**
     * The bitterness of one past gyle.
     *
     * @param calculatedEbu as calculated without a correction, EBU, over 0 and up to 1000
     * @param laboratoryEbu as the laboratory found it in the beer, EBU, over 0 and up to 1000
     */
    public record Gyle(double calculatedEbu, double laboratoryEbu) {
        public Gyle {
            requireEbu("calculated bitterness", calculatedEbu);
            requireEbu("laboratory bitterness", laboratoryEbu);
        }
    }

    /**
     * Fits the factor to past gyles of one plant.
     *
     * @param gyles calculated and laboratory bitterness of each gyle, 2 gyles or more
     * @return the factor with its interval
     * @throws IllegalArgumentException with fewer than 2 gyles
     */
    public static HopCorrection fit(List<Gyle> gyles) {
        requireGyles(gyles.size());
        SimpleRegression line = new SimpleRegression(false);
        gyles.forEach(gyle -> line.addData(gyle.calculatedEbu(), gyle.laboratoryEbu()));
        double factor = line.getSlope();
        // The library's own error and interval of a slope are of n - 2 degrees of freedom or want three points.
        double degrees = gyles.size() - 1.0;
        double residualEbu = Math.sqrt(line.getSumSquaredErrors() / degrees);
        double error = residualEbu / Math.sqrt(line.getXSumSquares());
        double half = new TDistribution(degrees).inverseCumulativeProbability(UPPER_TAIL_FROM) * error;
        return new HopCorrection(factor, factor - half, factor + half, gyles.size(), residualEbu);
    }

    /**
     * The correction in words.
     *
     * @return factor, number of gyles, interval and what is left over; a caution where the interval takes in 1
     */
    public String text() {
        return "bitterness × " + Figures.fixed(factor, 3) + ": " + gyles + " gyles, 95 % interval "
                + Figures.fixed(low, 3) + " to " + Figures.fixed(high, 3) + "; single gyles stand off by "
                + Figures.fixed(residualEbu, 1) + " EBU (standard deviation)"
                + (low <= 1 && 1 <= high ? "; these gyles don't show that a correction is needed" : "");
    }

    private static void requireGyles(int found) {
        if (found < LEAST_GYLES) {
            throw new IllegalArgumentException("bitterness correction: expected " + LEAST_GYLES
                    + " gyles or more with laboratory EBU, found " + found);
        }
    }

    private static void requireEbu(String what, double found) {
        if (!(found > 0 && found <= MOST_EBU)) {
            throw new IllegalArgumentException(what + ": expected more than 0 EBU and at most "
                    + Figures.plain(MOST_EBU) + " EBU, found " + Figures.plain(found) + " EBU");
        }
    }
}
