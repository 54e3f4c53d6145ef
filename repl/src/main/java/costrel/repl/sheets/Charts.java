package costrel.repl.sheets;

import costrel.brewery.PricedRange;
import costrel.brewery.RiskStudy;
import costrel.harvest.HarvestPlan;
import costrel.pricing.Comparison;
import costrel.pricing.ComparisonStatement;
import costrel.pricing.RangeView;
import costrel.pricing.RiskResult;
import costrel.report.HopMonths;
import costrel.report.PintSplit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.HorizontalBarChart;
import org.knowm.xchart.HorizontalBarChartBuilder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * The charts of the sheets. Dark on white; the figure stands in the name of each bar, and lines differ by mark and dash, so that
 * nothing is told by colour alone.
 */
final class Charts {

    private static final int WIDTH = 720;
    private static final int ROW = 26;
    private static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    private static final Color INK = new Color(0x20, 0x20, 0x20);
    private static final Color BAR = new Color(0x2f, 0x5d, 0x8a);
    private static final Color LESS = new Color(0xb9, 0xc9, 0xd8);

    /** Each at least 4.5:1 against white, as WCAG 2.1 asks of text. */
    private static final Color[] LINES = {
        new Color(0x1b4f72),
        new Color(0x922b21),
        new Color(0x1d6b3a),
        new Color(0x6c3483),
        new Color(0x7e5109),
        new Color(0x202020)
    };

    /** Five of these to six colours, so that thirty lots differ. */
    private static final BasicStroke[] DASHES = {
        dashed(), dashed(8, 4), dashed(2, 3), dashed(10, 3, 2, 3), dashed(16, 5)
    };

    private Charts() {}

    private static BasicStroke dashed(float... dashes) {
        return new BasicStroke(
                1.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes.length == 0 ? null : dashes, 0);
    }

    /** Where the price of a pint goes. */
    static Drawing of(PintSplit split, String key) {
        String unit = coins(split.currency()) + " a pint";
        List<String> labels = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        List<BigDecimal> pence = split.pence();
        for (int i = 0; i < pence.size(); i++) {
            labels.add(split.parts().get(i).kind().label() + "  " + pence.get(i).toPlainString());
            values.add(pence.get(i).doubleValue());
        }
        String whole = (split.priced() ? "price with VAT" : "cost") + " "
                + split.pencePerPint().toPlainString();
        return new Drawing(
                key,
                split.name() + ": " + whole + " " + unit,
                split.name() + ", " + unit + ": " + String.join(", ", labels) + "; " + whole + ".",
                bars(labels, values, unit));
    }

    private static HorizontalBarChart bars(List<String> labels, List<Double> values, String unit) {
        HorizontalBarChart chart = new HorizontalBarChartBuilder()
                .width(WIDTH)
                .height(70 + ROW * labels.size())
                .xAxisTitle(unit)
                .build();
        plain(chart.getStyler());
        chart.getStyler().setAvailableSpaceFill(0.7);
        // The figures stand in the names of the bars.
        chart.getStyler().setXAxisTicksVisible(false).setPlotGridVerticalLinesVisible(false);
        chart.getStyler().setLegendVisible(false).setSeriesColors(new Color[] {BAR});
        chart.getStyler().setPlotGridHorizontalLinesVisible(false).setXAxisTickMarkSpacingHint(ROW - 4);
        // The first bar is drawn at the top, as the table has it.
        chart.addSeries("a pint", values, labels);
        return chart;
    }

    /** Why a pint moved, from before to after. */
    static Drawing of(Comparison comparison) {
        ComparisonStatement statement = comparison.pencePerPint();
        String unit = coins(comparison.after().total().getCurrencyUnit()) + " a pint";
        List<String> names = new ArrayList<>(List.of("before"));
        List<String> figures = new ArrayList<>(List.of(statement.before().toPlainString()));
        List<Double> levels = new ArrayList<>(List.of(statement.before().doubleValue()));
        for (ComparisonStatement.Row row : statement.rows()) {
            if (row.amount().signum() != 0) {
                names.add(row.effect().label());
                figures.add(
                        (row.amount().signum() > 0 ? "+" : "") + row.amount().toPlainString());
                levels.add(levels.get(levels.size() - 1) + row.amount().doubleValue());
            }
        }
        names.add("after");
        figures.add(statement.after().toPlainString());
        return new Drawing(
                "waterfall",
                "From before to after, " + unit + "; the scale does not begin at 0",
                comparison.after().batch().beer() + ", " + unit + ": " + joined(names, figures) + ".",
                steps(names, figures, levels, unit));
    }

