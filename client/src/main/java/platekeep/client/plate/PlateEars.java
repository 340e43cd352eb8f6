package platekeep.client.plate;

import java.util.Optional;
import java.util.function.UnaryOperator;
import platekeep.client.plate.chart.ChartEars;
import platekeep.client.plate.chart.Press;
import platekeep.client.plate.side.ColourPanel;
import platekeep.client.plate.side.FactsPanel;
import platekeep.client.plate.side.HistoryStrip;
import platekeep.client.room.Workroom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;

/** Leads what is done on the parts of the screen to its presenters. */
final class PlateEars {
    private Workroom room;
    private PlatePresenter plates;

    void lead(Workroom newRoom, PlatePresenter newPlates) {
        this.room = newRoom;
        this.plates = newPlates;
    }

    PlatePresenter plates() {
        return plates;
    }

    DrawPresenter draw() {
        return plates.draw();
    }

    HistoryPresenter versions() {
        return plates.history();
    }

    ChartEars chart() {
        return new ChartEars() {
            @Override
            public void press(Spot spot, Press how) {
                draw().press(spot, how);
            }

            @Override
            public void drag(Spot spot) {
                draw().drag(spot);
            }

            @Override
            public void release() {
                draw().release();
            }

            @Override
            public void pick(Spot spot) {
                draw().pick(spot);
            }

            @Override
            public void hover(Optional<Spot> spot) {
                draw().hover(spot);
            }

            @Override
            public void moveCursor(int rows, int positions) {
                draw().moveCursor(rows, positions);
            }

            @Override
            public void drawCursor(int rows, int positions) {
                draw().drawCursor(rows, positions);
            }

            @Override
            public void moveChosen(int rows, int positions) {
                plates.choice().move(rows, positions);
            }

            @Override
            public void useAtCursor() {
                draw().useAtCursor();
            }

            @Override
            public void eraseAtCursor() {
                draw().eraseAtCursor();
            }
        };
    }

    ColourPanel.Ears colours() {
        return new ColourPanel.Ears() {
            @Override
            public void choose(char key) {
                draw().choose(key);
            }

            @Override
            public void add() {
                plates.palette().add();
            }

            @Override
            public void change(char key) {
                plates.palette().change(key);
            }

            @Override
            public void merge(char key) {
                plates.palette().merge(key);
            }

            @Override
            public void remove(char key) {
                plates.palette().remove(key);
            }
        };
    }

    FactsPanel.Ears facts() {
        return new FactsPanel.Ears() {
            @Override
            public void change(String step, UnaryOperator<Plate> change) {
                draw().facts(step, change);
            }

            @Override
            public void trouble(String sentence) {
                room.front().trouble(sentence);
            }
        };
    }

    HistoryStrip.Ears history() {
        return new HistoryStrip.Ears() {
            @Override
            public void lookAt(String versionId) {
                versions().lookAt(versionId);
            }

            @Override
            public void compare(String versionId, String otherVersionId) {
                versions().compare(versionId, otherVersionId);
            }

            @Override
            public void name(String versionId) {
                versions().nameVersion(versionId);
            }
        };
    }
}
