package platekeep.client.join;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.client.draft.Drafts;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.room.Workroom;
import platekeep.model.plate.Plate;

/**
 * Keeps what is decided on disk, at once and in the background. What came from the partner is kept apart from the drafts
 * of plates, since it is not in the library yet.
 */
final class Keeping {
    private final Workroom room;
    private final Drafts drafts;
    private final Drafts joins;
    private final Set<Sitting> changed = new LinkedHashSet<>();
    private final Set<String> over = new HashSet<>();
    private boolean isWriting;

    Keeping(Workroom room, Drafts drafts, Drafts joins) {
        this.room = room;
        this.drafts = drafts;
        this.joins = joins;
    }

    /** One plate as it is to be kept; an empty one is forgotten. */
    private record Page(Library library, Case of, Optional<Plate> plate, Optional<String> newest) {}

    private static Page page(Library library, Optional<String> newest, Sitting sitting) {
        boolean isKept = sitting.isArrived() || sitting.isChanged();
        return new Page(library, sitting.of(), Optional.of(sitting.toKeep()).filter(p -> isKept), newest);
    }

    /** Keeps a plate as it is decided so far; while one is being written the next ones wait, each at its newest. */
    void keep(Library library, Optional<String> newest, Sitting sitting) {
        changed.add(sitting);
        write(library, newest);
    }

    private void write(Library library, Optional<String> newest) {
        if (isWriting || changed.isEmpty()) {
            return;
        }
        List<Page> pages = new ArrayList<>();
        changed.forEach(s -> pages.add(page(library, newest, s)));
        changed.clear();
        isWriting = true;
        room.work(
                progress -> {
                    for (Page page : pages) {
                        put(page);
                    }
                    return pages;
                },
                written -> {
                    isWriting = false;
                    if (written.stream().anyMatch(page -> page.of().origin() == Case.Origin.OPEN)) {
                        room.draftsChanged();
                    }
                    write(library, newest);
                },
                () -> isWriting = false);
    }

    private synchronized void put(Page page) throws LibraryException {
        if (over.contains(key(page.of()))) {
            return;
        }
        boolean arrived = page.of().origin() == Case.Origin.ARRIVED;
        Drafts into = arrived ? joins : drafts;
        if (page.plate().isPresent()) {
            into.keep(
                    page.library().folder(),
                    page.plate().get(),
                    arrived ? Optional.of(page.of().mark()) : page.newest());
        } else {
            into.drop(page.library().folder(), page.of().id());
        }
    }

    /** Writes all plates before it returns. */
    void makeSafe(Library library, Optional<String> newest, List<Sitting> sittings) {
        for (Sitting sitting : sittings) {
            if (sitting.isArrived() || sitting.isChanged()) {
                try {
                    put(page(library, newest, sitting));
                } catch (LibraryException e) {
                    room.trouble(e);
                }
            }
        }
    }

    private static String key(Case of) {
        return of.id() + of.mark();
    }

    /** Forgets what was decided about a plate, since it is a version now; what is still to be written is not. */
    synchronized void forget(Library library, Case of) throws LibraryException {
        over.add(key(of));
        (of.origin() == Case.Origin.ARRIVED ? joins : drafts).drop(library.folder(), of.id());
    }
}
