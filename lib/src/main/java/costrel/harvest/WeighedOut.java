package costrel.harvest;

import java.util.List;

/** Rounds weights to what can be weighed, so that no lot is asked for more than its stock. */
final class WeighedOut {

    private WeighedOut() {}

    /**
     * Weights to the nearest step, halves up; where that asks for more than a lot has, the weights that were rounded up most
     * are rounded down instead until the lot suffices.
     *
     * @param model the plan's requirements
     * @param kg weights by column
     * @param remarks where to say that weights were rounded down
     * @return weights as weighed out, by column
     */
    static double[] of(PlanModel model, double[] kg, List<String> remarks) {
        double step = model.rules().weighedToKg();
        double[] weighed = kg.clone();
        if (step == 0) {
            return weighed;
        }
        for (int i = 0; i < kg.length; i++) {
            weighed[i] = Math.floor(kg[i] / step + 0.5) * step;
        }
        for (int l = 0; l < model.lots().size(); l++) {
            List<Integer> columns = model.columnsOfLot(l);
            double stockKg = model.lot(l).stockKg() * (1 + 1e-12);
            int lowered = 0;
            while (columns.stream().mapToDouble(column -> weighed[column]).sum() > stockKg) {
                int most = -1;
                for (int column : columns) {
                    if (weighed[column] > 0 && (most < 0 || weighed[column] - kg[column] > weighed[most] - kg[most])) {
                        most = column;
                    }
                }
                weighed[most] = Math.max(0, weighed[most] - step);
                lowered++;
            }
            if (lowered > 0) {
                remarks.add(model.lot(l).words() + ": " + lowered + (lowered == 1 ? " weight" : " weights")
                        + " rounded down, or the lot would not suffice");
            }
        }
        return weighed;
    }
}
