package platekeep.client.plate.edit;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** How many cables each colour has, counted on from one plate to the next: only rows that changed are read. */
public final class ColourCounts {
    private final int[] count = new int[128];
    private List<Row> counted = List.of();

    /** The cables of each colour of a plate's palette, 0 too. */
    public SortedMap<Character, Integer> of(Plate plate) {
        List<Row> rows = plate.rows();
        for (int r = 0; r < Math.max(rows.size(), counted.size()); r++) {
            if (r >= rows.size() || r >= counted.size() || rows.get(r) != counted.get(r)) {
                add(counted, r, -1);
                add(rows, r, 1);
            }
        }
        counted = rows;
        SortedMap<Character, Integer> counts = new TreeMap<>();
        plate.palette().entries().keySet().forEach(key -> counts.put(key, count[key & 127]));
        return counts;
    }

    private void add(List<Row> rows, int r, int sign) {
        if (r < rows.size()) {
            String cells = rows.get(r).cells();
            for (int i = 0; i < cells.length(); i++) {
                count[cells.charAt(i) & 127] += sign;
            }
        }
    }
}
