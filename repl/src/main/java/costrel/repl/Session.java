package costrel.repl;

import java.lang.reflect.Field;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.StatementSnippet;
import jdk.jshell.VarSnippet;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import org.jspecify.annotations.Nullable;

/**
 * The engine behind the console: Java text in, answers out, with variables that last.
 *
 * <p>Unlike JShell, {@code x = …} declares x. A variable whose making failed or was stopped does not exist, rather than being 0. It
 * keeps its value when another that it was made from is declared anew, or is taken away with a note, and is never 0 in silence.
 */
final class Session implements AutoCloseable {

    private static final int RESERVE_BYTES =
            (int) Math.min(16 << 20, Runtime.getRuntime().maxMemory() / 8);

    /** A word after the end of another, as a name stands after its type. Seen before the slower look by the engine. */
    private static final Pattern MAY_DECLARE = Pattern.compile(
            "[\\p{javaJavaIdentifierPart}>\\]]\\s+(\\p{javaJavaIdentifierStart}\\p{javaJavaIdentifierPart}*+)\\s*(?:=(?!=)|[;,]|$)");

    private final CapturingControl control = new CapturingControl();
    private final Rendering rendering;
    private final JShell shell;
    private final SourceCodeAnalysis analysis;
    private final InputFaults inputFaults;
    private final Variables variables;
    private final Losses losses;
    private final Journal journal = new Journal();
    private final Undo undo;
    private final GrowingInput growing;

    /** Memory to let go of when it is full, so that there is enough to evaluate {@code x = null}. */
    private byte @Nullable [] reserve = new byte[RESERVE_BYTES];

    /** What came of one piece: the name under which its value is held, if it has one, or what was wrong. */
    private record Ran(
            @Nullable Snippet snippet,
            @Nullable SnippetEvent event,
            @Nullable Fault fault) {}

    private record Answer(String text, boolean needsAPerson) {}

    private Session(Rendering rendering) {
        this.rendering = rendering;
        ExecutionControlProvider provider = new ExecutionControlProvider() {
            @Override
            public String name() {
                return "capturing";
            }

            @Override
            public ExecutionControl generate(ExecutionEnv environment, Map<String, String> parameters) {
                return control;
            }
        };
        shell = JShell.builder().executionEngine(provider, Map.of()).build();
        analysis = shell.sourceCodeAnalysis();
        growing = new GrowingInput(analysis::analyzeCompletion);
        variables = new Variables(shell, control);
        losses = new Losses(shell, variables);
        undo = new Undo(shell, variables, journal);
        inputFaults = new InputFaults(this);
    }

    /**
     * Starts a session and makes it ready for a quick first answer.
     *
     * @param rendering how results are printed
     * @param prelude what is evaluated first
     * @throws IllegalStateException if the prelude has a fault, or this Java has no compiler
     */
    static Session start(Rendering rendering, String prelude) {
        Session session = new Session(rendering);
        Fault fault = session.evaluate(prelude + "\n0", new Listener() {
            @Override
            public void answer(String text, boolean needsAPerson) {}

            @Override
            public void note(String text) {}
        });
        if (fault != null) {
            session.close();
            throw new IllegalStateException(fault.inFile("prelude", 1));
        }
        session.variables.forgetLatestUnnamed();
        session.journal.forget();
        return session;
    }

    /** Whether an input needs a further line before it can be evaluated. */
    boolean isUnfinished(String source) {
        return bareWord(source).isEmpty() && growing.isUnfinished(source);
    }

    /**
     * Evaluates an input, which may be several instructions one after the other; stops at the first fault.
     *
     * @param source the input, its lines ended by line feeds
     * @param listener takes the answers as they come
     * @return what was wrong, or null if nothing was
     */
    @Nullable
    Fault evaluate(String source, Listener listener) {
        control.clear();
        Fault fault;
        try {
            fault = Roomy.run(source, () -> evaluateAll(source, listener));
        } catch (OutOfMemoryError e) {
            fault = RunFaults.MEMORY;
        }
        control.clear();
        if (RunFaults.MEMORY.equals(fault)) {
            reserve = null;
        } else if (reserve == null && Runtime.getRuntime().freeMemory() > 4L * RESERVE_BYTES) {
            reserve = new byte[RESERVE_BYTES];
        }
        return fault;
    }

