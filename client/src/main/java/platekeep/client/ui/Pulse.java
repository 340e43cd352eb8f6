package platekeep.client.ui;

import javax.swing.Timer;

/** Does something again and again on the event thread, at a pace that can be changed, while it is on. */
public final class Pulse {
    private final Timer timer;

    /** Off at first. */
    public Pulse(Runnable beat) {
        timer = new Timer(1000, e -> beat.run());
        timer.setCoalesce(true);
    }

    /** Beats every so many milliseconds from now on. */
    public void on(int millis) {
        timer.setInitialDelay(millis);
        timer.setDelay(millis);
        timer.restart();
    }

    public void off() {
        timer.stop();
    }
}
