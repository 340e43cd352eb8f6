package platekeep.client.git.plates;

import java.util.Locale;

/** Where a file goes when its place is taken. */
public final class Paths {
    private static final int ID_DIGITS = 8;

    private Paths() {}

    /** The same place with the first digits of an id or a content put to the name. */
    public static String with(String path, String id) {
        return withWhole(path, id.substring(0, ID_DIGITS));
    }

    /** The same place with all of an id or a content put to the name. */
    public static String withWhole(String path, String id) {
        int dot = path.lastIndexOf('.');
        int end = dot > path.lastIndexOf('/') + 1 ? dot : path.length();
        return path.substring(0, end) + "-" + id + path.substring(end);
    }

    /** What two paths have in common that some system cannot keep apart. */
    public static String folded(String path) {
        return path.toLowerCase(Locale.ROOT);
    }
}
