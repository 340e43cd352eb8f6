package platekeep.model.join.edits.kind;

import java.util.List;
import platekeep.model.join.edits.change.Undetermined;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** Cables drawn, recoloured and taken out. */
final class CableEdits {
    private CableEdits() {}

    static void recolour(Studio s) {
        RowId row = s.rowId();
        char ink = s.inkBut(s.grid.at(row, s.position));
        int n = 1 + s.upTo(4);
        for (int p = s.position; p < s.position + n; p++) {
            if (s.grid.at(row, p) != Row.EMPTY) {
                s.paint(row, p, ink);
            }
        }
    }

    static void draw(Studio s) {
        RowId row = s.rowId();
        char ink = s.any(s.keys());
        int n = 1 + s.upTo(6);
        for (int p = s.position - n / 2; p < s.position - n / 2 + n; p++) {
            s.paint(row, p, ink);
        }
    }

    static void erase(Studio s) {
        int n = 1 + s.upTo(3);
        for (int p = s.position; p < s.position + n; p++) {
            s.paint(s.rowId(), p, Row.EMPTY);
        }
    }

    static void redrawRow(Studio s) {
        RowId row = s.rowId();
        char ink = s.any(s.keys());
        int a = s.from() + s.upTo(s.base.positions());
        int b = s.from() + s.upTo(s.base.positions());
        for (int p = s.from(); p < s.to(); p++) {
            boolean inside = p >= Math.min(a, b) && p <= Math.max(a, b);
            s.paint(row, p, inside ? (s.upTo(4) == 0 ? s.any(s.keys()) : ink) : Row.EMPTY);
        }
    }

    static void patch(Studio s) {
        char ink = s.upTo(5) == 0 ? Row.EMPTY : s.any(s.keys());
        int w = 1 + s.upTo(6);
        for (RowId row : s.rowsFromHere(2 + s.upTo(4))) {
            for (int p = s.position; p < s.position + w; p++) {
                s.paint(row, p, ink);
            }
        }
    }

    static void scatter(Studio s) {
        for (int i = 3 + s.upTo(6); i > 0; i--) {
            List<RowId> near = s.rowsFromHere(4);
            s.paint(s.any(near), s.position + s.upTo(7) - 3, s.any(s.keys()));
        }
    }

    static void bothHalvesOfARow(Studio s) {
        RowId row = s.rowId();
        if (s.grid.row(row).isEmpty()) {
            throw new Undetermined("blank");
        }
        s.paint(row, s.grid.row(row).firstKey() - 1, s.any(s.keys()));
        s.paint(row, s.grid.row(row).lastKey() + 1, s.any(s.keys()));
    }
}
