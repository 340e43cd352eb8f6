package platekeep.client.git.store;

import java.io.IOException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.TreeFormatter;
import org.eclipse.jgit.treewalk.CanonicalTreeParser;

/**
 * Makes the tree of a new version out of an old one by writing anew only the folders on the way to what changed; a
 * library of ten thousand plates is not listed for one plate's sake.
 */
final class TreeEdit {
    private static final FileMode FOLDER = FileMode.TREE;

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
        return folder(tree, new TreeMap<>(changes)).orElseGet(() -> new TreeFormatter().computeId(inserter));
    }

    private Optional<ObjectId> folder(Optional<ObjectId> old, SortedMap<String, Optional<FileAt>> changes)
            throws IOException {
        SortedMap<String, Node> nodes = nodes(old);
        SortedMap<String, SortedMap<String, Optional<FileAt>>> below = new TreeMap<>();
        for (Map.Entry<String, Optional<FileAt>> change : changes.entrySet()) {
            int slash = change.getKey().indexOf('/');
            if (slash >= 0) {
                below.computeIfAbsent(change.getKey().substring(0, slash), name -> new TreeMap<>())
                        .put(change.getKey().substring(slash + 1), change.getValue());
            }
        }
        for (Map.Entry<String, Optional<FileAt>> change : changes.entrySet()) {
            if (change.getKey().indexOf('/') < 0) {
                change.getValue()
                        .ifPresentOrElse(
                                file -> put(nodes, change.getKey(), file),
                                () -> nodes.remove(fileKey(change.getKey())));
            }
        }
        for (Map.Entry<String, SortedMap<String, Optional<FileAt>>> sub : below.entrySet()) {
            editSubfolder(nodes, sub.getKey(), sub.getValue());
        }
        return write(nodes);
    }

    private void put(SortedMap<String, Node> nodes, String name, FileAt file) {
        nodes.put(fileKey(name), new Node(name, FileMode.fromBits(file.mode()), file.content()));
    }

    private void editSubfolder(SortedMap<String, Node> nodes, String name, SortedMap<String, Optional<FileAt>> changes)
            throws IOException {
        Optional<Node> old = Optional.ofNullable(nodes.get(folderKey(name)));
        Optional<ObjectId> tree = folder(old.map(Node::id), changes);
        tree.ifPresentOrElse(
                id -> {
                    nodes.remove(fileKey(name));
                    nodes.put(folderKey(name), new Node(name, FOLDER, id));
                },
                () -> nodes.remove(folderKey(name)));
    }

    private Optional<ObjectId> write(SortedMap<String, Node> nodes) throws IOException {
        if (nodes.isEmpty()) {
            return Optional.empty();
        }
        TreeFormatter out = new TreeFormatter();
        for (Node node : nodes.values()) {
            out.append(Constants.encode(node.name()), node.mode(), node.id());
        }
        return Optional.of(out.insertTo(inserter));
    }

    private SortedMap<String, Node> nodes(Optional<ObjectId> tree) throws IOException {
        SortedMap<String, Node> nodes = new TreeMap<>(BY_BYTES);
        if (tree.isPresent()) {
            CanonicalTreeParser parser = new CanonicalTreeParser(new byte[0], reader, tree.get());
            for (; !parser.eof(); parser.next()) {
                String name = parser.getEntryPathString();
                boolean folder = FOLDER.equals(parser.getEntryRawMode());
                Node node = new Node(name, parser.getEntryFileMode(), parser.getEntryObjectId());
                nodes.put(folder ? folderKey(name) : fileKey(name), node);
            }
        }
        return nodes;
    }

    /** The order of a tree: by the bytes of the names, a folder's as if it ended in a slash. */
    private static final Comparator<String> BY_BYTES =
            (a, b) -> Arrays.compareUnsigned(Constants.encode(a), Constants.encode(b));

    private static String fileKey(String name) {
        return name;
    }

    private static String folderKey(String name) {
        return name + "/";
    }

    private record Node(String name, FileMode mode, ObjectId id) {}
}
