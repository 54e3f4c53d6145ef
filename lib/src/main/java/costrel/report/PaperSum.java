package costrel.report;

import java.math.BigDecimal;

/** Figures printed to some decimals whose printed total is the sum of the printed figures, so that a sheet adds up on paper. */
final class PaperSum {

    private final int decimals;
    private BigDecimal printed = BigDecimal.ZERO;
    private double exact;

    PaperSum(int decimals) {
        this.decimals = decimals;
    }

    /** Prints a figure and adds what was printed to the total. */
    String add(double value) {
        String text = Figures.fixed(value, decimals);
        printed = printed.add(new BigDecimal(text));
        exact += value;
        return text;
    }

    /** Prints a step of a running balance: what the printed balance changes by, within one unit of the last decimal. */
    String step(double change) {
        exact += change;
        BigDecimal after = new BigDecimal(Figures.fixed(exact, decimals));
        BigDecimal shown = after.subtract(printed);
        printed = after;
        return shown.toPlainString();
    }

    /** The sum of what was printed. */
    String total() {
        return printed.setScale(decimals).toPlainString();
    }
}
