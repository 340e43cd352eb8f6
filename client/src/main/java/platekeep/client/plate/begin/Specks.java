package platekeep.client.plate.begin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Cleans a chart of specks: patches of one colour that are too small to be worked take the colour around them. */
final class Specks {
    private Specks() {}

    /**
     * A chart without patches of fewer than so many places; the smallest go first, each into the colour that it touches
     * most. A chart of one patch is left alone. Each round makes fewer patches, so it ends.
     *
     * @param cells colours by number, row by row; negative where nothing lies, which is a colour like any other here
     */
    static int[] cleaned(int[] cells, int width, int least) {
        int[] clean = cells.clone();
        for (int size = 1; size < least; size++) {
            boolean found = true;
            while (found) {
                found = false;
                for (List<Integer> patch : patches(clean, width, size)) {
                    found |= dissolve(clean, width, patch);
                }
            }
        }
        return clean;
    }

    /** The patches of at most so many places. */
    private static List<List<Integer>> patches(int[] cells, int width, int most) {
        boolean[] seen = new boolean[cells.length];
        List<List<Integer>> small = new ArrayList<>();
        for (int start = 0; start < cells.length; start++) {
            if (!seen[start]) {
                List<Integer> patch = new ArrayList<>(List.of(start));
                seen[start] = true;
                for (int at = 0; at < patch.size(); at++) {
                    for (int near : around(patch.get(at), width, cells.length)) {
                        if (!seen[near] && cells[near] == cells[start]) {
                            seen[near] = true;
                            patch.add(near);
                        }
                    }
                }
                if (patch.size() <= most) {
                    small.add(patch);
                }
            }
        }
        return small;
    }

    private static boolean dissolve(int[] cells, int width, List<Integer> patch) {
        int own = cells[patch.get(0)];
        if (patch.stream().anyMatch(at -> cells[at] != own)) {
            return false;
        }
        Map<Integer, Integer> touched = new HashMap<>();
        for (int at : patch) {
            for (int near : around(at, width, cells.length)) {
                if (cells[near] != own) {
                    touched.merge(cells[near], 1, Integer::sum);
                }
            }
        }
        int most = touched.entrySet().stream()
                .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(own);
        patch.forEach(at -> cells[at] = most);
        return most != own;
    }

    static List<Integer> around(int at, int width, int length) {
        List<Integer> near = new ArrayList<>(4);
        if (at % width > 0) {
            near.add(at - 1);
        }
        if (at % width < width - 1) {
            near.add(at + 1);
        }
        if (at >= width) {
            near.add(at - width);
        }
        if (at + width < length) {
            near.add(at + width);
        }
        return near;
    }
}
