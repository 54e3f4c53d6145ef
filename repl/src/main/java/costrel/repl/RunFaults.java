package costrel.repl;

import costrel.tables.TableProblems;
import java.nio.file.FileSystemException;
import java.time.DateTimeException;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.UnresolvedReferenceException;
import org.jspecify.annotations.Nullable;

/** Faults that show while an input runs, in words: no traces, no class names. */
final class RunFaults {

    private static final Pattern NO_NUMBER = Pattern.compile("For input string: (\".*\").*");
    private static final Pattern OUTSIDE =
            Pattern.compile("Index:? (-?\\d+)(?: out of bounds for length|,? Size:) (\\d+)");

    private static final Pattern QUOTED = Pattern.compile("['\"](.+?)['\"](?![\\p{L}\\d])");

    private RunFaults() {}

    /** The user stopped it. */
    static Fault stopped() {
        return new Fault(Fault.Kind.STOPPED, "stopped", null);
    }

    /** The memory is full. Made beforehand, for then there is none left to make it. */
    static final Fault MEMORY = new Fault(
            Fault.Kind.FAILURE,
            "this takes more memory than there is; if many results are kept, let go of some, such as x = null",
            null);

    /** The console itself failed, which the input doesn't explain. */
    static Fault ofConsole(Throwable thrown) {
        return thrown instanceof OutOfMemoryError
                ? MEMORY
                : new Fault(Fault.Kind.FAILURE, "the console failed: " + message(thrown), null);
    }

    /** What was wrong with work of the console's own, or null if nothing was. */
    static @Nullable Fault of(Runnable work) {
        try {
            work.run();
            return null;
        } catch (RuntimeException e) {
            boolean input = isWrongInput(e) || e instanceof TableProblems;
            return new Fault(input ? Fault.Kind.INPUT : Fault.Kind.FAILURE, message(e), null);
        }
    }

    /** The result is there but can't be turned into text. */
    static Fault unprintable(Throwable thrown) {
        if (thrown instanceof OutOfMemoryError) {
            return MEMORY;
        }
        return isWrongInput(thrown)
                ? new Fault(Fault.Kind.INPUT, message(thrown), null)
                : new Fault(Fault.Kind.FAILURE, "the answer can't be shown: " + message(thrown), null);
    }

    /**
     * What the running input threw.
     *
     * @param piece the input
     * @param snippet the input as the engine knows it
     * @param reported the exception as the engine reports it, with lines of the input
     * @param thrown the exception itself
     * @param missing what a declaration waits for
     */
    static Fault fault(
            Piece piece,
            Snippet snippet,
            JShellException reported,
            Throwable thrown,
            Function<DeclarationSnippet, List<String>> missing) {
        if (thrown instanceof OutOfMemoryError) {
            return MEMORY;
        }
        Fault.Place place = textMeant(piece, thrown);
        if (place == null) {
            place = place(piece, snippet, reported);
        }
        if (reported instanceof UnresolvedReferenceException unresolved) {
            DeclarationSnippet waiting = unresolved.getSnippet();
            return new Fault(
                    Fault.Kind.INPUT,
                    waiting.name() + " can't be used until " + names(missing.apply(waiting)) + " is known",
                    place);
        }
        return new Fault(isWrongInput(thrown) ? Fault.Kind.INPUT : Fault.Kind.FAILURE, message(thrown), place);
    }

    /** The place of a text that the message quotes, such as a name that isn't known. */
    private static Fault.@Nullable Place textMeant(Piece piece, Throwable thrown) {
        Matcher quoted = QUOTED.matcher(message(thrown));
        while (quoted.find()) {
            int at = piece.text().indexOf("\"" + quoted.group(1) + "\"");
            if (at >= 0) {
                return piece.place(at + 1);
            }
        }
        return null;
    }

    /** The bare names of what is missing: {@code method g()} gives {@code g()}. */
    static String names(List<String> missing) {
        return missing.isEmpty()
                ? "something in it"
                : missing.stream()
                        .map(name -> name.substring(name.indexOf(' ') + 1))
                        .collect(Collectors.joining(" and "));
    }

    private static boolean isWrongInput(Throwable thrown) {
        return thrown instanceof IllegalArgumentException
                || thrown instanceof DateTimeException
                || thrown instanceof FileSystemException;
    }

    private static Fault.@Nullable Place place(Piece piece, Snippet snippet, JShellException reported) {
        if (!piece.whole().strip().contains("\n")) {
            return null;
        }
        String file = "#" + snippet.id();
        for (StackTraceElement frame : reported.getStackTrace()) {
            if (file.equals(frame.getFileName()) && frame.getLineNumber() > 0) {
                return piece.line(frame.getLineNumber());
            }
        }
        return piece.line(1);
    }

    private static String message(Throwable thrown) {
        String given = thrown.getMessage() == null ? "" : thrown.getMessage().strip();
        if (thrown instanceof StackOverflowError) {
            return "this calls itself without end";
        }
        if (thrown instanceof NumberFormatException) {
            Matcher noNumber = NO_NUMBER.matcher(given);
            return noNumber.matches() ? "expected a number, found " + noNumber.group(1) : orKind(given, thrown);
        }
        if (thrown instanceof ArithmeticException && given.endsWith("by zero")) {
            return "division by nought";
        }
        if (thrown instanceof NullPointerException) {
            return "something was asked of a thing that isn't there";
        }
        if (thrown instanceof ClassCastException) {
            return "a thing of one kind was taken for a thing of another";
        }
        if (thrown instanceof IndexOutOfBoundsException) {
            Matcher outside = OUTSIDE.matcher(given);
            return outside.find()
                    ? "expected a place from 0 to " + (Long.parseLong(outside.group(2)) - 1) + ", found "
                            + outside.group(1)
                    : orKind(given, thrown);
        }
        if (thrown instanceof java.nio.file.NoSuchFileException missing) {
            return "file: expected one, found none at " + missing.getFile();
        }
        return orKind(given, thrown);
    }

    /** The message given, or the exception's own name as words. */
    private static String orKind(String given, Throwable thrown) {
        if (!given.isEmpty()) {
            return given;
        }
        String words = thrown.getClass()
                .getSimpleName()
                .replaceAll("(Exception|Error)$", "")
                .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                .toLowerCase(Locale.ROOT);
        return words.isEmpty() ? "it failed and gave no reason" : "it failed: " + words;
    }
}
