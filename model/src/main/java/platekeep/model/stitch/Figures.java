package platekeep.model.stitch;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.RandomAccess;
import platekeep.model.plate.Plate;

/** The figures of a plate: sets of cables that touch. Linear in the chart to make. */
public final class Figures {

    /** What {@link #at} answers where no cable lies. */
    public static final int NONE = Labels.NONE;

    private final Labels labels;
    private final int pleat;

    private Figures(Labels labels, int pleat) {
        this.labels = labels;
        this.pleat = pleat;
    }

    public static Figures of(Plate plate) {
        return new Figures(Labels.of(plate, Labels.Link.TOUCHING), plate.from());
    }

    /** As {@link #of(Plate)}, at less cost where the plate has rows of another one whose figures are known. */
    static Figures of(Plate plate, Figures like) {
        Runs[] known = new Runs[like.labels.rows()];
        Arrays.setAll(known, like.labels::runs);
        return new Figures(Labels.of(Runs.of(plate, known), plate.positions(), Labels.Link.TOUCHING), plate.from());
    }

    /** How many figures there are. */
    public int count() {
        return labels.count();
    }

    /**
     * The number of the figure at a row (top row 0) and position: an index of {@link #all()}, {@link #NONE} where no
     * cable lies or outside the chart.
     */
    public int at(int row, int position) {
        return labels.at(row, position - pleat);
    }

    /** The figure at a row (top row 0) and position; empty where no cable lies. */
    public Optional<Figure> figureAt(int row, int position) {
        int number = at(row, position);
        return number == NONE ? Optional.empty() : Optional.of(get(number));
    }

    public Figure get(int number) {
        return labels.figure(number, pleat);
    }

    /** The cells of a figure in the box around it, row by row from its top left corner. */
    public BitSet cells(Figure figure) {
        int width = figure.to() - figure.from() + 1;
        BitSet cells = new BitSet(figure.rows() * width);
        for (int r = figure.top(); r <= figure.bottom(); r++) {
            Runs runs = labels.runs(r);
            int begin = (r - figure.top()) * width - (figure.from() - pleat);
            for (int n = 0; n < runs.count(); n++) {
                if (labels.ofRun(r, n) == figure.number()) {
                    cells.set(begin + runs.from(n), begin + runs.end(n));
                }
            }
        }
        return cells;
    }

    /** All figures, from the bottom, then from the left. A view: each is made when it is asked for. */
    public List<Figure> all() {
        return new View();
    }

    Labels labels() {
        return labels;
    }

    private final class View extends AbstractList<Figure> implements RandomAccess {
        @Override
        public Figure get(int index) {
            return Figures.this.get(index);
        }

        @Override
        public int size() {
            return count();
        }
    }
}
