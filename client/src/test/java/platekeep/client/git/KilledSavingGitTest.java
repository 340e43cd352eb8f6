package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static platekeep.client.git.Workshop.plate;
import static platekeep.client.git.Workshop.save;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import platekeep.client.library.Library;
import platekeep.client.library.Version;
import platekeep.model.plate.Plate;

/**
 * A program that is killed while it saves (SIGKILL, by {@link Process#destroyForcibly}) leaves a library in which the
 * versions told are whole by the judgement of native {@code git fsck}, and in which the next program saves.
 */
class KilledSavingGitTest {
    private static final Plate SNAIL = plate(0x30, "Snail", "snails");
    private static final Duration MOST = Duration.ofSeconds(60);

    private final Path root;
    private final Workshop shop;

    KilledSavingGitTest(@TempDir Path root) {
        this.root = root;
        this.shop = new Workshop(root);
    }

    @BeforeAll
    static void nativeGit() {
        assumeTrue(Workshop.hasNativeGit(), "native git is not installed");
    }

    /** Each file is there in one part of a saving only, so its being there says how far the saving has come. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "objects/tmp_obj_platekeep_0",
                "platekeep.noting",
                "platekeep.saving",
                "index.lock",
                "refs/heads/main.lock",
                "platekeep-writing-0",
                "platekeep-listing",
                "platekeep-naming"
            })
    void theNextProgramSavesWhereverOneWasKilled(String sign) throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "first", plate(0x20, "Kite", "kites"));
            killAt(library.folder().resolve(".git").resolve(sign), library.folder());
            Version before = library.newest().orElseThrow();
            waitUntilLocksAreOld(library.folder().resolve(".git"));

            save(library, "afterwards", SNAIL);

            assertThat(library.versions(3)).contains(before);
            assertThat(shop.git(library.folder(), "status", "--porcelain")).isEmpty();
            assertThat(shop.git(library.folder(), "fsck", "--strict", "--no-dangling"))
                    .isEmpty();
            assertThat(library.folder().resolve(".git/platekeep.saving")).doesNotExist();
        }
    }

    private void killAt(Path sign, Path library) throws IOException, InterruptedException {
        Process saver = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledSaver.class.getName(),
                        library.toString(),
                        root.resolve("saver").toString())
                .redirectErrorStream(true)
                .redirectOutput(root.resolve("saver.log").toFile())
                .start();
        try {
            Instant end = Instant.now().plus(MOST);
            while (!Files.exists(sign) && saver.isAlive() && Instant.now().isBefore(end)) {
                Thread.onSpinWait();
            }
        } finally {
            saver.destroyForcibly().waitFor();
        }
        assertThat(saver.exitValue())
                .as(Files.readString(root.resolve("saver.log")))
                .isNotEqualTo(1);
    }

    /** Locks of a moment ago may be a program's that runs, so they are spared. */
    private static void waitUntilLocksAreOld(Path git) throws IOException, InterruptedException {
        try (Stream<Path> files = Files.walk(git)) {
            if (files.anyMatch(file -> file.toString().endsWith(".lock") && !file.endsWith("platekeep.lock"))) {
                Thread.sleep(2_500);
            }
        }
    }
}
