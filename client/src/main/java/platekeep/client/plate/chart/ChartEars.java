package platekeep.client.plate.chart;

import java.util.Optional;
import platekeep.model.draw.Spot;

/** Hears what is done on a chart. */
public interface ChartEars {

    /** The pointer presses on a spot. */
    void press(Spot spot, Press how);

    /**
     * The pointer presses on a point, which may lie above the picture.
     *
     * @param x in pleats from the chart's left edge
     * @param y in rows from its top edge
     * @return whether a geometric line was taken hold of there; then {@link #pull} hears of what follows
     */
    default boolean grab(double x, double y) {
        return false;
    }

    /** The pointer that holds a line comes to a point. */
    default void pull(double x, double y) {
        // only a line that was taken hold of is pulled
    }

    /** The pressed pointer comes to a spot. */
    void drag(Spot spot);

    /** The pointer lets go. */
    void release();

    /** The colour at a spot is asked for. */
    void pick(Spot spot);

    /** The pointer is over a spot or leaves the chart. */
    void hover(Optional<Spot> spot);

    /** The cursor is moved by keys. */
    void moveCursor(int rows, int positions);

    /** The cursor is moved with the tool put to use. */
    void drawCursor(int rows, int positions);

    /** What is chosen is moved by keys. */
    void moveChosen(int rows, int positions);

    /** The tool is put to use at the cursor. */
    void useAtCursor();

    /** The cable at the cursor is to go. */
    void eraseAtCursor();
}
