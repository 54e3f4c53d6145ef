package costrel.repl;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What inputs in the tests can reach, and what they left there. */
public final class Witness {

    private static final List<Object> LEFT = new ArrayList<>();

    private static volatile @Nullable WeakReference<Object> large;

    private Witness() {}

    /**
     * A kind of result with findings, as the library gives them.
     *
     * @param text what was found
     */
    public record Findings(String text) {}

    /** Called by inputs: leaves an object with the test. */
    public static void leave(Object object) {
        LEFT.add(object);
    }

    /** Called by inputs: an object whose end the test watches for. */
    public static Object large() {
        byte[] bytes = new byte[1 << 20];
        large = new WeakReference<>(bytes);
        return bytes;
    }

    /** What inputs left, which is then forgotten. */
    static List<Object> takeLeft() {
        List<Object> left = List.copyOf(LEFT);
        LEFT.clear();
        return left;
    }

    /** Whether the latest large object goes when the memory is swept a number of times. */
    static boolean largeGoes(int sweeps) throws InterruptedException {
        WeakReference<Object> watched = large;
        for (int i = 0; watched != null && i < sweeps; i++) {
            System.gc();
            if (watched.get() == null) {
                return true;
            }
            Thread.sleep(10);
        }
        return false;
    }
}
