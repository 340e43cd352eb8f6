package platekeep.client.plate;

import java.util.Optional;
import java.util.function.UnaryOperator;
import platekeep.client.plate.chart.ChartEars;
import platekeep.client.plate.chart.Press;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.side.ColourPanel;
import platekeep.client.plate.side.ExtrasPanel;
import platekeep.client.plate.side.FactsPanel;
import platekeep.client.plate.side.HistoryStrip;
import platekeep.client.plate.side.RemarkPanel;
import platekeep.client.plate.work.DrawPresenter;
import platekeep.client.plate.work.HistoryPresenter;
import platekeep.client.plate.work.PlatePresenter;
import platekeep.client.room.Workroom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Remark;

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
        return new OnChart();
    }

    /** What is done on the chart. */
    private final class OnChart implements ChartEars {
        @Override
        public void press(Spot spot, Press how) {
            draw().press(spot, how);
        }

        @Override
        public boolean grab(double x, double y) {
            return plates.lines().grab(x, y);
        }

        @Override
        public void pull(double x, double y) {
            plates.lines().pull(x, y);
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
            draw().moveInHand(rows, positions);
        }

        @Override
        public void useAtCursor() {
            draw().useAtCursor();
        }

        @Override
        public void eraseAtCursor() {
            draw().eraseAtCursor();
        }
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

    RemarkPanel.Ears remarks() {
        return new RemarkPanel.Ears() {
            @Override
            public void say() {
                plates.remarks().say();
            }

            @Override
            public void answer(Remark remark) {
                plates.remarks().answer(remark);
            }

            @Override
            public void tick(Remark remark) {
                plates.remarks().tick(remark);
            }

            @Override
            public void remove(Remark remark) {
                plates.remarks().remove(remark);
            }

            @Override
            public void show(Remark remark) {
                plates.remarks().show(remark);
            }
        };
    }

    ExtrasPanel.Ears extras() {
        return new ExtrasPanel.Ears() {
            @Override
            public void take(String stitch) {
                plates.extras().take(stitch);
                draw().take(Tool.STITCH);
            }

            @Override
            public void takeLine(String stitch) {
                plates.lines().take(stitch);
                draw().take(Tool.GATHER);
            }

            @Override
            public void hold(int at) {
                plates.lines().hold(at);
            }

            @Override
            public void add(ExtrasPanel.Part part) {
                if (part == ExtrasPanel.Part.LINE) {
                    plates.lines().addLine();
                } else {
                    plates.extras().addNotion();
                }
            }

            @Override
            public void change(ExtrasPanel.Part part, int at) {
                if (part == ExtrasPanel.Part.LINE) {
                    plates.lines().changeLine(at);
                } else {
                    plates.extras().changeNotion(at);
                }
            }

            @Override
            public void remove(ExtrasPanel.Part part, int at) {
                if (part == ExtrasPanel.Part.LINE) {
                    plates.lines().removeLine(at);
                } else {
                    plates.extras().removeNotion(at);
                }
            }

            @Override
            public void moveLine(int at, int pleats, int halfSpaces) {
                plates.lines().moveLine(at, pleats, halfSpaces);
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
            public void open(String plateId) {
                plates.openRelative(plateId);
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
