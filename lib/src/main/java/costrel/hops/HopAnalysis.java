package costrel.hops;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * One analysis of a hop lot: the supplier's certificate or a later re-analysis.
 *
 * @param date the day of the analysis
 * @param alpha alpha acid, mass fraction on the stated basis, 0 to under 1; empty where only the storage index was read
 * @param method the method behind the alpha figure
 * @param basis the moisture that the alpha figure refers to
 * @param moisture moisture, mass fraction, 0 to under 1; needed for a basis other than as is
 * @param oilMlPer100g total oil, mL per 100 g as is, 0 to 20
 * @param storageIndex hop storage index, the ratio A275/A325, over 0 to 5
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
        if (alpha.isPresent()) {
            Limits.shareUnderOne("alpha acid", alpha.getAsDouble());
        }
        if (moisture.isPresent()) {
            Limits.shareUnderOne("moisture", moisture.getAsDouble());
        }
        if (oilMlPer100g.isPresent()) {
            Limits.within("oil", oilMlPer100g.getAsDouble(), 0, 20, " mL/100 g");
        }
        if (storageIndex.isPresent()) {
            Limits.over("storage index", storageIndex.getAsDouble(), 0, 5, "");
        }
        if (alpha.isPresent() && basis != MoistureBasis.AS_IS && moisture.isEmpty()) {
            throw new IllegalArgumentException(
                    "moisture: expected a figure, since alpha acid is stated " + basis.label() + ", found nothing");
        }
    }

    /**
     * Alpha acid on the hops as delivered: dry × (1 − moisture), or from the ten-per-cent basis likewise, since
     * as is/(1 − moisture) = at 10 %/0.9 = dry.
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
