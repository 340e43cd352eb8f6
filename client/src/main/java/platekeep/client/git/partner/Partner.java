package platekeep.client.git.partner;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.desk.Workroom;
import platekeep.client.git.history.Step;
import platekeep.client.git.history.Touch;
import platekeep.client.git.history.VersionNames;
import platekeep.client.git.plates.Contents;
import platekeep.client.git.plates.Entries;
import platekeep.client.git.plates.Shelf;
import platekeep.client.git.store.Changes;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.git.store.Writing;
import platekeep.client.library.Arrivals;
import platekeep.client.library.BroughtIn;
import platekeep.client.library.Hand;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Sent;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.text.LibraryFacts;

/** The exchange with the partner through a shared copy: looking, bringing in, sending. */
public final class Partner {
    private final Workroom room;
    private final SharedCopy shared;

    public Partner(Workroom room) {
        this.room = room;
        this.shared = new SharedCopy(room.store());
    }

    public SharedCopy sharedCopy() {
        return shared;
    }

    /** Chooses the folder of the shared copy, and makes one there where it is empty or absent. */
    public void share(Path chosen) throws IOException, LibraryException {
        Path folder = chosen.toAbsolutePath().normalize();
        if (folder.startsWith(room.store().folder())) {
            throw Refusals.inside(folder);
        }
        if (SharedCopy.isEmptyOrAbsent(folder)) {
            SharedCopy.make(folder);
        } else if (!SharedCopy.isOne(folder)) {
            throw Refusals.somethingElse(folder);
        } else {
            refuseOtherLibrary(folder);
        }
        shared.choose(folder.toRealPath());
    }

    /** Fills a new, empty library with what a shared copy holds, and notes where that is. */
    public void firstCopy(Path from, Hand hand) throws IOException, LibraryException {
        Path folder = from.toAbsolutePath().normalize();
        if (!SharedCopy.isOne(folder)) {
            throw Refusals.notThere(folder);
        }
        ObjectId theirs = shared.look(folder).orElseThrow(() -> Refusals.empty(folder));
        if (room.facts(theirs).isEmpty()) {
            throw Refusals.somethingElse(folder);
        }
        try (Writing writing = room.store().write()) {
            TreeFiles there = room.store().files(theirs);
            Refusals.refuseUnplain(there);
            writing.moveTo(
                    Optional.empty(),
                    theirs,
                    Changes.between(TreeFiles.NONE, there),
                    room.facts(hand, hand, "First copy"));
            new NameExchange(room, writing).takeOver();
        }
        shared.choose(folder.toRealPath());
    }

    private void refuseOtherLibrary(Path folder) throws IOException, LibraryException {
        Optional<ObjectId> theirs = shared.look(folder);
        Optional<ObjectId> mine = room.store().newest();
        if (theirs.isPresent() && mine.isPresent()) {
            Optional<String> there = room.facts(theirs.get()).map(LibraryFacts::id);
            if (!there.equals(room.facts(mine.get()).map(LibraryFacts::id))) {
                throw Refusals.otherLibrary(folder);
            }
        }
    }

    /** Looks at the shared copy; nothing of the library's own changes. */
    public Arrivals look(Progress progress) throws IOException, LibraryException {
        progress.at(0, 2, "looking at the shared copy");
        Optional<ObjectId> theirs = shared.look(shared.folderOrRefuse());
        Optional<ObjectId> mine = room.store().newest();
        progress.at(1, 2, "comparing plates");
        if (theirs.isEmpty() || mine.isEmpty()) {
            List<Version> waiting =
                    mine.isEmpty() ? List.of() : versions(room.index().versions(mine.get(), Integer.MAX_VALUE));
            return new Arrivals(theirs.map(ObjectId::name), List.of(), waiting, List.of());
        }
        List<Step> incoming = room.index().only(theirs.get(), mine.get());
        List<Step> waiting = room.index().only(mine.get(), theirs.get());
        List<Arrivals.Arrival> plates = incoming.isEmpty()
                ? List.of()
                : arrivals(mine.get(), theirs.get(), new LastTouches(waiting), new LastTouches(incoming));
        return new Arrivals(Optional.of(theirs.get().name()), versions(incoming), versions(waiting), plates);
    }

    /** The plates that are there and were changed by versions of which the shared copy is not known to have them. */
    public Set<String> unsent() throws IOException {
        Optional<ObjectId> mine = room.store().newest();
        if (shared.folder().isEmpty() || mine.isEmpty()) {
            return Set.of();
        }
        Optional<ObjectId> theirs = shared.seen();
        List<Step> waiting = theirs.isEmpty()
                ? room.index().versions(mine.get(), Integer.MAX_VALUE)
                : room.index().only(mine.get(), theirs.get());
        Shelf now = room.newestShelf();
        Set<String> unsent = new HashSet<>();
        for (Step step : waiting) {
            step.touches().stream()
                    .map(Touch::plateId)
                    .filter(id -> now.path(id).isPresent())
                    .forEach(unsent::add);
        }
        return unsent;
    }

    private List<Version> versions(List<Step> steps) throws IOException {
        List<Version> versions = new ArrayList<>();
        for (Step step : steps) {
            versions.add(room.version(step.version()));
        }
        return versions;
    }

