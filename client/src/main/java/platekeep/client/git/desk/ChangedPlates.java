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
    private final Workroom room;

    ChangedPlates(Workroom room) {
        this.room = room;
    }

    Changed of(ObjectId version, int most) throws IOException {
        Step step = room.index().versions(version, 1).get(0);
        Optional<ObjectId> parent = step.parents().stream().findFirst();
        Shelf before = parent.isPresent() ? room.shelf(parent.get()) : Shelf.NONE;
        List<Touch> touches = step.touches().stream()
                .sorted(Comparator.comparing(Touch::plateId))
                .limit(most)
                .toList();
        List<Changed.Pair> pairs = new ArrayList<>();
        try (ObjectReader reader = room.store().repository().newObjectReader()) {
            for (Touch touch : touches) {
                Optional<Plate> was =
                        plate(reader, before.path(touch.plateId()).orElse(""), before.content(touch.plateId()));
                Optional<Plate> became = plate(reader, touch.path(), touch.content());
                was.ifPresent(old -> became.ifPresent(now -> pairs.add(new Changed.Pair(old, now))));
            }
        }
        Optional<LibraryFacts> said = parent.isPresent() ? room.facts(parent.get()) : Optional.empty();
        return new Changed(room.version(version), pairs, touches.size() - pairs.size(), said, room.facts(version));
    }

    private Optional<Plate> plate(ObjectReader reader, String path, Optional<ObjectId> content) throws IOException {
        return content.isEmpty()
                ? Optional.empty()
                : Optional.of(room.entries().readStored(reader, path, content.get()))
                        .flatMap(Entry::plate);
    }
}
