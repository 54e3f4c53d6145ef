package costrel.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.brewery.PricedRange;
import costrel.brewery.SellingPrices;
import costrel.brewery.WhyItMoved;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A person with a pencil can check every sheet: what is ruled off is the sum of what stands above it. */
class SheetsAddUpTest {

    private static final Brewery LANTERNFOLD = Brewery.open(Path.of("../samples/lanternfold"));
    private static final Pattern FIGURE = Pattern.compile("-?\\d+(\\.\\d+)?");

    private static Brew brew(String beer) {
        return LANTERNFOLD.brew(beer).on("Main").length("28 brl").day(LocalDate.of(2026, 11, 25));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Tallow Mild",
                "Wickgate Bitter",
                "Haymoth Golden",
                "Oatlamp Stout",
                "Snuffer Strong",
                "Trimwick Pale"
            })
    void every_ruled_off_figure_is_the_sum_of_its_column(String beer) {
        int checked = rulesChecked(GyleText.of(brew(beer).gyle()))
                + rulesChecked(CostText.of(brew(beer).cost()))
                + rulesChecked(JobText.of(brew(beer)));
        assertTrue(checked >= 15, "only " + checked + " totals found");
    }

    @Test
    void a_comparison_runs_from_before_to_after_and_each_effect_is_the_sum_of_its_lines() {
        for (String beer : List.of("Wickgate Bitter", "Haymoth Golden", "Trimwick Pale")) {
            String text = ComparisonText.of(WhyItMoved.between(
                    LANTERNFOLD, brew(beer).day("2026-04-14").cost(), brew(beer).cost()));
            assertTrue(rulesChecked(text) >= 3, text);
        }
    }

    @Test
    void a_range_adds_up_to_its_totals() {
        String text = RangeText.of(PricedRange.of(LANTERNFOLD, LocalDate.of(2026, 11, 25)));
        assertEquals(6, rulesChecked(text), text);
    }

    @Test
    void cost_is_fixed_and_variable_and_a_price_with_its_tax_is_what_a_customer_pays() {
        SellingPrices prices = brew("Trimwick Pale").pricing().margin("55 %");
        List<List<BigDecimal>> tables = figures(PricingText.of(prices), prices);
        assertEquals(9, tables.size());
        for (int i = 0; i < 3; i++) {
            List<BigDecimal> costs = tables.get(i);
            List<BigDecimal> price = tables.get(3 + i);
            List<BigDecimal> contribution = tables.get(6 + i);
            assertEquals(costs.get(0), costs.get(2).add(costs.get(3)));
            assertEquals(price.get(2), price.get(0).add(price.get(1)));
            assertEquals(price.get(3), price.get(0).subtract(costs.get(0)));
            assertEquals(contribution.get(0), price.get(0).subtract(costs.get(3)));
        }
        for (List<BigDecimal> bar : figures(PricingText.of(prices.pub("60 %")), prices)) {
            assertEquals(bar.get(4), bar.get(2).add(bar.get(3)), "net");
            assertEquals(bar.get(6), bar.get(4).add(bar.get(5)), "on the bar");
        }
    }

    /** The figures of every row that begins with a container, in the order of the sheet. */
    private static List<List<BigDecimal>> figures(String text, SellingPrices prices) {
        List<List<BigDecimal>> rows = new ArrayList<>();
        for (String line : text.lines().toList()) {
            prices.sheet().containers().stream()
                    .map(container -> "  " + container.container().name())
                    .filter(line::startsWith)
                    .forEach(name -> rows.add(FIGURE.matcher(line.substring(name.length()))
                            .results()
                            .map(found -> new BigDecimal(found.group()))
                            .toList()));
        }
        return rows;
    }

    /** Finds each rule under a column, adds the figures above it by position, and holds the sum against the figure below. */
    private static int rulesChecked(String sheet) {
        List<String> lines = sheet.lines().toList();
        int checked = 0;
        for (int i = 0; i < lines.size(); i++) {
            Matcher rule = Pattern.compile("-{3,}").matcher(lines.get(i));
            while (rule.find()) {
                BigDecimal total = figureAt(lines.get(i + 1), rule.start(), rule.end());
                BigDecimal sum = BigDecimal.ZERO;
                int rows = 0;
                for (int j = i - 1; j >= 0 && !headed(lines.get(j), rule.end()); j--) {
                    BigDecimal figure = figureAt(lines.get(j), rule.start(), rule.end());
                    if (figure != null) {
                        sum = sum.add(figure);
                        rows++;
                    }
                }
                boolean perPint = isPerPint(lines, i, rule.end());
                if (rows > 0 && total != null && !perPint) {
                    assertEquals(
                            0, total.compareTo(sum), "column ending at " + rule.end() + " over\n" + lines.get(i + 1));
                    checked++;
                }
            }
        }
        return checked;
    }

    /** Pence a pint of several containers is a mean, not a sum. */
    private static boolean isPerPint(List<String> lines, int rule, int end) {
        for (int j = rule - 1; j >= 0; j--) {
            if (headed(lines.get(j), end)) {
                return lines.get(j).contains("#filled")
                        || (lines.get(j).contains("filled")
                                && lines.get(j).substring(0, end).endsWith("a pint"));
            }
        }
        return false;
    }

    /** Whether a line is a header over the column: words end where the column ends. */
    private static boolean headed(String line, int end) {
        return line.length() >= end
                && !Character.isDigit(line.charAt(end - 1))
                && !Character.isWhitespace(line.charAt(end - 1))
                && line.charAt(end - 1) != '-';
    }

    private static @org.jspecify.annotations.Nullable BigDecimal figureAt(String line, int start, int end) {
        if (line.length() <= start) {
            return null;
        }
        List<BigDecimal> found = new ArrayList<>();
        Matcher figure = FIGURE.matcher(line);
        while (figure.find()) {
            if (figure.start() >= start && figure.end() <= end) {
                found.add(new BigDecimal(figure.group()));
            }
        }
        return found.size() == 1 ? found.get(0) : null;
    }

    @Test
    void the_volumes_of_a_gyle_run_from_line_to_line() {
        BigDecimal balance = BigDecimal.ZERO;
        int steps = 0;
        for (String line : GyleText.of(brew("Haymoth Golden").gyle()).lines().toList()) {
            Matcher step = Pattern.compile("^ {2}(run-off from the mash|[-+=] .*?) {2,}(\\d+\\.\\d)")
                    .matcher(line);
            if (step.find()) {
                BigDecimal litres = new BigDecimal(step.group(2));
                steps++;
                switch (step.group(1).charAt(0)) {
                    case '-' -> balance = balance.subtract(litres);
                    case '=' -> assertEquals(balance, litres, line);
                    default -> balance = balance.add(litres);
                }
            }
        }
        assertTrue(steps >= 8, "only " + steps + " steps found");
    }
}
