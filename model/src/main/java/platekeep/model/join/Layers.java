package platekeep.model.join;

import java.util.List;
import java.util.TreeSet;

/**
 * The figures that somebody moved on their own; each is a layer, numbered from 1 in order of the figures' labels. There may
 * be one more, the last: cables newly drawn apart from all others, for which a move of the whole picture would leave no room
 * in the chart, so that they stay.
 */
final class Layers {
    static final Layers NONE = new Layers(List.of(), false);

    /** More moved figures than this are not followed one by one. */
    static final int MOST = 100;

    private final List<Integer> figures;
    private final boolean apart;

    private Layers(List<Integer> figures, boolean apart) {
        this.figures = figures;
        this.apart = apart;
    }

    /**
     * @param apart whether somebody drew cables that stay when the picture moves
     */
    static Layers of(Side[] sides, boolean apart) {
        TreeSet<Integer> moved = new TreeSet<>();
        for (Side side : sides) {
            moved.addAll(side.figures().keySet());
        }
        return moved.isEmpty() && !apart ? NONE : new Layers(List.copyOf(moved), apart);
    }

    boolean isEmpty() {
        return figures.isEmpty() && !apart;
    }

    /** How many layers there are, layer 0 included. */
    int count() {
        return figures.size() + (apart ? 2 : 1);
    }

    /** Whether this is the layer of what stays when the picture moves. */
    boolean isApart(int layer) {
        return layer > figures.size();
    }

    /** The layer of what stays when the picture moves; 0 when nothing does. */
    int apart() {
        return apart ? figures.size() + 1 : 0;
    }

    int figure(int layer) {
        return figures.get(layer - 1);
    }

    /** The layer of a figure of the earlier plate; 0 for one that nobody moved on its own, and for none (-1). */
    int of(int figure) {
        return figures.indexOf(figure) + 1;
    }
}
