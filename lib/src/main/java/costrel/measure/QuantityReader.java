package costrel.measure;

import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/** Reads one amount in a scan from left to right. */
final class QuantityReader {

    /** Longer than any double in plain decimals, with its unit. */
    private static final int LONGEST = 400;

    private static final int LONGEST_UNIT = 30;

    private static final String TOO_LARGE = "the number is too large";

    private final String text;
    private final @Nullable Kind<?> wanted;
    private int at;

    private QuantityReader(String text, @Nullable Kind<?> wanted) {
        this.text = text;
        this.wanted = wanted;
    }

    /** An amount of one kind. */
    @SuppressWarnings("unchecked") // The reader refuses units of other kinds.
    static <Q extends Quantity<Q>> Quantity<Q> read(String text, Kind<Q> kind) {
        return (Quantity<Q>) new QuantityReader(text, kind).read();
    }

    /** An amount of whatever kind its unit is. */
    static Quantity<?> read(String text) {
        return new QuantityReader(text, null).read();
    }

    private Quantity<?> read() {
        if (text.length() > LONGEST) {
            throw fault("longer than " + LONGEST + " characters");
        }
        at = Decimals.skipSpaces(text, 0);
        if (at == text.length()) {
            throw fault("nothing there");
        }
        int start = at;
        double first = number();
        KnownUnit<?> unit = unit();
        if (at < text.length()) {
            if (Decimals.isSign(text.charAt(start))) {
                throw fault("an amount in several parts has no sign");
            }
            return compound(first, unit);
        }
        return amount(first, unit);
    }

    private Quantity<?> compound(double first, KnownUnit<?> firstUnit) {
        double total = first;
        double last = first;
        KnownUnit<?> unit = firstUnit;
        while (at < text.length()) {
            if (!unit.kind().compound()) {
                throw fault(
                        "one number and one unit are enough for " + unit.kind().noun());
            }
            if (last != Math.rint(last)) {
                throw fault("only the last part may have decimals");
            }
            if (Decimals.isSign(text.charAt(at))) {
                throw fault("an amount in several parts has no sign");
            }
            last = number();
            KnownUnit<?> next = unit();
            if (!next.kind().equals(unit.kind())) {
                throw fault(next.symbol() + " is " + next.kind().noun() + ", " + unit.symbol() + " is "
                        + unit.kind().noun());
            }
            if (!(next.toCanonical(1) < unit.toCanonical(1))) {
                throw fault(next.symbol() + " is not smaller than " + unit.symbol());
            }
            total = unit.to(next, total) + last;
            if (!Double.isFinite(total)) {
                throw fault(TOO_LARGE);
            }
            unit = next;
        }
        return amount(total, unit);
    }

    private double number() {
        int start = at;
        int end = Decimals.end(text, start);
        if (end == start) {
            throw fault(Decimals.noNumber(text, start));
        }
        at = end;
        double value = Decimals.parse(text, start, end, 0);
        if (!Double.isFinite(value)) {
            throw fault(TOO_LARGE);
        }
        return value;
    }

    /** The unit that stands here; afterwards {@code at} is at the next part or the end of the text. */
    private KnownUnit<?> unit() {
        int start = Decimals.skipSpaces(text, at);
        if (start == text.length()) {
            throw fault("no unit");
        }
        int end = start;
        boolean spaced = false;
        while (end < text.length()) {
            int next = Decimals.skipSpaces(text, end);
            if (next == end) {
                end++;
            } else if (next == text.length() || Decimals.startsNumber(text.charAt(next))) {
                at = next;
                break;
            } else {
                spaced = true;
                end = next;
            }
        }
        if (end == text.length()) {
            at = end;
        }
        String written = text.substring(start, end);
        String spelling = spaced ? Decimals.singleSpaced(written) : written;
        KnownUnit<?> known = UnitTable.find(spelling);
        if (known == null) {
            throw fault(noUnit(spelling, start));
        }
        if (wanted != null && !known.kind().equals(wanted)) {
            throw fault(spelling + " is " + known.kind().noun());
        }
        return known;
    }

    private String noUnit(String spelling, int start) {
        if (spelling.length() > LONGEST_UNIT) {
            return Decimals.brokenNumber(text, start).orElse("no unit is as long as this");
        }
        return Decimals.brokenNumber(text, start)
                .or(() -> UnitTable.refusal(spelling))
                .orElseGet(() -> "unknown unit '" + spelling + "'"
                        + UnitTable.nearest(spelling, wanted)
                                .map(near -> "; did you mean " + near + "?")
                                .orElse(""));
    }

    private QuantityTextException fault(String why) {
        String expected = wanted == null ? "an amount with its unit such as 25 kg" : wanted.expected();
        return new QuantityTextException(expected, text.strip(), why);
    }

    private static <Q extends Quantity<Q>> Quantity<Q> amount(double value, KnownUnit<Q> unit) {
        return Amounts.of(value, unit.unit());
    }
}
