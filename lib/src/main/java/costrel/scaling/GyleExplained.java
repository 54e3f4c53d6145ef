package costrel.scaling;

import costrel.explain.Explanation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Tells how the figures of a gyle came about, each with the sum that a person can do again. */
final class GyleExplained {

    private GyleExplained() {}

    static Explanation of(Gyle gyle) {
        List<Explanation> parts = new ArrayList<>();
        parts.add(extract(gyle));
        parts.add(grist(gyle));
        parts.add(bitterness(gyle));
        gyle.liquor().ifPresent(liquor -> parts.add(liquor(gyle, liquor)));
        return new Explanation(
                gyle.beerName() + " on " + gyle.plant().name(), number(gyle.collectedL(), 1) + " L", "", parts);
    }

    private static Explanation extract(Gyle gyle) {
        List<Explanation> lines = new ArrayList<>();
        for (Ledger.Line line : gyle.extract().in()) {
            lines.add(Explanation.leaf("in: " + line.label(), number(line.amount(), 1) + " L°"));
        }
        for (Ledger.Line line : gyle.extract().out()) {
            lines.add(Explanation.leaf("out: " + line.label(), number(line.amount(), 1) + " L°"));
        }
        return new Explanation(
                "extract ledger",
                number(gyle.extract().total(), 1) + " L°",
                "litres × excess degrees; what comes in goes out",
                lines);
    }

    private static Explanation grist(Gyle gyle) {
        double mash = gyle.extract().amount("won in the mash");
        List<Explanation> lines = new ArrayList<>();
        for (Gyle.Grist line : gyle.grist()) {
            double hwe = line.material().hweOrRefuse();
            String how = line.material().mashed()
                    ? number(line.kg(), 3) + " kg × " + number(hwe, 1) + " L°/kg × "
                            + number(gyle.mashEfficiency() * 100, 2) + " %"
                    : number(line.kg(), 3) + " kg × " + number(hwe, 1) + " L°/kg, no mash efficiency";
            lines.add(Explanation.of(line.material().name(), number(line.litreDegrees(), 1) + " L°", how));
        }
        return new Explanation(
                "mashed goods",
                number(gyle.mashedKg(), 3) + " kg",
                number(mash, 1) + " L° wanted from the mash, at "
                        + gyle.plant().efficiency().text() + " of the potential",
                lines);
    }

    private static Explanation bitterness(Gyle gyle) {
        List<Explanation> lines = new ArrayList<>();
        for (int i = 0; i < gyle.hops().size(); i++) {
            Gyle.Hop hop = gyle.hops().get(i);
            Intent.Hop intent = gyle.intent().hops().get(i);
            String sum = "1000000 × " + number(hop.kg(), 4) + " kg × "
                    + number(hop.hop().alpha() * 100, 3) + " % × " + number(hop.utilisation() * 100, 3) + " % / "
                    + number(gyle.collectedL(), 1) + " L";
            lines.add(Explanation.of(
                    hop.hop().variety() + " in the " + hop.use().text(),
                    number(hop.ebu(), 3) + " EBU",
                    sum,
                    Explanation.of(
                            "alpha acid on the day",
                            number(hop.hop().alpha() * 100, 3) + " %",
                            hop.hop().route()),
                    Explanation.of(
                            "holds its " + hop.holds().label(),
                            intent.ebu().isPresent()
                                    ? number(intent.ebu().getAsDouble(), 3) + " EBU as read"
                                    : "not read",
                            intent.gramsPerHl().isPresent()
                                    ? number(intent.gramsPerHl().getAsDouble(), 2) + " g/hL as read, of "
                                            + intent.asRead().lot()
                                    : "")));
        }
        return new Explanation(
                "bitterness",
                number(gyle.bitterness().ebu(), 3) + " EBU",
                gyle.bitterness().convention() + " convention, speaks of "
                        + gyle.bitterness().speaksOf() + "; correction of the plant "
                        + number(gyle.plant().bitternessCorrection(), 3),
                lines);
    }

    private static Explanation liquor(Gyle gyle, LiquorPlan liquor) {
        List<Explanation> lines = new ArrayList<>();
        for (Ledger.Line line : liquor.water().in()) {
            lines.add(Explanation.leaf("in: " + line.label(), number(line.amount(), 1) + " L"));
        }
        for (Ledger.Line line : liquor.water().out()) {
            lines.add(Explanation.leaf("out: " + line.label(), number(line.amount(), 1) + " L"));
        }
        return new Explanation(
                "liquor",
                number(liquor.totalL(), 1) + " L",
                "for " + number(gyle.mashedKg(), 1) + " kg of mashed goods; water at 20 °C, 0.9982 kg/L",
                lines);
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
