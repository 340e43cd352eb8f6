package platekeep.client.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static platekeep.client.git.Workshop.plate;
import static platekeep.client.git.Workshop.save;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
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
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;

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

    @Test
    void fortyScansAreOneVersionAllOfThemOrNone() throws LibraryException {
        try (Library wenna = shop.create("wenna")) {
            int versions = wenna.versions(100).size();
            List<Change> forty = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                Plate scanned = new Draft(Workshop.id(0x100 + i), "Scan " + i).build();
                forty.add(new Change.PutPlate(scanned));
                forty.add(new Change.PutPicture(scanned.id(), Picture.Kind.SCAN, picture(i)));
            }
            List<Change> withABadOne = new ArrayList<>(forty);
            withABadOne.set(79, new Change.PutPicture(Workshop.id(0x100 + 39), Picture.Kind.SCAN, new byte[] {1, 2}));
            assertThatThrownBy(() -> put(wenna, withABadOne.toArray(new Change[0])))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("neither a JPEG nor a PNG");
            assertThat(wenna.pictures()).isEmpty();
            assertThat(wenna.list(Progress.NONE)).isEmpty();

            put(wenna, forty.toArray(new Change[0]));
            assertThat(wenna.versions(100)).hasSize(versions + 1);
            assertThat(wenna.pictures()).hasSize(40).extracting(Picture::kind).containsOnly(Picture.Kind.SCAN);
            assertThat(wenna.handEdits()).isEmpty();
        }
    }

    private static byte[] picture(int number) {
        return ("\u00ff\u00d8\u00ff\u00e0page " + number).getBytes(StandardCharsets.ISO_8859_1);
    }

    @Test
    void aPicturePutAwayGoesAloneAndOnlyWhatIsOne() throws LibraryException, IOException {
        try (Library wenna = shop.create("wenna")) {
            put(
                    wenna,
                    new Change.PutPlate(KITE),
                    new Change.PutPicture(KITE.id(), Picture.Kind.SCAN, PNG),
                    new Change.PutPicture(KITE.id(), Picture.Kind.PHOTO, JPEG));
            Picture photo = wenna.pictures(KITE.id()).get(0);
            put(wenna, new Change.PutPictureAway(photo));
            assertThat(wenna.pictures()).extracting(Picture::kind).containsExactly(Picture.Kind.SCAN);
            assertThat(wenna.folder().resolve(photo.path())).doesNotExist();
            assertThat(wenna.plate(KITE.id())).isPresent();
            Picture scan = wenna.pictures().get(0);
            String plate = scan.path().replaceAll("/[^/]*$", "/kite.json");
            for (String path : List.of("library.json", plate, "../kite.png", ".git/config", photo.path())) {
                Picture hostile = new Picture(KITE.id(), Picture.Kind.SCAN, path, scan.content());
                assertThatThrownBy(() -> put(wenna, new Change.PutPictureAway(hostile)))
                        .as(path)
                        .isInstanceOf(LibraryException.class)
                        .hasMessageContaining("not in the library any more");
            }
            assertThat(wenna.pictures()).containsExactly(scan);
        }
    }

    @Test
    void aPictureOfAnUnheardOfSizeIsRefused() throws LibraryException {
        try (Library wenna = shop.create("wenna")) {
            save(wenna, "a kite", KITE);
            byte[] huge = Arrays.copyOf(JPEG, (64 << 20) + 1);
            assertThatThrownBy(() -> put(wenna, new Change.PutPicture(KITE.id(), Picture.Kind.SCAN, huge)))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("larger than 64 MB");
        }
    }

    @Test
    void aPlateThatWasMovedOrRenamedKeepsItsPictures() throws LibraryException, IOException {
        try (Library wenna = shop.create("wenna")) {
            put(wenna, new Change.PutPlate(KITE), new Change.PutPicture(KITE.id(), Picture.Kind.SCAN, PNG));
            save(wenna, "another title", KITE.edit().title("Dragon").build());
            assertThat(wenna.pictures(KITE.id())).hasSize(1);
            Files.createDirectories(wenna.folder().resolve("plates/old"));
            Files.move(
                    wenna.folder().resolve("plates/k/kite.json"), wenna.folder().resolve("plates/old/kite.json"));
            wenna.takeIn(wenna.handEdits(), "Sorted by hand");
            assertThat(wenna.bytes(wenna.pictures(KITE.id()).get(0))).isEqualTo(PNG);
            put(wenna, new Change.PutPicture(KITE.id(), Picture.Kind.PHOTO, JPEG));
            assertThat(wenna.pictures(KITE.id()))
                    .extracting(Picture::path)
                    .anyMatch(path -> path.startsWith("plates/old/"));
        }
    }

    @Test
    void picturesComeWithWhatIsBroughtInAndStayWithAPlateThatIsKept() throws LibraryException {
        try (Library wenna = shop.create("wenna")) {
            put(wenna, new Change.PutPlate(KITE), new Change.PutPicture(KITE.id(), Picture.Kind.SCAN, PNG));
            wenna.share(shop.root.resolve("shared"));
            wenna.send(Progress.NONE);
            try (Library isolde = shop.libraries.copyFrom(
                    shop.root.resolve("shared"), shop.root.resolve("isolde"), Workshop.ISOLDE)) {
                put(isolde, new Change.PutPicture(KITE.id(), Picture.Kind.PHOTO, JPEG));
                save(isolde, "another title", KITE.edit().title("Dragon").build());
                isolde.send(Progress.NONE);
            }
            // she moves it out of this library meanwhile, pictures and all
            put(
                    wenna,
                    new Change.PutAway(KITE.id()),
                    new Change.PutPictureAway(wenna.pictures().get(0)));
            wenna.bringIn(wenna.look(Progress.NONE), List.of(), Progress.NONE);
            assertThat(Workshop.now(wenna, KITE).title()).isEqualTo("Dragon");
            assertThat(wenna.pictures(KITE.id()))
                    .extracting(Picture::kind)
                    .containsExactly(Picture.Kind.PHOTO, Picture.Kind.SCAN);
            assertThat(wenna.bytes(wenna.pictures(KITE.id()).get(1))).isEqualTo(PNG);
        }
    }

    @Test
    void aSeriesPutAwayLeavesItsPlates() throws LibraryException {
        try (Library wenna = shop.create("wenna")) {
            Series series =
                    new Series(Workshop.id(0x70), "Wind", List.of(KITE.id()), Palette.EMPTY, List.of(), Unknown.NONE);
            put(wenna, new Change.PutPlate(KITE), new Change.PutSeries(series));
            put(wenna, new Change.PutSeriesAway(series.id()));
            assertThat(wenna.series()).isEmpty();
            assertThat(wenna.plate(KITE.id())).isPresent();
            assertThatThrownBy(() -> put(wenna, new Change.PutSeriesAway(series.id())))
                    .isInstanceOf(LibraryException.class)
                    .hasMessageContaining("not in the library any more");
        }
    }
}
