package platekeep.model.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import platekeep.model.compare.Grid;
import platekeep.model.compare.Grid.Frame;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.Start;
import platekeep.model.plate.Value;
import platekeep.model.stitch.Labels;

/** Does the move or mirroring of a figure that was chosen among two. */
final class SettledFigures {

    private SettledFigures() {}

    static Plate moved(Plate plate, Clash clash, Value value) {
        int low = Settling.row(plate, clash);
        if (value.equals(Value.NOTHING) || low < 0) {
            return plate;
        }
        Map<String, Value> move = Settling.entries(value);
        int up = number(move, "rows");
        int right = number(move, "pleats");
        String mirrored = move.get("mirrored") instanceof Value.Text t ? t.string() : "";
        boolean sideways = mirrored.equals("left to right") || mirrored.equals("both");
        boolean upright = mirrored.equals("top to bottom") || mirrored.equals("both");
        Grid grid = Grid.of(plate, Frame.around(plate));
        Labels labels = grid.figures();
        int figure = labels.at(low, clash.numberAt("from").orElse(0) - plate.from());
        int[] box = box(grid, labels, figure);
        char[][] out = new char[grid.height()][];
        for (int r = 0; r < out.length; r++) {
            out[r] = grid.row(r).clone();
            for (int k = 0; k < out[r].length; k++) {
                out[r][k] = labels.at(r, k) == figure && figure >= 0 ? Row.EMPTY : out[r][k];
            }
        }
        for (int r = 0; r < grid.height(); r++) {
            for (int k = 0; k < grid.frame().width(); k++) {
                if (figure >= 0 && labels.at(r, k) == figure) {
                    int toRow = (upright ? box[0] + box[1] - r : r) - up;
                    int to = (sideways ? box[2] + box[3] - k : k) + right;
                    if (toRow < 0 || toRow >= out.length || to < 0 || to >= out[toRow].length) {
                        throw new IllegalArgumentException("the figure does not fit there; widen the chart first");
                    }
                    out[toRow][to] = grid.at(r, k);
                }
            }
        }
        return rebuilt(plate, out, starts(plate, labels, figure, new int[] {up, right}, box, sideways, upright));
    }

    private static Plate rebuilt(Plate plate, char[][] cells, List<Start> starts) {
        List<Row> rows = new ArrayList<>();
        for (int r = 0; r < cells.length; r++) {
            rows.add(plate.rows().get(r).withCells(new String(cells[r])));
        }
        return plate.edit().rows(rows).starts(starts).build();
    }

    /** The figure's starts go along; turned top to bottom, every up becomes a down. */
    private static List<Start> starts(
            Plate plate, Labels labels, int figure, int[] move, int[] box, boolean sideways, boolean upright) {
        List<Start> out = new ArrayList<>();
        for (Start start : plate.starts()) {
            int r = plate.indexOf(start.row());
            int k = start.pleat() - plate.from();
            if (r < 0 || figure < 0 || labels.at(r, k) != figure) {
                out.add(start);
                continue;
            }
            int toRow = (upright ? box[0] + box[1] - r : r) - move[0];
            int to = (sideways ? box[2] + box[3] - k : k) + move[1];
            CableKind kind = upright ? start.cable().turned() : start.cable();
            out.add(plate.rows()
                    .get(toRow)
                    .id()
                    .map(id -> start.at(id, to + plate.from(), kind))
                    .orElse(start));
        }
        return out;
    }

    private static int[] box(Grid grid, Labels labels, int figure) {
        int[] box = {Integer.MAX_VALUE, -1, Integer.MAX_VALUE, -1};
        for (int r = 0; r < grid.height(); r++) {
            for (int k = 0; k < grid.frame().width(); k++) {
                if (labels.at(r, k) == figure && figure >= 0) {
                    box[0] = Math.min(box[0], r);
                    box[1] = Math.max(box[1], r);
                    box[2] = Math.min(box[2], k);
                    box[3] = Math.max(box[3], k);
                }
            }
        }
        return box;
    }

    private static int number(Map<String, Value> move, String key) {
        return move.get(key) instanceof Value.Num n ? n.number().intValue() : 0;
    }
}
