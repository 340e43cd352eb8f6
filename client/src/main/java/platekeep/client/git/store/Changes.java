package platekeep.client.git.store;

import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What leads from the files of one version to those of another. */
public final class Changes {
    private Changes() {}

    /** By path: the file as it is afterwards; empty where it went. Linear in the files, and quick where few differ. */
    public static SortedMap<String, Optional<FileAt>> between(TreeFiles before, TreeFiles after) {
        SortedMap<String, Optional<FileAt>> changes = new TreeMap<>();
        Iterator<Map.Entry<String, FileAt>> olds = before.files().entrySet().iterator();
        Iterator<Map.Entry<String, FileAt>> news = after.files().entrySet().iterator();
        Optional<Map.Entry<String, FileAt>> old = next(olds);
        Optional<Map.Entry<String, FileAt>> now = next(news);
        while (old.isPresent() || now.isPresent()) {
            int order = order(old, now);
            if (order < 0) {
                changes.put(old.get().getKey(), Optional.empty());
            } else if (order > 0 || !now.get().getValue().equals(old.get().getValue())) {
                changes.put(now.get().getKey(), Optional.of(now.get().getValue()));
            }
            old = order <= 0 ? next(olds) : old;
            now = order >= 0 ? next(news) : now;
        }
        return changes;
    }

    /** Which side's path comes first; one that is over comes last. */
    private static int order(Optional<Map.Entry<String, FileAt>> old, Optional<Map.Entry<String, FileAt>> now) {
        if (old.isEmpty() || now.isEmpty()) {
            return old.isEmpty() ? 1 : -1;
        }
        return old.get().getKey().compareTo(now.get().getKey());
    }

    private static <T> Optional<T> next(Iterator<T> all) {
        return all.hasNext() ? Optional.of(all.next()) : Optional.empty();
    }
}
