package platekeep.model.join;

import java.util.List;
import java.util.TreeSet;

/** The figures that somebody moved on their own; each is a layer, numbered from 1 in order of the figures' labels. */
final class Layers {
    static final Layers NONE = new Layers(List.of());

    /** More moved figures than this are not followed one by one. */
    static final int MOST = 100;

    private final List<Integer> figures;

    private Layers(List<Integer> figures) {
        this.figures = figures;
    }

    static Layers of(Side[] sides) {
        TreeSet<Integer> moved = new TreeSet<>();
        for (Side side : sides) {
            moved.addAll(side.figures().keySet());
        }
        return moved.isEmpty() ? NONE : new Layers(List.copyOf(moved));
    }

    boolean isEmpty() {
        return figures.isEmpty();
    }

    /** How many layers there are, layer 0 included. */
    int count() {
        return figures.size() + 1;
    }

    int figure(int layer) {
        return figures.get(layer - 1);
    }

    /** The layer of a figure of the earlier plate; 0 for one that nobody moved on its own, and for none (-1). */
    int of(int figure) {
        return figures.indexOf(figure) + 1;
    }
}
