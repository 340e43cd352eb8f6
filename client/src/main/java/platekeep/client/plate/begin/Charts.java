package platekeep.client.plate.begin;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.State;
import platekeep.model.stitch.RowIds;

/** Puts a plate together from rows of cells. */
final class Charts {
    private Charts() {}

    /**
     * A plate that begins at pleat 1. Up and down run through all of it as on one checkerboard, down at the left end of
     * the lowest row, which a start at the leftmost cable of the lowest row that has one says.
     */
    static Plate plate(String id, String title, Palette palette, List<String> cells, RandomGenerator random) {
        Set<RowId> taken = new HashSet<>();
        List<Row> rows = new ArrayList<>();
        for (String row : cells) {
            RowId rowId = RowIds.fresh(taken, random);
            taken.add(rowId);
            rows.add(new Row(Optional.of(rowId), row));
        }
        return new Draft(id, title)
                .state(Optional.of(State.IDEA))
                .palette(palette)
                .pleats(Optional.of(new Pleats(1, cells.get(0).length() + 1)))
                .rows(rows)
                .starts(start(rows).stream().toList())
                .build();
    }

    private static Optional<Start> start(List<Row> rows) {
        for (int r = rows.size() - 1; r >= 0; r--) {
            String cells = rows.get(r).cells();
            for (int i = 0; i < cells.length(); i++) {
                if (cells.charAt(i) != Row.EMPTY) {
                    return Optional.of(new Start(rows.get(r).id().orElseThrow(), 1 + i, kind(rows.size(), r, i)));
                }
            }
        }
        return Optional.empty();
    }

    /** What a cable is on the checkerboard. */
    static CableKind kind(int rows, int row, int index) {
        return CableKind.DOWN.turned(rows - 1 - row + index);
    }
}
