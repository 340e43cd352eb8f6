package platekeep.client.git.plates;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.TreeFiles;

/**
 * The files of one version with the plates among them by id. A plate is found by what its text says, wherever the file
 * lies. Where several files say the same id, the one with the shortest path is the plate (a copy's name is the longer
 * one, as a rule), and the others are doubles.
 */
public final class Shelf {
    /** Of no files. */
    public static final Shelf NONE = new Shelf(TreeFiles.NONE);

    private final TreeFiles files;
    private final Map<String, String> pathOf;
    private final Map<String, String> doubles;

    private boolean someUnclaimed;

    private Shelf(TreeFiles files, Map<String, String> pathOf, Map<String, String> doubles) {
        this.files = files;
        this.pathOf = pathOf;
        this.doubles = doubles;
    }

    private Shelf(TreeFiles files) {
        this(files, new HashMap<>(), new LinkedHashMap<>());
    }

    /** Says whose text a content is, and where it lies. */
    @FunctionalInterface
    public interface Ids {
        Optional<String> plateOf(String path, ObjectId content) throws IOException;
    }

    /** Sorts the plain plate files of a version; linear in the files. */
    public static Shelf of(TreeFiles files, Ids ids) throws IOException {
        Shelf shelf = new Shelf(files);
        for (Map.Entry<String, FileAt> file : files.files().entrySet()) {
            shelf.sort(file.getKey(), file.getValue(), ids);
        }
        return shelf;
    }

    /**
     * The same as {@link #of} for files that differ from these in a few; asks only whose the differing ones are.
     *
     * @param changes what leads from these files to those, by path; empty where a file went
     */
    public Shelf with(TreeFiles after, Map<String, Optional<FileAt>> changes, Ids ids) throws IOException {
        if (someUnclaimed || touchesDoubles(changes.keySet())) {
            return of(after, ids);
        }
        if (eachStaysWhereItIs(changes, ids)) {
            return new Shelf(after, pathOf, doubles);
        }
        Shelf shelf = new Shelf(after, new HashMap<>(pathOf), new LinkedHashMap<>(doubles));
        shelf.pathOf.values().removeIf(changes::containsKey);
        for (Map.Entry<String, Optional<FileAt>> change : changes.entrySet()) {
            if (change.getValue().isPresent()) {
                shelf.sort(change.getKey(), change.getValue().get(), ids);
            }
        }
        return shelf;
    }

    /** Whether plates changed only in what they are: then who lies where can be shared. */
    private boolean eachStaysWhereItIs(Map<String, Optional<FileAt>> changes, Ids ids) throws IOException {
        for (Map.Entry<String, Optional<FileAt>> change : changes.entrySet()) {
            String path = change.getKey();
            if (PlateFiles.isPlate(path)) {
                Optional<FileAt> file = change.getValue().filter(FileAt::isPlain);
                Optional<String> id = file.isEmpty()
                        ? Optional.empty()
                        : ids.plateOf(path, file.get().content());
                if (!id.flatMap(this::path).equals(Optional.of(path))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether one of several files that say the same id is among the paths. */
    private boolean touchesDoubles(Set<String> paths) {
        return doubles.entrySet().stream()
                .anyMatch(file -> paths.contains(file.getKey()) || paths.contains(pathOf.get(file.getValue())));
    }

    private void sort(String path, FileAt file, Ids ids) throws IOException {
        if (PlateFiles.isPlate(path) && file.isPlain()) {
            Optional<String> id = ids.plateOf(path, file.content());
            if (id.isPresent()) {
                claim(id.get(), path);
            } else {
                someUnclaimed = true;
            }
        }
    }

    private void claim(String id, String path) {
        String other = pathOf.get(id);
        boolean first = other == null || isBefore(path, other);
        if (first) {
            pathOf.put(id, path);
        }
        if (other != null) {
            doubles.put(first ? other : path, id);
        }
    }

    /** Whether of two files that say the same id the first is the plate. */
    public static boolean isBefore(String path, String other) {
        return path.length() == other.length() ? path.compareTo(other) < 0 : path.length() < other.length();
    }

    public TreeFiles files() {
        return files;
    }

    /** Whether there are plate files of which it is not known whose they are: damaged ones. */
    public boolean someUnclaimed() {
        return someUnclaimed;
    }

    /** The ids of the plates that are there. */
    public Set<String> plates() {
        return Set.copyOf(pathOf.keySet());
    }

    /** Where the plate's file lies. */
    public Optional<String> path(String plateId) {
        return Optional.ofNullable(pathOf.get(plateId));
    }

    /** The plate's file. */
    public Optional<FileAt> file(String plateId) {
        return path(plateId).flatMap(files::at);
    }

    /** The content of the plate's file. */
    public Optional<ObjectId> content(String plateId) {
        return file(plateId).map(FileAt::content);
    }

    /** The paths of all plain plate files, damaged ones and doubles too, in order. */
    public List<String> plateFiles() {
        List<String> paths = new ArrayList<>();
        files.files().forEach((path, file) -> {
            if (PlateFiles.isPlate(path) && file.isPlain()) {
                paths.add(path);
            }
        });
        return paths;
    }

    /** For a file that says the id of a plate elsewhere: that plate's path. */
    public Optional<String> doubleOf(String path) {
        return Optional.ofNullable(doubles.get(path)).map(pathOf::get);
    }
}
