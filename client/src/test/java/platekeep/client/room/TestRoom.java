package platekeep.client.room;

import java.nio.file.Path;
import java.util.Optional;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Hand;
import platekeep.client.library.MemoryLibraries;
import platekeep.client.library.MemoryLibrary;
import platekeep.client.settings.Settings;
import platekeep.client.task.SameThreadTasks;

/** A room with one library in memory, where all work is done at once. */
public final class TestRoom {
    public static final Hand WENNA = new Hand("Wenna Tarrow", "wenna@workshop.example");

    public final MemoryLibraries libraries = new MemoryLibraries();
    public final RecordingFront front = new RecordingFront();
    public final MemoryLibrary library;
    public final Drafts drafts;
    public final Workroom room;

    public TestRoom(Path folder) {
        this(folder, Optional.of(WENNA));
    }

    public TestRoom(Path folder, Optional<Hand> hand) {
        this.library = new MemoryLibrary("Harbour", hand);
        this.drafts = new Drafts(folder.resolve("drafts"));
        libraries.put(library);
        room = new Workroom(libraries, new SameThreadTasks(), Settings.in(folder.resolve("settings.properties")));
        room.frontIs(front);
    }

    /** Opens the library, as the window does at its start. */
    public void open() {
        room.open(library.folder(), opened -> {});
    }
}
