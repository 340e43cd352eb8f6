package platekeep.client;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.LongSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Hears of our own bugs. Telling of one lays out and paints the window anew, so one in painting would call for the next
 * telling without end: the same bug is told and logged again only after a while.
 */
final class Mishaps implements Thread.UncaughtExceptionHandler {
    private static final Logger LOG = Logger.getLogger(Mishaps.class.getName());
    private static final long AGAIN = Duration.ofSeconds(20).toNanos();

    private final Map<String, Long> lastTold = new ConcurrentHashMap<>();
    private final Runnable tell;
    private final LongSupplier clock;

    /**
     * @param tell tells her, from any thread
     * @param clock nanoseconds from any origin
     */
    Mishaps(Runnable tell, LongSupplier clock) {
        this.tell = tell;
        this.clock = clock;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable bug) {
        long now = clock.getAsLong();
        Long before = lastTold.put(where(bug), now);
        if (before == null || now - before > AGAIN) {
            LOG.log(Level.SEVERE, "unexpected", bug);
            tell.run();
        }
    }

    private static String where(Throwable bug) {
        StackTraceElement[] frames = bug.getStackTrace();
        return bug.getClass().getName() + (frames.length == 0 ? "" : " at " + frames[0]);
    }
}
