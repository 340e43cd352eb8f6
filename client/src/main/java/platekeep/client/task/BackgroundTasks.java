package platekeep.client.task;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Work on a few background threads, answers on the event thread. The threads are daemons: a window that is closed ends
 * the program although work is still under way (saving is all or nothing, so nothing is torn by that).
 */
public final class BackgroundTasks implements Tasks, AutoCloseable {
    private static final int WORKERS = 3;

    private final Executor eventThread;
    private final Consumer<RuntimeException> bugs;
    private final ThreadPoolExecutor workers = pool(WORKERS, "platekeep-work-");
    private final ThreadPoolExecutor answers = pool(1, "platekeep-answer-");
    private final Executor helpers = new Helpers();

    /**
     * @param eventThread where answers are given, one at a time and in the order in which they are handed over
     * @param bugs hears every unchecked exception that work threw, once, on the thread that threw it
     */
    public BackgroundTasks(Executor eventThread, Consumer<RuntimeException> bugs) {
        this.eventThread = eventThread;
        this.bugs = bugs;
    }

    /** Answers on Swing's event thread. */
    public static BackgroundTasks forWindow(Consumer<RuntimeException> bugs) {
        return new BackgroundTasks(SwingUtilities::invokeLater, bugs);
    }

    @Override
    public <T> Running run(Work<T> work, Consumer<Step> steps, Consumer<Outcome<T>> answer) {
        Job<T> job = new Job<>(work, steps, answer);
        try {
            workers.execute(job);
        } catch (RejectedExecutionException e) {
            // closed: nobody waits for the answer any more
        }
        return job;
    }

    @Override
    public <T> Running answer(Work<T> work, Consumer<Outcome<T>> answer) {
        Job<T> job = new Job<>(work, step -> {}, answer);
        answers.execute(job);
        return job;
    }

    @Override
    public void onEventThread(Runnable something) {
        eventThread.execute(something);
    }

    @Override
    public Executor helpers() {
        return helpers;
    }

    /** Takes no more work; what is under way may finish, what waits is forgotten without an answer. */
    @Override
    public void close() {
        List.of(workers, answers).forEach(pool -> {
            pool.getQueue().clear();
            pool.shutdown();
        });
    }

    private static ThreadPoolExecutor pool(int threads, String prefix) {
        return new ThreadPoolExecutor(
                threads, threads, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), named(prefix));
    }

    static ThreadFactory named(String prefix) {
        AtomicInteger count = new AtomicInteger();
        return runnable -> {
            Thread thread = new Thread(runnable, prefix + count.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        };
    }

    /** One piece of work with its watcher and its asker. */
    private final class Job<T> implements Runnable, Running, Progress {
        private final Work<T> work;
        private final Consumer<Step> steps;
        private final Consumer<Outcome<T>> answer;
        private final AtomicReference<Step> newest = new AtomicReference<>();
        private volatile boolean cancelled;
        private volatile boolean over;

        Job(Work<T> work, Consumer<Step> steps, Consumer<Outcome<T>> answer) {
            this.work = work;
            this.steps = steps;
            this.answer = answer;
        }

        @Override
        public void run() {
            Outcome<T> outcome = cancelled ? new Outcome.Cancelled<>() : outcome();
            eventThread.execute(() -> {
                over = true;
                answer.accept(cancelled ? new Outcome.Cancelled<>() : outcome);
            });
        }

        private Outcome<T> outcome() {
            try {
                return new Outcome.Done<>(work.run(this));
            } catch (CancellationException e) {
                return new Outcome.Cancelled<>();
            } catch (RuntimeException e) {
                bugs.accept(e);
                return new Outcome.Failed<>(e);
            } catch (Exception e) {
                return new Outcome.Failed<>(e);
            }
        }

        @Override
        public void at(int done, int total, String what) {
            if (newest.getAndSet(new Step(done, total, what)) == null) {
                eventThread.execute(this::tellNewest);
            }
        }

        private void tellNewest() {
            Step step = newest.getAndSet(null);
            if (!over && !cancelled) {
                steps.accept(step);
            }
        }

        @Override
        public boolean cancelled() {
            return cancelled;
        }

        @Override
        public void cancel() {
            cancelled = true;
        }

        @Override
        public boolean over() {
            return over;
        }
    }
}
