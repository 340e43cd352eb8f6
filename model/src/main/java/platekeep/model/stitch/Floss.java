package platekeep.model.stitch;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/**
 * How much of a plate is worked in each colour.
 *
 * @param cables cables by key; every key of the palette is there, with 0 where it has none, and every key that a cable has
 * @param marks single stitches on top by key; only keys that have some
 * @param lines geometric lines by key; only keys that have some
 */
public record Floss(
        SortedMap<Character, Integer> cables,
        SortedMap<Character, Integer> marks,
        SortedMap<Character, Integer> lines) {

    public Floss {
        cables = Collections.unmodifiableSortedMap(new TreeMap<>(cables));
        marks = Collections.unmodifiableSortedMap(new TreeMap<>(marks));
        lines = Collections.unmodifiableSortedMap(new TreeMap<>(lines));
    }

    /** Linear in the cells of the chart. */
    public static Floss of(Plate plate) {
        SortedMap<Character, Integer> cables = new TreeMap<>();
        plate.palette().entries().keySet().forEach(key -> cables.put(key, 0));
        int[] count = new int[Character.MAX_VALUE + 1];
        for (Row row : plate.rows()) {
            String cells = row.cells();
            for (int i = 0; i < cells.length(); i++) {
                count[cells.charAt(i)]++;
            }
        }
        count[Row.EMPTY] = 0;
        for (char key = 0; key < Character.MAX_VALUE; key++) {
            if (count[key] > 0) {
                cables.put(key, count[key]);
            }
        }
        SortedMap<Character, Integer> marks = new TreeMap<>();
        plate.marks().stream().map(Mark::colour).forEach(key -> marks.merge(key, 1, Integer::sum));
        SortedMap<Character, Integer> lines = new TreeMap<>();
        plate.lines().stream().map(Line::colour).forEach(key -> lines.merge(key, 1, Integer::sum));
        return new Floss(cables, marks, lines);
    }

    /** How many cables are worked in a colour. */
    public int cables(char key) {
        return cables.getOrDefault(key, 0);
    }

    /** How many cables the plate has. */
    public int allCables() {
        return cables.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Whether a geometric line is worked in a colour. */
    public boolean isInLines(char key) {
        return lines.containsKey(key);
    }

    /** Whether anything at all is worked in a colour. */
    public boolean isUsed(char key) {
        return cables(key) > 0 || marks.containsKey(key) || isInLines(key);
    }
}
