package platekeep.client.task;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;

/**
 * Does the same for many things, in parts, on the calling thread and on helpers if any are free. The caller works along,
 * so the work comes to an end even if no helper ever comes.
 */
public final class InParts {
    private final Executor helpers;
    private final int part;
    private final int most;

    private InParts(Executor helpers, int part, int most) {
        this.helpers = helpers;
        this.part = part;
        this.most = most;
    }

    /** For work that keeps a processor busy. */
    public static InParts working(Executor helpers) {
        return new InParts(helpers, 32, Runtime.getRuntime().availableProcessors() - 1);
    }

    /** The same in parts of another size. */
    public InParts by(int newPart) {
        return new InParts(helpers, newPart, most);
    }

    /** For work that waits, for the disk or another machine. */
    public static InParts waiting(Executor helpers) {
        return new InParts(helpers, 1, 8);
    }

    /** What is done for the things from one number to another, the last one not included. */
    public interface Part {
        void each(int from, int to) throws IOException;
    }

    /**
     * Returns when all is done. What the work throws is thrown here, after which no further part is begun.
     *
     * @param told hears on the calling thread how many are done
     * @param work is given each number from 0 below {@code count} once, in parts
     */
    public void each(int count, IntConsumer told, Part work) throws IOException {
        Round round = new Round(count, part, work);
        int wanted = Math.min(most, (count - 1) / part);
        for (int i = 0; i < wanted; i++) {
            round.ask(helpers);
        }
        round.parts(told);
        round.finish();
        told.accept(count);
    }

    /** One round of work that several threads share. */
    private static final class Round {
        private final int count;
        private final int part;
        private final Part work;
        private final AtomicInteger next = new AtomicInteger();
        private final AtomicInteger done = new AtomicInteger();
        private final AtomicReference<Exception> failure = new AtomicReference<>();
        private final CountDownLatch all;

        Round(int count, int part, Part work) {
            this.count = count;
            this.part = part;
            this.work = work;
            this.all = new CountDownLatch((count + part - 1) / part);
        }

        void ask(Executor helpers) {
            try {
                helpers.execute(() -> parts(n -> {}));
            } catch (RejectedExecutionException e) {
                // the caller does it alone
            }
        }

        void parts(IntConsumer told) {
            for (int from = next.getAndAdd(part); from < count; from = next.getAndAdd(part)) {
                int to = Math.min(count, from + part);
                try {
                    if (failure.get() == null) {
                        work.each(from, to);
                    }
                } catch (IOException | RuntimeException e) {
                    failure.compareAndSet(null, e);
                } finally {
                    all.countDown();
                }
                told.accept(done.addAndGet(to - from));
            }
        }

        void finish() throws IOException {
            try {
                all.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IOException("interrupted while reading", e);
            }
            if (failure.get() instanceof IOException e) {
                throw e;
            }
            if (failure.get() instanceof RuntimeException e) {
                throw e;
            }
        }
    }
}
