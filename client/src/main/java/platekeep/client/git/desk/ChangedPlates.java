package platekeep.client.git.desk;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import platekeep.client.git.history.Step;
import platekeep.client.git.history.Touch;
import platekeep.client.git.plates.Shelf;
import platekeep.client.library.Changed;
import platekeep.client.library.Entry;
import platekeep.model.plate.Plate;
import platekeep.model.text.LibraryFacts;

/** What a version changed: which plates from the index of versions, their texts from the version before it. */
final class ChangedPlates {
    /** For so many plates the index is asked; for more, all files of the version before are listed once. */
    private static final int FEW = 8;

    private final Workroom room;

    ChangedPlates(Workroom room) {
        this.room = room;
    }

    Changed of(ObjectId version, int most) throws IOException {
        Step step = room.index().versions(version, 1).get(0);
        Optional<ObjectId> parent = step.parents().stream().findFirst();
        List<Touch> touches = step.touches().stream()
                .sorted(Comparator.comparing(Touch::plateId))
                .limit(most)
                .toList();
        Earlier earlier = parent.isEmpty()
                ? id -> Optional.empty()
                : touches.size() > FEW
                        ? onShelf(room.shelf(parent.get()))
                        : id -> room.index().last(parent.get(), id);
        List<Changed.Pair> pairs = new ArrayList<>();
        try (ObjectReader reader = room.store().repository().newObjectReader()) {
            for (Touch touch : touches) {
                Optional<Touch> before = earlier.of(touch.plateId());
                Optional<Plate> was = before.isPresent() ? plate(reader, before.get()) : Optional.empty();
                Optional<Plate> became = plate(reader, touch);
                was.ifPresent(old -> became.ifPresent(now -> pairs.add(new Changed.Pair(old, now))));
            }
        }
        Optional<LibraryFacts> said = parent.isPresent() ? room.facts(parent.get()) : Optional.empty();
        return new Changed(room.version(version), pairs, touches.size() - pairs.size(), said, room.facts(version));
    }

    /** What a plate was before. */
    private interface Earlier {
        Optional<Touch> of(String plateId) throws IOException;
    }

    private static Earlier onShelf(Shelf shelf) {
        return id -> shelf.path(id).map(path -> new Touch(id, path, shelf.content(id)));
    }

    private Optional<Plate> plate(ObjectReader reader, Touch touch) throws IOException {
        return touch.content().isEmpty()
                ? Optional.empty()
                : Optional.of(room.entries()
                                .readStored(
                                        reader, touch.path(), touch.content().get()))
                        .flatMap(Entry::plate);
    }
}
