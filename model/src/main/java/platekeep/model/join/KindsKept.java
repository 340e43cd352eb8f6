package platekeep.model.join;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.compare.FigureLabels;
import platekeep.model.compare.Grid;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/**
 * Up and down in the joined plate, kept where neither side alone turned them: a figure that only the two edits together
 * parted from its start, or that followed a first start that is another one now, gets a start of its own.
 */
final class KindsKept {

    private KindsKept() {}

    /** The kind of every cable of one plate, figure by figure. */
    private static final class Phases {
        private final Plate plate;
        private final Grid grid;
        private final FigureLabels labels;
        private final Map<Integer, Integer> phase = new HashMap<>();
        private final int follower;

        Phases(Plate plate, Grid grid) {
            this.plate = plate;
            this.grid = grid;
            labels = FigureLabels.of(grid);
            Optional<Integer> first = Optional.empty();
            for (Start start : plate.starts()) {
                int row = plate.indexOf(start.row());
                int k = grid.frame().index(start.pleat());
                if (row >= 0) {
                    int p = bit(start.cable()) ^ parity(row, k);
                    first = first.isEmpty() ? Optional.of(p) : first;
                    if (labels.at(row, k) >= 0) {
                        phase.putIfAbsent(labels.at(row, k), p);
                    }
                }
            }
            follower = first.orElseGet(this::unsaid);
        }

        /** A plate without starts begins with a down cable at the leftmost cable of its lowest row that has one. */
        private int unsaid() {
            for (int row = grid.height() - 1; row >= 0; row--) {
                for (int k = 0; k < grid.frame().width(); k++) {
                    if (labels.at(row, k) >= 0) {
                        return bit(CableKind.DOWN) ^ parity(row, k);
                    }
                }
            }
            return 0;
        }

        private int parity(int row, int k) {
            return (plate.rows().size() - 1 - row + k) & 1;
        }

        boolean hasStart(int figure) {
            return phase.containsKey(figure);
        }

        /** 0 for a down cable, 1 for an up cable, -1 where there is none. */
        int kind(int row, int k) {
            int figure = labels.at(row, k);
            return figure < 0 ? -1 : phase.getOrDefault(figure, follower) ^ parity(row, k);
        }
    }

    private static int bit(CableKind kind) {
        return kind == CableKind.DOWN ? 0 : 1;
    }

    /** Where a cable of the joined plate lies in the earlier plate ({@code s} -1) or on a side: row and index, or null. */
    interface Origin {
        Optional<int[]> of(int s, int row, int k);
    }

    /** The starts that have to be added so that no cable is turned that neither side alone turned. */
    static List<Start> missing(Plate joined, Grid cells, Plate base, Grid baseCells, Side[] sides, Origin origin) {
        Phases now = new Phases(joined, cells);
        Phases before = new Phases(base, baseCells);
        Phases mine = new Phases(sides[0].plate(), sides[0].grid());
        Phases theirs = new Phases(sides[1].plate(), sides[1].grid());
        Map<Integer, Boolean> seen = new HashMap<>();
        List<Start> out = new ArrayList<>();
        for (int row = cells.height() - 1; row >= 0; row--) {
            for (int k = 0; k < cells.frame().width(); k++) {
                int figure = now.labels.at(row, k);
                if (figure < 0 || now.hasStart(figure) || seen.containsKey(figure)) {
                    continue;
                }
                int r = row;
                int c = k;
                int b = origin.of(-1, r, c).map(o -> before.kind(o[0], o[1])).orElse(-1);
                if (b < 0) {
                    continue;
                }
                seen.put(figure, true);
                boolean turnedAlone =
                        turnedAlone(origin.of(0, r, c), mine, b) || turnedAlone(origin.of(1, r, c), theirs, b);
                Optional<RowId> id = joined.rows().get(row).id();
                if (now.kind(row, k) != b && !turnedAlone && id.isPresent()) {
                    out.add(new Start(id.get(), cells.frame().position(k), b == 0 ? CableKind.DOWN : CableKind.UP));
                }
            }
        }
        return out;
    }

    /** Whether a side by itself left the cable turned, in a figure without a start of its own: that is not for a join to mend. */
    private static boolean turnedAlone(Optional<int[]> place, Phases side, int kind) {
        if (place.isEmpty()) {
            return false;
        }
        int row = place.get()[0];
        int k = place.get()[1];
        int figure = side.labels.at(row, k);
        return figure >= 0 && !side.hasStart(figure) && side.kind(row, k) != kind;
    }
}
