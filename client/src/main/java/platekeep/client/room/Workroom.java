package platekeep.client.room;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import platekeep.client.library.Hand;
import platekeep.client.library.Libraries;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.settings.Settings;
import platekeep.client.task.Outcome;
import platekeep.client.task.Progress;
import platekeep.client.task.Tasks;

/**
 * What all screens share: the open libraries, the means to work in the background, the settings, and the way from one
 * screen to another. All calls belong on the event thread; whatever takes time is done in the background and tells the
 * listeners when it is over.
 */
public final class Workroom {
    private static final Logger LOG = Logger.getLogger(Workroom.class.getName());

    /** What is said when the fault is ours. */
    public static final String OUR_BUG = "Something went wrong in Platekeep itself. What was saved is untouched; try"
            + " again, and if it happens again, look into the log.";

    private final Libraries libraries;
    private final Tasks tasks;
    private final Settings settings;
    private final List<Library> open = new ArrayList<>();
    private final Map<Library, String> ownNames = new HashMap<>();
    private LibraryNames names = LibraryNames.NONE;
    private final List<RoomListener> listeners = new ArrayList<>();
    private Front front;
    private int opening;

    public Workroom(Libraries libraries, Tasks tasks, Settings settings) {
        this.libraries = libraries;
        this.tasks = tasks;
        this.settings = settings;
    }

    /** Says which window the room is in; before anything else happens. */
    public void frontIs(Front window) {
        this.front = window;
    }

    public Front front() {
        return front;
    }

    public Tasks tasks() {
        return tasks;
    }

    public Settings settings() {
        return settings;
    }

    public void listen(RoomListener listener) {
        listeners.add(listener);
    }

    /** Makes something that comes into the room later than others: who listens for it hears what libraries are open. */
    public <T> T joined(Supplier<T> making) {
        int before = listeners.size();
        T made = making.get();
        List.copyOf(listeners.subList(before, listeners.size())).forEach(RoomListener::librariesChanged);
        return made;
    }

    /** The open libraries, in the order in which they were opened. */
    public List<Library> open() {
        return List.copyOf(open);
    }

    /** What the open libraries are called, each otherwise than the others. */
    public LibraryNames names() {
        return names;
    }

    /** What an open library is called, otherwise than all others that are open. */
    public String nameOf(Library library) {
        return names.of(library);
    }

    /** Whether libraries are being opened just now, so that an empty room need not stay empty. */
    public boolean isOpening() {
        return opening > 0;
    }

    /** Goes to a screen. */
    public void go(Place place) {
        front.show(place);
    }

    /** Opens the library in a folder, or in the nearest folder above it that is one. */
    public void open(Path folder, Consumer<Library> then) {
        opening++;
        work(
                progress -> Named.read(libraries.open(folder)),
                opened -> {
                    opening--;
                    took(opened, then);
                },
                () -> {
                    opening--;
                    listeners.forEach(RoomListener::librariesChanged);
                });
    }

    /** Makes a new library. */
    public void create(Path folder, String name, Hand hand, Consumer<Library> then) {
        settings.hand(hand.name(), hand.address());
        work(progress -> Named.of(libraries.create(folder, name, hand)), made -> took(made, then));
    }

    /** Makes a first copy of a shared copy. */
    public void copyFrom(Path sharedCopy, Path folder, Hand hand, Consumer<Library> then) {
        settings.hand(hand.name(), hand.address());
        work(progress -> Named.of(libraries.copyFrom(sharedCopy, folder, hand)), made -> took(made, then));
    }

    /** A library with its own name, which stands in it. */
    private record Named(Library library, String name) {
        static Named of(Library library) {
            return new Named(library, library.name());
        }

        /** The library also knows by then what is looked at first. */
        static Named read(Library library) throws LibraryException {
            library.first(Library.SCREENFUL);
            return of(library);
        }
    }

    private void took(Named opened, Consumer<Library> then) {
        Library library = opened.library();
        Optional<Library> there =
                open.stream().filter(l -> l.folder().equals(library.folder())).findFirst();
        if (there.isPresent()) {
            library.close();
            then.accept(there.get());
            return;
        }
        open.add(library);
        ownNames.put(library, opened.name());
        names = LibraryNames.of(ownNames);
        rememberLibraries();
        listeners.forEach(RoomListener::librariesChanged);
        then.accept(library);
    }

