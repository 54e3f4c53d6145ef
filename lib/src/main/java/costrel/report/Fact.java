package costrel.report;

/**
 * One figure with its name.
 *
 * @param key its name for programs, such as og
 * @param label the words before it on paper; empty where the unit says what it is
 * @param value the figure, or words
 * @param unit its unit, or empty
 * @param remark what is said about it behind it, or empty
 */
public record Fact(String key, String label, Cell value, String unit, String remark) {

    /**
     * One figure with its name.
     *
     * @param key name for programs
     * @param label words before it
     * @param value the figure, or words
     * @param unit its unit
     * @param remark what is said about it
     * @throws IllegalArgumentException if the key is no key
     */
    public Fact {
        Column.checkKey(key);
    }

    /**
     * Words that stand under a name.
     *
     * @param key name for programs
     * @param label words before it
     * @param text the words
     * @return the fact
     * @throws IllegalArgumentException if the key is no key
     */
    public static Fact words(String key, String label, String text) {
        return new Fact(key, label, Cell.words(text), "", "");
    }

    /**
     * A figure that stands under a name.
     *
     * @param key name for programs
     * @param label words before it
     * @param figure the figure, as it is printed
     * @param unit its unit, or empty
     * @return the fact
     * @throws IllegalArgumentException if the key is no key
     */
    public static Fact figure(String key, String label, String figure, String unit) {
        return new Fact(key, label, Cell.figure(figure), unit, "");
    }

    /**
     * The same with something said about it.
     *
     * @param words what is said, or empty
     * @return the fact
     */
    public Fact remarked(String words) {
        return new Fact(key, label, value, unit, words);
    }

    /**
     * The fact as it stands on paper.
     *
     * @return words, figure, unit and remark
     */
    public String printed() {
        return (label.isEmpty() ? "" : label + " ")
                + value.text()
                + (unit.isEmpty() ? "" : " " + unit)
                + (remark.isEmpty() ? "" : " (" + remark + ")");
    }
}
