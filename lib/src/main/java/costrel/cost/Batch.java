package costrel.cost;

import costrel.duty.DutyInput;
import costrel.figures.Figures;
import costrel.packaging.PackagingShare;
import costrel.wort.Gravity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is costed: a gyle as weighed out, collected, racked and put into containers. Amounts that come from the physics of
 * brewing are doubles and enter money as the decimals that print them ({@link BigDecimal#valueOf(double)}).
 *
 * @param beer what it is called
 * @param brewedOn the day of brewing
 * @param costedOn the day whose prices and rates are taken
 * @param dutyOn the day it passes the duty point, not before the brewing
 * @param collectedL cold wort collected, litres at 20 °C, more than 0
 * @param rackedL beer racked, litres, more than 0 and not over what was collected
 * @param gristKg the grist, kg
 * @param tankDays days that it holds a tank; empty where not known
 * @param og original gravity
 * @param pg present gravity after all condition is gained, as expected when sold
 * @param declaredStrength strength on labels and papers in per cent by volume; empty where none is declared
 * @param bill the bill of materials
 * @param packaging how what is racked is shared over containers; the shares sum to 1
 * @param allergens declarable allergens of the ingredients, in words
 */
public record Batch(
        String beer,
        LocalDate brewedOn,
        LocalDate costedOn,
        LocalDate dutyOn,
        double collectedL,
        double rackedL,
        double gristKg,
        OptionalDouble tankDays,
        Gravity og,
        Gravity pg,
        Optional<BigDecimal> declaredStrength,
        List<BillLine> bill,
        List<PackagingShare> packaging,
        List<String> allergens) {

    public Batch {
        beer = Figures.named("beer", beer);
        if (dutyOn.isBefore(brewedOn)) {
            throw new IllegalArgumentException(
                    beer + ": duty point: expected a day not before the brewing on " + brewedOn + ", found " + dutyOn);
        }
        Figures.overZero(beer + ": collected", collectedL, " L");
        Figures.overZero(beer + ": racked", rackedL, " L");
        if (rackedL > collectedL * (1 + 1e-9)) {
            throw new IllegalArgumentException(beer + ": racked: expected no more than the " + collectedL
                    + " L collected, found " + rackedL + " L");
        }
        gristKg = Figures.zeroOrMore(beer + ": grist", gristKg, " kg");
        if (tankDays.isPresent()) {
            Figures.zeroOrMore(beer + ": tank-days", tankDays.getAsDouble(), "");
        }
        declaredStrength.ifPresent(DutyInput::requireStrength);
        bill = List.copyOf(bill);
        packaging = List.copyOf(packaging);
        allergens = List.copyOf(allergens);
    }
}
