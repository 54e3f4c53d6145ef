package costrel.duty;

import costrel.explain.CostFinding;
import costrel.figures.Figures;
import costrel.packaging.Container;
import costrel.wort.StrengthForDuty;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * Duty on beer, in the United Kingdom by the litre of pure alcohol: strength × litres × (rate − discount). Three roundings, each its own way:
 * strength down to one decimal, the discount up to the penny, the duty of a run down to the penny.
 *
 * <p>Sources: Finance (No. 2) Act 2023 (c. 30) ss.44 to 59 and Schs. 7 to 9; Alcoholic Products (Excise Duty) Regulations
 * 2023 (S.I. 2023/806) regs 2 and 3; HM Revenue &amp; Customs, <em>Alcoholic products technical guide</em> s.11 and the
 * guidance on working out Alcohol Duty. An estimate for costing: confirm with the authority before filing or pricing.
 */
public final class Duty {
    private static final BigDecimal LARGEST_ROUNDING_OF_A_LABEL = new BigDecimal("0.005");

    private Duty() {}

    /**
     * Works out the duty on a run of containers.
     *
     * @param input the run, the beer, the days and the production
     * @param schedule the tables
     * @return the duty with its steps
     * @throws IllegalArgumentException when a day or a strength is outside the tables, naming what to supply
     */
    public static DutyFigure of(DutyInput input, DutySchedule schedule) {
        return schedule.on(input.dutyOn()).of(input);
    }

    static DutyFigure ofPureAlcohol(DutyInput input, DutyOnDay tables) {
        List<CostFinding> findings = new ArrayList<>();
        Container container = input.container();
        StrengthForDuty.Result expected = tables.expected(input.og(), input.pg());
        StrengthRule rule = rule(input, expected.strength());
        BigDecimal strength =
                rule == StrengthRule.DECLARED ? cut(input.declaredStrength().orElseThrow()) : expected.strength();

        DutyRate rate = tables.rate(strength, container.draught());
        ReliefFigure relief = rate.ratePerLpa().signum() == 0
                ? ReliefFigure.none("no duty at " + Figures.plain(strength) + " %")
                : SmallProducerRelief.of(input, strength, tables, findings::add);
        BigDecimal payable = rate.ratePerLpa().subtract(relief.discount()).max(BigDecimal.ZERO);

        BigDecimal litres = container.dutiableL().multiply(BigDecimal.valueOf(input.count()));
        BigDecimal pureAlcoholL = litres.multiply(strength).movePointLeft(2);
        BigDecimal unrounded = pureAlcoholL.multiply(payable);
        Money duty = Money.of(tables.schedule().currency(), unrounded, RoundingMode.DOWN);

        findings.addAll(findings(input, expected, rule));
        return new DutyFigure(
                input,
                tables.schedule(),
                expected,
                strength,
                rule,
                litres,
                pureAlcoholL,
                rate,
                relief,
                payable,
                unrounded,
                duty,
                findings,
                strength,
                List.of(new DutySlice(rate, payable, litres.movePointLeft(2), strength.multiply(payable), unrounded)));
    }

    /** A strength as duty takes it: cut down to one decimal, so that 7.59 % is 7.5 %. */
    static BigDecimal cut(BigDecimal percent) {
        return percent.setScale(1, RoundingMode.DOWN);
    }

    private static StrengthRule rule(DutyInput input, BigDecimal expected) {
        if (input.declaredStrength().isEmpty()) {
            return StrengthRule.EXPECTED_FOR_WANT_OF_DECLARED;
        }
        return input.container().conditioned()
                        && expected.compareTo(cut(input.declaredStrength().get())) > 0
                ? StrengthRule.EXPECTED
                : StrengthRule.DECLARED;
    }

    private static List<CostFinding> findings(DutyInput input, StrengthForDuty.Result expected, StrengthRule rule) {
        List<CostFinding> findings = new ArrayList<>();
        Container container = input.container();
        if (rule == StrengthRule.EXPECTED_FOR_WANT_OF_DECLARED) {
            findings.add(new CostFinding(
                    "no strength is declared: duty is reckoned on the expected " + percent(expected.strength()),
                    "state the declared strength"));
        } else if (expected.strength().compareTo(cut(input.declaredStrength().orElseThrow())) > 0) {
            findings.add(new CostFinding(
                    "the beer is expected to reach " + percent(expected.strength()) + ", over the declared "
                            + percent(input.declaredStrength().get())
                            + (container.conditioned()
                                    ? "; duty on " + container.name() + " goes by the expected"
                                    : ""),
                    "declare the strength it reaches"));
        }
        BigDecimal over = container.nominalL().subtract(container.labelL());
        if (over.compareTo(LARGEST_ROUNDING_OF_A_LABEL) > 0) {
            findings.add(new CostFinding(
                    container.name() + " holds " + Figures.plain(container.nominalL()) + " L, its label says "
                            + Figures.plain(container.labelL()) + " L",
                    "beer that is always overfilled pays duty on what is in it: correct the label volume"));
        }
        return findings;
    }

    private static String percent(BigDecimal value) {
        return Figures.plain(value) + " %";
    }
}
