package costrel.repl;

import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;

/**
 * One input on its way through the session, on a thread of its own, so that the user can stop it or, where it can't be
 * stopped, leave it behind.
 */
final class Evaluation implements Listener {

    private static final long PATIENCE_MILLIS = 1000;
    private static final Fault LEFT_BEHIND =
            new Fault(Fault.Kind.STOPPED, "left behind; it may go on unseen until the console is left", null);

    private final Session session;
    private final String source;
    private final Listener listener;
    private final LongConsumer working;

    private boolean over;
    private boolean leftBehind;
    private @Nullable Fault fault;
    private long stopAskedNanos = -1;

    /**
     * Prepares an input.
     *
     * @param session evaluates it
     * @param source the input
     * @param listener takes the answers
     * @param working is told the milliseconds for which it has been working, a few times a second
     */
    Evaluation(Session session, String source, Listener listener, LongConsumer working) {
        this.session = session;
        this.source = source;
        this.listener = listener;
        this.working = working;
    }

    /** Evaluates; returns what was wrong, or null, once it is over or left behind. */
    synchronized @Nullable Fault run() {
        Thread worker = new Thread(this::work, "evaluation");
        worker.setDaemon(true);
        worker.start();
        boolean told = false;
        long beganNanos = System.nanoTime();
        while (!over && !leftBehind) {
            try {
                wait(100);
            } catch (InterruptedException e) {
                interrupt();
            }
            if (!over && stopAskedNanos < 0) {
                working.accept((System.nanoTime() - beganNanos) / 1_000_000);
            }
            if (!over && !told && stopHasNoEffect()) {
                told = true;
                listener.note("this doesn't stop yet; Ctrl-C again leaves it behind");
            }
        }
        return over ? fault : LEFT_BEHIND;
    }

    /** The first call stops it; where that has no effect for a while, a second one leaves it behind. */
    void interrupt() {
        synchronized (this) {
            if (stopAskedNanos >= 0) {
                leftBehind |= stopHasNoEffect();
                notifyAll();
                return;
            }
            stopAskedNanos = Math.max(0, System.nanoTime());
        }
        session.stop();
    }

    @Override
    public synchronized void answer(String text, boolean needsAPerson) {
        if (!leftBehind) {
            listener.answer(text, needsAPerson);
        }
    }

    @Override
    public synchronized void note(String text) {
        if (!leftBehind) {
            listener.note(text);
        }
    }

    private boolean stopHasNoEffect() {
        return stopAskedNanos >= 0 && System.nanoTime() - stopAskedNanos >= PATIENCE_MILLIS * 1_000_000;
    }

    private void work() {
        Fault found = null;
        try {
            found = session.evaluate(source, this);
        } catch (RuntimeException | Error e) {
            found = RunFaults.ofConsole(e);
        } finally {
            synchronized (this) {
                fault = found;
                over = true;
                notifyAll();
            }
        }
    }
}
