package platekeep.client.cache;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
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
}
