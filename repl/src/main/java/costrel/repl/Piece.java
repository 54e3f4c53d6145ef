package costrel.repl;

/**
 * A part of an input that is evaluated on its own.
 *
 * @param whole the whole input
 * @param start where the part begins in it
 * @param text the part as the engine gets it: as typed, but for a semicolon that may close it
 */
record Piece(String whole, int start, String text) {

    /** A part of this part. */
    Piece part(int from, String part) {
        return new Piece(whole, start + from, part);
    }

    /** The place of a character of this part in the whole input. */
    Fault.Place place(long position) {
        return Fault.Place.of(whole, start + (int) Math.max(0, Math.min(position, text.length())));
    }

    /** A line of this part, counted from 1, in the whole input. */
    Fault.Place line(int line) {
        String blank = text.substring(0, text.length() - text.stripLeading().length());
        int before = (int) whole.substring(0, Math.min(whole.length(), start + blank.length()))
                .chars()
                .filter(c -> c == '\n')
                .count();
        return Fault.Place.ofLine(whole, before + Math.max(1, line));
    }
}
