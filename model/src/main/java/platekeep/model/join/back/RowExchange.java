package platekeep.model.join.back;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import platekeep.model.compare.Place;
import platekeep.model.compare.Side;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/**
 * Puts the places of a change in a chart from how one plate has them to how another has them. Rows are known by their
 * ids; a place on a row without one is left alone.
 */
final class RowExchange {
    private final Plate base;
    private final Plate side;
    private final Map<RowId, Integer> inBase;
    private final Map<RowId, Integer> inSide;
    private final Map<RowId, List<Place>> places = new LinkedHashMap<>();

    RowExchange(Plate base, Plate side, List<Place> all) {
        this.base = base;
        this.side = side;
        this.inBase = all.isEmpty() ? Map.of() : indexes(base.rows());
        this.inSide = all.isEmpty() ? Map.of() : indexes(side.rows());
        for (Place place : all) {
            Plate of = place.side() == Side.BEFORE ? base : side;
            of.rows()
                    .get(place.row())
                    .id()
                    .ifPresent(id ->
                            places.computeIfAbsent(id, i -> new ArrayList<>()).add(place));
        }
    }

    private static Map<RowId, Integer> indexes(List<Row> rows) {
        Map<RowId, Integer> out = new HashMap<>();
        for (int r = 0; r < rows.size(); r++) {
            int index = r;
            rows.get(r).id().ifPresent(id -> out.putIfAbsent(id, index));
        }
        return out;
    }

    private Map<RowId, Integer> rowsOf(Plate plate) {
        return plate == base ? inBase : inSide;
    }

    /** Counts how the places stand in a plate. */
    void count(Plate now, Reversal.Tally tally) {
        if (places.isEmpty()) {
            return;
        }
        Map<RowId, Integer> here = indexes(now.rows());
        Letters ofBase = new Letters(base, now);
        Letters ofSide = new Letters(side, now);
        places.forEach((id, list) -> {
            if (!inBase.containsKey(id) || !inSide.containsKey(id)) {
                tally.count(
                        here.containsKey(id) == inSide.containsKey(id), here.containsKey(id) == inBase.containsKey(id));
                return;
            }
            if (wasMoved(id)) {
                Optional<RowId> above = above(id, now.rows());
                tally.count(above.equals(above(id, side.rows())), above.equals(above(id, base.rows())));
            }
            for (Place place : here.containsKey(id) ? list : List.<Place>of()) {
                for (int p = place.from(); p <= place.to(); p++) {
                    char was = ofBase.of(base.cellAt(inBase.get(id), p));
                    char is = ofSide.of(side.cellAt(inSide.get(id), p));
                    char cell = now.cellAt(here.get(id), p);
                    if (was != is) {
                        tally.count(cell == is, cell == was);
                    }
                }
            }
        });
    }

    /** The plate with the places as {@code to} has them, where they are as {@code from} has them. */
    Plate put(Plate now, Plate from, Plate to) {
        if (places.isEmpty()) {
            return now;
        }
        Letters ofFrom = new Letters(from, now);
        Letters ofTo = new Letters(to, now);
        List<Row> rows = new ArrayList<>(now.rows());
        Set<RowId> gone = new HashSet<>();
        Set<RowId> come = new HashSet<>();
        for (Map.Entry<RowId, List<Place>> entry : places.entrySet()) {
            RowId id = entry.getKey();
            int at = indexOf(rows, id);
            if (!rowsOf(to).containsKey(id)) {
                if (at >= 0) {
                    rows.remove(at);
                    gone.add(id);
                }
            } else if (at < 0) {
                rows.add(placeFor(id, rows, to), new Row(Optional.of(id), cells(id, now, to, ofTo)));
                come.add(id);
            } else if (rowsOf(from).containsKey(id)) {
                Row row =
                        rows.get(at).withCells(exchanged(rows.get(at), entry.getValue(), now, from, to, ofFrom, ofTo));
                rows.set(at, row);
                if (wasMoved(id)) {
                    rows.remove(at);
                    rows.add(placeFor(id, rows, to), row);
                }
            }
        }
        return rows.equals(now.rows()) ? now : withThings(now, rows, ofTo, to, gone, come);
    }

    private static int indexOf(List<Row> rows, RowId id) {
        for (int r = 0; r < rows.size(); r++) {
            if (rows.get(r).id().filter(id::equals).isPresent()) {
                return r;
            }
        }
        return -1;
    }

    private String exchanged(Row row, List<Place> list, Plate now, Plate from, Plate to, Letters ofFrom, Letters ofTo) {
        RowId id = row.id().orElseThrow();
        StringBuilder cells = new StringBuilder(row.cells());
        for (Place place : list) {
            for (int p = place.from(); p <= place.to(); p++) {
                int k = p - now.from();
                boolean isThere = k >= 0 && k < cells.length();
                if (isThere
                        && cells.charAt(k) == ofFrom.of(from.cellAt(rowsOf(from).get(id), p))) {
                    cells.setCharAt(k, ofTo.put(to.cellAt(rowsOf(to).get(id), p), to));
                }
            }
        }
        return cells.toString();
    }

    private String cells(RowId id, Plate now, Plate to, Letters ofTo) {
        StringBuilder cells = new StringBuilder();
        for (int k = 0; k < now.positions(); k++) {
            cells.append(ofTo.put(to.cellAt(rowsOf(to).get(id), now.from() + k), to));
        }
        return cells.toString();
    }

    /** Below the nearest row above it in a plate that is there. */
    private int placeFor(RowId id, List<Row> rows, Plate to) {
        for (int r = rowsOf(to).get(id) - 1; r >= 0; r--) {
            Optional<RowId> above = to.rows().get(r).id();
            int at = above.map(a -> indexOf(rows, a)).orElse(-1);
            if (at >= 0) {
                return at + 1;
            }
        }
        return 0;
    }

    /** Whether the change moved the whole row past rows that it left alone. */
    private boolean wasMoved(RowId id) {
        boolean whole = places.get(id).stream().anyMatch(place -> {
            Plate of = place.side() == Side.BEFORE ? base : side;
            return place.from() == of.from() && place.to() == of.from() + of.positions() - 1;
        });
        return whole
                && inBase.containsKey(id)
                && inSide.containsKey(id)
                && !above(id, base.rows()).equals(above(id, side.rows()));
    }

    /** The nearest row above that both plates have and the change is not about. */
    private Optional<RowId> above(RowId id, List<Row> rows) {
        for (int r = indexOf(rows, id) - 1; r >= 0; r--) {
            Optional<RowId> above = rows.get(r).id();
            if (above.filter(a -> inBase.containsKey(a) && inSide.containsKey(a) && !places.containsKey(a))
                    .isPresent()) {
                return above;
            }
        }
        return Optional.empty();
    }

    /** What lies on a row goes and comes with it. */
    private static Plate withThings(
            Plate now, List<Row> rows, Letters letters, Plate to, Set<RowId> gone, Set<RowId> come) {
        var marks = new ArrayList<>(
                now.marks().stream().filter(m -> !gone.contains(m.row())).toList());
        to.marks().stream().filter(m -> come.contains(m.row())).forEach(marks::add);
        var remarks = new ArrayList<>(now.remarks().stream()
                .filter(m -> m.row().filter(gone::contains).isEmpty())
                .toList());
        to.remarks().stream()
                .filter(m -> m.row().filter(come::contains).isPresent())
                .forEach(remarks::add);
        return now.edit()
                .rows(rows)
                .palette(letters.palette())
                .marks(marks.stream().distinct().toList())
                .remarks(remarks.stream().distinct().toList())
                .build();
    }
}
