package platekeep.client.plate.chart;

import java.util.Optional;
import platekeep.model.draw.Spot;

/** Hears what is done on a chart. */
public interface ChartEars {

    /** The pointer presses on a spot. */
    void press(Spot spot, Press how);

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
