package platekeep.client.git.partner;

import java.io.IOException;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import platekeep.client.git.plates.PlateFiles;
import platekeep.client.git.plates.Shelf;
import platekeep.client.git.store.FileAt;

/**
 * The files of one version by what they are.
 *
 * @param plates by the plate's id
 * @param series by the series' id
 * @param others by path: pictures, what the library says about itself, doubles, texts that do not say whose they are
 */
record Sorted(Map<String, Placed> plates, Map<String, Placed> series, Map<String, Placed> others) {

    /** A file in its place. */
    record Placed(String path, FileAt file) {}

    static Sorted of(Shelf shelf, Shelf.Ids ids) throws IOException {
        Map<String, Placed> plates = new TreeMap<>();
        Map<String, Placed> series = new TreeMap<>();
        Map<String, Placed> others = new TreeMap<>();
        Set<String> onShelf = new HashSet<>();
        for (String id : shelf.plates()) {
            String path = shelf.path(id).orElseThrow();
            onShelf.add(path);
            plates.put(id, new Placed(path, shelf.file(id).orElseThrow()));
        }
        for (Map.Entry<String, FileAt> entry : shelf.files().files().entrySet()) {
            Placed placed = new Placed(entry.getKey(), entry.getValue());
            if (onShelf.contains(entry.getKey())) {
                continue;
            }
            Optional<String> seriesId = PlateFiles.isSeries(entry.getKey())
                    ? ids.plateOf(entry.getKey(), entry.getValue().content())
                    : Optional.empty();
            if (seriesId.isEmpty() || series.putIfAbsent(seriesId.get(), placed) != null) {
                others.put(entry.getKey(), placed);
            }
        }
        return new Sorted(plates, series, others);
    }
}
