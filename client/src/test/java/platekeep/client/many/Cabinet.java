package platekeep.client.many;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;
import platekeep.model.text.Slugs;

/** The plates of a line of versions: where each lies and what it says, with the changes since the last version. */
final class Cabinet {
    private final Map<String, String> pathOf = new HashMap<>();
    private final Map<String, String> idAt = new HashMap<>();
    private final Map<String, byte[]> texts = new HashMap<>();
    private final List<String> ids = new ArrayList<>();
    private SortedMap<String, Optional<byte[]>> changes = new TreeMap<>();

    Cabinet() {
        // nothing lies in it yet
    }

    /** What another line of versions begins with. */
    Cabinet(Cabinet from) {
        pathOf.putAll(from.pathOf);
        idAt.putAll(from.idAt);
        texts.putAll(from.texts);
        ids.addAll(from.ids);
    }

    List<String> ids() {
        return ids;
    }

    Plate plate(String id) {
        return PlateText.read(id, texts.get(id)).value().orElseThrow();
    }

    Optional<Plate> maybe(String id) {
        return texts.containsKey(id) ? Optional.of(plate(id)) : Optional.empty();
    }

    void put(Plate plate) {
        byte[] text = PlateText.bytes(plate);
        String former = pathOf.get(plate.id());
        boolean comesBack =
                former != null && idAt.getOrDefault(former, plate.id()).equals(plate.id());
        String path = comesBack ? former : place(plate);
        if (texts.put(plate.id(), text) == null) {
            ids.add(plate.id());
        }
        pathOf.put(plate.id(), path);
        idAt.put(path, plate.id());
        changes.put(path, Optional.of(text));
    }

    /** Where a new plate goes; where the place is taken, the greater id gives way, also when it was there first. */
    private String place(Plate plate) {
        String path = Slugs.path(plate);
        String holder = idAt.get(path);
        if (holder == null) {
            return path;
        }
        if (Slugs.givesWay(plate.id(), holder)) {
            return Slugs.withId(path, plate.id());
        }
        String other = Slugs.withId(path, holder);
        pathOf.put(holder, other);
        idAt.put(other, holder);
        changes.put(other, Optional.of(texts.get(holder)));
        return path;
    }

    void putAway(String id) {
        String path = pathOf.get(id);
        idAt.remove(path);
        texts.remove(id);
        ids.remove(id);
        changes.put(path, Optional.empty());
    }

    /** What has changed since this was asked last. */
    SortedMap<String, Optional<byte[]>> taken() {
        SortedMap<String, Optional<byte[]>> taken = changes;
        changes = new TreeMap<>();
        return taken;
    }

    /** Puts some other file there. */
    void put(String path, byte[] bytes) {
        changes.put(path, Optional.of(bytes));
    }
}
