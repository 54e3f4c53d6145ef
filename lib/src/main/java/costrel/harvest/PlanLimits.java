package costrel.harvest;

/**
 * How long to look for the best plan. Both limits are counts and not times, so that the same question has the same answer.
 *
 * @param mostSteps steps of the simplex method for one linear program, 1 or more
 * @param mostBranches choices of whole packs to look into, 1 or more
 */
public record PlanLimits(int mostSteps, int mostBranches) {

    /** Limits for a year's plan of a brewery: seconds on a machine of today. */
    public static final PlanLimits USUAL = new PlanLimits(200_000, 300);

    public PlanLimits {
        if (mostSteps < 1) {
            throw new IllegalArgumentException("steps of the planner: expected 1 or more, found " + mostSteps);
        }
        if (mostBranches < 1) {
            throw new IllegalArgumentException("branches of the planner: expected 1 or more, found " + mostBranches);
        }
    }
}
