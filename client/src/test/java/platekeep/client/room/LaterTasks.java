package platekeep.client.room;

import java.util.Deque;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import platekeep.client.task.Outcome;
import platekeep.client.task.SameThreadTasks;
import platekeep.client.task.Step;
import platekeep.client.task.Tasks;

/** Does work when it is told to, so that what is seen in between can be looked at. */
public record LaterTasks(Deque<Runnable> waiting) implements Tasks {

    @Override
    public <T> Running run(Work<T> work, Consumer<Step> steps, Consumer<Outcome<T>> answer) {
        boolean[] isOver = {false};
        waiting.add(() -> {
            new SameThreadTasks().run(work, steps, answer);
            isOver[0] = true;
        });
        return new Running() {
            @Override
            public void cancel() {
                // what waits is done all the same
            }

            @Override
            public boolean over() {
                return isOver[0];
            }
        };
    }

    @Override
    public void onEventThread(Runnable something) {
        something.run();
    }

    @Override
    public Executor helpers() {
        return Runnable::run;
    }
}
