package platekeep.client.plate.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** Gives the cables of an area another colour; where none lies, none is laid. */
public final class Recolour {

    private Recolour() {}

    /** The colours of the cables in an area, by their keys. */
    public static Set<Character> there(Plate plate, Area area) {
        Set<Character> there = new TreeSet<>();
        area.cables(plate).ifPresent(cables -> {
            boolean[] seen = new boolean[128];
            for (int row = cables.top(); row <= cables.bottom(); row++) {
                String cells = plate.rows().get(row).cells();
                for (int i = cables.left(); i <= cables.right(); i++) {
                    seen[cells.charAt(i) & 127] |= cables.has(row, i);
                }
            }
            for (char key = 0; key < seen.length; key++) {
                if (seen[key]) {
                    there.add(key);
                }
            }
        });
        return there;
    }

    /**
     * The plate with the cables of an area in another colour.
     *
     * @param from only those that have this colour; empty for all
     */
    public static Plate of(Plate plate, Area area, Optional<Character> from, char to) {
        return area.cables(plate)
                .map(cables -> recoloured(plate, cables, from, to))
                .orElse(plate);
    }

    private static Plate recoloured(Plate plate, Area cables, Optional<Character> from, char to) {
        List<Row> rows = new ArrayList<>(plate.rows());
        for (int row = cables.top(); row <= cables.bottom(); row++) {
            char[] cells = rows.get(row).cells().toCharArray();
            boolean isChanged = false;
            for (int i = cables.left(); i <= cables.right(); i++) {
                if (cables.has(row, i) && cells[i] != to && from.orElse(cells[i]) == cells[i]) {
                    cells[i] = to;
                    isChanged = true;
                }
            }
            if (isChanged) {
                rows.set(row, rows.get(row).withCells(String.valueOf(cells)));
            }
        }
        return plate.edit().rows(rows).build();
    }
}
