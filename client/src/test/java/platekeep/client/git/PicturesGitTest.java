package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static platekeep.client.git.Workshop.plate;
import static platekeep.client.git.Workshop.save;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.library.Saving;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;

/** Pictures beside a plate. The digits in their names were made by sha256sum of GNU coreutils from the same bytes. */
class PicturesGitTest {
    private static final Plate KITE = plate(0x20, "Kite", "kites");
    private static final byte[] PNG = "\u0089PNG\r\n\u001a\nharbour".getBytes(StandardCharsets.ISO_8859_1);
    private static final byte[] JPEG = "\u00ff\u00d8\u00ff\u00e0orchard".getBytes(StandardCharsets.ISO_8859_1);
    private static final String PNG_DIGITS = "4c592735b89c0c7d";
    private static final String JPEG_DIGITS = "5555e81667b511c2";

    private final Workshop shop;

    PicturesGitTest(@TempDir Path root) {
        shop = new Workshop(root);
    }

    private static void put(Library library, Change... changes) throws LibraryException {
        library.save(new Saving(List.of(changes), "Scanned", Optional.empty(), Optional.empty()));
    }

    @Test
    void aPictureComesWithItsPlateIsListedReadAndTravels() throws LibraryException {
        try (Library wenna = shop.create("wenna")) {
            put(
                    wenna,
                    new Change.PutPlate(KITE),
                    new Change.PutPicture(KITE.id(), Picture.Kind.SCAN, PNG),
                    new Change.PutPicture(KITE.id(), Picture.Kind.PHOTO, JPEG));
            assertThat(wenna.pictures(KITE.id()))
                    .extracting(Picture::path)
                    .containsExactly(
                            "plates/k/" + KITE.id() + ".photo-" + JPEG_DIGITS + ".jpg",
                            "plates/k/" + KITE.id() + ".scan-" + PNG_DIGITS + ".png");
            wenna.share(shop.root.resolve("shared"));
            wenna.send(Progress.NONE);
        }
        try (Library isolde =
                shop.libraries.copyFrom(shop.root.resolve("shared"), shop.root.resolve("isolde"), Workshop.ISOLDE)) {
            List<Picture> pictures = isolde.pictures(KITE.id());
            assertThat(pictures).extracting(Picture::kind).containsExactly(Picture.Kind.PHOTO, Picture.Kind.SCAN);
            assertThat(isolde.bytes(pictures.get(0))).isEqualTo(JPEG);
            assertThat(isolde.bytes(pictures.get(1))).isEqualTo(PNG);
            assertThat(isolde.folder().resolve(pictures.get(1).path())).hasBinaryContent(PNG);
            assertThat(isolde.pictures(Workshop.id(0x99))).isEmpty();
        }
    }

    @Test
    void aPictureBesideAPlateThatIsThereIsAVersionOfItsOwn() throws LibraryException {
        try (Library wenna = shop.create("wenna")) {
            save(wenna, "a kite", KITE);
            put(wenna, new Change.PutPicture(KITE.id(), Picture.Kind.SCAN, PNG));
            assertThat(wenna.pictures(KITE.id())).hasSize(1);
            assertThatThrownBy(() -> put(wenna, new Change.PutPicture(KITE.id(), Picture.Kind.SCAN, PNG)))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("Nothing differs");
            assertThat(wenna.handEdits()).isEmpty();
        }
    }

    @Test
    void whatIsNoPictureOrBelongsToNoPlateIsRefusedAndNothingChanges() throws LibraryException {
        try (Library wenna = shop.create("wenna")) {
            save(wenna, "a kite", KITE);
            int versions = wenna.versions(10).size();
            assertThatThrownBy(() -> put(
                            wenna,
                            new Change.PutPicture(
                                    KITE.id(), Picture.Kind.SCAN, "a note".getBytes(StandardCharsets.UTF_8))))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("neither a JPEG nor a PNG");
            assertThatThrownBy(() -> put(wenna, new Change.PutPicture(Workshop.id(0x99), Picture.Kind.SCAN, PNG)))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("not in the library");
            assertThat(wenna.versions(10)).hasSize(versions);
        }
    }
}
