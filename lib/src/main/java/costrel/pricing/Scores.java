package costrel.pricing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RectangularCholeskyDecomposition;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Standard normal scores that go together as stated: a Gaussian copula, independent scores times a root of their matrix of
 * correlations. The root is Cholesky's with pivots, so that drivers may go together wholly. The generator is WELL19937c
 * (F. Panneton, P. L'Ecuyer, M. Matsumoto, ACM Transactions on Mathematical Software 32 (2006), 1–16).
 */
final class Scores {
    /** What of a matrix's diagonal counts as nothing, and how far the root's square may miss the matrix. */
    private static final double NOTHING = 1e-10;

    private static final double AS_STATED = 1e-8;

    private final RandomGenerator random;
    private final double[][] root;
    private final double[] independent;

    Scores(List<Driver> drivers, List<RiskPlan.Correlation> correlations, long seed) {
        this.random = new Well19937c(seed);
        this.root = correlations.isEmpty() ? new double[0][0] : root(drivers, correlations);
        this.independent = new double[correlations.isEmpty() ? 0 : root[0].length];
    }

    private static double[][] root(List<Driver> drivers, List<RiskPlan.Correlation> correlations) {
        RealMatrix stated = MatrixUtils.createRealIdentityMatrix(drivers.size());
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < drivers.size(); i++) {
            places.put(drivers.get(i).name(), i);
        }
        for (RiskPlan.Correlation correlation : correlations) {
            int i = places.getOrDefault(correlation.first(), 0);
            int k = places.getOrDefault(correlation.second(), 0);
            stated.setEntry(i, k, correlation.coefficient());
            stated.setEntry(k, i, correlation.coefficient());
        }
        RealMatrix root;
        try {
            root = new RectangularCholeskyDecomposition(stated, NOTHING).getRootMatrix();
        } catch (MathIllegalArgumentException e) {
            throw new IllegalArgumentException(cannotHold(), e);
        }
        RealMatrix missed = root.multiplyTransposed(root).subtract(stated);
        for (double[] row : missed.getData()) {
            for (double entry : row) {
                if (!(Math.abs(entry) <= AS_STATED)) {
                    throw new IllegalArgumentException(cannotHold());
                }
            }
        }
        return root.getData();
    }

    private static String cannotHold() {
        return "correlations: expected some that can hold together, found that they contradict each other:"
                + " of three drivers, two that both go with the third can't go against each other";
    }

    /** Draws a score for each driver, within the farthest that is drawn. */
    void draw(double[] scores) {
        if (root.length == 0) {
            for (int i = 0; i < scores.length; i++) {
                scores[i] = held(random.nextGaussian());
            }
            return;
        }
        for (int k = 0; k < independent.length; k++) {
            independent[k] = random.nextGaussian();
        }
        for (int i = 0; i < scores.length; i++) {
            double[] row = root[i];
            double sum = 0;
            for (int k = 0; k < independent.length; k++) {
                sum += row[k] * independent[k];
            }
            scores[i] = held(sum);
        }
    }

    private static double held(double score) {
        return Math.max(-Driver.FARTHEST_SCORE, Math.min(Driver.FARTHEST_SCORE, score));
    }
}
