package platekeep.client.git.desk;

import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jgit.lib.AbbreviatedObjectId;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import platekeep.client.git.history.VersionIndex;
import platekeep.client.git.history.VersionNames;
import platekeep.client.git.history.Versions;
import platekeep.client.git.plates.Entries;
import platekeep.client.git.plates.PlateFiles;
import platekeep.client.git.plates.PlateIdScan;
import platekeep.client.git.plates.Shelf;
import platekeep.client.git.store.Changes;
import platekeep.client.git.store.Facts;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.library.Entry;
import platekeep.client.library.Hand;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.text.LibraryFacts;
import platekeep.model.text.LibraryText;

/** An open library's parts, and what is asked of several of them together. */
public final class Workroom implements AutoCloseable {
    /** A plate's text has its scans and photos beside it, few as a rule. */
    private static final int FILES_FOR_A_PLATE = 4;

    private final Store store;
    private final VersionIndex index;
    private final Entries entries;
    private final Clock clock;
    private ObjectId shelved = ObjectId.zeroId();
    private Shelf lastShelf = Shelf.NONE;

    /**
     * @param clock dates the versions, in its zone
     */
    public Workroom(Store store, VersionIndex index, Entries entries, Clock clock) {
        this.store = store;
        this.index = index;
        this.entries = entries;
        this.clock = clock;
    }

    public Store store() {
        return store;
    }

    public VersionIndex index() {
        return index;
    }

    public Entries entries() {
        return entries;
    }

    public VersionNames names() {
        return new VersionNames(store.repository(), Constants.R_TAGS);
    }

    /** The plates of the newest version; of none where there is no version yet. */
    public Shelf newestShelf() throws IOException {
        Optional<ObjectId> newest = store.newest();
        return newest.isPresent() ? shelf(newest.get()) : Shelf.NONE;
    }

    /** The plates of a version. The last one asked for is remembered, and the next one made out of it. */
    public synchronized Shelf shelf(ObjectId version) throws IOException {
        if (!shelved.equals(version)) {
            lastShelf = sorted(version, store.files(version));
            shelved = version.copy();
        }
        return lastShelf;
    }

    /** Sorts only what differs from the last one. Where a damaged text does not say whose it is, the versions before it may. */
    private Shelf sorted(ObjectId version, TreeFiles files) throws IOException {
        Shelf shelf = lastShelf.with(files, Changes.between(lastShelf.files(), files), this::plateOf);
        if (shelf.someUnclaimed()) {
            index.plates(version);
            shelf = Shelf.of(files, this::plateOf);
        }
        return shelf;
    }

    /** All plates of a version as they are to be shown, in order of path. */
    public List<Entry> list(ObjectId version, Progress progress, Consumer<List<Entry>> soFar) throws IOException {
        return entries.all(store.files(version), () -> shelf(version), progress, soFar);
    }

    /** The first of them, not sorted out yet. */
    public List<Entry> first(ObjectId version, int most) throws IOException {
        return entries.first(store.first(version, PlateFiles.PLATES, FILES_FOR_A_PLATE * most), most);
    }

    /** Whose text a content is, as far as it says or its past says. */
    public Optional<String> plateOf(ObjectId content) throws IOException {
        Optional<String> known = known(content);
        return known.isPresent() ? known : PlateIdScan.of(store.bytes(content));
    }

    /** The same for the file at a path. */
    private Optional<String> plateOf(String path, ObjectId content) throws IOException {
        Optional<String> known = known(content);
        return known.isPresent() ? known : PlateIdScan.of(store.bytes(path, content));
    }

    private Optional<String> known(ObjectId content) {
        return entries.knownId(content).or(() -> index.plateOf(content));
    }

    /** What the library says about itself as of a version; empty where that cannot be read. */
    public Optional<LibraryFacts> facts(ObjectId version) throws IOException {
        Optional<FileAt> file = store.file(version, PlateFiles.FACTS).filter(FileAt::isPlain);
        return file.isEmpty()
                ? Optional.empty()
                : LibraryText.read(PlateFiles.FACTS, store.bytes(file.get().content()))
                        .value();
    }

    /** Who makes versions here, as the library's own settings say. */
    public Optional<Hand> hand() {
        String name = store.repository().getConfig().getString("user", null, "name");
        String address = store.repository().getConfig().getString("user", null, "email");
        return name == null || address == null ? Optional.empty() : Optional.of(new Hand(name, address));
    }

    public Hand handOrRefuse() throws LibraryException {
        return hand().orElseThrow(Refusals::nobodyIntroduced);
    }

    /** What a version made now says about itself. */
    public Facts facts(Hand inNameOf, Hand enteredBy, String reason) {
        return new Facts(person(inNameOf), person(enteredBy), reason.strip());
    }

    public PersonIdent person(Hand hand) {
        return new PersonIdent(hand.name(), hand.address(), clock.instant(), clock.getZone());
    }

    public Version version(ObjectId id) throws IOException {
        return Versions.of(store.version(id));
    }

    /**
     * Finds a version.
     *
     * @param text its id, or the beginning of it, at least four digits
     */
    public ObjectId find(String text) throws IOException, LibraryException {
        if (AbbreviatedObjectId.isId(text) && text.length() >= 4) {
            try (ObjectReader reader = store.repository().newObjectReader();
                    RevWalk walk = new RevWalk(reader)) {
                List<ObjectId> versions = new ArrayList<>();
                for (ObjectId id : reader.resolve(AbbreviatedObjectId.fromString(text))) {
                    if (reader.has(id) && walk.parseAny(id) instanceof RevCommit) {
                        versions.add(id.copy());
                    }
                }
                if (versions.size() == 1) {
                    return versions.get(0);
                }
                if (versions.size() > 1) {
                    throw Refusals.severalVersions(text);
                }
            }
        }
        throw Refusals.noVersion(text);
    }

    /**
     * Finds a version of a plate by a name that was given to it, else by its id. Of several versions with that name the
     * newest one.
     */
    public ObjectId find(String plateId, String nameOrId) throws IOException, LibraryException {
        List<ObjectId> named = names().of(plateId).stream()
                .filter(name -> name.text().equalsIgnoreCase(nameOrId.strip()))
                .map(VersionNames.Name::version)
                .toList();
        Optional<RevCommit> newest = Optional.empty();
        for (ObjectId id : named) {
            RevCommit version = store.version(id);
            newest = newest.filter(n -> n.getCommitTime() >= version.getCommitTime())
                    .or(() -> Optional.of(version));
        }
        return newest.isPresent() ? newest.get().copy() : find(nameOrId);
    }

    @Override
    public void close() throws IOException {
        store.close();
    }
}
