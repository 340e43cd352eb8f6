package platekeep.client.git.partner;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.desk.Workroom;
import platekeep.client.git.plates.Contents;
import platekeep.client.git.plates.Shelf;
import platekeep.client.git.store.Changes;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.git.store.Writing;
import platekeep.client.library.BroughtIn;
import platekeep.client.library.Hand;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Version;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/** One bringing in under way: the join is worked out in memory, then saved as one version, or nothing is. */
final class Bringing {
    private final Workroom room;
    private final Writing writing;
    private final Hand hand;
    private final Contents contents;

    Bringing(Workroom room, Writing writing, Hand hand) {
        this.room = room;
        this.writing = writing;
        this.hand = hand;
        this.contents = new Contents(room.store());
    }

    BroughtIn bringIn(ObjectId mine, ObjectId theirs, List<Plate> settled) throws IOException, LibraryException {
        TreeFiles here = room.store().files(mine);
        TreeFiles there = room.store().files(theirs);
        if (room.index().ledTo(theirs, mine) && settled.isEmpty()) {
            return new BroughtIn(room.version(mine), List.of(), List.of(), List.of(), List.of());
        }
        if (room.index().ledTo(mine, theirs) && settled.isEmpty()) {
            return moveOn(mine, theirs, here, there);
        }
        TreeJoin.Joined joined = join(mine, theirs, here, there, settled);
        SortedMap<String, Optional<FileAt>> changes = Changes.between(here, joined.files());
        keep(changes);
        ObjectId id = writing.version(
                Optional.of(mine), Optional.of(theirs), changes, room.facts(hand, hand, reason(theirs)));
        return result(id, joined.fates());
    }

    /** Nothing was changed here since, so the partner's newest version is the newest here. */
    private BroughtIn moveOn(ObjectId mine, ObjectId theirs, TreeFiles here, TreeFiles there)
            throws IOException, LibraryException {
        Refusals.refuseUnplain(there);
        Shelf before = room.shelf(mine);
        Shelf after = room.shelf(theirs);
        Fates fates = new Fates();
        Set<String> ids = new TreeSet<>(before.plates());
        ids.addAll(after.plates());
        ids.stream().filter(id -> !before.content(id).equals(after.content(id))).forEach(fates::tookOver);
        writing.moveTo(Optional.of(mine), theirs, Changes.between(here, there), room.facts(hand, hand, reason(theirs)));
        return result(theirs, fates);
    }

    private TreeJoin.Joined join(ObjectId mine, ObjectId theirs, TreeFiles here, TreeFiles there, List<Plate> settled)
            throws IOException, LibraryException {
        TreeJoin plain = new TreeJoin(contents, new TextJoin(contents, TextJoin.LastHands.UNKNOWN));
        TreeFiles base = new CommonBase(room.store(), plain).of(mine, theirs);
        TextJoin texts = new TextJoin(contents, hands(mine, theirs));
        TreeJoin.Joined joined = new TreeJoin(contents, texts).join(new TreeJoin.Three<>(base, here, there));
        return settled.isEmpty() ? joined : withSettled(joined, settled, texts);
    }

    /** Puts the plates that were settled beforehand in the place of the joined ones. */
    private TreeJoin.Joined withSettled(TreeJoin.Joined joined, List<Plate> settled, TextJoin texts)
            throws IOException {
        Shelf shelf = Shelf.of(joined.files(), (path, content) -> texts.idOf(content));
        SortedMap<String, FileAt> files = new TreeMap<>(joined.files().files());
        for (Plate plate : settled) {
            Optional<String> path = shelf.path(plate.id());
            if (path.isPresent()) {
                files.put(path.get(), contents.think(PlateText.bytes(plate)));
                joined.fates().settled(plate);
            }
        }
        return new TreeJoin.Joined(new TreeFiles(files), joined.fates());
    }

    /** Stores the texts that the join thought of. */
    private void keep(SortedMap<String, Optional<FileAt>> changes) throws IOException {
        for (Optional<FileAt> file : changes.values()) {
            Optional<byte[]> thought = file.flatMap(f -> contents.thought(f.content()));
            if (thought.isPresent()) {
                writing.keep(thought.get());
            }
        }
    }

    /** Who changed each plate last on either side since the two parted. */
    private TextJoin.LastHands hands(ObjectId mine, ObjectId theirs) throws IOException {
        LastTouches here = new LastTouches(room.index().only(mine, theirs));
        LastTouches there = new LastTouches(room.index().only(theirs, mine));
        return new TextJoin.LastHands() {
            @Override
            public Optional<String> mine(String plateId) throws IOException {
                return here.of(room, plateId).map(version -> version.inNameOf().name());
            }

            @Override
            public Optional<String> theirs(String plateId) throws IOException {
                return there.of(room, plateId).map(version -> version.inNameOf().name());
            }
        };
    }

    private String reason(ObjectId theirs) throws IOException {
        Version newest = room.version(theirs);
        return "Joined with the versions of " + newest.inNameOf().name();
    }

    private BroughtIn result(ObjectId newest, Fates fates) throws IOException {
        return new BroughtIn(room.version(newest), fates.tookOver(), fates.joined(), fates.clashing(), fates.kept());
    }
}
