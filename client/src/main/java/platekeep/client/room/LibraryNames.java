package platekeep.client.room;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import platekeep.client.library.Library;

/**
 * What open libraries are called: by their own names, and where two have one name, with as much of their folders before it as
 * tells them apart, so that it is seen even where there is room for the beginning only. Unchangeable, for all threads; reads no disk.
 */
public final class LibraryNames {
    /** No library is open. */
    public static final LibraryNames NONE = new LibraryNames(Map.of());

    private final Map<Library, String> shown;

    private LibraryNames(Map<Library, String> shown) {
        this.shown = shown;
    }

    /**
     * @param own the name that each says for itself
     */
    public static LibraryNames of(Map<Library, String> own) {
        Map<String, List<Library>> byName = new LinkedHashMap<>();
        own.forEach(
                (library, name) -> byName.computeIfAbsent(name.strip().toLowerCase(Locale.ROOT), n -> new ArrayList<>())
                        .add(library));
        Map<Library, String> shown = new HashMap<>();
        byName.values().forEach(same -> {
            int depth = same.size() == 1 ? 0 : depth(same);
            same.forEach(library -> shown.put(
                    library,
                    depth == 0
                            ? own.get(library)
                            : end(library, depth) + " (" + own.get(library).strip() + ")"));
        });
        return new LibraryNames(shown);
    }

    /** How many names from the end of their folders on are all different. */
    private static int depth(List<Library> same) {
        int most = same.stream()
                .mapToInt(library -> library.folder().getNameCount())
                .max()
                .orElse(1);
        for (int depth = 1; depth < most; depth++) {
            int names = depth;
            long different =
                    same.stream().map(library -> end(library, names)).distinct().count();
            if (different == same.size()) {
                return depth;
            }
        }
        return Math.max(1, most);
    }

    private static String end(Library library, int depth) {
        Path folder = library.folder();
        int count = folder.getNameCount();
        return count == 0
                ? folder.toString()
                : folder.subpath(Math.max(0, count - depth), count).toString();
    }

    /** What a library is called; one that is not open by its folder. */
    public String of(Library library) {
        String name = shown.get(library);
        return name == null ? String.valueOf(library.folder().getFileName()) : name;
    }
}
