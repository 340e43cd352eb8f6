package platekeep.client.git.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEditor;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.util.FS;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of files is written and read back by the reference library, JGit's {@link DirCache}. */
class IndexBytesTest {
    private static final List<String> PATHS =
            List.of("library.json", "plates/a/anchor.json", "plates/b/bröd.json", "series/harbour.json");

    private static final Instant OLD = Instant.ofEpochSecond(1_500_000_000, 250);
    private static final Instant NOW = Instant.ofEpochSecond(1_900_000_000);

    @TempDir
    Path folder;

    private File file;

    @BeforeEach
    void writeAList() throws IOException {
        BlindSystem.install();
        file = folder.resolve("index").toFile();
        DirCache list = DirCache.lock(file, FS.DETECTED);
        DirCacheEditor editor = list.editor();
        for (String path : PATHS) {
            editor.add(new DirCacheEditor.PathEdit(path) {
                @Override
                public void apply(DirCacheEntry entry) {
                    entry.setFileMode(FileMode.REGULAR_FILE);
                    entry.setObjectId(contentOf(path));
                    entry.setLength(path.length());
                    entry.setLastModified(OLD);
                }
            });
        }
        editor.finish();
        list.write();
        assertThat(list.commit()).isTrue();
    }

    private static ObjectId contentOf(String text) {
        return WorkTree.contentOf(text.getBytes(StandardCharsets.UTF_8));
    }

    private Optional<IndexBytes> read(String... paths) throws IOException {
        return IndexBytes.of(Files.readAllBytes(file.toPath()), NOW, Set.of(paths));
    }

    @Test
    void setsOneEntryAndKeepsTheOthers() throws IOException {
        IndexBytes list = read(PATHS.get(2)).orElseThrow();
        list.set(PATHS.get(2), new FileAt(contentOf("new")), Optional.of(77), OLD.plusSeconds(5), NOW);
        Files.write(file.toPath(), list.whole());
        DirCache now = DirCache.read(file, FS.DETECTED);
        assertThat(now.getEntryCount()).isEqualTo(PATHS.size());
        for (String path : PATHS) {
            boolean isSet = path.equals(PATHS.get(2));
            DirCacheEntry entry = now.getEntry(path);
            assertThat(entry.getObjectId()).isEqualTo(contentOf(isSet ? "new" : path));
            assertThat(entry.getLength()).isEqualTo(isSet ? 77 : path.length());
            assertThat(entry.getLastModifiedInstant()).isEqualTo(isSet ? OLD.plusSeconds(5) : OLD);
            assertThat(entry.getFileMode()).isEqualTo(FileMode.REGULAR_FILE);
        }
    }

    @Test
    void notesNoSizeOfAFileAsYoungAsTheList() throws IOException {
        IndexBytes list = read(PATHS.get(1)).orElseThrow();
        list.set(PATHS.get(1), new FileAt(contentOf("new")), Optional.of(77), NOW, NOW);
        Files.write(file.toPath(), list.whole());
        assertThat(DirCache.read(file, FS.DETECTED).getEntry(PATHS.get(1)).getLength())
                .isZero();
    }

    @Test
    void leavesAListAloneThatLacksAFileOrIsDamaged() throws IOException {
        assertThat(read("plates/n/new.json")).isEmpty();
        byte[] bytes = Files.readAllBytes(file.toPath());
        bytes[bytes.length / 2] ^= 1;
        Files.write(file.toPath(), bytes);
        assertThat(read(PATHS.get(0))).isEmpty();
    }
}
