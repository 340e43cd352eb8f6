package platekeep.client.task;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class TasksTest {
    private final BlockingQueue<Runnable> eventQueue = new LinkedBlockingQueue<>();
    private final List<RuntimeException> bugs = new ArrayList<>();
    private final BackgroundTasks tasks = new BackgroundTasks(eventQueue::add, bugs::add);

    @AfterEach
    void close() {
        tasks.close();
    }

    @Test
    void workRunsElsewhereAndTheAnswerComesOnTheEventThread() throws InterruptedException {
        List<Outcome<String>> answers = new ArrayList<>();
        tasks.run(progress -> Thread.currentThread().getName(), answers::add);
        Runnable event = eventQueue.take();
        assertThat(answers).isEmpty();
        event.run();
        assertThat(word(answers.get(0))).startsWith("platekeep-work-");
    }

    @Test
    void cancelledWorkAnswersCancelledEvenWhenItFinishedFirst() throws InterruptedException {
        List<Outcome<String>> answers = new ArrayList<>();
        Tasks.Running running = tasks.run(progress -> "late", answers::add);
        Runnable event = eventQueue.take();
        running.cancel();
        event.run();
        assertThat(word(answers.get(0))).isEqualTo("cancelled");
        assertThat(running.over()).isTrue();
    }

    @Test
    void workSeesThatItIsCancelled() throws InterruptedException {
        CountDownLatch asked = new CountDownLatch(1);
        List<Outcome<String>> answers = new ArrayList<>();
        Tasks.Running running = tasks.run(
                progress -> {
                    asked.await();
                    return progress.cancelled() ? "saw it" : "missed it";
                },
                answers::add);
        running.cancel();
        asked.countDown();
        eventQueue.take().run();
        assertThat(word(answers.get(0))).isEqualTo("cancelled");
    }

    @Test
    void aCheckedFailureIsAnsweredAndAnUncheckedOneIsAlsoReportedAsABug() throws InterruptedException {
        List<Outcome<String>> answers = new ArrayList<>();
        tasks.<String>run(
                progress -> {
                    throw new IOException("the disk is full");
                },
                answers::add);
        eventQueue.take().run();
        assertThat(word(answers.get(0))).isEqualTo("failed: the disk is full");
        assertThat(bugs).isEmpty();
        tasks.<String>run(
                progress -> {
                    throw new IllegalStateException("ours");
                },
                answers::add);
        eventQueue.take().run();
        assertThat(word(answers.get(1))).isEqualTo("failed: ours");
        assertThat(bugs).hasSize(1);
    }

    @Test
    void ofManyStepsTheNewestIsTold() throws InterruptedException {
        List<Step> steps = new ArrayList<>();
        List<Outcome<Integer>> answers = new ArrayList<>();
        tasks.run(
                progress -> {
                    for (int i = 1; i <= 100; i++) {
                        progress.at(i, 100, "reading plates");
                    }
                    return 100;
                },
                steps::add,
                answers::add);
        while (answers.isEmpty()) {
            eventQueue.take().run();
        }
        assertThat(steps).last().isEqualTo(new Step(100, 100, "reading plates"));
    }

    @Test
    void onTheSameThreadTheAnswerHasBeenGivenOnReturn() {
        List<Outcome<String>> answers = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        Tasks.Running running = new SameThreadTasks()
                .run(
                        progress -> {
                            progress.at(1, 2, "half");
                            return "here";
                        },
                        steps::add,
                        answers::add);
        assertThat(running.over()).isTrue();
        assertThat(word(answers.get(0))).isEqualTo("here");
        assertThat(steps).containsExactly(new Step(1, 2, "half"));
    }

    private static String word(Outcome<String> outcome) {
        return outcome.fold(
                Outcome.Done::value, failed -> "failed: " + failed.why().getMessage(), cancelled -> "cancelled");
    }
}
