package costrel.hops;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * One analysis of a hop lot: the supplier's certificate or a later re-analysis.
 *
 * @param date the day of the analysis
 * @param alpha alpha acid, mass fraction on the stated basis; empty where only the storage index was read
 * @param method the method behind the alpha figure
 * @param basis the moisture that the alpha figure refers to
 * @param moisture moisture, mass fraction; needed for a basis other than as is
 * @param oilMlPer100g total oil, mL per 100 g as is
 * @param storageIndex hop storage index, the ratio A275/A325
 */
public record HopAnalysis(
        LocalDate date,
        OptionalDouble alpha,
        AlphaMethod method,
        MoistureBasis basis,
        OptionalDouble moisture,
        OptionalDouble oilMlPer100g,
        OptionalDouble storageIndex) {

    public HopAnalysis {
        if (alpha.isPresent() && !(alpha.getAsDouble() >= 0 && alpha.getAsDouble() < 1)) {
            throw new IllegalArgumentException("alpha: expected 0 % to under 100 %, found " + alpha.getAsDouble() * 100 + " %");
        }
        if (moisture.isPresent() && !(moisture.getAsDouble() >= 0 && moisture.getAsDouble() < 1)) {
            throw new IllegalArgumentException(
                    "moisture: expected 0 % to under 100 %, found " + moisture.getAsDouble() * 100 + " %");
        }
        if (oilMlPer100g.isPresent() && !(oilMlPer100g.getAsDouble() >= 0 && oilMlPer100g.getAsDouble() <= 20)) {
            throw new IllegalArgumentException(
                    "oil: expected 0 to 20 mL/100 g, found " + oilMlPer100g.getAsDouble());
        }
        if (storageIndex.isPresent() && !(storageIndex.getAsDouble() > 0 && storageIndex.getAsDouble() <= 5)) {
            throw new IllegalArgumentException(
                    "storage index: expected more than 0 and at most 5, found " + storageIndex.getAsDouble());
        }
        if (alpha.isPresent() && basis != MoistureBasis.AS_IS && moisture.isEmpty()) {
            throw new IllegalArgumentException(
                    "moisture: expected a figure, since alpha is stated " + basis.label() + ", found nothing");
        }
    }

    /**
     * Alpha acid on the hops as delivered: dry × (1 − moisture), or from the ten-per-cent basis likewise.
     *
     * @return mass fraction as is; empty where the analysis has no alpha
     */
    public OptionalDouble alphaAsIs() {
        if (alpha.isEmpty()) {
            return alpha;
        }
        double stated = alpha.getAsDouble();
        return OptionalDouble.of(
                switch (basis) {
                    case AS_IS -> stated;
                    case DRY -> stated * (1 - moisture.orElseThrow());
                    case TEN_PERCENT -> stated / 0.9 * (1 - moisture.orElseThrow());
                });
    }
}
