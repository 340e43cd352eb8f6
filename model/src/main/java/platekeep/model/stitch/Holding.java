package platekeep.model.stitch;

import platekeep.model.plate.Plate;

/**
 * What holds together on the cloth: cables joined in a row by the thread, and cables that meet between rows. An up cable
 * meets the down cable of the row above over the same pair of pleats; a down cable meets nothing above it. A figure, which
 * is only a matter of touching, may so fall into several parts. Linear in the cells of the chart to make.
 */
public final class Holding {

    /** What {@link #at} answers where no cable lies. */
    public static final int NONE = Labels.NONE;

    private final Labels labels;
    private final int pleat;

    private Holding(Labels labels, int pleat) {
        this.labels = labels;
        this.pleat = pleat;
    }

    public static Holding of(Plate plate) {
        return of(plate, Kinds.of(plate));
    }

    /**
     * As {@link #of(Plate)} where up and down are known already.
     *
     * @param kinds of the same plate
     */
    public static Holding of(Plate plate, Kinds kinds) {
        int pleat = plate.from();
        return new Holding(Labels.of(plate, (row, index) -> kinds.isUp(row, pleat + index)), pleat);
    }

    /** How many parts there are in the whole plate. */
    public int count() {
        return labels.count();
    }

    /** The number of the part at a row (top row 0) and position; {@link #NONE} where no cable lies. */
    public int at(int row, int position) {
        return labels.at(row, position - pleat);
    }

    /** The part of this number, measured like a figure; parts are numbered as figures are. */
    public Figure part(int number) {
        return labels.figure(number, pleat);
    }

    /** The number of the figure that the part belongs to. */
    int figureOf(int part, Figures figures) {
        return figures.at(labels.bottom(part), pleat + labels.first(part));
    }

    /** How many cables the part has. */
    public int cables(int number) {
        return labels.cells(number);
    }

    /** Whether the cable at a row (top row 0) and position is joined to no other. */
    public boolean isAlone(int row, int position) {
        int part = at(row, position);
        return part != NONE && cables(part) == 1;
    }
}
