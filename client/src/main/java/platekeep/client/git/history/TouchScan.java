package platekeep.client.git.history;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.Repository;
import platekeep.client.git.plates.PlateFiles;
import platekeep.client.git.plates.PlateIdScan;
import platekeep.client.git.plates.Shelf;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.TreeDiff;
import platekeep.client.git.store.TreeFiles;

/** Finds what a version did to plates, from its tree and its parents' trees. */
final class TouchScan implements AutoCloseable {
    private final ObjectReader reader;
    private final TreeDiff diff;
    private final Map<ObjectId, String> plateOf;

    /**
     * @param plateOf whose text a content is, as far as it is known; what is found out is noted there
     */
    TouchScan(Repository repository, Map<ObjectId, String> plateOf) {
        this.reader = repository.newObjectReader();
        this.diff = new TreeDiff(reader);
        this.plateOf = plateOf;
    }

    /** What differs at one path: the file in each parent and in the version, where it is there. */
    private record Differing(String path, List<Optional<ObjectId>> before, Optional<ObjectId> after) {
        boolean isNewToAll() {
            return before.stream().noneMatch(after::equals);
        }
    }

    /** A version with one parent or none. */
    List<Touch> single(List<ObjectId> parents, ObjectId tree) throws IOException {
        return touches(differing(parents, tree)).values().stream().toList();
    }

    /**
     * A version that joins several.
     *
     * @param changedOnBothSides plates that more than one line had changed: here the join decided
     */
    List<Touch> join(List<ObjectId> parents, ObjectId tree, Set<String> changedOnBothSides) throws IOException {
        List<Differing> all = differing(parents, tree);
        Map<String, Touch> touches =
                touches(all.stream().filter(Differing::isNewToAll).toList());
        touches(all).forEach((plateId, touch) -> {
            if (changedOnBothSides.contains(plateId)) {
                touches.put(plateId, touch);
            }
        });
        return touches.values().stream().toList();
    }

    private Map<String, Touch> touches(List<Differing> differing) throws IOException {
        Map<String, Touch> touches = new LinkedHashMap<>();
        Map<String, Touch> gone = new LinkedHashMap<>();
        for (Differing file : differing) {
            Optional<String> before = Optional.empty();
            for (Optional<ObjectId> content : file.before()) {
                before = before.isPresent() || content.isEmpty() ? before : plateOf(content.get(), Optional.empty());
            }
            if (file.after().isPresent()) {
                plateOf(file.after().get(), before)
                        .ifPresent(id -> touches.merge(id, new Touch(id, file.path(), file.after()), TouchScan::plate));
            }
            before.ifPresent(id -> gone.putIfAbsent(id, new Touch(id, file.path(), Optional.empty())));
        }
        gone.forEach(touches::putIfAbsent);
        return touches;
    }

    private static Touch plate(Touch one, Touch other) {
        return Shelf.isBefore(one.path(), other.path()) ? one : other;
    }

    /** Whose text it is: what it says itself, else whose it was before a damaged edit. */
    private Optional<String> plateOf(ObjectId content, Optional<String> before) throws IOException {
        String known = plateOf.get(content);
        if (known != null) {
            return Optional.of(known);
        }
        byte[] text = Store.bytes(reader, content);
        Optional<String> id = PlateIdScan.of(text).or(() -> before);
        id.ifPresent(plate -> plateOf.put(content.copy(), plate));
        return id;
    }

    private List<Differing> differing(List<ObjectId> parents, ObjectId tree) throws IOException {
        SortedMap<String, List<Optional<ObjectId>>> before = new TreeMap<>();
        Map<String, Optional<ObjectId>> after = new HashMap<>();
        for (int i = 0; i < Math.max(1, parents.size()); i++) {
            int side = i;
            Optional<ObjectId> parent = parents.isEmpty() ? Optional.empty() : Optional.of(parents.get(i));
            diff.between(parent, tree, PlateFiles.PLATES, (path, was, is) -> {
                if (PlateFiles.isPlate(path)) {
                    after.put(path, is);
                    // what is not told of a parent is there as it is in the version
                    before.computeIfAbsent(
                                    path, p -> new ArrayList<>(Collections.nCopies(Math.max(1, parents.size()), is)))
                            .set(side, was);
                }
                if (after.size() > TreeFiles.MOST_FILES) {
                    throw new TreeFiles.TooMuch("there are more than " + TreeFiles.MOST_FILES + " files");
                }
            });
        }
        List<Differing> out = new ArrayList<>();
        before.forEach((path, files) -> out.add(new Differing(path, files, after.get(path))));
        return out;
    }

    @Override
    public void close() {
        reader.close();
    }
}
