package platekeep.client.git.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.internal.storage.dfs.DfsRepositoryDescription;
import org.eclipse.jgit.internal.storage.dfs.InMemoryRepository;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectChecker;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;

/** A tree that is made out of another is the one that the reference library, JGit, makes from all files. */
class TreeEditPropertyTest {
    /** Names whose order depends on whether they are folders; "ö" is longer in bytes. */
    private static final List<String> NAMES =
            List.of("a", "a.json", "a-b", "a0", "ab", "b", "bröd", "b\uFF5E", "b\uD83D\uDE00", "plates");

    private final InMemoryRepository repository = new InMemoryRepository(new DfsRepositoryDescription("trees"));

    private static String path(Random random) {
        List<String> names = new ArrayList<>();
        for (int depth = 1 + random.nextInt(3); depth > 0; depth--) {
            names.add(NAMES.get(random.nextInt(NAMES.size())));
        }
        return String.join("/", names);
    }

    private static FileAt file(Random random) {
        ObjectId content =
                WorkTree.contentOf(Integer.toString(random.nextInt(9)).getBytes(StandardCharsets.UTF_8));
        return new FileAt(content, (random.nextBoolean() ? FileMode.REGULAR_FILE : FileMode.EXECUTABLE_FILE).getBits());
    }

    /** Where a file comes in a folder's place, or below a file, that goes. */
    private static Map<String, Optional<FileAt>> changes(TreeMap<String, FileAt> files, Random random, int count) {
        Map<String, Optional<FileAt>> changes = new HashMap<>();
        for (int i = 0; i < count; i++) {
            String path = path(random);
            if (random.nextInt(3) == 0) {
                files.remove(path);
                changes.put(path, Optional.empty());
                continue;
            }
            for (String other : List.copyOf(files.keySet())) {
                if (other.startsWith(path + "/") || path.startsWith(other + "/")) {
                    files.remove(other);
                    changes.put(other, Optional.empty());
                }
            }
            FileAt file = file(random);
            files.put(path, file);
            changes.put(path, Optional.of(file));
        }
        return changes;
    }

    private ObjectId byReference(Map<String, FileAt> files, ObjectInserter inserter) throws IOException {
        DirCache all = DirCache.newInCore();
        DirCacheBuilder builder = all.builder();
        files.forEach((path, file) -> {
            DirCacheEntry entry = new DirCacheEntry(path);
            entry.setFileMode(FileMode.fromBits(file.mode()));
            entry.setObjectId(file.content());
            builder.add(entry);
        });
        builder.finish();
        return all.writeTree(inserter);
    }

    @Property(seed = "20261126", tries = 300)
    void isTheTreeOfAllFiles(@ForAll Random random, @ForAll @IntRange(min = 1, max = 40) int many) throws Exception {
        TreeMap<String, FileAt> files = new TreeMap<>();
        Optional<ObjectId> tree = Optional.empty();
        try (ObjectInserter inserter = repository.newObjectInserter();
                ObjectReader reader = inserter.newReader()) {
            for (int turn = 0; turn < 6; turn++) {
                Map<String, Optional<FileAt>> changes = changes(files, random, turn == 0 ? many : 3);
                ObjectId edited = new TreeEdit(reader, inserter).apply(tree, changes);
                inserter.flush();
                assertThat(edited).isEqualTo(byReference(files, inserter));
                if (!files.isEmpty()) {
                    new ObjectChecker()
                            .checkTree(reader.open(edited, Constants.OBJ_TREE).getBytes());
                    tree = Optional.of(edited);
                } else {
                    tree = Optional.empty();
                }
            }
        }
    }
}
