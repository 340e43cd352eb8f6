package platekeep.client.git.store;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What leads from the files of one version to those of another. */
public final class Changes {
    private Changes() {}

    /**
     * By path: the file as it is afterwards; empty where it went. Linear in the files, unless one was made from the other,
     * in which case in what differs.
     */
    public static SortedMap<String, Optional<FileAt>> between(TreeFiles before, TreeFiles after) {
        SortedMap<String, Optional<FileAt>> changes = new TreeMap<>();
        before.byPath().compare(after.byPath(), (path, was, is) -> changes.put(path, is));
        return changes;
    }
}
