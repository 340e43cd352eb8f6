package platekeep.client.git.desk;

import java.io.IOException;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.plates.PictureFiles;
import platekeep.client.git.store.Writing;
import platekeep.client.library.Change;
import platekeep.client.library.Hand;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;

/** Saves versions of plates and series. */
final class Saver {
    private final Workroom room;

    Saver(Workroom room) {
        this.room = room;
    }

    /** Saves one version, all of it or nothing. */
    Version save(Saving saving) throws IOException, LibraryException {
        refuseDoubleChange(saving);
        if (saving.reason().isBlank()) {
            throw Refusals.noReason();
        }
        Hand hand = room.handOrRefuse();
        try (Writing writing = room.store().write()) {
            Optional<ObjectId> newest = room.store().newest();
            Edit edit = new Edit(room, writing, room.newestShelf());
            if (saving.seen().isPresent() && !saving.seen().equals(newest.map(ObjectId::name))) {
                edit.refuseWhatMovedOn(
                        saving.changes(), room.shelf(room.find(saving.seen().get())));
            }
            for (Change change : saving.changes()) {
                edit.add(change);
            }
            if (edit.isEmpty()) {
                throw Refusals.nothingChanged();
            }
            ObjectId id = writing.version(
                    newest,
                    Optional.empty(),
                    edit.changes(),
                    room.facts(saving.inNameOf().orElse(hand), hand, saving.reason()));
            return room.version(id);
        }
    }

    private static void refuseDoubleChange(Saving saving) {
        Set<String> ids = new HashSet<>();
        if (saving.changes().isEmpty()
                || !saving.changes().stream().map(Saver::idOf).allMatch(ids::add)) {
            throw new IllegalArgumentException("a saving changes at least one thing, and each thing once");
        }
    }

    private static String idOf(Change change) {
        if (change instanceof Change.PutPlate put) {
            return "plate " + put.plate().id();
        }
        if (change instanceof Change.PutAway away) {
            return "plate " + away.plateId();
        }
        if (change instanceof Change.PutSeries series) {
            return "series " + series.series().id();
        }
        if (change instanceof Change.PutPicture picture) {
            return "picture " + PictureFiles.name(picture.plateId(), picture.kind(), picture.bytes());
        }
        if (change instanceof Change.PutPictureAway away) {
            return "picture "
                    + away.picture().path().substring(away.picture().path().lastIndexOf('/') + 1);
        }
        if (change instanceof Change.PutSeriesAway away) {
            return "series " + away.seriesId();
        }
        return "facts";
    }
}
