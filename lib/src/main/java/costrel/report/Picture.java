package costrel.report;

import java.util.Locale;

/**
 * A picture for a sheet, made by whoever can draw. The sheet sets the figures beside it as a table, so nothing is told by the
 * picture alone.
 *
 * @param key what it is called in the page, such as "pint": small letters and -
 * @param title a line to stand under it
 * @param description what it shows, in words, for who can't see it
 * @param svg whether the image is SVG; else it is PNG
 * @param image the svg element as text, or the PNG in Base64
 */
public record Picture(String key, String title, String description, boolean svg, String image) {

    public Picture {
        if (!key.matches("[a-z][a-z0-9-]*")) {
            throw new IllegalArgumentException("picture: expected a name of small letters, found '" + key + "'");
        }
        if (title.isBlank() || description.isBlank()) {
            throw new IllegalArgumentException("picture " + key + ": expected a title and a description, found none");
        }
        if (svg) {
            String markup = image.strip().toLowerCase(Locale.ROOT);
            if (!markup.startsWith("<svg") || !markup.endsWith("</svg>") || markup.contains("<script")) {
                throw new IllegalArgumentException(
                        "picture " + key + ": expected one svg element without a script, found something else");
            }
        } else if (!image.matches("[A-Za-z0-9+/]+={0,2}")) {
            throw new IllegalArgumentException("picture " + key + ": expected a PNG in Base64, found something else");
        }
    }

    /**
     * A picture of lines.
     *
     * @param key what it is called in the page
     * @param title a line to stand under it
     * @param description what it shows, in words
     * @param svg one svg element; it must come from a program that draws, not from a stranger
     * @return the picture
     * @throws IllegalArgumentException if it is anything else
     */
    public static Picture ofSvg(String key, String title, String description, String svg) {
        return new Picture(key, title, description, true, svg);
    }

    /**
     * A picture of dots.
     *
     * @param key what it is called in the page
     * @param title a line to stand under it
     * @param description what it shows, in words
     * @param base64 a PNG in Base64
     * @return the picture
     * @throws IllegalArgumentException if it is anything else
     */
    public static Picture ofPng(String key, String title, String description, String base64) {
        return new Picture(key, title, description, false, base64);
    }
}
