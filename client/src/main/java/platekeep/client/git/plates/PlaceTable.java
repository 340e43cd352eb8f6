package platekeep.client.git.plates;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import platekeep.client.git.store.FileAt;

/**
 * Gives each file of a version its place where several want one: of two plates (or series) the one with the smaller id
 * keeps it and the other's name gets the first digits of its id; any other file gives way, its name gets digits of its
 * content. The answer depends on the files alone, not on the order in which they are put in.
 */
public final class PlaceTable {
    private final List<Wish> wishes = new ArrayList<>();
    private final Set<String> taken = new HashSet<>();
    private final Predicate<String> standing;

    /** Where nothing lies yet. */
    public PlaceTable() {
        this(folded -> false);
    }

    /**
     * @param standing whether a place, in the form of {@link Paths#folded}, is taken by a file that does not give way
     */
    public PlaceTable(Predicate<String> standing) {
        this.standing = standing;
    }

    /** A file that wants a place. */
    private record Wish(String path, String id, FileAt file, boolean named) {}

    /** A plate or a series. */
    public void put(String path, String id, FileAt file) {
        wishes.add(new Wish(path, id, file, true));
    }

    /** Any other file. */
    public void put(String path, FileAt file) {
        wishes.add(new Wish(path, file.content().name(), file, false));
    }

    /** The files by their places. */
    public SortedMap<String, FileAt> placed() {
        wishes.sort(Comparator.comparing((Wish wish) -> !wish.named())
                .thenComparing(Wish::id)
                .thenComparing(Wish::path));
        SortedMap<String, FileAt> placed = new TreeMap<>();
        Set<String> folders = new HashSet<>();
        wishes.forEach(wish -> addFolders(wish.path(), folders));
        for (Wish wish : wishes) {
            String path = List.of(
                            wish.path(), Paths.with(wish.path(), wish.id()), Paths.withWhole(wish.path(), wish.id()))
                    .stream()
                    .filter(place -> !folders.contains(Paths.folded(place)))
                    .filter(place -> !standing.test(Paths.folded(place)))
                    .filter(place -> taken.add(Paths.folded(place)))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no place for " + wish.path()));
            placed.put(path, wish.file());
        }
        return placed;
    }

    private static void addFolders(String path, Set<String> folders) {
        for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
            folders.add(Paths.folded(path.substring(0, slash)));
        }
    }
}
