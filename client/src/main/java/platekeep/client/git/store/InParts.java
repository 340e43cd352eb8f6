package platekeep.client.git.plates;

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
final class InParts {
    private static final int PART = 32;

    private final Executor helpers;

    InParts(Executor helpers) {
        this.helpers = helpers;
    }

    /** What is done for the things from one number to another, the last one not included. */
    interface Part {
        void each(int from, int to) throws IOException;
    }

    /**
     * Returns when all is done. What the work throws is thrown here, after which no further part is begun.
     *
     * @param told hears on the calling thread how many are done
     * @param work is given each number from 0 below {@code count} once, in parts
     */
    void each(int count, IntConsumer told, Part work) throws IOException {
        Round round = new Round(count, work);
        int wanted = Math.min(Runtime.getRuntime().availableProcessors() - 1, (count - 1) / PART);
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
        private final Part work;
        private final AtomicInteger next = new AtomicInteger();
        private final AtomicInteger done = new AtomicInteger();
        private final AtomicReference<Exception> failure = new AtomicReference<>();
        private final CountDownLatch all;

        Round(int count, Part work) {
            this.count = count;
            this.work = work;
            this.all = new CountDownLatch((count + PART - 1) / PART);
        }

        void ask(Executor helpers) {
            try {
                helpers.execute(() -> parts(n -> {}));
            } catch (RejectedExecutionException e) {
                // the caller does it alone
            }
        }

        void parts(IntConsumer told) {
            for (int from = next.getAndAdd(PART); from < count; from = next.getAndAdd(PART)) {
                int to = Math.min(count, from + PART);
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
