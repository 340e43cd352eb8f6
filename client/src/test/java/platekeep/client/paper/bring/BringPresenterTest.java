package platekeep.client.paper.bring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.paper.picture.PictureFile;
import platekeep.client.paper.picture.Shots;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;

class BringPresenterTest {
    @TempDir
    private Path folder;

    private TestRoom test;
    private Path binder;
    private final View view = new View();
    private BringPresenter bring;

    @BeforeEach
    void aBinderOfScans() throws IOException {
        test = new TestRoom(folder);
        test.open();
        binder = Files.createDirectory(folder.resolve("binder"));
        bring = new BringPresenter(test.room, view);
        view.scans = Optional.of(new BringView.Scans(List.of(binder), 0));
    }

    private void sheet(String name, int width, int height) throws IOException {
        Files.write(binder.resolve(name), Shots.telephoneJpeg(width, height, 1));
    }

    private List<Plate> plates() {
        return test.library.list(Progress.NONE).stream()
                .map(entry -> entry.plate().orElseThrow())
                .toList();
    }

    @Test
    void aFolderOfScansIsOneVersionInTheOrderOfTheNames() throws IOException, LibraryException {
        for (int i = 1; i <= 40; i++) {
            sheet("page_" + i + ".JPG", 60 + i, 40);
        }
        Files.writeString(binder.resolve("list.txt"), "what is in the binder");
        bring.scans();
        assertThat(test.library.versions(10))
                .singleElement()
                .satisfies(version -> assertThat(version.reason()).isEqualTo("40 scans brought in"));
        assertThat(plates()).hasSize(40).allSatisfy(plate -> {
            assertThat(plate.pleats()).isEmpty();
            assertThat(plate.rows()).isEmpty();
        });
        Place.Paper paper = (Place.Paper) test.front.places.get(0);
        assertThat(paper.plates())
                .extracting(one -> test.library
                        .plate(one.plateId())
                        .flatMap(entry -> entry.plate())
                        .orElseThrow()
                        .title())
                .startsWith("page 1", "page 2", "page 3")
                .endsWith("page 39", "page 40");
        assertThat(test.front.troubles).isEmpty();
        assertThat(view.sizes).isEmpty();
        for (Picture picture : test.library.pictures()) {
            assertThat(new String(test.library.bytes(picture), StandardCharsets.ISO_8859_1))
                    .doesNotContain("Tarrow");
        }
    }

    @Test
    void oneBrokenFileAmongThemIsNamedAndStopsNothing() throws IOException {
        sheet("page 1.jpg", 60, 40);
        sheet("page 3.jpg", 62, 40);
        byte[] whole = Shots.telephoneJpeg(64, 40, 1);
        Files.write(binder.resolve("page 2.jpg"), Arrays.copyOf(whole, whole.length / 2));
        Files.writeString(binder.resolve("page 4.png"), "not a picture at all");
        bring.scans();
        assertThat(plates()).extracting(Plate::title).containsExactlyInAnyOrder("page 1", "page 3");
        assertThat(test.front.troubles)
                .singleElement()
                .satisfies(sentence -> assertThat(sentence)
                        .contains("2 files were left out")
                        .contains("\"page 2.jpg\" ends in the middle of the picture")
                        .contains("\"page 4.png\" is neither a JPEG nor a PNG picture"));
    }

    @Test
    void whatIsThereAlreadyDoesNotComeTwice() throws IOException {
        sheet("page 1.jpg", 60, 40);
        bring.scans();
        sheet("page 1 again.jpg", 60, 40);
        sheet("page 2.jpg", 61, 40);
        sheet("page 2 again.jpg", 61, 40);
        bring.scans();
        assertThat(plates()).extracting(Plate::title).containsExactlyInAnyOrder("page 1", "page 2 again");
        assertThat(test.front.troubles.get(0))
                .contains("3 files were left out")
                .contains("\"page 1.jpg\" is in this library already.")
                .contains("\"page 2.jpg\" is there twice.");
    }

