package platekeep.client.git.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEditor;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.errors.LockFailedException;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.util.FS;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A list made ready beforehand is the one that is made under the lock; both are read by JGit's {@link DirCache}. */
class WorkIndexTest {
    private static final FileTime OLD = FileTime.from(Instant.ofEpochSecond(1_500_000_000, 250));

    /** Later than any lock, so that both ways doubt the file. */
    private static final FileTime LATE = FileTime.from(Instant.ofEpochSecond(4_000_000_000L, 5_000));

    @TempDir
    Path folder;

    private final List<String> paths = new ArrayList<>(List.of("a.json", "a/b.json", "a0", "\uFF5E", "\uD83D\uDE00"));
    private Store store;
    private Path file;

    @BeforeEach
    void makeAList() throws Exception {
        BlindSystem.install();
        store = Store.create(folder, Disk.whenClosed());
        file = store.repository().getIndexFile().toPath();
        for (int i = 0; i < 300; i++) {
            paths.add("plates/" + (char) ('a' + i % 7) + "/kite-" + i + ".json");
        }
        // longer than the list can say in twelve bits
        paths.add("long/" + "n".repeat(4_200) + "/kite.json");
        Map<String, Optional<FileAt>> all = new TreeMap<>();
        for (String path : paths) {
            all.put(path, Optional.of(new FileAt(content(path))));
            if (path.length() < 200 && path.chars().allMatch(c -> c < 128)) {
                lay(path, path, OLD);
            }
        }
        WorkIndex.Held held = index().lock(all);
        held.mend(TreeFiles.NONE.with(all));
        held.unlock();
        Files.setLastModifiedTime(file, FileTime.from(Instant.ofEpochSecond(1_600_000_000)));
    }

    @AfterEach
    void close() throws IOException {
        store.close();
    }

    private WorkIndex index() {
        return new WorkIndex(store.repository(), store.workTree(), store.disk());
    }

    private static ObjectId content(String text) {
        return WorkTree.contentOf(text.getBytes(StandardCharsets.UTF_8));
    }

    private BasicFileAttributes lay(String path, String text, FileTime time) throws IOException {
        Path at = folder.resolve(path);
        Files.createDirectories(at.getParent());
        Files.writeString(at, text);
        Files.setLastModifiedTime(at, time);
        return Files.readAttributes(at, BasicFileAttributes.class);
    }

    private WorkIndex.Ready ready(String path) throws IOException {
        WorkIndex.Ready ready = index().ready(Set.of(path)).orElseThrow();
        ready.set(path, new FileAt(content("new")), lay(path, "new", LATE));
        new Together(store.disk()).write(List.of(ready.written()));
        return ready;
    }

    @Test
    void madeBeforehandItIsTheSameByteForByte() throws IOException {
        byte[] before = Files.readAllBytes(file);
        for (String path : List.of("a.json", "a/b.json", "a0", "plates/c/kite-9.json", "plates/g/kite-300.json")) {
            if (!paths.contains(path)) {
                assertThat(index().ready(Set.of(path))).isEmpty();
                continue;
            }
            WorkIndex.Ready ready = ready(path);
            assertThat(file).hasBinaryContent(before);
            WorkIndex.Held held = ready.lock().orElseThrow();
            held.mend(TreeFiles.NONE);
            byte[] quick = Files.readAllBytes(file);

            Files.write(file, before);
            Files.setLastModifiedTime(file, FileTime.from(Instant.ofEpochSecond(1_600_000_000)));
            Map<String, Optional<FileAt>> change = Map.of(path, Optional.of(new FileAt(content("new"))));
            WorkIndex.Held slow = index().lock(change);
            slow.mend(TreeFiles.NONE);
            slow.unlock();

            assertThat(quick).isEqualTo(Files.readAllBytes(file)).isNotEqualTo(before);
            assertThat(folder.resolve(".git/index.lock")).doesNotExist();
            Files.write(file, before);
            Files.setLastModifiedTime(file, FileTime.from(Instant.ofEpochSecond(1_600_000_000)));
        }
    }

    @Test
    void findsEveryEntryWhateverItsName() throws IOException {
        for (String path : paths) {
            byte[] bytes = Files.readAllBytes(file);
            IndexBytes list = IndexBytes.of(bytes, Instant.MAX.minusSeconds(1), Set.of(path))
                    .orElseThrow();
            Instant time = LATE.toInstant();
            list.set(path, new FileAt(content("new")), Optional.of(3), time, Instant.MAX.minusSeconds(1));
            Path copy = folder.resolve("copy");
            Files.write(copy, list.whole());
            DirCache read = DirCache.read(copy.toFile(), FS.DETECTED);
            assertThat(read.getEntryCount()).isEqualTo(paths.size());
            for (String other : paths) {
                DirCacheEntry entry = read.getEntry(other);
                assertThat(entry.getObjectId()).isEqualTo(content(other.equals(path) ? "new" : other));
            }
        }
    }

    @Test
    void givesWayToNobodyElsesList() throws Exception {
        WorkIndex.Ready ready = ready("plates/c/kite-9.json");
        DirCache other = DirCache.lock(file.toFile(), FS.DETECTED);
        DirCacheEditor editor = other.editor();
        editor.add(new DirCacheEditor.DeletePath("a0"));
        editor.finish();
        other.write();
        assertThat(other.commit()).isTrue();
        byte[] theirs = Files.readAllBytes(file);

        assertThat(ready.lock()).isEmpty();
        ready.discard();

        assertThat(file).hasBinaryContent(theirs);
        assertThat(folder.resolve(".git/index.lock")).doesNotExist();
        assertThat(folder.resolve(".git/platekeep-listing")).doesNotExist();
    }

    @Test
    void isNotLockedWhileAnotherHoldsIt() throws IOException {
        WorkIndex.Ready ready = ready("plates/c/kite-9.json");
        Files.createFile(folder.resolve(".git/index.lock"));
        assertThatThrownBy(ready::lock).isInstanceOf(LockFailedException.class);
        assertThat(folder.resolve(".git/index.lock")).exists();
    }
}
