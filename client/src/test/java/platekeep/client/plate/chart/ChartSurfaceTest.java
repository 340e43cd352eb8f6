package platekeep.client.plate.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.beans.PropertyChangeEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import platekeep.client.plate.Charted;
import platekeep.client.plate.edit.PlaceWords;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Spot;

class ChartSurfaceTest {
    private static final Drawing DRAWING = Drawing.of(Charted.of(".aa.", "bbbb", "bbbb"));

    /** Moves a cursor and tells what lies there, as the screen does. */
    private static final class Hand implements ChartEars {
        final List<String> done = new ArrayList<>();
        ChartSurface surface;
        Spot cursor = new Spot(1, 1);

        @Override
        public void press(Spot spot, Press how) {
            done.add("press");
        }

        @Override
        public void drag(Spot spot) {
            done.add("drag");
        }

        @Override
        public void release() {
            done.add("release");
        }

        @Override
        public void pick(Spot spot) {
            done.add("pick");
        }

        @Override
        public void hover(Optional<Spot> spot) {
            done.add("hover");
        }

        @Override
        public void moveCursor(int rows, int positions) {
            cursor = cursor.moved(rows, positions);
            surface.cursor(cursor);
            surface.say(PlaceWords.of(DRAWING, cursor));
        }

        @Override
        public void drawCursor(int rows, int positions) {
            done.add("draw " + rows + " " + positions);
        }

        @Override
        public void moveChosen(int rows, int positions) {
            done.add("move chosen " + rows + " " + positions);
        }

        @Override
        public void useAtCursor() {
            done.add("use");
        }

        @Override
        public void eraseAtCursor() {
            done.add("erase");
        }
    }

    private final Hand hand = new Hand();
    private final ChartSurface surface = new ChartSurface(hand);

    ChartSurfaceTest() {
        hand.surface = surface;
        surface.show(DRAWING);
    }

    private void key(String stroke) {
        Object bound = surface.getInputMap(JComponent.WHEN_FOCUSED).get(KeyStroke.getKeyStroke(stroke));
        Action action = surface.getActionMap().get(bound);
        action.actionPerformed(new ActionEvent(surface, ActionEvent.ACTION_PERFORMED, stroke));
    }

    @Test
    void aScreenReaderHearsThePlaceAndTheCableWithEachKey() {
        AccessibleContext heard = surface.getAccessibleContext();
        List<String> told = new ArrayList<>();
        heard.addPropertyChangeListener((PropertyChangeEvent e) -> {
            if (AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY.equals(e.getPropertyName())) {
                told.add((String) e.getNewValue());
            }
        });
        key("RIGHT");
        key("UP");
        key("RIGHT");
        assertThat(told)
                .containsExactly(
                        "row 2, pleats 3 and 4: up cable, buoy; meets apple above",
                        "row 3, pleats 3 and 4: down cable, apple; meets buoy below",
                        "row 3, pleats 4 and 5: no cable");
        assertThat(heard.getAccessibleRole()).isEqualTo(AccessibleRole.CANVAS);
        assertThat(heard.getAccessibleName()).isEqualTo("Chart of Charted, 5 pleats, 3 rows");
    }

    @ParameterizedTest
    @CsvSource({
        "SPACE, use",
        "ENTER, use",
        "DELETE, erase",
        "shift LEFT, draw 0 -1",
        "shift DOWN, draw 1 0",
        "ctrl UP, move chosen -1 0"
    })
    void keysDrawEraseAndMove(String stroke, String what) {
        key(stroke);
        assertThat(hand.done).containsExactly(what);
    }
}
