package costrel.repl;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Quotes that were left out: the commonest slip of a brewer who types Java. */
final class Unquoted {

    private static final Pattern TEXT_THAT_RUNS_ON = Pattern.compile("[^)]*(?=\\)\\s*(?:[.,;)]|$))");
    private static final Pattern AMOUNT = Pattern.compile("\\d[\\d.]*\\s*[\\p{L}%°/][^(),\"]*");
    private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\d'’&.-]*(?:\\s+[\\p{L}\\d'’&.-]+)+");

    private Unquoted() {}

    /**
     * A text that isn't closed although another begins after it.
     *
     * @param piece the input
     * @return the fault, or empty if the quotes are even or it can't be told which is missing
     */
    static Optional<Fault> notClosed(Piece piece) {
        String source = piece.text();
        if (source.contains("\"\"\"")) {
            return Optional.empty();
        }
        int quotes = 0;
        int runsOnAt = -1;
        int from = -1;
        for (int i = 0; i < source.length(); i++) {
            char c = source.charAt(i);
            if (c == '\\' && from >= 0) {
                i++;
            } else if (c == '"') {
                quotes++;
                if (from >= 0 && runsOnAt < 0) {
                    Matcher on = TEXT_THAT_RUNS_ON.matcher(source.substring(from, i));
                    runsOnAt = on.lookingAt() ? from + on.end() : -1;
                }
                from = from < 0 ? i + 1 : -1;
            } else if (c == '\n') {
                from = -1;
            }
        }
        return quotes % 2 == 1 && runsOnAt >= 0
                ? Optional.of(
                        new Fault(Fault.Kind.INPUT, "the closing \" is missing before this", piece.place(runsOnAt)))
                : Optional.empty();
    }

    /**
     * A name of several words or an amount between brackets that stands in no quotes.
     *
     * @param piece the input
     * @param position where the compiler lost its way
     * @return the fault, or empty if something else is wrong
     */
    static Optional<Fault> betweenBrackets(Piece piece, int position) {
        String source = piece.text();
        Optional<Spot> spot = Spot.of(source.substring(0, position));
        if (spot.isEmpty() || spot.get().text().isPresent()) {
            return Optional.empty();
        }
        int from = Math.max(source.lastIndexOf('(', position - 1), source.lastIndexOf(',', position - 1)) + 1;
        while (from < source.length() && source.charAt(from) == ' ') {
            from++;
        }
        int to = from;
        while (to < source.length() && ",)\"\n;".indexOf(source.charAt(to)) < 0) {
            to++;
        }
        String typed = source.substring(from, to).strip();
        if (AMOUNT.matcher(typed).matches()) {
            return Optional.of(new Fault(
                    Fault.Kind.INPUT,
                    "an amount with its unit is written as text: \"" + typed + "\"",
                    piece.place(from)));
        }
        return NAME.matcher(typed).matches()
                ? Optional.of(
                        new Fault(Fault.Kind.INPUT, "a name is written as text: \"" + typed + "\"", piece.place(from)))
                : Optional.empty();
    }

    /** What stands in the brackets in front of a place, in words; empty if that isn't known. */
    static Optional<String> expectedAt(String source, int position) {
        return Spot.of(source.substring(0, position))
                .filter(spot -> spot.text().isEmpty())
                .flatMap(spot -> Calls.at(spot.call(), spot.place()))
                .map(Calls.Kind::hint);
    }
}
