package costrel.report;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A column of a table.
 *
 * @param key its name for programs, such as weighOutKg; it stays what it is from version to version
 * @param heading its name for people, with the unit where it has one; may be empty
 * @param unit the unit of its figures for programs, such as kg, % or GBP; empty for words and for plain counts
 * @param figures whether it holds figures, which stand under each other by their decimal points
 */
public record Column(String key, String heading, String unit, boolean figures) {

    static final Pattern KEY = Pattern.compile("[a-z][A-Za-z0-9]*");

    /**
     * A column.
     *
     * @param key name for programs
     * @param heading name for people
     * @param unit unit for programs, or empty
     * @param figures whether it holds figures
     * @throws IllegalArgumentException if the key is anything but letters and digits that begin with a small letter
     */
    public Column {
        checkKey(key);
    }

    /**
     * A column of words.
     *
     * @param key name for programs
     * @param heading name for people
     * @return the column
     * @throws IllegalArgumentException if the key is no key
     */
    public static Column words(String key, String heading) {
        return new Column(key, heading, "", false);
    }

    /**
     * A column of figures.
     *
     * @param key name for programs
     * @param heading name for people, with the unit
     * @param unit unit for programs, or empty for a count
     * @return the column
     * @throws IllegalArgumentException if the key is no key
     */
    public static Column figures(String key, String heading, String unit) {
        return new Column(key, heading, unit, true);
    }

    static void checkKey(String key) {
        if (!KEY.matcher(key).matches()) {
            throw new IllegalArgumentException(
                    "key: expected letters and digits that begin with a small letter, found '" + key + "'");
        }
    }

    /** A key made of the words of a heading: weighOutKg of "weigh out kg"; "column" where there are none. */
    static String keyOf(String heading) {
        StringBuilder key = new StringBuilder();
        for (String word : heading.replace("%", " percent ").split("[^A-Za-z0-9]+", -1)) {
            if (!word.isEmpty() && (key.length() > 0 || Character.isLetter(word.charAt(0)))) {
                String first = word.substring(0, 1);
                key.append(key.length() == 0 ? first.toLowerCase(Locale.ROOT) : first.toUpperCase(Locale.ROOT))
                        .append(word.substring(1));
            }
        }
        return key.length() == 0 ? "column" : key.toString();
    }
}