    /** Takes a library off the desk; nothing happens to its folder. */
    public void close(Library library) {
        open.remove(library);
        ownNames.remove(library);
        names = LibraryNames.of(ownNames);
        rememberLibraries();
        listeners.forEach(RoomListener::librariesChanged);
        library.close();
    }

    private void rememberLibraries() {
        settings.libraries(open.stream().map(Library::folder).toList());
        remember();
    }

    /** Puts the settings on disk. */
    public void remember() {
        tasks.run(
                progress -> {
                    settings.write();
                    return null;
                },
                outcome -> {});
    }

    /** Tells all screens that a library has something new. */
    public void changed(Library library) {
        listeners.forEach(listener -> listener.contentChanged(library));
        work(progress -> library.name(), name -> called(library, name));
    }

    /** What came in may have given the library another name. */
    private void called(Library library, String name) {
        if (open.contains(library) && !name.equals(ownNames.put(library, name))) {
            names = LibraryNames.of(ownNames);
            listeners.forEach(RoomListener::librariesChanged);
        }
    }

    /** Tells all screens that drafts came or went. */
    public void draftsChanged() {
        listeners.forEach(RoomListener::draftsChanged);
    }

    /** Does something in the background; what goes wrong is told in the window. */
    public <T> Tasks.Running work(Tasks.Work<T> work, Consumer<T> done) {
        return work(work, done, () -> {});
    }

    /** The same, where something has to be set right again after it went wrong or was cancelled. */
    public <T> Tasks.Running work(Tasks.Work<T> work, Consumer<T> done, Runnable otherwise) {
        return tasks.run(work, told(done, otherwise));
    }

    /** Saves something in the background; that it is being saved is said until it is done. */
    public <T> Tasks.Running save(Tasks.Work<T> work, Consumer<T> done) {
        return save(work, done, () -> {});
    }

    /** The same, where something has to be set right again after it went wrong. */
    public <T> Tasks.Running save(Tasks.Work<T> work, Consumer<T> done, Runnable otherwise) {
        return saying("Saving …", work, done, otherwise);
    }

    /** Does something in the background that may take a while; what it is stands in the window until it is over. */
    public <T> Tasks.Running saying(String what, Tasks.Work<T> work, Consumer<T> done) {
        return saying(what, work, done, () -> {});
    }

    /** The same, where something has to be set right again after it went wrong or was cancelled. */
    public <T> Tasks.Running saying(String what, Tasks.Work<T> work, Consumer<T> done, Runnable otherwise) {
        front.busy(what);
        return work(
                work,
                result -> {
                    front.busy("");
                    done.accept(result);
                },
                () -> {
                    front.busy("");
                    otherwise.run();
                });
    }

    /** The same for what is done within a blink and must not wait behind what is not. */
    public <T> Tasks.Running answer(Tasks.Work<T> work, Consumer<T> done, Runnable otherwise) {
        return tasks.answer(work, told(done, otherwise));
    }

    private <T> Consumer<Outcome<T>> told(Consumer<T> done, Runnable otherwise) {
        return outcome -> outcome.fold(
                result -> {
                    done.accept(result.value());
                    return true;
                },
                failed -> {
                    trouble(failed.why());
                    otherwise.run();
                    return false;
                },
                cancelled -> {
                    otherwise.run();
                    return false;
                });
    }

    /** Tells what went wrong, in plain words. */
    public void trouble(Exception why) {
        if (why instanceof LibraryException) {
            front.trouble(why.getMessage());
        } else {
            LOG.log(Level.SEVERE, "unexpected", why);
            front.trouble(OUR_BUG);
        }
    }

    /**
     * Does something that needs to know who she is: asks for name and address where the library does not know them yet,
     * which happens once a library. When she would rather not say, nothing is done.
     */
    public void withHand(Library library, Runnable then) {
        if (library.hand().isPresent()) {
            then.run();
            return;
        }
        Hand before =
                new Hand(settings.handName().orElse(""), settings.handAddress().orElse(""));
        front.askHand(nameOf(library), before)
                .ifPresent(hand -> work(
                        (Progress progress) -> {
                            library.introduce(hand);
                            return hand;
                        },
                        introduced -> {
                            settings.hand(introduced.name(), introduced.address());
                            remember();
                            then.run();
                        }));
    }
}
