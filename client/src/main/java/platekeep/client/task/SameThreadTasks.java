package platekeep.client.task;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Does all work at once on the calling thread: for the command line, which has nobody to keep waiting, and for
 * presenter tests, which then need no waiting either. The answer has been given when {@link #run} returns.
 */
public final class SameThreadTasks implements Tasks {

    @Override
    public <T> Running run(Work<T> work, Consumer<Step> steps, Consumer<Outcome<T>> answer) {
        answer.accept(outcome(work, steps));
        return OVER;
    }

    @Override
    public void onEventThread(Runnable something) {
        something.run();
    }

    @Override
    public Executor helpers() {
        return Runnable::run;
    }

    private static <T> Outcome<T> outcome(Work<T> work, Consumer<Step> steps) {
        try {
            return new Outcome.Done<>(work.run(told(steps)));
        } catch (CancellationException e) {
            return new Outcome.Cancelled<>();
        } catch (Exception e) {
            return new Outcome.Failed<>(e);
        }
    }

    private static Progress told(Consumer<Step> steps) {
        return new Progress() {
            @Override
            public void at(int done, int total, String what) {
                steps.accept(new Step(done, total, what));
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        };
    }

    private static final Running OVER = new Running() {
        @Override
        public void cancel() {
            // the answer has been given already
        }

        @Override
        public boolean over() {
            return true;
        }
    };
}
