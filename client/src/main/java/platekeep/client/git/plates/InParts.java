package platekeep.client.git.plates;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;

/**
 * Does the same for many things, in parts, on the calling thread and on a helper if one is free. The caller works
 * along, so the work comes to an end even if no helper ever comes.
 */
final class InParts {
    private static final int PART = 64;

    private final Executor helpers;

    InParts(Executor helpers) {
        this.helpers = helpers;
    }

    /**
     * Returns when all is done. What the work throws is thrown here, after which no further part is begun.
     *
     * @param told hears on the calling thread how many are done
     * @param work is given each number from 0 below {@code count} once
     */
    void each(int count, IntConsumer told, IntConsumer work) {
        AtomicInteger next = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        AtomicReference<RuntimeException> failure = new AtomicReference<>();
        CompletableFuture<Void> helper = new CompletableFuture<>();
        boolean asked = count > PART
                && ask(() -> {
                    parts(count, next, done, failure, work, n -> {});
                    helper.complete(null);
                });
        parts(count, next, done, failure, work, told);
        if (asked && done.get() < count && failure.get() == null) {
            helper.join();
        }
        if (failure.get() != null) {
            throw failure.get();
        }
        told.accept(count);
    }

    private boolean ask(Runnable part) {
        try {
            helpers.execute(part);
            return true;
        } catch (RejectedExecutionException e) {
            return false;
        }
    }

    private static void parts(
            int count,
            AtomicInteger next,
            AtomicInteger done,
            AtomicReference<RuntimeException> failure,
            IntConsumer work,
            IntConsumer told) {
        for (int from = next.getAndAdd(PART); from < count && failure.get() == null; from = next.getAndAdd(PART)) {
            int to = Math.min(count, from + PART);
            try {
                for (int i = from; i < to; i++) {
                    work.accept(i);
                }
            } catch (RuntimeException e) {
                failure.compareAndSet(null, e);
            }
            told.accept(done.addAndGet(to - from));
        }
    }
}
