package platekeep.client.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.LibraryException;
import platekeep.client.plate.TestPlates;
import platekeep.model.plate.Plate;

class DraftsTest {
    private static final Path LIBRARY = Path.of("/libraries/harbour");
    private static final Plate PLATE = TestPlates.block("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Block");

    @TempDir
    private Path folder;

    @Test
    void aDraftIsReadAsItWasKept() throws LibraryException {
        new Drafts(folder).keep(LIBRARY, PLATE, Optional.of("abc"));
        KeptDraft kept = new Drafts(folder).of(LIBRARY, PLATE.id()).orElseThrow();
        assertThat(kept.plate()).isEqualTo(PLATE);
        assertThat(kept.seen()).contains("abc");
    }

    @Test
    void theLastDraftKeptCountsAndDropsOutWhole() throws LibraryException {
        Drafts drafts = new Drafts(folder);
        drafts.keep(LIBRARY, PLATE, Optional.empty());
        Plate renamed = PLATE.edit().title("Other").build();
        drafts.keep(LIBRARY, renamed, Optional.empty());
        assertThat(drafts.all(LIBRARY)).extracting(KeptDraft::plate).containsExactly(renamed);
        drafts.drop(LIBRARY, PLATE.id());
        assertThat(drafts.all(LIBRARY)).isEmpty();
    }

    @Test
    void librariesDoNotSeeEachOthersDrafts() throws LibraryException {
        Drafts drafts = new Drafts(folder);
        drafts.keep(LIBRARY, PLATE, Optional.empty());
        assertThat(drafts.all(Path.of("/libraries/archive"))).isEmpty();
    }

    @Test
    void aTornDraftIsPassedOver() throws LibraryException, IOException {
        Drafts drafts = new Drafts(folder);
        drafts.keep(LIBRARY, PLATE, Optional.empty());
        try (Stream<Path> files = Files.walk(folder)) {
            Path file = files.filter(Files::isRegularFile).findFirst().orElseThrow();
            Files.writeString(file, "-\n{\"format\": ");
        }
        assertThat(drafts.all(LIBRARY)).isEmpty();
        assertThat(drafts.of(LIBRARY, PLATE.id())).isEmpty();
    }
}
