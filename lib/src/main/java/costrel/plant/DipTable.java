package costrel.plant;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What the dipstick of a vessel reads at a volume, joined linearly between the points that were measured. Nothing is read beyond
 * them. A stick that measures the liquid reads more as the vessel fills; one that measures the room above it reads less.
 *
 * @param centimetresByLitres readings in centimetres, 0 to 2000, by the litres that stand in the vessel as they are, hot or cold;
 *     none, or two or more that all rise or all fall
 */
public record DipTable(NavigableMap<Double, Double> centimetresByLitres) {

    /** A vessel whose dips are not stated. */
    public static final DipTable NONE = new DipTable(new TreeMap<>());

    public DipTable {
        centimetresByLitres = Collections.unmodifiableNavigableMap(new TreeMap<>(centimetresByLitres));
        if (centimetresByLitres.size() == 1) {
            throw new IllegalArgumentException("dips: expected two points or more, found one");
        }
        double direction = 0;
        Map.Entry<Double, Double> before = null;
        for (Map.Entry<Double, Double> point : centimetresByLitres.entrySet()) {
            if (!(point.getKey() >= 0 && point.getValue() >= 0 && point.getValue() <= 2000)) {
                throw new IllegalArgumentException("dips: expected 0 to 2000 cm at 0 L or more, found "
                        + point.getValue() + " cm at " + point.getKey() + " L");
            }
            if (before != null) {
                double step = Math.signum(point.getValue() - before.getValue());
                if (step == 0 || (direction != 0 && step != direction)) {
                    throw new IllegalArgumentException("dips: expected readings that all rise or all fall, found "
                            + before.getValue() + " cm at " + before.getKey() + " L and " + point.getValue() + " cm at "
                            + point.getKey() + " L");
                }
                direction = step;
            }
            before = point;
        }
    }

    /**
     * The reading at a volume.
     *
     * @param litres what stands in the vessel, as it is
     * @return centimetres; empty beyond the points that were measured
     */
    public OptionalDouble at(double litres) {
        Map.Entry<Double, Double> below = centimetresByLitres.floorEntry(litres);
        Map.Entry<Double, Double> above = centimetresByLitres.ceilingEntry(litres);
        if (below == null || above == null) {
            return OptionalDouble.empty();
        }
        double room = above.getKey() - below.getKey();
        double part = room == 0 ? 0 : (litres - below.getKey()) / room;
        return OptionalDouble.of(below.getValue() + part * (above.getValue() - below.getValue()));
    }
}
