package platekeep.client.git.desk;

import java.io.IOException;
import java.util.Optional;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.TagBuilder;
import platekeep.client.git.history.VersionNames;
import platekeep.client.git.store.Writing;
import platekeep.client.library.Hand;
import platekeep.client.library.LibraryException;
import platekeep.model.text.Slugs;

/** Gives names to versions. */
final class Naming {
    private final Workroom room;

    Naming(Workroom room) {
        this.room = room;
    }

    void name(String plateId, String versionId, String name) throws IOException, LibraryException {
        String text = name.strip();
        if (text.isEmpty() || text.lines().count() > 1) {
            throw Refusals.badName();
        }
        Hand hand = room.handOrRefuse();
        ObjectId version = room.find(versionId);
        if (room.shelf(version).path(plateId).isEmpty()) {
            throw Refusals.notThereThen();
        }
        String key = VersionNames.key(plateId, Slugs.of(text), version);
        try (Writing writing = room.store().write()) {
            Optional<VersionNames.Name> there = room.names().at(key);
            if (there.isEmpty()) {
                TagBuilder tag = new TagBuilder();
                tag.setTag(key);
                tag.setObjectId(version, Constants.OBJ_COMMIT);
                tag.setTagger(room.person(hand));
                tag.setMessage(text + "\n");
                writing.name(
                        Constants.R_TAGS + key,
                        Optional.empty(),
                        writing.inserter().insert(tag));
            } else if (!there.get().text().equals(text)) {
                throw Refusals.nameIsTaken(there.get().text());
            }
        }
    }
}