    private static String joined(List<String> names, List<String> figures) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            words.add(names.get(i) + " " + figures.get(i));
        }
        return String.join(", ", words);
    }

    /** Bars from level to level, the first and the last from the foot. A thick line is a bar that may hang in the air. */
    private static XYChart steps(List<String> names, List<String> figures, List<Double> levels, String unit) {
        double least = Collections.min(levels);
        double most = Collections.max(levels);
        double room = Math.max(0.1, (most - least) * 0.25);
        double foot = Math.max(0, least - room);
        XYChart chart =
                new XYChartBuilder().width(WIDTH).height(300).yAxisTitle(unit).build();
        plain(chart.getStyler());
        chart.getStyler().setXAxisTicksVisible(false).setLegendVisible(false);
        chart.getStyler().setPlotGridVerticalLinesVisible(false);
        chart.getStyler().setXAxisMin(-0.6).setXAxisMax(names.size() - 0.4);
        chart.getStyler().setYAxisMin(foot - room).setYAxisMax(most + room);
        float width = 0.6f * WIDTH / (names.size() + 1);
        for (int i = 0; i < names.size(); i++) {
            boolean last = i == names.size() - 1;
            double to = last ? levels.get(i - 1) : levels.get(i);
            double from = i == 0 || last ? foot : levels.get(i - 1);
            XYSeries bar = chart.addSeries(i + " " + names.get(i), new double[] {i, i}, new double[] {from, to});
            bar.setMarker(SeriesMarkers.NONE).setLineStyle(new BasicStroke(width, BasicStroke.CAP_BUTT, 0));
            bar.setLineColor(i == 0 || last ? INK : to > from ? BAR : LESS);
            chart.addAnnotation(new AnnotationText(figures.get(i), i, Math.max(from, to) + room / 3, false));
            chart.addAnnotation(new AnnotationText(names.get(i), i, foot - room / 2, false));
        }
        return chart;
    }

    /** What a pint may come to cost. */
    static Drawing of(RiskStudy study, RiskResult result) {
        CurrencyUnit currency = study.sheet().total().getCurrencyUnit();
        String unit = coins(currency) + " a pint";
        double p10 = scaled(currency, result.p10PerPint());
        double p50 = scaled(currency, result.p50PerPint());
        double p90 = scaled(currency, result.p90PerPint());
        double sheet = scaled(currency, result.sheetPerPint());
        XYChart chart =
                new XYChartBuilder().width(WIDTH).height(210).xAxisTitle(unit).build();
        plain(chart.getStyler());
        double room = Math.max(0.1, (Math.max(p90, sheet) - Math.min(p10, sheet)) * 0.15);
        chart.getStyler().setYAxisMin(0.0).setYAxisMax(2.0).setYAxisTicksVisible(false);
        chart.getStyler().setXAxisMin(Math.min(p10, sheet) - room).setXAxisMax(Math.max(p90, sheet) + room);
        chart.getStyler().setPlotGridHorizontalLinesVisible(false).setMarkerSize(11);
        XYSeries band = chart.addSeries(
                "P10 to P90: " + two(p10) + " to " + two(p90), new double[] {p10, p90}, new double[] {1, 1});
        band.setMarker(SeriesMarkers.NONE)
                .setLineColor(LESS)
                .setLineStyle(new BasicStroke(26, BasicStroke.CAP_BUTT, 0));
        mark(chart, "P50: " + two(p50), p50, 1).setMarker(SeriesMarkers.DIAMOND).setMarkerColor(INK);
        mark(chart, "the sheet: " + two(sheet), sheet, 0.45)
                .setMarker(SeriesMarkers.TRIANGLE_UP)
                .setMarkerColor(BAR);
        chart.addAnnotation(new AnnotationText("P10 " + two(p10), p10, 1.6, false));
        chart.addAnnotation(new AnnotationText("P90 " + two(p90), p90, 1.6, false));
        return new Drawing(
                "risk",
                "Eight draws in ten lie in the band",
                String.format(
                        Locale.ROOT,
                        "%s, %s: a tenth of the draws cost no more than %.2f, half no more than %.2f, nine in ten no more than"
                                + " %.2f; the sheet reckons %.2f.",
                        study.sheet().batch().beer(),
                        unit,
                        p10,
                        p50,
                        p90,
                        sheet),
                chart);
    }

    private static XYSeries mark(XYChart chart, String name, double x, double y) {
        XYSeries series = chart.addSeries(name, new double[] {x}, new double[] {y});
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        return series;
    }

    /** What each lot has given by the end of each month. */
    static Drawing of(HarvestPlan plan) {
        HopMonths use = HopMonths.of(plan);
        List<String> months = use.months().stream().map(Object::toString).toList();
        CategoryChart chart = new CategoryChartBuilder()
                .width(WIDTH)
                .height(420)
                .yAxisTitle("kg used by the end of the month")
                .build();
        plain(chart.getStyler());
        chart.getStyler().setDefaultSeriesRenderStyle(CategorySeries.CategorySeriesRenderStyle.Line);
        chart.getStyler().setYAxisMin(0.0).setXAxisLabelRotation(45).setMarkerSize(7);
        chart.getStyler()
                .setLegendPosition(Styler.LegendPosition.OutsideE)
                .setLegendLayout(Styler.LegendLayout.Vertical);
        chart.getStyler().setOverlapped(true).setSeriesColors(LINES).setSeriesLines(DASHES);
        List<String> words = new ArrayList<>();
        for (HopMonths.Lot lot : use.lots()) {
            List<Double> soFar = new ArrayList<>();
            double kg = 0;
            for (double more : lot.kg()) {
                kg += more;
                soFar.add(kg);
            }
            String name = lot.lot() + " " + lot.variety();
            chart.addSeries(name, months, soFar);
            words.add(name + " " + two(kg) + " kg");
        }
        return new Drawing(
                "harvest",
                "Lots over the year: what each has given by the end of each month",
                "By the end of the plan: " + String.join(", ", words) + ".",
                chart);
    }

    /** What a hectolitre of each beer leaves. */
    static Drawing of(PricedRange range) {
        CurrencyUnit currency = range.view().currency();
        List<String> labels = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (RangeView.Row row : range.view().rows()) {
            BigDecimal perHl = row.sold().price().contributionPerHl().setScale(2, RoundingMode.HALF_UP);
            labels.add(row.sold().price().cost().name() + "  " + perHl.toPlainString());
            values.add(perHl.doubleValue());
        }
        String unit = "contribution, " + currency.getCode() + " a hL";
        return new Drawing(
                "range",
                "What a hectolitre leaves",
                unit + ": " + String.join("; ", labels) + ".",
                bars(labels, values, unit));
    }

    private static void plain(AxesChartStyler styler) {
        styler.setLocale(Locale.UK);
        styler.setBaseFont(FONT).setChartBackgroundColor(Color.WHITE).setChartFontColor(INK);
        styler.setPlotBackgroundColor(Color.WHITE).setPlotBorderVisible(false);
        styler.setLegendBackgroundColor(Color.WHITE).setLegendBorderColor(Color.WHITE);
        styler.setLegendFont(FONT)
                .setChartPadding(6)
                .setChartTitleVisible(false)
                .setAnnotationTextFont(FONT);
        styler.setLegendPosition(Styler.LegendPosition.OutsideS).setLegendLayout(Styler.LegendLayout.Horizontal);
        styler.setAxisTickLabelsFont(FONT).setAxisTitleFont(FONT).setAxisTickLabelsColor(INK);
        styler.setPlotGridLinesColor(new Color(0xd0, 0xd0, 0xd0));
    }

    private static String coins(CurrencyUnit currency) {
        return switch (currency.getCode()) {
            case "GBP" -> "pence";
            case "EUR", "USD" -> "cents";
            default -> "hundredths of " + currency.getCode();
        };
    }

    private static double scaled(CurrencyUnit currency, double money) {
        return BigDecimal.valueOf(money)
                .movePointRight(currency.getDecimalPlaces())
                .setScale(2, RoundingMode.HALF_UP)
                .doubleValue();
    }

    private static String two(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
