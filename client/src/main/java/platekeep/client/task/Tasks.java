package platekeep.client.task;

import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Runs work away from the event thread and brings the answer back on it. A screen's presenter is handed one of these;
 * in the window it is {@link BackgroundTasks}, on the command line and in tests {@link SameThreadTasks}, so a presenter
 * never knows which.
 *
 * <pre>{@code
 * running = tasks.run(progress -> library.list(progress), outcome -> outcome.fold(
 *         done -> show(done.value()),
 *         failed -> tell(failed.why()),
 *         cancelled -> nothing()));
 * }</pre>
 */
public interface Tasks {

    /** Something that takes time. Long work looks at {@link Progress#cancelled()} now and then. */
    @FunctionalInterface
    interface Work<T> {
        T run(Progress progress) throws Exception;
    }

    /** Work under way. */
    interface Running {

        /**
         * Asks the work to stop. Its answer is then {@link Outcome.Cancelled}, whatever the work still comes to; never
         * an older answer after a newer question.
         */
        void cancel();

        /** Whether the answer has been given. */
        boolean over();
    }

    /**
     * Starts work.
     *
     * @param work runs in the background; must not touch a window
     * @param steps hears how far the work has come, on the event thread, the newest step only when there are many
     * @param answer hears the outcome exactly once, on the event thread
     */
    <T> Running run(Work<T> work, Consumer<Step> steps, Consumer<Outcome<T>> answer);

    /** As above, for work of which nobody watches the steps. */
    default <T> Running run(Work<T> work, Consumer<Outcome<T>> answer) {
        return run(work, step -> {}, answer);
    }

    /**
     * Starts work that is done within a blink, such as the answer to a key. It never waits behind long work, only behind
     * other work of its kind.
     */
    default <T> Running answer(Work<T> work, Consumer<Outcome<T>> answer) {
        return run(work, answer);
    }

    /** Runs something on the event thread soon. */
    void onEventThread(Runnable something);

    /** Where reading in parallel may run; what is handed to it must be able to finish on any thread. */
    Executor helpers();
}
