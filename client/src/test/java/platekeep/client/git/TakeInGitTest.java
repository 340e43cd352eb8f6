package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static platekeep.client.git.Workshop.plate;
import static platekeep.client.git.Workshop.save;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Library;
import platekeep.client.library.Version;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;

/** Files changed by hand become a version like any other. */
class TakeInGitTest {
    private static final Plate GATE = plate(0x20, "Gate")
            .edit()
            .rows(java.util.List.of(Row.of("m4k1", ".bb."), Row.of("0pz8", ".bb.")))
            .build();

    private final Workshop shop;

    TakeInGitTest(@TempDir Path root) {
        shop = new Workshop(root);
    }

    /**
     * The contract of plate texts, "Kinds are kept": without a start the lowest row's leftmost cable is down; a cable put
     * in further left would turn all others, so the leftmost old cable of the lowest row gets a start, down at pleat 2.
     */
    @Test
    void aCableTypedInAtTheLeftTurnsNoOtherCable() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "a gate", GATE);
            Path file = library.folder().resolve("plates/g/gate.json");
            Files.writeString(file, Files.readString(file).replace("0pz8 .bb.", "0pz8 bbb."));
            library.takeIn(library.handEdits(), "Wider at the foot");
            assertThat(file).content().contains("0pz8 bbb.", "{\"row\": \"0pz8\", \"pleat\": 2, \"cable\": \"down\"}");
            assertThat(library.handEdits()).isEmpty();
        }
    }

    @Test
    void itIsInTheNameOfWhoeverChangedItAndSaysWhoEnteredIt() throws Exception {
        try (Library library = shop.create("lib")) {
            save(library, "a gate", GATE);
            Path file = library.folder().resolve("plates/g/gate.json");
            Files.writeString(file, Files.readString(file).replace("\"Gate\"", "\"Garden Gate\""));
            Version version =
                    library.takeIn(library.handEdits(), "Pencilled on the print", Optional.of(Workshop.ISOLDE));
            assertThat(version.inNameOf()).isEqualTo(Workshop.ISOLDE);
            assertThat(version.enteredBy()).isEqualTo(Workshop.WENNA);
        }
    }
}
