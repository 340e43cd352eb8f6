package platekeep.client.git.partner;

import java.io.IOException;
import java.util.Optional;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.desk.Workroom;
import platekeep.client.git.history.VersionNames;
import platekeep.client.git.store.Writing;
import platekeep.client.library.LibraryException;

/**
 * Takes over the names of versions that were seen in the shared copy. Where both gave one name to one version, the
 * stored name with the lesser id stands on both sides; where the two differ in writing, the other one stays beside it.
 */
final class NameExchange {
    private final Workroom room;
    private final Writing writing;

    NameExchange(Workroom room, Writing writing) {
        this.room = room;
        this.writing = writing;
    }

    void takeOver() throws IOException, LibraryException {
        VersionNames own = room.names();
        for (VersionNames.Name theirs : new VersionNames(room.store().repository(), SharedCopy.SEEN_NAMES).all()) {
            Optional<VersionNames.Name> mine = own.at(theirs.key());
            if (mine.isEmpty()) {
                write(theirs.key(), Optional.empty(), theirs.stored());
            } else if (!mine.get().stored().equals(theirs.stored())) {
                settle(mine.get(), theirs);
            }
        }
    }

    private void settle(VersionNames.Name mine, VersionNames.Name theirs) throws IOException, LibraryException {
        boolean mineStands = mine.stored().compareTo(theirs.stored()) < 0;
        VersionNames.Name other = mineStands ? theirs : mine;
        if (!mine.text().equals(theirs.text()) || !mine.version().equals(theirs.version())) {
            String beside = mine.key() + "-" + other.stored().name().substring(0, 8);
            if (room.names().at(beside).isEmpty()) {
                write(beside, Optional.empty(), other.stored());
            }
        }
        if (!mineStands) {
            write(mine.key(), Optional.of(mine.stored()), theirs.stored());
        }
    }

    private void write(String key, Optional<ObjectId> before, ObjectId after) throws IOException, LibraryException {
        writing.name(Constants.R_TAGS + key, before, after);
    }
}
