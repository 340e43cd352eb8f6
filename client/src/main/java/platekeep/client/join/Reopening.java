package platekeep.client.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import platekeep.model.join.Settling;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** Makes a decided clash open again, so that it can be decided differently. */
final class Reopening {
    private Reopening() {}

    /** The plate with the clash open, and with the rows there that deciding it had taken out. */
    static Plate of(Plate joined, Plate now, Clash clash) {
        if (now.clashes().contains(clash)) {
            return now;
        }
        Plate whole = withRows(joined, now, rows(joined, clash));
        List<Clash> clashes = new ArrayList<>(whole.clashes());
        clashes.add(clash);
        return whole.edit().clashes(clashes).build();
    }

    private static Set<RowId> rows(Plate joined, Clash clash) {
        return switch (clash.what()) {
            case ROWS -> Areas.ids(Settling.bothRuns(clash)).collect(Collectors.toCollection(TreeSet::new));
            case ROW, TWINS ->
                Optional.of(Settling.row(joined, clash))
                        .filter(r -> r >= 0)
                        .flatMap(r -> joined.rows().get(r).id())
                        .map(Set::of)
                        .orElse(Set.of());
            default -> Set.of();
        };
    }

    private static Plate withRows(Plate joined, Plate now, Set<RowId> wanted) {
        List<Row> rows = new ArrayList<>(now.rows());
        List<RowId> come = new ArrayList<>();
        for (int r = 0; r < joined.rows().size(); r++) {
            Row row = joined.rows().get(r);
            if (row.id().filter(wanted::contains).isPresent()
                    && now.indexOf(row.id().get()) < 0
                    && row.cells().length() == now.positions()) {
                rows.add(below(joined, r, rows), row);
                come.add(row.id().get());
            }
        }
        if (come.isEmpty()) {
            return now;
        }
        var marks = new ArrayList<>(now.marks());
        joined.marks().stream().filter(m -> come.contains(m.row())).forEach(marks::add);
        var remarks = new ArrayList<>(now.remarks());
        joined.remarks().stream()
                .filter(m -> m.row().filter(come::contains).isPresent())
                .forEach(remarks::add);
        return now.edit().rows(rows).marks(marks).remarks(remarks).build();
    }

    private static int below(Plate joined, int row, List<Row> rows) {
        for (int r = row - 1; r >= 0; r--) {
            for (int at = 0; at < rows.size(); at++) {
                if (rows.get(at).id().equals(joined.rows().get(r).id())) {
                    return at + 1;
                }
            }
        }
        return 0;
    }
}
