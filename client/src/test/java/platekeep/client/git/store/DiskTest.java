package platekeep.client.git.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiskTest {
    @TempDir
    Path folder;

    private final Disk disk = Disk.atOnce(Runnable::run);

    /** As native Git makes the files of objects: {@code -r--r--r--} ("git hash-object -w", then "ls -l"). */
    @Test
    void whatIsForGoodCanOnlyBeReadAlsoWhereAKilledProgramLeftSomething() throws IOException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Path temporary = folder.resolve("temporary");
        for (int turn = 0; turn < 2; turn++) {
            disk.writeForGood(temporary, new byte[] {1, 2, (byte) turn});
            disk.sync(List.of(temporary));
            assertThat(temporary).hasBinaryContent(new byte[] {1, 2, (byte) turn});
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(temporary)))
                    .isEqualTo("r--r--r--");
        }
    }

    @Test
    void bytesAreForcedWithOthersAndGetTheirNamesLater() throws IOException {
        Path early = folder.resolve("early");
        Path late = folder.resolve("late");
        Together first = new Together(disk);
        Together second = new Together(disk);
        first.put(early, new byte[] {1}, folder.resolve("t1"));
        second.put(late, new byte[] {2}, folder.resolve("t2"));
        first.write(List.of(second));
        assertThat(early).hasBinaryContent(new byte[] {1});
        assertThat(late).doesNotExist();
        assertThat(folder.resolve("t2")).hasBinaryContent(new byte[] {2});
        second.names();
        assertThat(late).hasBinaryContent(new byte[] {2});
        assertThat(folder.resolve("t2")).doesNotExist();
    }

    @Test
    void whatIsNotNeededGoesAgain() throws IOException {
        Together first = new Together(disk);
        Together second = new Together(disk);
        second.put(folder.resolve("late"), new byte[] {2}, folder.resolve("t2"));
        first.write(List.of(second));
        second.discard();
        second.names();
        assertThat(folder).isEmptyDirectory();
    }
}
