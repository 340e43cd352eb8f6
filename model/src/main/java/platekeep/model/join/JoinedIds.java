package platekeep.model.join;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;
import platekeep.model.stitch.RowIds;

/** The ids of the joined plate's rows, each once: of two different rows under one id, one gets a derived id. */
final class JoinedIds {

    private JoinedIds() {}

    /** How a row of the joined plate, top row 0, is named in a clash: by id, else by its number from the bottom. */
    static Value name(List<Optional<RowId>> ids, int row) {
        return ids.get(row).map(id -> Value.of(id.text())).orElse(Value.of(ids.size() - row));
    }

    /** The ids from the top row; a row that has none in any plate has none. */
    static List<Optional<RowId>> of(RowJoin rows, CellJoin cells) {
        List<Integer> order = rows.order();
        Map<RowId, List<Integer>> places = new HashMap<>();
        List<Optional<RowId>> ids = new ArrayList<>();
        for (int r = 0; r < order.size(); r++) {
            Optional<RowId> id = rows.idOf(order.get(r));
            ids.add(id);
            int row = r;
            id.ifPresent(i -> places.computeIfAbsent(i, k -> new ArrayList<>(1)).add(row));
        }
        Set<RowId> taken = new HashSet<>(places.keySet());
        places.values().stream().filter(p -> p.size() > 1).forEach(same -> {
            same.sort(Comparator.comparing((Integer r) -> order.get(r) >= rows.base())
                    .thenComparing(r -> rows.cellsOf(order.get(r)))
                    .thenComparing(r -> r));
            for (int r : same.subList(1, same.size())) {
                RowId derived = RowIds.derived(rows.cellsOf(order.get(r)), 1, taken);
                taken.add(derived);
                ids.set(r, Optional.of(derived));
            }
        });
        return ids;
    }
}
