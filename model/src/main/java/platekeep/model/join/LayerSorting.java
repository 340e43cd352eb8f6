package platekeep.model.join;

import java.util.Arrays;
import platekeep.model.compare.Grid;
import platekeep.model.compare.Motion;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Labels;

/**
 * Sorts the cables of one side into layers: a cable that lies where an earlier one would lie now belongs to that one's
 * layer; a new cable belongs to the layer of the nearest such cable that it hangs together with. New cables apart from all
 * earlier ones go with the picture, all of them or none.
 */
final class LayerSorting {
    private static final byte NOT_YET = -1;

    private final Side side;
    private final Layers layers;
    private final Labels labels;
    private final Grid base;
    private final int width;
    private final byte[] layerOf;
    private final int[] queue;
    private final Apart apart;
    private int queued;

    LayerSorting(Side side, Layers layers, Labels labels, Grid base, Apart apart) {
        this.side = side;
        this.apart = apart;
        this.layers = layers;
        this.labels = labels;
        this.base = base;
        width = base.frame().width();
        layerOf = new byte[width * side.grid().height()];
        queue = new int[layerOf.length];
    }

    byte[] sorted() {
        Arrays.fill(layerOf, NOT_YET);
        placeEarlier(true);
        placeEarlier(false);
        for (int next = 0; next < queued; next++) {
            int cell = queue[next];
            int row = cell / width;
            int k = cell % width;
            spread(cell, row, k - 1);
            spread(cell, row, k + 1);
            spread(cell, row - 1, k);
            spread(cell, row + 1, k);
        }
        byte rest = 0;
        for (int i = 0; i < layerOf.length; i++) {
            if (layerOf[i] == NOT_YET && side.grid().at(i / width, i % width) != Row.EMPTY) {
                rest = apart.stays(side, i / width, i % width) ? (byte) layers.apart() : rest;
            }
        }
        for (int i = 0; i < layerOf.length; i++) {
            boolean newAndApart = layerOf[i] == NOT_YET && side.grid().at(i / width, i % width) != Row.EMPTY;
            layerOf[i] = newAndApart ? rest : layerOf[i] == NOT_YET ? 0 : layerOf[i];
        }
        return layerOf;
    }

    /** Marks where the cables of the earlier plate lie on this side, moved figures first. */
    private void placeEarlier(boolean moved) {
        for (int i = 0; i < base.height(); i++) {
            int row = side.edit().pairing().after(i);
            for (int k = 0; row >= 0 && k < width; k++) {
                int figure = labels.at(i, k);
                int layer = layers.of(figure);
                if (figure >= 0 && (layer > 0) == moved) {
                    Motion motion = side.motionOf(figure);
                    put(motion.row(row), motion.position(k), (byte) layer);
                }
            }
        }
    }

    private void spread(int from, int row, int k) {
        put(row, k, layerOf[from]);
    }

    private void put(int row, int k, byte layer) {
        if (side.grid().at(row, k) != Row.EMPTY && layerOf[row * width + k] == NOT_YET) {
            layerOf[row * width + k] = layer;
            queue[queued++] = row * width + k;
        }
    }
}
