package platekeep.client;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class MishapsTest {

    private final AtomicInteger told = new AtomicInteger();
    private final AtomicLong now = new AtomicLong();
    private final Mishaps mishaps = new Mishaps(told::incrementAndGet, now::get);

    @Test
    void aBugThatComesWithEachPaintingIsToldOnce() {
        for (int i = 0; i < 100; i++) {
            mishaps.uncaughtException(Thread.currentThread(), inPainting());
        }
        assertThat(told).hasValue(1);
    }

    @Test
    void anotherBugAndTheSameOneLaterAreToldAgain() {
        mishaps.uncaughtException(Thread.currentThread(), inPainting());
        mishaps.uncaughtException(Thread.currentThread(), new IllegalArgumentException("elsewhere"));
        now.addAndGet(Duration.ofMinutes(1).toNanos());
        mishaps.uncaughtException(Thread.currentThread(), inPainting());
        assertThat(told).hasValue(3);
    }

    private static IllegalStateException inPainting() {
        return new IllegalStateException("in painting");
    }
}
