package platekeep.client.command.file;

import java.util.List;

/**
 * What Git hands over to an external diff, as its documentation of {@code GIT_EXTERNAL_DIFF} says: path, old file, its
 * id and mode, new file, its id and mode; for a moved file the new path and how it moved besides; for a file that is
 * not joined yet the path alone.
 *
 * @param path where the plate lies
 * @param oldFile a file with the old content, {@link #NOTHING} where there was none
 * @param newFile likewise with the new content
 * @param newPath where the plate lies now, the same as {@code path} unless it moved
 * @param open whether the two sides are not joined yet
 */
record HandedOver(String path, String oldFile, String newFile, String newPath, boolean open) {

    /** Stands for "no file". */
    static final String NOTHING = "/dev/null";

    private static final int PLAIN = 7;

    static HandedOver of(List<String> words) {
        String path = words.get(0);
        if (words.size() < PLAIN) {
            return new HandedOver(path, NOTHING, NOTHING, path, true);
        }
        return new HandedOver(path, words.get(1), words.get(4), words.size() > PLAIN ? words.get(PLAIN) : path, false);
    }

    /** The line above what changed. */
    String title() {
        return path.equals(newPath) ? path : path + ", now " + newPath;
    }
}
