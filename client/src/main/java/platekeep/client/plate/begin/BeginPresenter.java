package platekeep.client.plate.begin;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.room.Latest;
import platekeep.client.room.Place;
import platekeep.client.room.Workroom;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;

/** Begins plates from a grid of text or a picture. What cannot be used is told in a sentence, and nothing is begun. */
public final class BeginPresenter {
    private static final long MOST_BYTES = 16L << 20;

    private final Workroom room;
    private final Drafts drafts;
    private final BeginView view;
    private final Latest<Runnable> fitting;

    BeginPresenter(Workroom room, Drafts drafts, BeginView view) {
        this.room = room;
        this.drafts = drafts;
        this.view = view;
        this.fitting = new Latest<>(room);
    }

    /** Begins a plate from the text on the clipboard. */
    public void fromClipboard() {
        if (isReady()) {
            view.clipboard()
                    .ifPresentOrElse(
                            this::fromText,
                            () -> room.front()
                                    .trouble("There is no text on the clipboard. Copy a grid first: one line a row, one"
                                            + " character a cable."));
        }
    }

    /** Begins a plate from a text file. */
    public void fromTextFile() {
        if (isReady()) {
            view.askFile(BeginView.Kind.TEXT).ifPresent(file -> room.work(progress -> text(file), this::fromText));
        }
    }

    private boolean isReady() {
        if (room.open().isEmpty()) {
            room.front().trouble("A plate needs a library to lie in. Make a new library or open one first.");
        }
        return !room.open().isEmpty();
    }

    private static String text(Path file) throws LibraryException {
        String name = "\"" + file.getFileName() + "\"";
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new LibraryException(name + " is larger than " + (MOST_BYTES >> 20)
                        + " million characters, far more than the largest chart. Nothing was begun.");
            }
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new LibraryException(
                    name + " is no text file in UTF-8. Save it anew as plain text; nothing was begun.", e);
        } catch (IOException e) {
            throw new LibraryException(name + " could not be read. Is it still there? Nothing was begun.", e);
        }
    }

    private void fromText(String text) {
        List<Library> libraries = room.open();
        room.work(
                progress -> TextGrid.read(
                        text,
                        UUID.randomUUID().toString(),
                        "New plate",
                        Palettes.byName(Palettes.of(libraries, progress)),
                        new SecureRandom()),
                begun -> begun.fold(
                        plate -> {
                            view.askNamed(plate, names(libraries))
                                    .ifPresent(named -> keep(libraries.get(named.library()), titled(plate, named)));
                            return true;
                        },
                        why -> {
                            room.front().trouble(why);
                            return false;
                        }));
    }

    private static Plate titled(Plate plate, BeginView.Named named) {
        return plate.edit().title(named.title()).build();
    }

    private List<String> names(List<Library> libraries) {
        return libraries.stream().map(room::nameOf).toList();
    }

    /** What a picture is fitted with. */
    private record Fitting(Picture picture, List<Palettes.Known> palettes) {}

    /** Begins a plate from a picture file, fitted as she likes it. */
    public void fromPicture() {
        if (isReady()) {
            List<Library> libraries = room.open();
            view.askFile(BeginView.Kind.PICTURE)
                    .ifPresent(file -> room.work(
                            progress -> new Fitting(PictureFile.read(file), Palettes.of(libraries, progress)),
                            fit -> fit(fit, libraries)));
        }
    }

    private void fit(Fitting with, List<Library> libraries) {
        List<String> palettes =
                with.palettes().stream().map(Palettes.Known::name).toList();
        view.askFit(
                        with.picture(),
                        palettes,
                        names(libraries),
                        fit -> fitting.ask(progress -> view.preview(plate(with, fit, "New plate")), Runnable::run))
                .ifPresent(answer -> room.work(
                        progress -> plate(with, answer.fit(), answer.named().title()),
                        plate -> keep(libraries.get(answer.named().library()), plate)));
    }

    private static Plate plate(Fitting with, BeginView.Fit fit, String title) {
        Optional<Palette> palette =
                fit.palette().map(n -> with.palettes().get(n).palette());
        return new PictureFit(fit.pleats(), fit.rows(), fit.colours(), palette, fit.least(), fit.ground())
                .plate(with.picture(), UUID.randomUUID().toString(), title, new SecureRandom());
    }

    private void keep(Library library, Plate plate) {
        List<String> designers =
                library.hand().map(hand -> List.of(hand.name())).orElse(List.of());
        Plate signed = plate.edit().designers(designers).build();
        room.work(
                progress -> {
                    drafts.keep(library.folder(), signed, Optional.empty());
                    return signed;
                },
                kept -> {
                    room.draftsChanged();
                    room.go(new Place.OnePlate(library, kept.id()));
                });
    }
}
