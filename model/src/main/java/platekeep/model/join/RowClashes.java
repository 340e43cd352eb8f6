package platekeep.model.join;

import java.util.List;
import java.util.Optional;
import platekeep.model.compare.Grid.Frame;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** Declares what could not be settled about whole rows. */
final class RowClashes {
    private final Colours colours;
    private final CellJoin cells;
    private final RowJoin rows;
    private final List<Optional<RowId>> ids;
    private final int from;
    private final int to;
    private final ClashList clashes;

    RowClashes(
            Colours colours,
            CellJoin cells,
            RowJoin rows,
            List<Optional<RowId>> ids,
            Frame frame,
            Pleats pleats,
            ClashList clashes) {
        this.colours = colours;
        this.cells = cells;
        this.rows = rows;
        this.ids = ids;
        from = frame.index(pleats.from());
        to = frame.index(pleats.to());
        this.clashes = clashes;
    }

    void declare() {
        List<Integer> order = rows.order();
        for (int r = 0; r < order.size(); r++) {
            int handle = order.get(r);
            if (rows.keptThoughTakenOut().contains(handle)) {
                declareRow(Clash.What.ROW, r, handle);
            }
            if (rows.twins().contains(handle)) {
                declareRow(Clash.What.TWINS, r, handle);
            }
            if (rows.movedTwice().contains(handle)) {
                clashes.add(
                        Clash.What.ORDER,
                        ClashList.place("row", JoinedIds.name(ids, r)),
                        handleName(rows.above(-1, handle)),
                        handleName(rows.above(0, handle)),
                        handleName(rows.above(1, handle)),
                        r);
            }
        }
        rows.torn().forEach(this::declareRows);
    }

    private void declareRow(Clash.What what, int r, int handle) {
        clashes.add(
                what,
                ClashList.place("row", JoinedIds.name(ids, r)),
                cellsOf(-1, handle),
                rows.row(0, handle) < 0 ? Value.NOTHING : cellsOf(0, handle),
                rows.row(1, handle) < 0 ? Value.NOTHING : cellsOf(1, handle),
                r);
    }

    private Value cellsOf(int s, int handle) {
        return Value.of(colours.letters(cells.rowAs(s, handle), from, to));
    }

    private void declareRows(RowJoin.Torn torn) {
        int first = Math.min(place(torn.mine()), place(torn.theirs()));
        Value above = first == 0 || first == Integer.MAX_VALUE ? Value.NOTHING : JoinedIds.name(ids, first - 1);
        clashes.add(
                Clash.What.ROWS,
                ClashList.place("after", above),
                Value.NOTHING,
                run(torn.mine()),
                run(torn.theirs()),
                first);
    }

    private int place(List<Integer> run) {
        return run.stream()
                .mapToInt(h -> rows.order().indexOf(h))
                .filter(r -> r >= 0)
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    private Value run(List<Integer> handles) {
        return Value.ofTexts(handles.stream()
                .map(h -> rows.order().indexOf(h))
                .filter(r -> r >= 0)
                .map(r -> ids.get(r).map(id -> id.text() + " ").orElse("")
                        + colours.letters(cells.picture()[r], from, to))
                .toList());
    }

    private Value handleName(int handle) {
        int r = handle < 0 ? -1 : rows.order().indexOf(handle);
        if (r >= 0) {
            return JoinedIds.name(ids, r);
        }
        return handle < 0
                ? Value.NOTHING
                : rows.idOf(handle).map(id -> (Value) Value.of(id.text())).orElse(Value.NOTHING);
    }
}
