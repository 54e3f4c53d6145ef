package costrel.buying;

/**
 * Where a row stands: a million of them take less room as a file and a line than as texts.
 *
 * @param file the file, or whatever else it came from
 * @param line the line in it, from 1 on; 0 where there is none
 */
public record Origin(String file, int line) {

    public Origin {
        if (line < 0) {
            throw new IllegalArgumentException("line of " + file + ": expected 0 or more, found " + line);
        }
    }

    /**
     * A place as it is written.
     *
     * @param text such as "prices-2026.csv:7"; without a number after the last colon it is a file alone
     * @return the place
     */
    public static Origin of(String text) {
        int colon = text.lastIndexOf(':');
        String number = text.substring(colon + 1);
        boolean isLine = colon >= 0 && number.matches("[1-9][0-9]{0,8}");
        return isLine ? new Origin(text.substring(0, colon), Integer.parseInt(number)) : new Origin(text, 0);
    }

    /**
     * The place in words.
     *
     * @return such as "prices-2026.csv:7"
     */
    public String text() {
        return line == 0 ? file : file + ":" + line;
    }
}
