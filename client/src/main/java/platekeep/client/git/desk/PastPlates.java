package platekeep.client.git.desk;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.history.Step;
import platekeep.client.git.history.Touch;
import platekeep.client.git.plates.Shelf;
import platekeep.client.library.Entry;
import platekeep.client.library.PastPlate;
import platekeep.client.task.Progress;

/** All texts that plates ever had, from the index of versions. */
final class PastPlates {
    private final Workroom room;

    PastPlates(Workroom room) {
        this.room = room;
    }

    List<PastPlate> list() throws IOException {
        Optional<ObjectId> newest = room.store().newest();
        if (newest.isEmpty()) {
            return List.of();
        }
        Shelf shelf = room.newestShelf();
        Set<String> seen = new HashSet<>();
        List<PastPlate> past = new ArrayList<>();
        for (Step step : room.index().versions(newest.get(), Integer.MAX_VALUE)) {
            for (Touch touch : step.touches()) {
                if (touch.content().isPresent()) {
                    ObjectId content = touch.content().get();
                    if (seen.add(touch.plateId() + content.name())) {
                        boolean isNow = shelf.content(touch.plateId())
                                .filter(content::equals)
                                .isPresent();
                        past.add(new PastPlate(
                                touch.plateId(),
                                touch.path(),
                                content.name(),
                                step.version().name(),
                                isNow));
                    }
                }
            }
        }
        return past;
    }

    void read(List<PastPlate> which, Progress progress, BiConsumer<PastPlate, Entry> each) throws IOException {
        room.entries()
                .readOnce(
                        which.size(),
                        i -> which.get(i).path(),
                        i -> ObjectId.fromString(which.get(i).content()),
                        progress,
                        (i, entry) -> each.accept(which.get(i), entry));
    }
}
