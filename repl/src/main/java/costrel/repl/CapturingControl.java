package costrel.repl;

import java.lang.Thread.UncaughtExceptionHandler;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import jdk.jshell.execution.LocalExecutionControl;
import jdk.jshell.spi.ExecutionControl.EngineTerminationException;
import jdk.jshell.spi.ExecutionControl.InternalException;
import jdk.jshell.spi.ExecutionControl.StoppedException;
import org.jspecify.annotations.Nullable;

/**
 * Runs the user's input in this process and keeps its results as objects.
 *
 * <p>JShell hands a result over as text. Here that text is a ticket, under which {@link #result} gives the object
 * itself. The engine's own {@code invoke} is still what runs: it is given a step in between, which calls the user's
 * method and takes what comes back. That step finds its errand through an inheritable thread variable, since the engine
 * starts a new thread for each run.
 */
final class CapturingControl extends LocalExecutionControl {

    private static final InheritableThreadLocal<Errand> ERRAND = new InheritableThreadLocal<>();
    private static final Method STEP = step();

    private final @Nullable UncaughtExceptionHandler handler = Thread.getDefaultUncaughtExceptionHandler();
    private final Map<String, @Nullable Object> results = Collections.synchronizedMap(new HashMap<>());
    private volatile @Nullable Errand last;
    private volatile boolean stopped;
    private @Nullable Field located;

    /** What the step in between is to do, and what came of it. */
    private static final class Errand {
        private final Callable<@Nullable Object> work;
        private volatile @Nullable Object result;
        private volatile @Nullable Throwable thrown;

        Errand(Callable<@Nullable Object> work) {
            this.work = work;
        }
    }

    /** Forgets the results of the input before. */
    void clear() {
        results.clear();
        last = null;
        stopped = false;
    }

    /** Whether a ticket stands for a result. */
    boolean holds(@Nullable String ticket) {
        return results.containsKey(ticket);
    }

    /** The object that a ticket stands for, or null if that was the result. */
    @Nullable
    Object result(@Nullable String ticket) {
        return results.get(ticket);
    }

    /** What the user's code threw when it last ran, or null. */
    @Nullable
    Throwable thrown() {
        Errand errand = last;
        return errand == null ? null : errand.thrown;
    }

    /** Whether a stop was asked for since {@link #clear}. */
    boolean stopped() {
        return stopped;
    }

    /**
     * Does work as the user's own code is done: on a thread that {@link #stop} ends.
     *
     * @throws Exception what the work threw, or {@link StoppedException}
     */
    <T> T run(Callable<T> work) throws Exception {
        Errand errand = new Errand(work::call);
        clientCodeEnter();
        try {
            go(errand);
        } catch (InvocationTargetException e) {
            if (errand.thrown instanceof Exception exception) {
                throw exception;
            }
            if (errand.thrown instanceof Error error) {
                throw error;
            }
            throw e;
        } finally {
            clientCodeLeave();
        }
        @SuppressWarnings("unchecked")
        T result = (T) Objects.requireNonNull(errand.result);
        return result;
    }

    @Override
    public void load(ClassBytecodes[] classes)
            throws ClassInstallException, NotImplementedException, EngineTerminationException {
        super.load(guarded(classes));
    }

    @Override
    public void redefine(ClassBytecodes[] classes)
            throws ClassInstallException, NotImplementedException, EngineTerminationException {
        super.redefine(guarded(classes));
    }

    private static ClassBytecodes[] guarded(ClassBytecodes[] classes) {
        return Arrays.stream(classes)
                .map(code -> new ClassBytecodes(code.name(), ExitGuard.guarded(code.bytecodes())))
                .toArray(ClassBytecodes[]::new);
    }

    @Override
    protected String invoke(Method method) throws Exception {
        Errand errand = new Errand(() -> method.invoke(null));
        last = errand;
        go(errand);
        String ticket = "result " + (results.size() + 1);
        results.put(ticket, errand.result);
        return ticket;
    }

    /**
     * The field that a variable lives in. It lasts as long as the session, whatever becomes of the variable, so a
     * variable that is done with has to be emptied for its value to go.
     *
     * @param ask asks JShell for the variable's value, which is how the field's whereabouts come out
     */
    Optional<Field> fieldOf(Runnable ask) {
        located = null;
        ask.run();
        return Optional.ofNullable(located);
    }

    /** Lets go of what a field holds. */
    static void empty(Field field) {
        try {
            if (!field.getType().isPrimitive()) {
                field.set(null, null);
            }
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    @Override
    public String varValue(String className, String name) throws InternalException {
        try {
            Field field = findClass(className).getDeclaredField(name);
            field.setAccessible(true);
            located = field;
            return name;
        } catch (ReflectiveOperationException e) {
            throw new InternalException(e.toString());
        }
    }

    @Override
    public void stop() throws EngineTerminationException, InternalException {
        stopped = true;
        super.stop();
    }

    private void go(Errand errand) throws Exception {
        Errand outer = ERRAND.get();
        ERRAND.set(errand);
        try {
            if (stopped) {
                throw new StoppedException();
            }
            super.invoke(STEP);
        } finally {
            if (outer == null) {
                ERRAND.remove();
            } else {
                ERRAND.set(outer);
            }
            // On 17 the engine puts in a handler for the whole process and leaves it there.
            Thread.setDefaultUncaughtExceptionHandler(handler);
        }
    }

    /** The step in between, on the thread that the engine made; called through {@link #STEP}. */
    @SuppressWarnings("UnusedMethod")
    private static void doErrand() throws Throwable {
        Errand errand = ERRAND.get();
        try {
            errand.result = errand.work.call();
        } catch (InvocationTargetException e) {
            Throwable cause = e.getCause() == null ? e : e.getCause();
            errand.thrown = cause;
            throw cause;
        } catch (Throwable e) {
            errand.thrown = e;
            throw e;
        }
    }

    private static Method step() {
        try {
            Method method = CapturingControl.class.getDeclaredMethod("doErrand");
            method.setAccessible(true);
            return method;
        } catch (NoSuchMethodException e) {
            throw new AssertionError(e);
        }
    }
}
