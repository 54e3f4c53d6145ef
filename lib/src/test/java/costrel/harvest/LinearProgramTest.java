package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.Cases;
import costrel.harvest.LinearProgram.Answer;
import costrel.harvest.LinearProgram.Row;
import costrel.harvest.LinearProgram.State;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The library behind the planner is asked, and its answers are proved. */
class LinearProgramTest {

    private static final double EQUAL = 1e-9;
    private static final double NONE = Double.NEGATIVE_INFINITY;

    private static Row row(double least, double most, double... factors) {
        int[] columns = new int[factors.length];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = i;
        }
        return new Row(columns, factors, least, most);
    }

    private static LinearProgram program(int columns, double most) {
        LinearProgram program = new LinearProgram();
        for (int i = 0; i < columns; i++) {
            program.column(most);
        }
        return program;
    }

    @Test
    void a_corner_found_by_hand_is_found() {
        // 3x + 5y greatest for x ≤ 4, 2y ≤ 12, 3x + 2y ≤ 18: the corner (2, 6), 36
        LinearProgram program = program(2, 100);
        program.row(row(NONE, 4, 1, 0));
        program.row(row(NONE, 12, 0, 2));
        program.row(row(NONE, 18, 3, 2));
        Answer answer = program.minimise(new double[] {-3, -5}, PlanLimits.USUAL);
        assertEquals(State.OPTIMAL, answer.state());
        assertEquals(-36, answer.cost(), EQUAL);
        assertEquals(-36, answer.bound(), EQUAL);
        assertEquals(2, answer.x()[0], EQUAL);
    }

    @Test
    void a_program_that_is_known_to_go_in_circles_ends() {
        // E. M. L. Beale 1955: −3/4 x + 20 y − 1/2 z + 6 w; its least is −5/4
        LinearProgram program = program(4, 1000);
        program.row(row(NONE, 0, 0.25, -8, -1, 9));
        program.row(row(NONE, 0, 0.5, -12, -0.5, 3));
        program.row(row(NONE, 1, 0, 0, 1, 0));
        Answer answer = program.minimise(new double[] {-0.75, 20, -0.5, 6}, PlanLimits.USUAL);
        assertEquals(State.OPTIMAL, answer.state());
        assertEquals(-1.25, answer.cost(), EQUAL);
    }

    @Test
    void rows_that_contradict_each_other_are_infeasible_and_empty_rows_too() {
        LinearProgram apart = program(2, 10);
        apart.row(row(5, Double.POSITIVE_INFINITY, 1, 1));
        apart.row(row(NONE, 4, 1, 1));
        assertEquals(
                State.INFEASIBLE,
                apart.minimise(new double[2], PlanLimits.USUAL).state());
        LinearProgram empty = program(1, 10);
        empty.row(row(1, 1));
        assertEquals(
                State.INFEASIBLE,
                empty.minimise(new double[1], PlanLimits.USUAL).state());
        LinearProgram idle = program(1, 10);
        idle.row(row(0, 0));
        assertEquals(
                State.OPTIMAL, idle.minimise(new double[] {1}, PlanLimits.USUAL).state());
    }

    @Test
    void a_range_of_one_row_binds_on_both_sides() {
        LinearProgram program = program(2, 10);
        program.row(row(3, 7, 1, 1));
        assertEquals(3, program.minimise(new double[] {1, 1}, PlanLimits.USUAL).cost(), EQUAL);
        assertEquals(
                -7, program.minimise(new double[] {-1, -1}, PlanLimits.USUAL).cost(), EQUAL);
    }

    @Test
    void corners_are_found_as_by_visiting_all_of_them() {
        long seed = Long.getLong("seed", 19470801L);
        Random random = new Random(seed);
        for (int i = 0; i < Cases.upTo(200); i++) {
            Random each = new Random(random.nextLong());
            String at = "-Dseed=" + seed + ", case " + i;
            LinearProgram program = program(4, 10);
            Corners corners = new Corners(4);
            for (int r = 0; r < 5; r++) {
                double[] factors = each.doubles(4, -1, 2).toArray();
                double limit = 10 * each.nextDouble();
                program.row(row(NONE, limit, factors));
                double[] same = corners.row(limit);
                System.arraycopy(factors, 0, same, 0, 4);
                corners.atMost(same);
            }
            for (int c = 0; c < 4; c++) {
                double[] bound = corners.row(10);
                bound[c] = 1;
                corners.atMost(bound);
            }
            double[] cost = each.doubles(4, -2, 1).toArray();
            double[] wanted = corners.row(0);
            System.arraycopy(cost, 0, wanted, 0, 4);
            Answer answer = program.minimise(cost, PlanLimits.USUAL);
            assertEquals(State.OPTIMAL, answer.state(), at);
            assertEquals(corners.least(wanted)[0], answer.cost(), 1e-7, at);
            assertTrue(answer.bound() <= answer.cost() && answer.cost() - answer.bound() < 1e-6, at);
        }
    }

    @Test
    void an_answer_sought_from_the_last_one_is_the_one_sought_afresh() {
        long seed = Long.getLong("seed", 19510601L);
        Random random = new Random(seed);
        int warm = 0;
        for (int i = 0; i < 20; i++) {
            PlanModel model =
                    PlanModel.tight(Plans.year(random, 6), Plans.lots(random, 20, 1, 6, Plans.none()), PlanRules.NONE);
            LinearProgram program = model.program();
            double[] cost = random.doubles(program.columns(), 5, 20).toArray();
            SimplexSearch search =
                    new SimplexSearch(program, cost, program.lower(), program.upper(), PlanLimits.USUAL, true);
            search.answer();
            for (int k = 0; k < 20; k++) {
                double[] high = program.upper();
                for (int closed = 0; closed < 5; closed++) {
                    high[random.nextInt(high.length)] *= random.nextDouble();
                }
                search.within(program.lower(), high);
                Answer again = search.answer();
                Answer afresh = program.minimise(cost, program.lower(), high, PlanLimits.USUAL);
                if (again.state() == State.OPTIMAL) {
                    assertEquals(afresh.cost(), again.cost(), 1e-6 * Math.max(1, afresh.cost()), "-Dseed=" + seed);
                    warm++;
                } else {
                    assertFalse(again.hasPoint() && again.cost() < afresh.cost() - 1e-6, "-Dseed=" + seed);
                }
            }
        }
        assertTrue(warm > 100, "only " + warm + " answers were sought from the last one");
    }

    @Test
    void too_few_steps_settle_nothing() {
        Random random = new Random(3);
        PlanModel model =
                PlanModel.tight(Plans.year(random, 10), Plans.lots(random, 40, 2, 9, Plans.none()), PlanRules.NONE);
        double[] cost = random.doubles(model.program().columns(), 5, 20).toArray();
        Answer answer = model.program().minimise(cost, new PlanLimits(1, 1));
        assertFalse(answer.state() == State.OPTIMAL || answer.state() == State.INFEASIBLE);
    }
}
