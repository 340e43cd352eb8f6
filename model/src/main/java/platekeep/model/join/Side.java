package platekeep.model.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import platekeep.model.compare.Grid;
import platekeep.model.compare.Motion;
import platekeep.model.compare.PlateEdit;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.Start;
import platekeep.model.stitch.Labels;

/**
 * One side of a join with what it did to the earlier plate, seen so that moves are undone: every cable is asked for at
 * its <em>source</em>, the place where it would lie had nothing been moved.
 *
 * <p>The picture falls into layers: one for each figure that somebody moved (numbered from 1), and layer 0 for all the
 * rest. Indexes are those of the frame.
 */
final class Side {
    /** Says that this side's chart does not reach so far, so nothing is known of what it wants there. */
    static final char UNSEEN = 0;

    private final int index;
    private final Plate plate;
    private final boolean turnedOver;
    private final PlateEdit edit;
    private final Grid grid;
    private final int first;
    private final int end;
    private Motion picture;
    private Map<Integer, Motion> figures;
    private Layers layers = Layers.NONE;
    private byte[] layerOf;

    private Side(int index, Plate plate, boolean turnedOver, PlateEdit edit, Grid grid) {
        this.index = index;
        this.plate = plate;
        this.turnedOver = turnedOver;
        this.edit = edit;
        this.grid = grid;
        first = plate.from() - grid.frame().from();
        end = first + plate.positions();
        picture = edit.picture();
        figures = new HashMap<>(edit.figures());
    }

    /** Reads one side; rows that were turned over as a whole are turned back. */
    static Side of(int index, Plate base, Plate plate, Grid baseGrid, Map<String, char[]> shared) {
        Grid grid = Grid.of(plate, baseGrid.frame(), shared);
        PlateEdit edit = PlateEdit.of(base, plate, baseGrid, grid);
        if (!edit.turnedOver()) {
            return new Side(index, NumberedRows.asIn(base, plate, edit, plate), false, edit, grid);
        }
        Plate turned = plate.edit()
                .rows(reversed(plate.rows()))
                .starts(turned(plate.starts()))
                .build();
        Grid turnedGrid = Grid.of(turned, baseGrid.frame(), shared);
        PlateEdit back = PlateEdit.upright(base, turned, baseGrid, turnedGrid);
        return new Side(index, NumberedRows.asIn(base, turned, back, plate), true, back, turnedGrid);
    }

    static List<Row> reversed(List<Row> rows) {
        List<Row> reversed = new ArrayList<>(rows);
        Collections.reverse(reversed);
        return reversed;
    }

    /** A chart turned upside down has a down cable wherever an up cable was. */
    static List<Start> turned(List<Start> starts) {
        return starts.stream()
                .map(s -> s.at(s.row(), s.pleat(), s.cable().turned()))
                .toList();
    }

    int index() {
        return index;
    }

    Plate plate() {
        return plate;
    }

    boolean turnedOver() {
        return turnedOver;
    }

    PlateEdit edit() {
        return edit;
    }

    Grid grid() {
        return grid;
    }

    Motion picture() {
        return picture;
    }

    /** The motion that this side gave a figure of the earlier plate. */
    Motion motionOf(int figure) {
        return figures.getOrDefault(figure, picture);
    }

    boolean moves() {
        return !picture.isNone() || !figures.isEmpty();
    }

    Map<Integer, Motion> figures() {
        return figures;
    }

    /**
     * Whether less is left to be explained by painting and erasing when this side is read as having moved what the other
     * one moved: of a move that both made, one side's may be hidden by what else it drew.
     */
    boolean isBetterReadAsMovedBy(Side other, Grid base, Labels labels) {
        if (!other.moves() || picture.equals(other.picture) && figures.equals(other.figures)) {
            return false;
        }
        return unexplained(other.picture, other.figures, base, labels) < unexplained(picture, figures, base, labels);
    }

    /** Takes the other side's moves for its own. */
    void follow(Side other) {
        picture = other.picture;
        figures = new HashMap<>(other.figures);
    }

    /** How many cables of this side, and empty places, are not where the earlier ones would be by these motions. */
    private int unexplained(Motion whole, Map<Integer, Motion> single, Grid base, Labels labels) {
        int width = base.frame().width();
        char[][] expected = new char[grid.height()][width];
        for (char[] row : expected) {
            Arrays.fill(row, Row.EMPTY);
        }
        for (int i = 0; i < base.height(); i++) {
            int row = edit.pairing().after(i);
            for (int k = 0; row >= 0 && k < width; k++) {
                if (base.at(i, k) != Row.EMPTY) {
                    Motion motion = single.getOrDefault(labels.at(i, k), whole);
                    int r = motion.row(row);
                    int c = motion.position(k);
                    if (r >= 0 && r < expected.length && c >= 0 && c < width) {
                        expected[r][c] = edit.renaming().letter(base.at(i, k)).orElse(Row.EMPTY);
                    }
                }
            }
        }
        int different = 0;
        for (int r = 0; r < expected.length; r++) {
            for (int c = 0; c < width && edit.pairing().before(r) >= 0; c++) {
                different += expected[r][c] != grid.at(r, c) ? 1 : 0;
            }
        }
        return different;
    }

    /** Reads all that moved as painted and erased instead. */
    void forgetMotions() {
        picture = Motion.NONE;
        figures = new HashMap<>();
        layers = Layers.NONE;
        layerOf = null;
    }

    /** The motion of a layer on this side. */
    Motion motion(int layer) {
        if (layers.isApart(layer)) {
            return Motion.NONE;
        }
        return layer == 0 ? picture : motionOf(layers.figure(layer));
    }

    /**
     * Sorts this side's cables into layers.
     *
     * @param apart what tells the cables that stay when the picture moves
     */
    void sort(Layers allLayers, Labels baseLabels, Grid baseGrid, Apart apart) {
        layers = allLayers;
        if (!layers.isEmpty()) {
            layerOf = new LayerSorting(this, layers, baseLabels, baseGrid, apart).sorted();
        }
    }

    /** The layer of the cable at a row and index of this side's own chart. */
    int layerAt(int row, int k) {
        if (layerOf == null
                || row < 0
                || row >= grid.height()
                || k < 0
                || k >= grid.frame().width()) {
            return 0;
        }
        return layerOf[row * grid.frame().width() + k];
    }

    /**
     * The letter of the cable whose source is at a row of this side and an index; {@link #UNSEEN} outside its chart, and
     * none where its own move left no room for the cable there.
     */
    char source(int layer, int row, int k) {
        Motion motion = motion(layer);
        int r = motion.row(row);
        int c = motion.position(k);
        if (r < 0 || r >= grid.height() || c < first || c >= end) {
            return motion.isNone() ? UNSEEN : Row.EMPTY;
        }
        return layerAt(r, c) == layer ? grid.at(r, c) : Row.EMPTY;
    }

    /** Whether each cable of this side has a source inside the frame, so that nothing gets lost on the way. */
    boolean allHaveSources() {
        if (!moves()) {
            return true;
        }
        for (int r = 0; r < grid.height(); r++) {
            for (int c = 0; c < grid.frame().width(); c++) {
                if (grid.at(r, c) != Row.EMPTY) {
                    Motion back = motion(layerAt(r, c)).inverse();
                    int row = back.row(r);
                    int k = back.position(c);
                    if (row < 0
                            || row >= grid.height()
                            || k < 0
                            || k >= grid.frame().width()) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
}
