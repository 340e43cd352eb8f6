package platekeep.client.paper.bring;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.library.Saving;
import platekeep.client.paper.picture.Dots;
import platekeep.client.room.Place;
import platekeep.client.room.Workroom;
import platekeep.client.task.Tasks;
import platekeep.model.plate.Draft;

/** Brings scans and photos in, all that are asked for at one go as one version. */
public final class BringPresenter {
    private final Workroom room;
    private final BringView view;

    public BringPresenter(Workroom room, BringView view) {
        this.room = room;
        this.view = view;
    }

    /** Scans of paper, each a new plate that has neither pleats nor rows yet. */
    public void scans() {
        scans(List.of());
    }

    /** The same for files that she dropped. */
    public void scans(List<Path> files) {
        if (room.open().isEmpty()) {
            room.front().trouble("Scans need a library to lie in. Make a new library or open one first.");
            return;
        }
        List<Library> open = room.open();
        view.askScans(open.stream().map(room::nameOf).toList(), files)
                .ifPresent(asked -> scans(open.get(asked.library()), asked.files()));
    }

    private void scans(Library library, List<Path> files) {
        room.withHand(library, () -> read(library, files, (batch, size) -> saveScans(library, batch, size)));
    }

    /** Pictures beside a plate that is there. */
    public void pictures(Library library, String plateId, String title) {
        view.askPictures(title)
                .ifPresent(asked -> room.withHand(
                        library,
                        () -> read(
                                library,
                                asked.files(),
                                (batch, size) ->
                                        savePictures(new Beside(library, plateId, title, asked.kind()), batch, size))));
    }

    private record Beside(Library library, String plateId, String title, Picture.Kind kind) {}

    private interface Then {
        void with(Batch batch, BringView.Size size);
    }

    private void read(Library library, List<Path> files, Then then) {
        work(progress -> Batch.read(library, files, progress), batch -> {
            if (batch.ready().isEmpty()) {
                room.front().trouble("Nothing was brought in. " + batch.complaint());
            } else {
                size(batch).ifPresent(size -> then.with(batch, size));
            }
        });
    }

    private Optional<BringView.Size> size(Batch batch) {
        return batch.large() == 0
                ? Optional.of(BringView.Size.AS_THEY_ARE)
                : view.askSize(new BringView.Sizes(
                        batch.ready().size(),
                        batch.large(),
                        batch.bytes(BringView.Size.AS_THEY_ARE),
                        batch.bytes(BringView.Size.SMALLER),
                        Dots.SMALLER));
    }

    private void saveScans(Library library, Batch batch, BringView.Size size) {
        List<Place.OnePlate> plates = new ArrayList<>();
        work(
                progress -> {
                    batch.refuseTooMuch(size);
                    List<Change> changes = new ArrayList<>();
                    for (Prepared one : batch.ready()) {
                        String id = UUID.randomUUID().toString();
                        changes.add(new Change.PutPlate(new Draft(id, ScanFiles.title(one.file())).build()));
                        changes.add(new Change.PutPicture(id, Picture.Kind.SCAN, one.bytes(size)));
                        plates.add(new Place.OnePlate(library, id));
                    }
                    return save(library, changes, count(batch, "scan") + " brought in");
                },
                saved -> {
                    room.changed(library);
                    room.go(new Place.Paper(plates));
                    told(
                            batch,
                            count(batch, "scan") + " brought into \"" + room.nameOf(library)
                                    + "\". Now say what they are.");
                });
    }

    private void savePictures(Beside beside, Batch batch, BringView.Size size) {
        String what = count(batch, beside.kind().word());
        work(
                progress -> {
                    batch.refuseTooMuch(size);
                    List<Change> changes = new ArrayList<>();
                    for (Prepared one : batch.ready()) {
                        changes.add(new Change.PutPicture(beside.plateId(), beside.kind(), one.bytes(size)));
                    }
                    return save(beside.library(), changes, what + " of \"" + beside.title() + "\"");
                },
                saved -> {
                    room.changed(beside.library());
                    told(batch, what + " put beside \"" + beside.title() + "\".");
                });
    }

    private static Object save(Library library, List<Change> changes, String reason) throws LibraryException {
        return library.save(new Saving(changes, reason, Optional.empty(), Optional.empty()));
    }

    private static String count(Batch batch, String what) {
        int count = batch.ready().size();
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private void told(Batch batch, String done) {
        if (batch.leftOut().isEmpty()) {
            room.front().say(done);
        } else {
            room.front().trouble(done + " " + batch.complaint());
        }
    }

    /** Does it in the background and says meanwhile how far it has come. */
    private <T> void work(Tasks.Work<T> work, Consumer<T> done) {
        room.front().busy("Looking the pictures through …");
        room.tasks()
                .run(
                        work,
                        step -> room.front()
                                .busy(step.what() + ", " + (step.done() + 1) + " of " + step.total() + " …"),
                        outcome -> {
                            room.front().busy("");
                            outcome.fold(
                                    result -> {
                                        done.accept(result.value());
                                        return true;
                                    },
                                    failed -> {
                                        room.trouble(failed.why());
                                        return false;
                                    },
                                    cancelled -> false);
                        });
    }
}
