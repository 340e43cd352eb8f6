package platekeep.client;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import platekeep.client.command.desk.Trouble;
import platekeep.client.task.BackgroundTasks;

class OpeningTest {

    @Test
    void comesBackWhenTheWindowIsThere() throws Exception {
        List<Thread> ran = new ArrayList<>();
        try (BackgroundTasks tasks = BackgroundTasks.forWindow(e -> {})) {
            Opening.wait(tasks, () -> ran.add(Thread.currentThread()));
        }
        assertThat(ran).hasSize(1).doesNotContain(Thread.currentThread());
    }

    @Test
    void whateverGoesWrongIsToldInOneSentenceWithoutAnException() {
        Logger logger = Logger.getLogger(Opening.class.getName());
        logger.setUseParentHandlers(false);
        try (BackgroundTasks tasks = BackgroundTasks.forWindow(e -> {})) {
            for (Throwable cause : List.of(new IllegalStateException("broken"), new NoClassDefFoundError("broken"))) {
                assertThatThrownBy(() -> Opening.wait(tasks, () -> OpeningTest.<RuntimeException>fling(cause)))
                        .isInstanceOf(Trouble.class)
                        .hasMessageStartingWith("The window could not be opened.")
                        .hasMessageNotContaining("broken");
            }
        } finally {
            logger.setUseParentHandlers(true);
        }
    }

    @SuppressWarnings("unchecked")
    private static <T extends Throwable> void fling(Throwable cause) throws T {
        throw (T) cause;
    }
}
