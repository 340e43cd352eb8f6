package platekeep.model.join.edits.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import platekeep.model.join.edits.change.NewRow;
import platekeep.model.join.edits.change.Undetermined;
import platekeep.model.plate.RowId;

/** Rows put in, taken out and moved. */
final class RowEdits {
    private RowEdits() {}

    static void insert(Studio s) {
        int gap = s.row + s.upTo(2);
        List<NewRow> rows = new ArrayList<>();
        for (int i = 1 + s.upTo(3); i > 0; i--) {
            rows.add(new NewRow(s.maker.freshId(), changedCopy(s)));
        }
        put(s, gap, rows);
    }

    private static TreeMap<Integer, Character> changedCopy(Studio s) {
        TreeMap<Integer, Character> cells = Studio.copy(s.grid.row(s.rowId()));
        for (int i = 1 + s.upTo(6); i > 0; i--) {
            int p = s.from() + s.upTo(s.base.positions());
            if (s.upTo(4) == 0) {
                cells.remove(p);
            } else {
                cells.put(p, s.any(s.keys()));
            }
        }
        return cells;
    }

    static void insertCopy(Studio s) {
        List<NewRow> rows = new ArrayList<>();
        for (int i = 1 + s.upTo(2); i > 0; i--) {
            rows.add(new NewRow(s.maker.freshId(), Studio.copy(s.grid.row(s.rowId()))));
        }
        put(s, s.row + s.upTo(2), rows);
    }

    static void insertBlank(Studio s) {
        List<NewRow> rows = new ArrayList<>();
        for (int i = 1 + s.upTo(2); i > 0; i--) {
            rows.add(new NewRow(s.maker.freshId(), new TreeMap<>()));
        }
        put(s, s.chance.nextBoolean() ? 0 : s.order.size(), rows);
    }

    private static void put(Studio s, int gap, List<NewRow> rows) {
        if (s.change.added.put(gap, rows) != null) {
            throw new Undetermined("put in twice at one place");
        }
    }

    static void delete(Studio s) {
        take(s, s.rowsFromHere(1 + s.upTo(2)));
    }

    static void deleteSeveral(Studio s) {
        List<RowId> rows = new ArrayList<>();
        for (int i = 2 + s.upTo(2); i > 0; i--) {
            rows.add(s.any(s.order));
        }
        take(s, rows.stream().distinct().toList());
    }

    static void take(Studio s, List<RowId> rows) {
        if (s.order.size() - s.change.gone.size() - rows.size() < 2) {
            throw new Undetermined("too few rows");
        }
        s.change.gone.addAll(rows);
    }

    static void moveRow(Studio s) {
        if (s.order.size() < 8) {
            throw new Undetermined("too few rows");
        }
        int gap = s.upTo(s.order.size() + 1);
        if (gap - s.row < 4 && s.row - gap < 3) {
            throw new Undetermined("too near");
        }
        s.change.moved.put(s.rowId(), gap);
    }

    /** The picture a row higher or lower; the blank row goes to the other end. */
    static void liftSameIds(Studio s) {
        boolean up = s.chance.nextBoolean();
        RowId edge = s.order.get(up ? 0 : s.order.size() - 1);
        if (!s.blank(edge) || s.order.size() < 5) {
            throw new Undetermined("no room");
        }
        s.change.moved.put(edge, up ? s.order.size() : 0);
        s.change.lifted += up ? 1 : -1;
    }

    /** The picture some rows higher or lower; blank rows go at one end, new ones come at the other. */
    static void liftFreshIds(Studio s) {
        boolean up = s.chance.nextBoolean();
        List<RowId> gone = new ArrayList<>();
        for (int i = 0; i < 1 + s.upTo(2); i++) {
            RowId edge = s.order.get(up ? i : s.order.size() - 1 - i);
            if (!s.blank(edge)) {
                throw new Undetermined("no room");
            }
            gone.add(edge);
        }
        take(s, gone);
        s.change.lifted += up ? gone.size() : -gone.size();
        put(
                s,
                up ? s.order.size() : 0,
                gone.stream()
                        .map(g -> new NewRow(s.maker.freshId(), new TreeMap<>()))
                        .toList());
    }
}
