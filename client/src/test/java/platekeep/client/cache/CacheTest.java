package platekeep.client.cache;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CacheTest {
    @Test
    void whatIsKeptIsReadAndWhatIsDamagedIsNotThere(@TempDir Path folder) throws Exception {
        Cache cache = new Cache(folder.resolve("new"));
        assertThat(cache.read("a")).isEmpty();
        cache.write("a", new byte[] {1, 2, 3});
        cache.write("a", new byte[] {4, 5});
        assertThat(cache.read("a"))
                .hasValueSatisfying(bytes -> assertThat(bytes).containsExactly(4, 5));
        Path file = cache.folder().resolve("a.cache");
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length - 1] ^= 1;
        Files.write(file, bytes);
        assertThat(cache.read("a")).isEmpty();
        Files.write(file, new byte[] {1});
        assertThat(cache.read("a")).isEmpty();
    }

    @Test
    void aFolderThatCannotBeWrittenOnlyMeansThatNothingIsKept(@TempDir Path folder) throws Exception {
        Cache cache = new Cache(Files.createFile(folder.resolve("a-file")));
        cache.write("a", new byte[] {1});
        assertThat(cache.read("a")).isEmpty();
    }

    @Test
    void allTogetherStaysBelowABoundAndWhatWasNotAskedForLongestGoes(@TempDir Path folder) throws Exception {
        Cache cache = new Cache(folder, 1000);
        for (String key : List.of("a", "b", "c")) {
            cache.write(key, new byte[300]);
            Files.setLastModifiedTime(
                    folder.resolve(key + ".cache"), FileTime.from(Instant.parse("2026-03-02T10:00:00Z")));
        }
        assertThat(cache.read("a")).isPresent();
        cache.write("d", new byte[400]);
        assertThat(cache.read("a")).isPresent();
        assertThat(cache.read("d")).isPresent();
        assertThat(List.of(cache.read("b"), cache.read("c"))).contains(Optional.empty());
        cache.write("e", new byte[5000]);
        assertThat(cache.read("e"))
                .as("what is larger than all room is kept until the next one")
                .isPresent();
        assertThat(cache.read("a")).isEmpty();
    }

    @Test
    void whatAKilledProgramLeftHalfWrittenIsNeverReadAndGoesLater(@TempDir Path folder) throws Exception {
        Cache cache = new Cache(folder);
        Path half = Files.write(folder.resolve("a123.writing"), new byte[] {1, 2});
        Path young = Files.write(folder.resolve("b123.writing"), new byte[] {1, 2});
        Files.setLastModifiedTime(half, FileTime.from(Instant.parse("2026-03-02T10:00:00Z")));
        assertThat(cache.read("a")).isEmpty();
        cache.write("c", new byte[] {3});
        assertThat(half).doesNotExist();
        assertThat(young).exists();
    }
}
