package costrel.report;

import costrel.scaling.Finding;
import costrel.scaling.Gyle;
import java.util.List;

/** What a brewer must take care of, at the foot of a brew sheet: allergens, findings, and the dangers of the day. */
final class BrewCare {

    private static final String DANGERS =
            "Hot liquor, wort and steam scald. Caustic and acid burn: never mix them, wear what their data sheets ask for, rinse"
                    + " before brewing. Carbon dioxide gathers in vessels and cellars and kills without a warning: air and test"
                    + " before you go in, never alone. Vent a working cask slowly, away from the face. Site rules, gauges and thermometers come before this sheet.";

    private static final String BOTTLES =
            "Bottles burst where too much is left to ferment: measure the gravity before filling, keep to the maker's pressure"
                    + " rating, try a few warm behind a screen first.";

    private BrewCare() {}

    static void write(Html html, Gyle gyle, List<String> allergens, boolean bottled) {
        html.open("div", "class", "care");
        html.open("p").leaf("strong", "Allergens: ");
        html.leaf(
                "span",
                allergens.isEmpty() ? "none stated by the ingredients' tables" : String.join(", ", allergens),
                "data-key",
                "allergens");
        html.leaf("span", " (by the ingredients' tables: check the makers' papers and the law before a label)");
        html.close("p").leaf("h2", "Take care");
        html.open("ul");
        for (Finding.Weight weight : List.of(Finding.Weight.LIMIT, Finding.Weight.CAUTION, Finding.Weight.NOTE)) {
            for (Finding finding : gyle.findings()) {
                if (finding.weight() == weight) {
                    html.leaf("li", finding.text(), "data-key", "finding");
                }
            }
        }
        html.leaf("li", DANGERS);
        if (bottled || gyle.beer().primingDegrees() > 0) {
            html.leaf("li", BOTTLES);
        }
        html.close("ul").close("div");
    }
}
