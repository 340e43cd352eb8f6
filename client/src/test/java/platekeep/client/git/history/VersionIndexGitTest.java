package platekeep.client.git.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.PersonIdent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.cache.Cache;
import platekeep.client.git.store.BlindSystem;
import platekeep.client.git.store.Disk;
import platekeep.client.git.store.Facts;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.Writing;

class VersionIndexGitTest {
    private static final String KITE = "00000020-7c1e-4f0e-9a53-0f6c1f1f7a10";
    private static final String PATH = "plates/k/kite.json";
    private static final Instant START = Instant.parse("2026-03-02T10:00:00Z");

    @TempDir
    Path root;

    private static byte[] text(String title) {
        return ("{\"id\": \"" + KITE + "\", \"title\": \"" + title + "\"}\n").getBytes();
    }

    private static ObjectId save(Store store, Instant when, String path, String title) throws Exception {
        try (Writing writing = store.write()) {
            Map<String, Optional<FileAt>> changes = new TreeMap<>();
            changes.put(path, Optional.of(writing.keep(text(title))));
            PersonIdent hand = new PersonIdent("Wenna Tarrow", "wenna@workshop.example", when, ZoneOffset.UTC);
            return writing.version(store.newest(), Optional.empty(), changes, new Facts(hand, hand, title));
        }
    }

    @Test
    void whatWasKeptIsTakenOverAndExtendedByWhatIsNew() throws Exception {
        BlindSystem.install();
        try (Store store = Store.create(root, Disk.whenClosed())) {
            List<ObjectId> made = new ArrayList<>();
            for (int i = 0; i < IndexFile.WORTH_KEEPING + 1; i++) {
                made.add(0, save(store, START.plusSeconds(i), PATH, "Kite " + i));
            }
            Cache cache = new Cache(root.resolve("cache"));
            VersionIndex first = new VersionIndex(store.repository(), new IndexFile(cache, "a"));
            assertThat(first.history(made.get(0), KITE))
                    .extracting(Step::version)
                    .containsExactlyElementsOf(made);
            assertThat(cache.read("versions-a")).isPresent();
            assertThat(new IndexFile(cache, "a").read()).hasSize(made.size());
            ObjectId next = save(store, START.plusSeconds(5000), PATH, "Kite again");
            made.add(0, next);
            VersionIndex second = new VersionIndex(store.repository(), new IndexFile(cache, "a"));
            assertThat(second.history(next, KITE)).extracting(Step::version).containsExactlyElementsOf(made);
            assertThat(second.history(made.get(5), KITE))
                    .extracting(Step::version)
                    .containsExactlyElementsOf(made.subList(5, made.size()));
        }
    }

    @Test
    void aClockThatWentBackDoesNotTurnTheOrderOfVersions() throws Exception {
        BlindSystem.install();
        try (Store store = Store.create(root, Disk.whenClosed())) {
            ObjectId first = save(store, START, PATH, "one");
            ObjectId second = save(store, START.minusSeconds(9999), PATH, "two");
            VersionIndex index = new VersionIndex(store.repository(), new IndexFile(new Cache(root), "a"));
            assertThat(index.history(second, KITE)).extracting(Step::version).containsExactly(second, first);
            assertThat(index.versions(second, 5)).extracting(Step::version).containsExactly(second, first);
            assertThat(index.only(second, first)).extracting(Step::version).containsExactly(second);
            assertThat(index.only(first, second)).isEmpty();
        }
    }

    /** Whatever lies in the cache, cut off anywhere or full of noise: the index answers as if nothing were there. */
    @Test
    void anIndexThatWasCutOffOrDamagedOrDeletedIsMadeAnew() throws Exception {
        BlindSystem.install();
        try (Store store = Store.create(root, Disk.whenClosed())) {
            List<ObjectId> made = new ArrayList<>();
            for (int i = 0; i < IndexFile.WORTH_KEEPING; i++) {
                made.add(0, save(store, START.plusSeconds(i), PATH, "Kite " + i));
            }
            Cache cache = new Cache(root.resolve("cache"));
            VersionIndex first = new VersionIndex(store.repository(), new IndexFile(cache, "a"));
            first.versions(made.get(0), 1);
            byte[] whole = cache.read("versions-a").orElseThrow();
            Random random = new Random(20261126);
            for (int turn = 0; turn < 60; turn++) {
                byte[] damaged = Arrays.copyOf(whole, turn % 2 == 0 ? random.nextInt(whole.length) : whole.length);
                for (int i = 0; turn % 2 == 1 && i < 20; i++) {
                    damaged[random.nextInt(damaged.length)] = (byte) random.nextInt();
                }
                if (turn % 3 == 0) {
                    // past the check sum, as if the program itself had written it
                    cache.write("versions-a", damaged);
                } else {
                    Files.write(cache.folder().resolve("versions-a.cache"), damaged);
                }
                VersionIndex again = new VersionIndex(store.repository(), new IndexFile(cache, "a"));
                again.versions(made.get(0), 1);
            }
            Files.delete(cache.folder().resolve("versions-a.cache"));
            VersionIndex again = new VersionIndex(store.repository(), new IndexFile(cache, "a"));
            assertThat(again.history(made.get(0), KITE))
                    .extracting(Step::version)
                    .containsExactlyElementsOf(made);
            assertThat(cache.read("versions-a")).isPresent();
        }
    }
}
