package platekeep.client.git.store;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What leads from the files of one version to those of another. */
public final class Changes {
    private Changes() {}

    /** By path: the file as it is afterwards; empty where it went. */
    public static SortedMap<String, Optional<FileAt>> between(TreeFiles before, TreeFiles after) {
        SortedMap<String, Optional<FileAt>> changes = new TreeMap<>();
        for (String path : before.files().keySet()) {
            if (!after.files().containsKey(path)) {
                changes.put(path, Optional.empty());
            }
        }
        for (Map.Entry<String, FileAt> file : after.files().entrySet()) {
            if (!file.getValue().equals(before.files().get(file.getKey()))) {
                changes.put(file.getKey(), Optional.of(file.getValue()));
            }
        }
        return changes;
    }
}
