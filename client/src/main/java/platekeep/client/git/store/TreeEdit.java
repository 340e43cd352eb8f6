package platekeep.client.git.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.util.Paths;

/**
 * Makes the tree of a new version out of an old one by writing anew only the folders on the way to what changed; a
 * library of ten thousand plates is not listed for one plate's sake, and what stays in a folder keeps its bytes.
 */
final class TreeEdit {
    private final ObjectReader reader;
    private final ObjectInserter inserter;

    TreeEdit(ObjectReader reader, ObjectInserter inserter) {
        this.reader = reader;
        this.inserter = inserter;
    }

    /**
     * @param tree the old tree; empty for none
     * @param changes by path; empty where the file goes
     * @return the id of the new tree, its parts inserted
     */
    ObjectId apply(Optional<ObjectId> tree, Map<String, Optional<FileAt>> changes) throws IOException {
        Optional<ObjectId> edited = folder(tree, new TreeMap<>(changes));
        return edited.isPresent() ? edited.get() : inserter.idFor(Constants.OBJ_TREE, FolderWalk.NOTHING);
    }

    private Optional<ObjectId> folder(Optional<ObjectId> old, SortedMap<String, Optional<FileAt>> changes)
            throws IOException {
        Folder folder = new Folder(old.isPresent() ? FolderWalk.bytes(reader, old.get()) : FolderWalk.NOTHING);
        SortedMap<String, SortedMap<String, Optional<FileAt>>> below = new TreeMap<>();
        for (Map.Entry<String, Optional<FileAt>> change : changes.entrySet()) {
            int slash = change.getKey().indexOf('/');
            if (slash >= 0) {
                below.computeIfAbsent(change.getKey().substring(0, slash), name -> new TreeMap<>())
                        .put(change.getKey().substring(slash + 1), change.getValue());
            } else {
                Optional<FileAt> file = change.getValue();
                folder.set(
                        Entry.of(change.getKey(), file.map(FileAt::mode).orElse(FileMode.TYPE_FILE)),
                        file.map(FileAt::content));
            }
        }
        for (Map.Entry<String, SortedMap<String, Optional<FileAt>>> sub : below.entrySet()) {
            Entry entry = Entry.of(sub.getKey(), FileMode.TYPE_TREE);
            Optional<ObjectId> edited = folder(folder.at(entry), sub.getValue());
            if (edited.isPresent()) {
                folder.set(Entry.of(sub.getKey(), FileMode.TYPE_FILE), Optional.empty());
            }
            folder.set(entry, edited);
        }
        return folder.isEmpty() ? Optional.empty() : Optional.of(inserter.insert(Constants.OBJ_TREE, folder.bytes()));
    }

    /**
     * What stands in a folder before the id, {@code mode name NUL}, and the id, somewhere among bytes. In the order of
     * trees: by the bytes of the names, a folder's as if it ended in a slash.
     */
    private record Entry(byte[] bytes, int from, int name, int id) implements Comparable<Entry> {

        static Entry of(String name, int mode) {
            String digits = Integer.toOctalString(FileMode.fromBits(mode).getBits());
            byte[] bytes = Constants.encode(digits + " " + name + "\0");
            return new Entry(bytes, 0, digits.length() + 1, bytes.length);
        }

        private int type() {
            int digit = from;
            while (bytes[digit] == '0') {
                digit++;
            }
            return bytes[digit] == '4' ? FileMode.TYPE_TREE : FileMode.TYPE_FILE;
        }

        @Override
        public int compareTo(Entry other) {
            return Paths.compare(bytes, name, id - 1, type(), other.bytes, other.name, other.id - 1, other.type());
        }

        Entry with(ObjectId content) {
            byte[] whole = new byte[id - from + Constants.OBJECT_ID_LENGTH];
            System.arraycopy(bytes, from, whole, 0, id - from);
            content.copyRawTo(whole, id - from);
            return new Entry(whole, 0, name - from, id - from);
        }

        int end() {
            return id + Constants.OBJECT_ID_LENGTH;
        }
    }

    /** A folder while it is changed. */
    private static final class Folder {
        private final List<Entry> entries = new ArrayList<>();

        Folder(byte[] bytes) throws IOException {
            for (FolderWalk walk = new FolderWalk(bytes); !walk.isOver(); walk.next()) {
                entries.add(new Entry(bytes, walk.at(), walk.nameAt(), walk.idAt()));
            }
            entries.sort(null);
        }

        boolean isEmpty() {
            return entries.isEmpty();
        }

        Optional<ObjectId> at(Entry entry) {
            int place = Collections.binarySearch(entries, entry);
            return place < 0
                    ? Optional.empty()
                    : Optional.of(ObjectId.fromRaw(
                            entries.get(place).bytes(), entries.get(place).id()));
        }

        /** Puts something in the place of what has the name, or takes that out. */
        void set(Entry entry, Optional<ObjectId> content) {
            int place = Collections.binarySearch(entries, entry);
            if (content.isEmpty()) {
                if (place >= 0) {
                    entries.remove(place);
                }
            } else if (place >= 0) {
                entries.set(place, entry.with(content.get()));
            } else {
                entries.add(-place - 1, entry.with(content.get()));
            }
        }

        byte[] bytes() {
            ByteArrayOutputStream out = new ByteArrayOutputStream(64 + entries.size() * 64);
            for (Entry entry : entries) {
                out.write(entry.bytes(), entry.from(), entry.end() - entry.from());
            }
            return out.toByteArray();
        }
    }
}
