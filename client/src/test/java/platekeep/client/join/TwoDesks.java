package platekeep.client.join;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import platekeep.client.cache.Cache;
import platekeep.client.draft.Drafts;
import platekeep.client.git.GitLibraries;
import platekeep.client.library.Change;
import platekeep.client.library.Hand;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.room.RecordingFront;
import platekeep.client.room.Workroom;
import platekeep.client.settings.Settings;
import platekeep.client.task.Progress;
import platekeep.client.task.SameThreadTasks;
import platekeep.model.plate.Plate;

/** Two real libraries of two designers with a shared copy between them, and a room on the first one's desk. */
final class TwoDesks implements AutoCloseable {
    static final Hand WENNA = new Hand("Wenna Tarrow", "wenna@workshop.example");
    static final Hand ISOLDE = new Hand("Isolde Marsh", "isolde@workshop.example");

    final Path root;
    final Library wenna;
    final Library isolde;
    final RecordingFront front = new RecordingFront();
    private final GitLibraries libraries;

    TwoDesks(Path root, Plate... plates) throws LibraryException {
        this.root = root;
        Clock noon = Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC);
        libraries = new GitLibraries(noon, new Cache(root.resolve("cache")), Runnable::run);
        wenna = libraries.create(root.resolve("wenna"), "Harbour and Orchard", WENNA);
        save(wenna, "Begun", plates);
        wenna.share(root.resolve("shared"));
        wenna.send(Progress.NONE);
        isolde = libraries.copyFrom(root.resolve("shared"), root.resolve("isolde"), ISOLDE);
    }

    static void save(Library library, String reason, Plate... plates) throws LibraryException {
        List<Change> changes = List.of(plates).stream()
                .map(p -> (Change) new Change.PutPlate(p))
                .toList();
        library.save(new Saving(changes, reason, Optional.empty(), Optional.empty()));
    }

    /** Both change the plates, and the partner sends. */
    void bothChange(List<Plate> mine, List<Plate> theirs) throws LibraryException {
        save(isolde, "Hers", theirs.toArray(Plate[]::new));
        isolde.send(Progress.NONE);
        save(wenna, "Mine", mine.toArray(Plate[]::new));
    }

    Plate now(Plate plate) throws LibraryException {
        return wenna.plate(plate.id()).orElseThrow().plate().orElseThrow();
    }

    Drafts drafts() {
        return new Drafts(root.resolve("drafts"));
    }

    Drafts joins() {
        return new Drafts(root.resolve("joins"));
    }

    /** A new window on the first designer's library, as after a start. */
    JoinPresenter sit(JoinView view) {
        Settings settings = Settings.in(root.resolve("settings.properties"));
        Workroom room = new Workroom(libraries, new SameThreadTasks(), settings);
        room.frontIs(front);
        JoinPresenter presenter = new JoinPresenter(room, drafts(), joins(), view);
        room.open(wenna.folder(), opened -> {});
        return presenter;
    }

    /** The library as the window of a presenter has it. */
    static Library of(JoinPresenter presenter) {
        return presenter.library().orElseThrow();
    }

    @Override
    public void close() {
        wenna.close();
        isolde.close();
    }
}
