package platekeep.model.stitch;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/**
 * Which cables of a plate are up and which down.
 *
 * <p>Within a figure they form a checkerboard in row + position, so a figure needs one bit: its <em>phase</em>, the
 * remainder by two of (rows above the bottom row + position) at its down cables. The first start that stands on a cable
 * of the figure settles it; a figure without one follows the first of the plate's starts; a plate without starts counts
 * as starting with a down cable at the leftmost cable of its lowest row that has one. A start on a row that is not there
 * settles nothing.
 */
public final class Kinds {

    private static final int UNSETTLED = -1;
    private static final Optional<CableKind> DOWN = Optional.of(CableKind.DOWN);
    private static final Optional<CableKind> UP = Optional.of(CableKind.UP);

    private final Figures figures;
    private final int rows;
    private final int pleat;
    private final byte[] phase;
    private final Start[] own;

    private Kinds(Plate plate, Figures figures) {
        this.figures = figures;
        this.rows = plate.rows().size();
        this.pleat = plate.from();
        this.phase = new byte[figures.count()];
        this.own = new Start[figures.count()];
        settle(plate);
    }

    /** Linear in the cells of the chart. */
    public static Kinds of(Plate plate) {
        return new Kinds(plate, Figures.of(plate));
    }

    /**
     * As {@link #of(Plate)}, but only as dear as the rows that changed and the runs of cables in all of them, where the
     * plate was made by changing another one.
     *
     * @param before the kinds of that other one
     */
    public static Kinds of(Plate plate, Kinds before) {
        return new Kinds(plate, Figures.of(plate, before.figures));
    }

    private void settle(Plate plate) {
        Map<RowId, Integer> index = indexOf(plate.rows());
        int followed = UNSETTLED;
        for (Start start : plate.starts()) {
            Integer row = index.get(start.row());
            if (row == null) {
                continue;
            }
            followed = followed == UNSETTLED ? phase(row, start.pleat(), start.cable()) : followed;
            int figure = figures.at(row, start.pleat());
            if (figure != Figures.NONE && own[figure] == null) {
                own[figure] = start;
            }
        }
        if (followed == UNSETTLED && figures.count() > 0) {
            Figure lowest = figures.get(0);
            followed = phase(lowest.bottom(), lowest.first(), CableKind.DOWN);
        }
        for (int f = 0; f < phase.length; f++) {
            Start counts = own[f];
            phase[f] =
                    (byte) (counts == null ? followed : phase(index.get(counts.row()), counts.pleat(), counts.cable()));
        }
    }

    /** Rows by id; the first of two with one id counts. */
    static Map<RowId, Integer> indexOf(List<Row> rows) {
        Map<RowId, Integer> index = new HashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            int row = i;
            rows.get(i).id().ifPresent(id -> index.putIfAbsent(id, row));
        }
        return index;
    }

    /** The phase of a figure that has this kind at a row (top row 0) and position. */
    int phase(int row, int position, CableKind kind) {
        return parity(row, position) ^ (kind == CableKind.DOWN ? 0 : 1);
    }

    int phaseOf(int figure) {
        return phase[figure];
    }

    private int parity(int row, int position) {
        return (rows - 1 - row + position) & 1;
    }

    /** The kind at a row (top row 0) and position in a figure of this phase. */
    CableKind kind(int row, int position, int ofPhase) {
        return parity(row, position) == ofPhase ? CableKind.DOWN : CableKind.UP;
    }

    /** What the cable at a row (top row 0) and position is; empty where none lies or outside the chart. */
    public Optional<CableKind> at(int row, int position) {
        int figure = figures.at(row, position);
        if (figure == Figures.NONE) {
            return Optional.empty();
        }
        return parity(row, position) == phase[figure] ? DOWN : UP;
    }

    /** Whether an up cable lies at a row (top row 0) and position. */
    public boolean isUp(int row, int position) {
        int figure = figures.at(row, position);
        return figure != Figures.NONE && parity(row, position) != phase[figure];
    }

    /**
     * Writes down where in a row the up cables lie; what no cable lies at is left as it is.
     *
     * @param row top row 0
     * @param up a value for each cell of the row
     */
    public void writeUp(int row, boolean[] up) {
        Labels labels = figures.labels();
        Runs runs = labels.runs(row);
        for (int n = 0; n < runs.count(); n++) {
            boolean isUp = parity(row, pleat + runs.from(n)) != phase[labels.ofRun(row, n)];
            for (int i = runs.from(n); i < runs.end(n); i++) {
                up[i] = isUp;
                isUp = !isUp;
            }
        }
    }

    /** Whether the cables of a row lie at the same places and are what they were in another plate as many rows high. */
    public boolean hasRowOf(Kinds other, int row) {
        Labels labels = figures.labels();
        Labels otherLabels = other.figures.labels();
        boolean isSame =
                rows == other.rows && pleat == other.pleat && labels.runs(row).lieLike(otherLabels.runs(row));
        for (int n = 0; isSame && n < labels.runs(row).count(); n++) {
            isSame = phase[labels.ofRun(row, n)] == other.phase[otherLabels.ofRun(row, n)];
        }
        return isSame;
    }

    /** The start on the figure that counts; empty for a figure that follows the first start of the plate. */
    public Optional<Start> startOf(Figure figure) {
        return startOf(figure.number());
    }

    /** The start on the figure of this number that counts; empty for one that follows the first start of the plate. */
    public Optional<Start> startOf(int figure) {
        return Optional.ofNullable(own[figure]);
    }

    /** The kind of the leftmost cable in the figure's lowest row. */
    public CableKind first(Figure figure) {
        return kind(figure.bottom(), figure.first(), phase[figure.number()]);
    }

    public Figures figures() {
        return figures;
    }

    int pleat() {
        return pleat;
    }
}