    @Test
    void largeScansAreMadeSmallerOnlyWhenSheAgrees() throws IOException, LibraryException {
        sheet("page 1.jpg", 3000, 2000);
        sheet("page 2.jpg", 300, 200);
        view.size = Optional.empty();
        bring.scans();
        assertThat(test.library.versions(10)).isEmpty();
        assertThat(view.sizes).singleElement().satisfies(sizes -> {
            assertThat(sizes.pictures()).isEqualTo(2);
            assertThat(sizes.large()).isEqualTo(1);
            assertThat(sizes.after()).isLessThan(sizes.before());
        });
        view.size = Optional.of(BringView.Size.SMALLER);
        bring.scans();
        assertThat(widest()).isEqualTo(2400);
        assertThat(test.library.pictures().stream().mapToLong(this::length).sum())
                .isEqualTo(view.sizes.get(1).after());

        // the same sheet as it was is known to be there
        view.size = Optional.of(BringView.Size.AS_THEY_ARE);
        bring.scans();
        assertThat(test.front.troubles.get(0)).startsWith("Nothing was brought in. 2 files were left out");
    }

    private int widest() throws LibraryException {
        int widest = 0;
        for (Picture picture : test.library.pictures()) {
            widest = Math.max(
                    widest, PictureFile.of("a", test.library.bytes(picture)).width());
        }
        return widest;
    }

    private long length(Picture picture) {
        try {
            return test.library.bytes(picture).length;
        } catch (LibraryException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void photosLieBesideAPlateThatIsThere() throws IOException {
        sheet("page 1.jpg", 60, 40);
        bring.scans();
        Plate plate = plates().get(0);
        sheet("IMG 7.jpg", 90, 40);
        view.pictures = Optional.of(new BringView.Pictures(List.of(binder.resolve("IMG 7.jpg")), Picture.Kind.PHOTO));
        bring.pictures(test.library, plate.id(), plate.title());
        assertThat(plates()).hasSize(1);
        assertThat(test.library.pictures(plate.id()))
                .extracting(Picture::kind)
                .containsExactly(Picture.Kind.SCAN, Picture.Kind.PHOTO);
        assertThat(test.library.versions(1).get(0).reason()).isEqualTo("1 photo of \"page 1\"");
    }

    @Test
    void filesThatAreDroppedComeInTheSameWay() throws IOException {
        sheet("page 1.jpg", 60, 40);
        sheet("page 2.jpg", 61, 40);
        bring.scans(List.of(binder.resolve("page 2.jpg")));
        assertThat(plates()).extracting(Plate::title).containsExactly("page 2");
    }

    @Test
    void anEmptyFolderIsSaid() {
        bring.scans();
        assertThat(test.front.troubles)
                .containsExactly(
                        "There is no JPEG and no PNG picture in \"binder\". Choose the folder or the files again.");
    }

    @Test
    void titlesComeFromTheNames() {
        assertThat(ScanFiles.title(Path.of("IMG_2041.jpeg"))).isEqualTo("IMG 2041");
        assertThat(ScanFiles.title(Path.of("Crab on the Slipway.png"))).isEqualTo("Crab on the Slipway");
        assertThat(ScanFiles.title(Path.of("___.jpg"))).isEqualTo("Scan");
        assertThat(ScanFiles.title(Path.of("a\tb\u0007c.jpg"))).isEqualTo("a b c");
        assertThat(ScanFiles.title(Path.of("x".repeat(200) + ".jpg"))).hasSize(120);
    }

    private static final class View implements BringView {
        private Optional<Scans> scans = Optional.empty();
        private Optional<Pictures> pictures = Optional.empty();
        private Optional<Size> size = Optional.of(Size.AS_THEY_ARE);
        private final List<Sizes> sizes = new java.util.ArrayList<>();

        @Override
        public Optional<Scans> askScans(List<String> libraries, List<Path> files) {
            return files.isEmpty() ? scans : Optional.of(new Scans(files, 0));
        }

        @Override
        public Optional<Pictures> askPictures(String title) {
            return pictures;
        }

        @Override
        public Optional<Size> askSize(Sizes asked) {
            sizes.add(asked);
            return size;
        }
    }
}