    /** The plates that differ there from what both libraries came from. */
    private List<Arrivals.Arrival> arrivals(
            ObjectId mine, ObjectId theirs, LastTouches touchedHere, LastTouches touchedThere)
            throws IOException, LibraryException {
        Contents contents = new Contents(room.store());
        TextJoin texts = new TextJoin(contents, TextJoin.LastHands.UNKNOWN);
        Shelf base = Shelf.of(
                new CommonBase(room.store(), new TreeJoin(contents, texts)).of(mine, theirs),
                (path, content) -> texts.idOf(content));
        Shelf here = room.shelf(mine);
        Shelf there = room.shelf(theirs);
        TreeSet<String> ids = new TreeSet<>(base.plates());
        ids.addAll(there.plates());
        List<Arrivals.Arrival> arrivals = new ArrayList<>();
        for (String id : ids) {
            if (!there.content(id).equals(base.content(id))) {
                arrivals.add(new Arrivals.Arrival(
                        id,
                        plate(base, id, contents),
                        plate(here, id, contents),
                        plate(there, id, contents),
                        touchedHere.of(room, id),
                        touchedThere.of(room, id)));
            }
        }
        return arrivals;
    }

    private static Optional<Plate> plate(Shelf shelf, String id, Contents contents) throws IOException {
        Optional<ObjectId> content = shelf.content(id);
        return content.isEmpty()
                ? Optional.empty()
                : Entries.parse(shelf.path(id).orElseThrow(), content.get(), contents.bytes(content.get()))
                        .plate();
    }

    /** Brings in what was looked at. */
    public BroughtIn bringIn(Arrivals seen, List<Plate> settled, Progress progress)
            throws IOException, LibraryException {
        ObjectId theirs = ObjectId.fromString(seen.partnerHead().orElseThrow(Refusals::notLookedAt));
        Hand hand = room.handOrRefuse();
        progress.at(0, 2, "joining plates");
        try (Writing writing = room.store().write()) {
            ObjectId mine = room.store().newest().orElseThrow(Refusals::notLookedAt);
            refuseIfMovedMeanwhile(seen, settled);
            BroughtIn result = new Bringing(room, writing, hand).bringIn(mine, theirs, settled);
            takeNamesOver(writing);
            progress.at(2, 2, "brought in");
            return result;
        }
    }

    /** The version is there by now; what fails here fails for the names alone. */
    private void takeNamesOver(Writing writing) throws LibraryException {
        try {
            new NameExchange(room, writing).takeOver();
        } catch (IOException e) {
            throw Refusals.namesNotTakenOver(e);
        } catch (LibraryException e) {
            throw Refusals.namesNotTakenOver(e);
        }
    }

    /** What she settled must have been made from the plates as they are still. */
    private void refuseIfMovedMeanwhile(Arrivals seen, List<Plate> settled) throws IOException, LibraryException {
        Map<String, Plate> byId = new HashMap<>();
        settled.forEach(plate -> byId.put(plate.id(), plate));
        Shelf now = room.newestShelf();
        Contents contents = new Contents(room.store());
        for (Arrivals.Arrival arrival : seen.plates()) {
            Plate plate = byId.get(arrival.plateId());
            if (plate != null && !plate(now, arrival.plateId(), contents).equals(arrival.mine())) {
                throw Refusals.movedMeanwhile(plate.title());
            }
        }
    }

    /** Sends all versions and their names. */
    public Sent send(Progress progress) throws IOException, LibraryException {
        Path folder = shared.folderOrRefuse();
        progress.at(0, 2, "looking at the shared copy");
        Optional<ObjectId> theirs = shared.look(folder);
        ObjectId mine = room.store().newest().orElseThrow(Refusals::notLookedAt);
        if (theirs.isPresent() && !room.index().ledTo(theirs.get(), mine)) {
            throw Refusals.bringInFirst();
        }
        try (Writing writing = room.store().write()) {
            new NameExchange(room, writing).takeOver();
        }
        List<Step> versions = theirs.isEmpty()
                ? room.index().versions(mine, Integer.MAX_VALUE)
                : room.index().only(mine, theirs.get());
        progress.at(1, 2, "sending");
        List<SharedCopy.Parcel> parcels = parcels(folder, mine);
        if (!parcels.isEmpty() && !shared.send(folder, parcels)) {
            throw Refusals.bringInFirst();
        }
        shared.look(folder);
        progress.at(2, 2, "sent");
        return new Sent(versions.size());
    }

    /** The newest version and the names that are not there yet, or that both gave and now agree on. */
    private List<SharedCopy.Parcel> parcels(Path folder, ObjectId mine) throws IOException {
        Map<String, ObjectId> there = SharedCopy.refs(folder);
        List<SharedCopy.Parcel> parcels = new ArrayList<>();
        String branch = shared.branchOf(folder);
        if (!mine.equals(there.get(branch))) {
            parcels.add(new SharedCopy.Parcel(branch, Optional.ofNullable(there.get(branch)), mine));
        }
        for (VersionNames.Name name : room.names().all()) {
            String ref = Constants.R_TAGS + name.key();
            if (!name.stored().equals(there.get(ref))) {
                parcels.add(new SharedCopy.Parcel(ref, Optional.ofNullable(there.get(ref)), name.stored()));
            }
        }
        return parcels;
    }
}
