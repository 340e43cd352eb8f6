package platekeep.model.stitch;

import java.util.AbstractList;
import java.util.List;
import java.util.Optional;
import java.util.RandomAccess;
import platekeep.model.plate.Plate;

/** The figures of a plate: sets of cables that touch. Linear in the cells of the chart to make. */
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
