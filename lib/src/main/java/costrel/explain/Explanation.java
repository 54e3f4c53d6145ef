package costrel.explain;

import java.util.List;
import java.util.Optional;

/**
 * How a figure came about: what it is, the figure, the formula or source, and the figures it was made of.
 *
 * <p>Every figure of a result can be followed down to what a person gave or a table says. Labels, figures and formulas are
 * single lines, so that the tree prints as indented text.
 *
 * @param label what the figure is, such as "EBU of Fuggle at 90 min"; not blank
 * @param figure the figure with its unit, such as "12.3 EBU"; empty for a heading
 * @param how the formula or the source in words; empty where there is nothing to say
 * @param parts the figures it was made of, in the order in which they are read
 */
public record Explanation(String label, String figure, String how, List<Explanation> parts) {

    private static final String INDENT = "  ";

    /**
     * A figure made of others.
     *
     * @param label what the figure is, not blank
     * @param figure the figure with its unit, or empty
     * @param how the formula or source, or empty
     * @param parts the figures it was made of
     * @throws IllegalArgumentException if the label is blank, or a text has more than one line
     */
    public Explanation {
        if (label.isBlank()) {
            throw new IllegalArgumentException("label: expected what the figure is, found nothing");
        }
        oneLine("label", label);
        oneLine("figure", figure);
        oneLine("formula or source", how);
        parts = List.copyOf(parts);
    }

    /**
     * A figure made of others.
     *
     * @param label what the figure is, not blank
     * @param figure the figure with its unit, or empty
     * @param how the formula or source, or empty
     * @param parts the figures it was made of
     * @return the explanation
     * @throws IllegalArgumentException if the label is blank, or a text has more than one line
     */
    public static Explanation of(String label, String figure, String how, Explanation... parts) {
        return new Explanation(label, figure, how, List.of(parts));
    }

    /**
     * A figure that was given and needs no more words.
     *
     * @param label what the figure is, not blank
     * @param figure the figure with its unit
     * @return the explanation
     * @throws IllegalArgumentException if the label is blank, or a text has more than one line
     */
    public static Explanation leaf(String label, String figure) {
        return new Explanation(label, figure, "", List.of());
    }

    /**
     * The tree as text: a line a figure, its parts below it and two spaces further in.
     *
     * @return lines such as "alpha acid: 4.5 % (certificate)", each with a line feed at its end
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        write(text, "");
        return text.toString();
    }

    /**
     * The first figure of a label, from the top down in the order of the text.
     *
     * @param wanted the label, exactly
     * @return that part of the tree, or empty where no figure is called so
     */
    public Optional<Explanation> find(String wanted) {
        if (label.equals(wanted)) {
            return Optional.of(this);
        }
        return parts.stream().flatMap(part -> part.find(wanted).stream()).findFirst();
    }

    private void write(StringBuilder text, String indent) {
        text.append(indent).append(label);
        if (!figure.isEmpty()) {
            text.append(": ").append(figure);
        }
        if (!how.isEmpty()) {
            text.append(" (").append(how).append(')');
        }
        text.append('\n');
        for (Explanation part : parts) {
            part.write(text, indent + INDENT);
        }
    }

    private static void oneLine(String what, String text) {
        if (text.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException(
                    what + ": expected a single line, found '" + text.replaceAll("\\p{Cntrl}", " ") + "'");
        }
    }
}