    private @Nullable Fault evaluateAll(String source, Listener listener) {
        journal.begin();
        Cut cut = bareWord(source)
                .map(call -> new Cut(List.of(new Piece(source, 0, call)), false))
                .orElseGet(() -> Cut.of(analysis, source));
        for (Piece cutOut : cut.pieces()) {
            Piece piece = bareWord(cutOut.text())
                    .map(call -> new Piece(source, cutOut.start(), call))
                    .orElse(cutOut);
            Fault fault = evaluateAndAnswer(piece, listener);
            variables.forgetOldUnnamed();
            if (fault != null || listener.hasGone()) {
                return fault;
            }
        }
        return cut.unfinished()
                ? new Fault(
                        Fault.Kind.INPUT,
                        "the input ends too early",
                        Fault.Place.of(source, source.stripTrailing().length()))
                : null;
    }

    private @Nullable Fault evaluateAndAnswer(Piece piece, Listener listener) {
        Optional<String> set = Assignment.of(piece.text())
                .map(Assignment::name)
                .or(() -> declaredAnew(piece).map(VarSnippet::name));
        Optional<Journal.Held> before = set.flatMap(undo::held);
        Ran ran = evaluate(piece, listener);
        if (ran.fault() != null) {
            return ran.fault();
        }
        if (value(ran) instanceof Aside aside) {
            return RunFaults.of(() -> listener.answer(aside.carryOut(this), false));
        }
        Journal.Line line = journal.answered(piece.text());
        if (set.isPresent()) {
            journal.changed(set.get(), before, line);
        } else if (ran.snippet() instanceof VarSnippet made && made.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
            journal.changed(made.name(), Optional.empty(), line);
        }
        return answer(ran, listener);
    }

    private Optional<String> bareWord(String source) {
        return BareWords.call(source, name -> variables.find(name).isPresent());
    }

    /** Takes the latest {@code x = …} back; returns what is told. */
    String undo() {
        return undo.latest();
    }

    /** What was answered so far and not taken back. */
    List<String> lines() {
        return journal.lines();
    }

    /** Tells which names still hold figures of before the folder was read again; empty if none does. */
    String heldFromBefore() {
        List<String> names = variables.ofLibrary();
        return names.isEmpty()
                ? ""
                : "\n" + String.join(", ", names) + (names.size() == 1 ? " holds" : " hold")
                        + " the figures from before; to have the new ones make "
                        + (names.size() == 1 ? "it" : "them") + " again";
    }

    /** Stops what is being evaluated; the session and its variables stay. Safe to call from any thread. */
    void stop() {
        shell.stop();
    }

    /** What could stand at a place in an input, and where the word that it would replace begins. */
    Completions completions(String source, int cursor) {
        return Completions.of(analysis, source, cursor);
    }

    /** Names that the user has given something to stand for. */
    List<String> names() {
        return variables.named();
    }

    @Override
    public void close() {
        shell.close();
    }

    private Ran evaluate(Piece piece, Listener listener) {
        Optional<Assignment> assignment = Assignment.of(piece.text());
        if (assignment.isEmpty()) {
            return run(piece, listener);
        }
        if (!assignment.get().declares()
                && variables.find(assignment.get().name()).isPresent()) {
            Ran plain = run(piece, listener);
            boolean otherType = plain.event() != null && plain.event().status() == Status.REJECTED;
            return otherType ? declare(assignment.get(), piece, listener) : plain;
        }
        return declare(assignment.get(), piece, listener);
    }

    /**
     * Declares a name in two steps: works the value out, then declares the name with the value's type. A
     * {@code var x = …} would tie x to all that its value was worked out from.
     */
    private Ran declare(Assignment assignment, Piece piece, Listener listener) {
        Piece expression = piece.part(assignment.start(), assignment.expression());
        if (assignment.expression().startsWith("{")) {
            return new Ran(null, null, InputFaults.listInBraces(expression));
        }
        Ran value = evaluate(expression, listener);
        if (value.fault() != null) {
            return value;
        }
        String held;
        String type;
        if (value.snippet() instanceof VarSnippet variable) {
            held = variable.name();
            type = variable.typeName();
        } else if (value.snippet() instanceof ExpressionSnippet known) {
            held = known.name();
            type = known.typeName();
        } else {
            return new Ran(null, null, InputFaults.noValue(assignment.name(), expression));
        }
        Ran declared =
                run(piece.part(0, WritableType.of(type) + " " + assignment.name() + " = " + held + ";"), listener);
        if (declared.fault() == null) {
            if (value.snippet() instanceof VarSnippet variable) {
                variables.forgetUnnamed(variable);
            }
            return declared;
        }
        // A class without a name. The unnamed result is kept, for this name hangs on it.
        if (value.snippet() instanceof VarSnippet variable) {
            variables.keepUnnamed(variable);
        }
        return run(piece.part(0, "var " + assignment.name() + " = " + held + ";"), listener);
    }

