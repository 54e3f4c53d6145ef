package costrel.pricing;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The share of the standard normal distribution under a score. The library's function is exact and slow; here it is read from
 * a table by the cubic that meets its values and its slopes (the density) at both ends of a step. With a step of 1/256
 * the error is under step⁴/384 times the greatest third derivative of the density, 1.4: less than 1e-12.
 */
final class NormalShare {
    private static final double LARGEST_SCORE = 9;
    private static final int STEPS_PER_UNIT = 256;

    private static final double[] SHARE = new double[(int) (2 * LARGEST_SCORE * STEPS_PER_UNIT) + 1];
    private static final double[] DENSITY = new double[SHARE.length];

    static {
        NormalDistribution normal = new NormalDistribution(0, 1);
        for (int i = 0; i < SHARE.length; i++) {
            double score = (double) i / STEPS_PER_UNIT - LARGEST_SCORE;
            SHARE[i] = normal.cumulativeProbability(score);
            DENSITY[i] = normal.density(score);
        }
    }

    private NormalShare() {}

    static double under(double score) {
        double place = (score + LARGEST_SCORE) * STEPS_PER_UNIT;
        if (!(place > 0)) {
            return 0;
        }
        if (place >= SHARE.length - 1) {
            return 1;
        }
        int i = (int) place;
        double t = place - i;
        double rise = SHARE[i + 1] - SHARE[i];
        double slope0 = DENSITY[i] / STEPS_PER_UNIT;
        double slope1 = DENSITY[i + 1] / STEPS_PER_UNIT;
        // Hermite's cubic through SHARE[i] and SHARE[i + 1] with those slopes.
        double bend = 3 * rise - 2 * slope0 - slope1;
        double twist = slope0 + slope1 - 2 * rise;
        return SHARE[i] + t * (slope0 + t * (bend + t * twist));
    }
}
