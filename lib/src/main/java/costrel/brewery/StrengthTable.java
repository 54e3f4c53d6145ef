package costrel.brewery;

import costrel.pricing.StrengthStep;
import costrel.scaling.Gyle;
import costrel.scaling.Intent;
import costrel.wort.Gravity;
import costrel.wort.StrengthFactor;
import costrel.wort.StrengthFactorTable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a beer would cost at other strengths: the same grist by shares, the same bitterness and attenuation at the gravity that
 * just reaches each strength for duty, and labelled with it. Both sides of every step of duty stand in it. An estimate: duty
 * goes by what the beer is.
 *
 * @param beer the beer
 * @param dutyOn the day of the duty point
 * @param rows a row for each strength, weakest first
 */
public record StrengthTable(String beer, LocalDate dutyOn, List<Row> rows) {

    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final int MOST_ROWS = 200;

    /**
     * The beer at one strength.
     *
     * @param og the original gravity that just reaches it
     * @param step its cost and duty
     * @param fits whether plant and vessels hold it
     */
    public record Row(Gravity og, StrengthStep.Row step, boolean fits) {}

    public StrengthTable {
        rows = List.copyOf(rows);
    }

    static StrengthTable of(Brew brew, BigDecimal least, BigDecimal most, BigDecimal step) {
        List<BigDecimal> strengths = strengths(least, most, step);
        Intent intent = brew.today();
        String name = intent.recipe().name();
        double attenuation = intent.recipe()
                .targets()
                .apparentAttenuation()
                .orElseThrow(() -> new IllegalArgumentException(
                        name + ": expected an apparent attenuation or FG to reckon strengths by, found none"));
        LocalDate dutyOn = brew.dutyDay()
                .orElseThrow(() -> new IllegalArgumentException(
                        name + ": expected a brewing day, such as day(\"2026-11-25\"), found none"));
        StrengthFactorTable factors = brew.brewery().duty().factors().stream()
                .filter(table -> table.holdsOn(dutyOn))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "duty point " + dutyOn + ": expected a table of strength factors for that day, found none"));
        double primings = brew.gyle().beer().primingDegrees();
        Map<BigDecimal, Gyle> gyles = new TreeMap<>();
        List<StrengthStep.Row> rows = StrengthStep.table(strengths, strength -> {
            Gravity og = ogFor(strength, attenuation, primings, factors);
            Gyle gyle = brew.gyleOf(intent.withOg(og).declared(strength.doubleValue()));
            gyles.put(strength, gyle);
            return brew.costOf(gyle);
        });
        List<Row> all = new ArrayList<>();
        for (StrengthStep.Row row : rows) {
            Gyle gyle = gyles.get(row.strength());
            if (gyle != null) {
                all.add(new Row(gyle.og(), row, !gyle.limited()));
            }
        }
        return new StrengthTable(name, dutyOn, all);
    }

    /** The strengths that are asked for, the strongest among them. */
    private static List<BigDecimal> strengths(BigDecimal least, BigDecimal most, BigDecimal step) {
        for (BigDecimal figure : List.of(least, most, step)) {
            if (figure.signum() <= 0 || figure.remainder(TENTH).signum() != 0) {
                throw new IllegalArgumentException(
                        "strengths: expected tenths of a per cent over 0 %, since duty knows no others, found "
                                + figure.stripTrailingZeros().toPlainString() + " %");
            }
        }
        if (least.compareTo(most) > 0) {
            throw new IllegalArgumentException("strengths: expected the weakest first, found " + least.toPlainString()
                    + " % before " + most.toPlainString() + " %");
        }
        if (most.subtract(least).divide(step, 0, RoundingMode.UP).intValueExact() >= MOST_ROWS) {
            throw new IllegalArgumentException("strengths: expected up to " + MOST_ROWS + " of them, found more");
        }
        List<BigDecimal> strengths = new ArrayList<>();
        for (BigDecimal strength = least; strength.compareTo(most) < 0; strength = strength.add(step)) {
            strengths.add(strength.setScale(1, RoundingMode.UNNECESSARY));
        }
        strengths.add(most.setScale(1, RoundingMode.UNNECESSARY));
        return strengths;
    }

    /**
     * The original gravity whose strength for duty is just reached: the least fall in gravity, in tenths of a degree, that
     * comes to the strength when it is cut down to one decimal, less what primings bring, over the attenuation.
     */
    static Gravity ogFor(BigDecimal strength, double attenuation, double primingDegrees, StrengthFactorTable factors) {
        for (StrengthFactor band : factors.rows()) {
            BigDecimal factor = BigDecimal.valueOf(band.factor());
            BigDecimal last = BigDecimal.valueOf(band.toDegrees());
            for (BigDecimal fall = BigDecimal.valueOf(band.fromDegrees());
                    fall.compareTo(last) <= 0;
                    fall = fall.add(TENTH)) {
                BigDecimal reached = fall.multiply(factor).setScale(1, RoundingMode.DOWN);
                if (reached.compareTo(strength) >= 0) {
                    return Gravity.ofDegrees((fall.doubleValue() - primingDegrees) / attenuation);
                }
            }
        }
        throw new IllegalArgumentException("strength: expected one that the table '" + factors.name()
                + "' reaches, found " + strength.toPlainString() + " %");
    }
}