    /** Evaluates one piece as it stands. */
    private Ran run(Piece piece, Listener listener) {
        Optional<VarSnippet> anew = declaredAnew(piece);
        Fault unknownType = anew.isPresent() ? unknownType(piece, anew.get().typeName()) : null;
        if (unknownType != null) {
            return new Ran(null, null, unknownType);
        }
        Optional<Field> old =
                anew.flatMap(declared -> variables.find(declared.name())).flatMap(variables::field);
        List<SnippetEvent> events = shell.eval(piece.text());
        Snippet last = null;
        SnippetEvent lastEvent = null;
        for (SnippetEvent event : events) {
            if (event.causeSnippet() != null) {
                continue;
            }
            Fault fault = fault(piece, event);
            if (fault != null) {
                if (event.snippet() instanceof VarSnippet variable && event.status() != Status.REJECTED) {
                    variables.forget(variable);
                }
                losses.note(events, listener);
                return new Ran(event.snippet(), event, fault);
            }
            last = event.snippet();
            lastEvent = event;
            if (last.subKind() == SubKind.TEMP_VAR_EXPRESSION_SUBKIND && last instanceof VarSnippet variable) {
                variables.addUnnamed(variable);
            }
            if (event.status() == Status.RECOVERABLE_DEFINED || event.status() == Status.RECOVERABLE_NOT_DEFINED) {
                losses.noteWaiting((DeclarationSnippet) last, listener);
            }
        }
        old.ifPresent(CapturingControl::empty);
        losses.note(events, listener);
        return new Ran(last, lastEvent, null);
    }

    private @Nullable Fault fault(Piece piece, SnippetEvent event) {
        if (event.status() == Status.REJECTED) {
            return inputFaults.fault(piece, shell.diagnostics(event.snippet()).toList());
        }
        if (control.stopped()) {
            return RunFaults.stopped();
        }
        Throwable thrown = control.thrown();
        if (event.exception() != null) {
            return RunFaults.fault(
                    piece,
                    event.snippet(),
                    event.exception(),
                    thrown == null ? event.exception() : thrown,
                    losses::missing);
        }
        return event.snippet() instanceof VarSnippet variable && event.status() == Status.RECOVERABLE_NOT_DEFINED
                ? inputFaults.unknownType(
                        piece, variable.typeName(), shell.diagnostics(variable).toList())
                : null;
    }

    /** The variable that a piece declares although there is one of that name. */
    private Optional<VarSnippet> declaredAnew(Piece piece) {
        boolean may = MAY_DECLARE
                .matcher(piece.text())
                .results()
                .anyMatch(declared -> variables.find(declared.group(1)).isPresent());
        if (!may) {
            return Optional.empty();
        }
        List<Snippet> snippets = analysis.sourceToSnippets(piece.text());
        return snippets.size() == 1
                        && snippets.get(0) instanceof VarSnippet declared
                        && declared.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND
                        && variables.find(declared.name()).isPresent()
                ? Optional.of(declared)
                : Optional.empty();
    }

    /**
     * A declaration such as {@code cost bitter;} whose first word is no type would take the variable away before it is
     * refused. So where the name stands for something already, the type is tried on another name first.
     */
    private @Nullable Fault unknownType(Piece piece, @Nullable String type) {
        if (type == null || type.equals("var")) {
            return null;
        }
        SnippetEvent trial = shell.eval(type + " tried$;").get(0);
        Fault fault = trial.status() == Status.VALID
                ? null
                : inputFaults.unknownType(
                        piece, type, shell.diagnostics(trial.snippet()).toList());
        variables.forget(trial.snippet());
        return fault;
    }

    private @Nullable Fault answer(Ran ran, Listener listener) {
        Snippet snippet = ran.snippet();
        SnippetEvent event = ran.event();
        if (snippet == null || event == null || snippet instanceof StatementSnippet) {
            return null;
        }
        SubKind kind = snippet.subKind();
        boolean asked = kind == SubKind.TEMP_VAR_EXPRESSION_SUBKIND
                || kind == SubKind.VAR_VALUE_SUBKIND
                || kind == SubKind.OTHER_EXPRESSION_SUBKIND;
        if (!asked) {
            return null;
        }
        Object value = value(ran);
        try {
            Answer answer = control.run(() -> new Answer(rendering.text(value), rendering.needsAPerson(value)));
            listener.answer(answer.text(), answer.needsAPerson());
            return null;
        } catch (Exception | StackOverflowError | OutOfMemoryError e) {
            return control.stopped() ? RunFaults.stopped() : RunFaults.unprintable(e);
        }
    }

    private @Nullable Object value(Ran ran) {
        SnippetEvent event = ran.event();
        return event == null ? null : control.holds(event.value()) ? control.result(event.value()) : event.value();
    }
}
