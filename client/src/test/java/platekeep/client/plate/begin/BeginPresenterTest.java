package platekeep.client.plate.begin;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.plate.Charted;
import platekeep.client.room.Place;
import platekeep.client.room.TestRoom;
import platekeep.model.plate.Plate;

class BeginPresenterTest {
    @TempDir
    private Path folder;

    private TestRoom test;
    private final Answers view = new Answers();
    private BeginPresenter begin;

    /** Answers as it was told to. */
    private static final class Answers implements BeginView {
        Optional<String> clipboard = Optional.empty();
        Optional<Path> file = Optional.empty();
        Optional<FitAnswer> fit = Optional.empty();
        final List<Plate> previews = new ArrayList<>();

        @Override
        public Optional<String> clipboard() {
            return clipboard;
        }

        @Override
        public Optional<Path> askFile(Kind kind) {
            return file;
        }

        @Override
        public Optional<Named> askNamed(Plate made, List<String> libraries) {
            return Optional.of(new Named("Typed", 0));
        }

        @Override
        public Optional<FitAnswer> askFit(
                Picture picture, List<String> palettes, List<String> libraries, Consumer<Fit> wanted) {
            fit.ifPresent(answer -> wanted.accept(answer.fit()));
            return fit;
        }

        @Override
        public Runnable preview(Plate plate) {
            return () -> previews.add(plate);
        }
    }

    @BeforeEach
    void openARoom() {
        test = new TestRoom(folder);
        test.open();
        begin = new BeginPresenter(test.room, test.drafts, view);
    }

    private Plate begun() {
        Place.OnePlate place = (Place.OnePlate) test.front.places.get(0);
        return test.drafts
                .of(test.library.folder(), place.plateId())
                .orElseThrow()
                .plate();
    }

    @Test
    void copiedTextBecomesADraftThatIsShown() {
        view.clipboard = Optional.of("ab\n.b\n");
        begin.fromClipboard();
        assertThat(Charted.cells(begun())).containsExactly("ab", ".b");
        assertThat(begun().title()).isEqualTo("Typed");
        assertThat(begun().designers()).containsExactly("Wenna Tarrow");
    }

    @Test
    void aTextFileBecomesADraftToo() throws IOException {
        view.file = Optional.of(Files.writeString(folder.resolve("grid.csv"), "\uFEFFa,b\n,b\n"));
        begin.fromTextFile();
        assertThat(Charted.cells(begun())).containsExactly("ab", ".b");
    }

    @Test
    void whatIsWrongIsToldAndNothingIsBegun() throws IOException {
        begin.fromClipboard();
        view.clipboard = Optional.of("ab\nb\n");
        begin.fromClipboard();
        view.file = Optional.of(Files.write(folder.resolve("bytes.txt"), new byte[] {(byte) 0xC3, 0x28}));
        begin.fromTextFile();
        view.file = Optional.of(Files.writeString(folder.resolve("no.png"), "no"));
        begin.fromPicture();
        view.file = Optional.of(Files.write(folder.resolve("huge.png"), PictureTest.pngHeader(30_000, 30_000)));
        begin.fromPicture();
        view.file = Optional.of(Files.write(folder.resolve("torn.png"), PictureTest.pngHeader(30, 30)));
        begin.fromPicture();
        view.clipboard = Optional.of(java.util.stream.IntStream.range(0, 63)
                .mapToObj(n -> "n" + n)
                .collect(java.util.stream.Collectors.joining(",")));
        begin.fromClipboard();
        assertThat(test.front.troubles).hasSize(7).allSatisfy(t -> assertThat(t).endsWith("."));
        assertThat(test.drafts.all(test.library.folder())).isEmpty();
        assertThat(test.front.places).isEmpty();
    }

    @Test
    void aPictureIsPreviewedAndBegun() throws IOException {
        BufferedImage image = new BufferedImage(30, 30, BufferedImage.TYPE_INT_RGB);
        Path file = folder.resolve("black.png");
        ImageIO.write(image, "png", file.toFile());
        view.file = Optional.of(file);
        BeginView.Fit fit = new BeginView.Fit(5, 2, 4, Optional.empty(), 1, PictureFit.Ground.WORKED);
        view.fit = Optional.of(new BeginView.FitAnswer(new BeginView.Named("Night", 0), fit));
        begin.fromPicture();
        assertThat(view.previews).hasSize(1);
        assertThat(begun().title()).isEqualTo("Night");
        assertThat(Charted.cells(begun())).containsExactly("aaaa", "aaaa");
    }
}
