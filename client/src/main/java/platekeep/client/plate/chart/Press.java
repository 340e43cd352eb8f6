package platekeep.client.plate.chart;

/** How a place on the chart is pressed. */
public enum Press {
    PLAIN,
    /** With Shift: in addition to what is chosen already. */
    ADD,
    /** With Ctrl: what is moved stays where it is, too. */
    COPY
}
