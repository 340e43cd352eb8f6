package platekeep.model.join;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.compare.Grid;
import platekeep.model.compare.Motion;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.stitch.Labels;

/**
 * Follows what lies on a row and pleat (starts, marks, remarks) from a plate to its source, where it would lie had
 * nothing been moved, and from there to the joined plate.
 */
final class Placing {
    private final Side[] sides;
    private final Grid grid;
    private final Labels labels;
    private final Layers layers;
    private final RowJoin rows;
    private final Motion[] motions;
    private final List<Optional<RowId>> ids;
    private final Map<Integer, Integer> rowOf = new HashMap<>();
    private final Map<RowId, Integer> baseRows;
    private final Map<RowId, Integer>[] sideRows;

    /**
     * A source.
     *
     * @param named the id of a row that is not in its own plate, which stays as it is
     * @param handle the row's handle; -1 for such a row
     * @param layer the layer it goes along with
     * @param place the pleat or position
     */
    record Spot(Optional<RowId> named, int handle, int layer, double place) {}

    @SuppressWarnings("unchecked")
    Placing(
            Plate base,
            Side[] sides,
            Grid grid,
            Labels labels,
            Layers layers,
            RowJoin rows,
            Motion[] motions,
            List<Optional<RowId>> ids) {
        this.sides = sides;
        this.grid = grid;
        this.labels = labels;
        this.layers = layers;
        this.rows = rows;
        this.motions = motions;
        this.ids = ids;
        List<Integer> order = rows.order();
        for (int r = 0; r < order.size(); r++) {
            rowOf.put(order.get(r), r);
        }
        baseRows = rowsById(base);
        sideRows = new Map[] {rowsById(sides[0].plate()), rowsById(sides[1].plate())};
    }

    private static Map<RowId, Integer> rowsById(Plate plate) {
        Map<RowId, Integer> out = new HashMap<>();
        for (int i = 0; i < plate.rows().size(); i++) {
            int row = i;
            plate.rows().get(i).id().ifPresent(id -> out.putIfAbsent(id, row));
        }
        return out;
    }

    /** The source of a pleat (of a mark: on it, or in the valley half a pleat on). {@code s} is -1 for the earlier plate. */
    Spot pleat(int s, RowId row, double pleat) {
        int under = grid.frame().index((int) Math.floor(pleat));
        return source(s, row, pleat, under, pleat == Math.floor(pleat) ? under - 1 : under, true);
    }

    /** The source of a cable's position. */
    Spot position(int s, RowId row, int position) {
        int k = grid.frame().index(position);
        return source(s, row, position, k, k, false);
    }

    /** The source of a cable by its row's index in its own plate, from the top. */
    Spot positionAt(int s, int row, int position) {
        int k = grid.frame().index(position);
        return source(s, row, position, k, k, false);
    }

    private Spot source(int s, RowId id, double place, int k, int otherwise, boolean pleat) {
        Integer row = s < 0 ? baseRows.get(id) : sideRows[s].get(id);
        return row == null
                ? new Spot(Optional.of(id), -1, 0, place)
                : source(s, row.intValue(), place, k, otherwise, pleat);
    }

    private Spot source(int s, int row, double place, int k, int otherwise, boolean pleat) {
        int layer = layerAt(s, row, k);
        layer = layer == 0 ? layerAt(s, row, otherwise) : layer;
        if (s < 0) {
            return new Spot(Optional.empty(), row, layer, place);
        }
        Motion back = sides[s].motion(layer).inverse();
        int sourceRow = back.row(row);
        if (sourceRow < 0 || sourceRow >= sides[s].plate().rows().size()) {
            return new Spot(Optional.empty(), rows.held(rows.handle(s, row)), layer, place);
        }
        return new Spot(Optional.empty(), rows.held(rows.handle(s, sourceRow)), layer, moved(back, place, pleat));
    }

    private int layerAt(int s, int row, int k) {
        if (s >= 0) {
            int layer = sides[s].layerAt(row, k);
            return layer == 0 && isErased(s, row, k) ? erasedFrom(s, row, k) : layer;
        }
        return layers.isEmpty() || grid.at(row, k) == '.' ? 0 : layers.of(labels.at(row, k));
    }

    private boolean isErased(int s, int row, int k) {
        return !layers.isEmpty() && sides[s].grid().at(row, k) == '.' && rows.handle(s, row) < grid.height();
    }

    /** What lay on a cable that a side erased goes with that cable's figure still, unless this side itself moved that. */
    private int erasedFrom(int s, int row, int k) {
        int figure = labels.at(rows.handle(s, row), k);
        int layer = figure < 0 ? 0 : layers.of(figure);
        return sides[s].motion(layer).isNone() ? layer : 0;
    }

    private double moved(Motion motion, double place, boolean pleat) {
        double k = place - grid.frame().from();
        return (pleat ? motion.pleat(k) : motion.position((int) k))
                + grid.frame().from();
    }

    /** Whether the source's row is in the joined plate; a row that never was counts as there. */
    boolean isThere(Spot spot) {
        return spot.handle() < 0 || rowOf.containsKey(spot.handle());
    }

    /** Whether a source's row has an id by which a start can name it. */
    boolean hasName(Spot spot) {
        return resultRow(spot)
                .flatMap(ids::get)
                .or(() -> rows.idOf(spot.handle()))
                .isPresent();
    }

    /** Whether the joined plate has a row with this id. */
    boolean hasRow(RowId row) {
        return ids.contains(Optional.of(row));
    }

    /** The row of the joined plate that a source lies on, as it was named if it is not there. */
    RowId row(Spot spot) {
        if (spot.handle() < 0) {
            return spot.named().orElseThrow();
        }
        return resultRow(spot)
                .flatMap(ids::get)
                .or(() -> rows.idOf(spot.handle()))
                .orElseThrow();
    }

    /** The row of the joined plate that a side's row became, whatever was moved within the rows. */
    RowId rowAlone(int s, RowId row) {
        Integer index = s < 0 ? baseRows.get(row) : sideRows[s].get(row);
        if (index == null) {
            return row;
        }
        int handle = s < 0 ? index : rows.held(rows.handle(s, index));
        return Optional.ofNullable(rowOf.get(handle))
                .flatMap(ids::get)
                .or(() -> rows.idOf(handle))
                .orElse(row);
    }

    /** The index of the row in the joined plate, top row 0. */
    Optional<Integer> resultRow(Spot spot) {
        Integer r = rowOf.get(spot.handle());
        if (r == null) {
            return Optional.empty();
        }
        int moved = motions[spot.layer()].row(r);
        return Optional.of(moved >= 0 && moved < ids.size() ? moved : r);
    }

    double pleat(Spot spot) {
        return spot.handle() < 0 ? spot.place() : moved(motions[spot.layer()], spot.place(), true);
    }

    int position(Spot spot) {
        return (int) (spot.handle() < 0 ? spot.place() : moved(motions[spot.layer()], spot.place(), false));
    }

    /** Whether cables of this layer stand upside down in the joined plate as against a side or the earlier plate. */
    boolean turned(Spot spot, int s) {
        boolean result = motions[spot.layer()].rowSign() < 0;
        boolean there = s >= 0 && sides[s].motion(spot.layer()).rowSign() < 0;
        return result != there;
    }
}
