package costrel.repl;

import java.util.Optional;

/** A few faint words behind the cursor: what is to stand there, or the figure of the name that does. */
final class Hint {

    private Hint() {}

    /**
     * The hint for an input whose end the cursor is at.
     *
     * @param source the input so far
     * @return the words, or empty
     */
    static String of(String source) {
        Optional<Spot> spot = Spot.of(source);
        if (spot.isEmpty()) {
            Words.Word word = Words.all().get(source.strip());
            return word == null ? "" : "  " + word.line();
        }
        Optional<Calls.Kind> kind = Calls.at(spot.get().call(), spot.get().place());
        if (kind.isEmpty()) {
            return "";
        }
        if (spot.get().text().isEmpty()) {
            char last = source.stripTrailing().charAt(source.stripTrailing().length() - 1);
            return last == '(' || last == ',' ? "\"" + kind.get().hint() + "\"" : "";
        }
        String typed = source.substring(spot.get().text().get());
        if (typed.isEmpty()) {
            return kind.get().hint();
        }
        return Desk.larderAtHand()
                .flatMap(larder -> larder.figureOf(kind.get(), spot.get().before(), typed))
                .map(figure -> "  " + figure)
                .orElse("");
    }
}
