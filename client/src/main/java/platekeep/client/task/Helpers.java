package platekeep.client.task;

import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * Threads that help somebody who works along. They are more than the machine has processors, since some only wait for the
 * disk; who keeps a processor busy asks for no more of them than there are processors. They start when they are first
 * needed, go again soon after, and never keep the program from ending.
 */
public final class Helpers implements Executor {
    private static final long IDLE_SECONDS = 10;
    private static final int WAITING = 8;

    private final ThreadPoolExecutor threads;

    public Helpers() {
        int most = Math.max(WAITING, Runtime.getRuntime().availableProcessors() - 1);
        threads = new ThreadPoolExecutor(
                most,
                most,
                IDLE_SECONDS,
                TimeUnit.SECONDS,
                new LinkedBlockingQueue<>(),
                BackgroundTasks.named("platekeep-help-"));
        threads.allowCoreThreadTimeOut(true);
    }

    /** What is handed over must be able to finish on any thread, and whoever hands it over must do without it. */
    @Override
    public void execute(Runnable part) {
        threads.execute(part);
    }
}
