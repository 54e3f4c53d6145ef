package costrel.report;

import costrel.scaling.Intent;
import costrel.wort.Attenuation;
import costrel.wort.Gravity;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a beer is, as it was read on its home plant or from its targets. */
public final class BeerText {

    private BeerText() {}

    /**
     * The beer as text.
     *
     * @param intent the beer
     * @return lines of text
     */
    public static String of(Intent intent) {
        StringBuilder text = new StringBuilder();
        text.append(intent.recipe().name());
        intent.home()
                .ifPresentOrElse(
                        home -> {
                            text.append(", as brewed on ").append(home.name());
                            OptionalDouble litres = intent.recipe().brewLengthL();
                            if (litres.isPresent()) {
                                text.append(", ").append(Figures.brewLength(litres.getAsDouble()));
                            }
                            intent.recipe()
                                    .brewed()
                                    .ifPresent(day -> text.append(", ").append(day));
                        },
                        () -> text.append(", as its recipe states it"));
        text.append('\n');
        text.append("  ").append(gravities(intent)).append('\n');
        TextTable grist = TextTable.of("grist", "#share of weight", "#extract L°/kg", "#colour EBC");
        double weight = intent.mashed().stream()
                        .mapToDouble(Intent.Mashed::weight)
                        .sum()
                + intent.sugars().stream().mapToDouble(Intent.Sugar::weight).sum();
        for (Intent.Mashed line : intent.mashed()) {
            grist.row(
                    line.material().name(),
                    Figures.percent(line.weight() / weight, 1),
                    Figures.fixed(line.material().hwe(), 1),
                    Figures.fixed(line.material().ebc(), 0));
        }
        for (Intent.Sugar line : intent.sugars()) {
            grist.row(
                    line.material().name(),
                    Figures.percent(line.weight() / weight, 1),
                    Figures.fixed(line.material().hwe(), 1),
                    Figures.fixed(line.material().ebc(), 0));
        }
        text.append(grist.text(2));
        PaperSum ebu = new PaperSum(1);
        TextTable hops = TextTable.of("hops", "lot", "use", "holds", "#alpha %", "#dose g/hL", "#EBU");
        for (Intent.Hop hop : intent.hops()) {
            hops.row(
                    hop.asRead().variety(),
                    hop.asRead().lot(),
                    hop.use().text(),
                    hop.holds().label(),
                    Figures.fixed(hop.asRead().alpha() * 100, 2),
                    Figures.fixed(hop.gramsPerHl(), 1),
                    hop.ebu().isPresent() ? ebu.add(hop.ebu().getAsDouble()) : "");
        }
        hops.total("", "", "", "", "", "", ebu.total());
        return text.append(hops.text(2)).toString();
    }

    static String gravities(Intent intent) {
        StringBuilder line =
                new StringBuilder("OG " + Figures.degrees(intent.og().excessDegrees()));
        Optional<Gravity> fg = intent.recipe().targets().apparentAttenuation().stream()
                .mapToObj(share -> Attenuation.fgFrom(intent.og(), share))
                .findFirst();
        fg.ifPresent(gravity -> line.append("   FG ").append(Figures.degrees(gravity.excessDegrees())));
        line.append("   ").append(Figures.fixed(intent.ebu(), 1)).append(" EBU");
        intent.convention()
                .ifPresent(convention -> line.append(" (")
                        .append(convention.name())
                        .append(" convention, ")
                        .append(convention.speaksOf())
                        .append(')'));
        OptionalDouble declared = intent.recipe().targets().declaredStrength();
        if (declared.isPresent()) {
            line.append("   label ").append(Figures.fixed(declared, 1)).append(" % vol");
        }
        return line.toString();
    }
}
