package platekeep.client.join;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import java.util.function.Supplier;
import platekeep.client.room.Workroom;
import platekeep.client.task.Tasks;

/** Does one thing after the other, whether it is worked out in the background or not. Lives on the event thread. */
final class InOrder {
    private final Workroom room;
    private final Deque<Consumer<Runnable>> waiting = new ArrayDeque<>();
    private boolean isRunning;

    InOrder(Workroom room) {
        this.room = room;
    }

    /** Does something at once when its turn comes. */
    void then(Runnable something) {
        add(over -> {
            something.run();
            over.run();
        });
    }

    /**
     * Works something out in the background when its turn comes.
     *
     * @param work asked for on the event thread right before the work begins
     */
    <T> void then(Supplier<Tasks.Work<T>> work, Consumer<T> done) {
        then(work, done, () -> {});
    }

    /** The same, where something has to be set right again after it went wrong. */
    <T> void then(Supplier<Tasks.Work<T>> work, Consumer<T> done, Runnable otherwise) {
        add(over -> room.work(
                work.get(),
                result -> {
                    done.accept(result);
                    over.run();
                },
                () -> {
                    otherwise.run();
                    over.run();
                }));
    }

    private void add(Consumer<Runnable> one) {
        waiting.add(one);
        if (!isRunning) {
            next();
        }
    }

    private void next() {
        Consumer<Runnable> one = waiting.poll();
        isRunning = one != null;
        if (one != null) {
            one.accept(this::next);
        }
    }
}
