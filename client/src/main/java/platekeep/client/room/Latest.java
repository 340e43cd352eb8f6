package platekeep.client.room;

import java.util.Optional;
import java.util.function.Consumer;
import platekeep.client.task.Tasks;

/**
 * Does the newest of many pieces of work: while one is under way only the last one that was asked for since waits.
 *
 * @param <T> what the work gives
 */
public final class Latest<T> {
    private final Lane<T> lane;
    private Optional<Runnable> waiting = Optional.empty();
    private boolean isRunning;

    /** Where the work is done. */
    private interface Lane<T> {
        void work(Tasks.Work<T> work, Consumer<T> done, Runnable otherwise);
    }

    private Latest(Lane<T> lane) {
        this.lane = lane;
    }

    /** For work that may take its time. */
    public Latest(Workroom room) {
        this((Lane<T>) room::work);
    }

    /** For work that is done within a blink and must not wait behind what is not. */
    public static <T> Latest<T> answers(Workroom room) {
        return new Latest<>((Lane<T>) room::answer);
    }

    /** Does the work, unless newer work is asked for before it begins; the answer to older work is not told. */
    public void ask(Tasks.Work<T> work, Consumer<T> done) {
        if (isRunning) {
            waiting = Optional.of(() -> ask(work, done));
            return;
        }
        isRunning = true;
        lane.work(
                work,
                result -> {
                    isRunning = false;
                    boolean isNewest = waiting.isEmpty();
                    next();
                    if (isNewest) {
                        done.accept(result);
                    }
                },
                () -> {
                    isRunning = false;
                    next();
                });
    }

    private void next() {
        Optional<Runnable> then = waiting;
        waiting = Optional.empty();
        then.ifPresent(Runnable::run);
    }
}
