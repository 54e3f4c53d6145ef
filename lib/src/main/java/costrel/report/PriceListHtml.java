package costrel.report;

import costrel.brewery.Brewery;
import costrel.measure.Amounts;
import costrel.pricing.ListPrice;
import costrel.recipe.Names;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.joda.money.CurrencyUnit;

/** The price list for the trade, from list-prices.csv: what is sold in what, at which strength and price. It shows no cost. */
public final class PriceListHtml {

    private PriceListHtml() {}

    /**
     * The list of a brewery.
     *
     * @param brewery the brewery
     * @param from the day from which it holds; allergens go by the materials of that day
     * @return a page of HTML that needs no other file
     * @throws IllegalArgumentException if list-prices.csv is empty or names what isn't there
     */
    public static String of(Brewery brewery, LocalDate from) {
        if (brewery.listPrices().isEmpty()) {
            throw new IllegalArgumentException(
                    "price list: expected a beer and container or more in list-prices.csv, found none");
        }
        CurrencyUnit currency = brewery.currency();
        String sign = MoneyWords.sign(currency);
        BigDecimal vat = brewery.settings().vat();
        Html html = Html.page(brewery.name() + ", price list", SheetStyle.COMMON);
        html.open("main").leaf("p", "Price list to the trade").leaf("h1", brewery.name());
        html.open("p")
                .leaf("span", "From " + from + ", VAT " + MoneyWords.stated(vat), "data-key", "from")
                .close("p");
        html.table(
                "Beers and containers",
                "beer",
                "#% vol",
                "in",
                "#price " + sign,
                "#VAT " + sign,
                "#with VAT " + sign,
                "allergens");
        Map<String, Set<String>> allergens = new LinkedHashMap<>();
        for (int i = 0; i < brewery.listPrices().size(); i++) {
            ListPrice line = brewery.listPrices().get(i);
            BigDecimal net = line.price().getAmount();
            BigDecimal tax = new BigDecimal(MoneyWords.figure(currency, net.multiply(vat)));
            String key = "price." + i;
            html.open("tr").leaf("th", line.beer(), "scope", "row");
            html.figure(
                    key + ".strength",
                    Figures.fixed(brewery.recipe(line.beer()).targets().declaredStrength(), 1));
            html.words(key + ".in", line.container());
            html.figure(key, MoneyWords.figure(line.price()));
            html.figure(key + ".vat", tax.toPlainString())
                    .figure(key + ".all", net.add(tax).toPlainString());
            Set<String> found =
                    new LinkedHashSet<>(allergens.computeIfAbsent(line.beer(), beer -> allergens(brewery, line, from)));
            Names.find(brewery.containers(), line.container())
                    .ifPresent(container -> found.addAll(container.allergens()));
            html.words(key + ".allergens", found.isEmpty() ? "none stated" : String.join(", ", found));
            html.close("tr");
        }
        html.endTable();
        html.leaf(
                "p",
                "Strengths are the labels'. Allergens go by the tables of the ingredients and containers; ask us before you serve"
                        + " someone with an allergy.");
        html.leaf("p", "VAT at the rate the brewery states; the rate of the day of supply is the one that counts.");
        return html.close("main").finished();
    }

    private static Set<String> allergens(Brewery brewery, ListPrice line, LocalDate from) {
        return BrewSheetHtml.allergens(brewery.brew(line.beer())
                .on(line.plant())
                .length(Amounts.ofLitres(line.litres()))
                .day(from)
                .gyle());
    }
}
