package platekeep.model.stitch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.Value;

/**
 * Ids for rows that have none: derived from the text, so that two people who give them apart give the same, or fresh by
 * chance for a row that is put in.
 */
public final class RowIds {

    private RowIds() {}

    /**
     * The plate with an id for every row and a start written down.
     *
     * <p>A row without an id, or with one that a row above it has, gets the id that its cells and its number among all
     * equal rows give (see {@link #derived}); ids that stand anywhere in the plate count as taken. Where no start stands
     * on a row of the plate, the one that it counts as having is written down. Give ids to the plate <em>as last
     * saved</em>, before any edit. A plate that lacks nothing is returned as it is.
     */
    public static Plate given(Plate plate) {
        List<Row> rows = withIds(plate);
        Plate named =
                rows.equals(plate.rows()) ? plate : plate.edit().rows(rows).build();
        return withStart(named);
    }

    /** An id that is not taken, by chance. */
    public static RowId fresh(Set<RowId> taken, RandomGenerator random) {
        if (taken.size() >= RowId.COUNT) {
            throw new IllegalArgumentException("all row ids are taken");
        }
        RowId id = RowId.of(random.nextInt(RowId.COUNT));
        while (taken.contains(id)) {
            id = RowId.of(random.nextInt(RowId.COUNT));
        }
        return id;
    }

    /**
     * The id that a row's cells give: SHA-256 over the UTF-8 of the cells, {@code #} and the row's number among all equal
     * rows from the top, as an unsigned big-endian number modulo 36<sup>4</sup>, in four digits; while that is taken,
     * another {@code #} is appended.
     *
     * @param cells the row's cells
     * @param number its number among the rows of the plate with equal cells, from the top, from 1
     * @param taken what it must not be
     */
    public static RowId derived(String cells, int number, Set<RowId> taken) {
        return RowId.derived(cells + "#" + number, taken::contains);
    }

    /** All row ids that stand in the plate: of rows, and wherever something names a row. */
    public static Set<RowId> standing(Plate plate) {
        Set<RowId> ids = new HashSet<>();
        plate.rows().forEach(row -> row.id().ifPresent(ids::add));
        plate.starts().stream().map(Start::row).forEach(ids::add);
        plate.marks().stream().map(Mark::row).forEach(ids::add);
        plate.remarks().forEach(remark -> remark.row().ifPresent(ids::add));
        for (Clash clash : plate.clashes()) {
            collect(clash.place(), ids);
            collect(clash.base(), ids);
            clash.sides().forEach(side -> collect(side.value(), ids));
        }
        return ids;
    }

    private static void collect(Value value, Set<RowId> ids) {
        if (value instanceof Value.Text text) {
            String word = text.string().split(" ", 2)[0];
            if (RowId.isRowId(word)) {
                ids.add(new RowId(word));
            }
        } else if (value instanceof Value.Items items) {
            items.items().forEach(item -> collect(item, ids));
        } else if (value instanceof Value.Entries entries) {
            entries.entries().values().forEach(entry -> collect(entry, ids));
        }
    }

    private static List<Row> withIds(Plate plate) {
        Set<RowId> taken = standing(plate);
        Set<RowId> kept = new HashSet<>();
        Map<String, Integer> equal = new HashMap<>();
        List<Row> rows = new ArrayList<>(plate.rows().size());
        for (Row row : plate.rows()) {
            int number = equal.merge(row.cells(), 1, Integer::sum);
            if (row.id().filter(kept::add).isPresent()) {
                rows.add(row);
            } else {
                RowId id = derived(row.cells(), number, taken);
                taken.add(id);
                rows.add(row.withId(id));
            }
        }
        return rows;
    }

    private static Plate withStart(Plate plate) {
        Map<RowId, Integer> index = Kinds.indexOf(plate.rows());
        if (plate.starts().stream().anyMatch(start -> index.containsKey(start.row()))) {
            return plate;
        }
        for (int r = plate.rows().size() - 1; r >= 0; r--) {
            Row row = plate.rows().get(r);
            for (int i = 0; i < row.cells().length(); i++) {
                if (row.cells().charAt(i) != Row.EMPTY) {
                    return plate.edit().starts(with(plate, row, i)).build();
                }
            }
        }
        return plate;
    }

    private static List<Start> with(Plate plate, Row row, int cell) {
        List<Start> starts = new ArrayList<>(plate.starts());
        starts.add(new Start(row.id().orElseThrow(), plate.from() + cell, CableKind.DOWN));
        return starts;
    }
}
