package platekeep.client.git.desk;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.plates.PlateFiles;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.WorkTree;
import platekeep.client.git.store.Writing;
import platekeep.client.library.Entry;
import platekeep.client.library.Hand;
import platekeep.client.library.HandEdit;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Version;
import platekeep.model.plate.Plate;
import platekeep.model.stitch.KeptKinds;
import platekeep.model.stitch.RowIds;
import platekeep.model.text.LibraryText;
import platekeep.model.text.PlateText;
import platekeep.model.text.Reading;
import platekeep.model.text.SeriesText;

/**
 * Makes a version of files that were changed by hand. Plates, series and what the library says about itself are read
 * first and kept in canonical form; rows that were typed without an id get
 * one, and cables keep their kinds as in every edit.
 */
final class TakeIn {
    private final Workroom room;

    TakeIn(Workroom room) {
        this.room = room;
    }

    Version takeIn(List<HandEdit> edits, String reason, Optional<Hand> inNameOf) throws IOException, LibraryException {
        if (reason.isBlank()) {
            throw Refusals.noReason();
        }
        Hand hand = room.handOrRefuse();
        try (Writing writing = room.store().write()) {
            Optional<ObjectId> newest = room.store().newest();
            SortedMap<String, Optional<FileAt>> changes = new TreeMap<>();
            for (HandEdit edit : edits) {
                changes.put(edit.path(), taken(edit, writing));
            }
            if (changes.isEmpty()) {
                throw Refusals.nothingChanged();
            }
            ObjectId id = writing.takeIn(newest, changes, room.facts(inNameOf.orElse(hand), hand, reason));
            return room.version(id);
        }
    }

    private Optional<FileAt> taken(HandEdit edit, Writing writing) throws IOException, LibraryException {
        Optional<byte[]> bytes = room.store().workTree().read(edit.path());
        Optional<String> content = bytes.map(WorkTree::contentOf).map(ObjectId::name);
        if (edit.isPlate() && !content.equals(edit.now().map(Entry::content))) {
            throw Refusals.changedAgain(edit.path());
        }
        return bytes.isEmpty() ? Optional.empty() : Optional.of(writing.keep(canonical(edit, bytes.get())));
    }

    private static byte[] canonical(HandEdit edit, byte[] bytes) throws LibraryException {
        String path = edit.path();
        if (PlateFiles.isPlate(path)) {
            Plate edited = orRefuse(PlateText.read(path, bytes));
            Optional<Plate> before =
                    edit.before().flatMap(Entry::plate).filter(was -> was.id().equals(edited.id()));
            // first the kinds, since giving ids writes a missing start down, and that would be the edited one
            Plate kept = before.map(was -> KeptKinds.after(RowIds.given(was), edited))
                    .orElse(edited);
            return PlateText.bytes(RowIds.given(kept));
        }
        if (PlateFiles.isSeries(path)) {
            return SeriesText.bytes(orRefuse(SeriesText.read(path, bytes)));
        }
        if (path.equals(PlateFiles.FACTS)) {
            return LibraryText.bytes(orRefuse(LibraryText.read(path, bytes)));
        }
        return bytes;
    }

    private static <T> T orRefuse(Reading<T> reading) throws LibraryException {
        Optional<String> sentence = reading.fold(
                good -> Optional.<String>empty(),
                bad -> Optional.of(bad.problems().get(0).sentence()));
        if (sentence.isPresent()) {
            throw Refusals.damagedByHand(sentence.get());
        }
        return reading.value().orElseThrow();
    }
}
