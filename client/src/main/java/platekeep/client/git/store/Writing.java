package platekeep.client.git.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.jgit.lib.CommitBuilder;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.RefUpdate;
import platekeep.client.library.LibraryException;

/**
 * Writing under way: the lock is held until it is closed. A version is made in this order, so that a power cut at any
 * moment leaves either the old state or the new one: the bytes of its parts, of itself, of a note that says what is coming
 * and, where they are few, of the files that will follow are forced to disk; parts, version and note get their names,
 * which are forced; the name of the newest version moves (from here on the version is made) and is forced; the files in
 * the folder and the list of files follow; the note goes. Whoever writes next finishes what a note that was left says.
 */
public final class Writing implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(Writing.class.getName());

    /** So many bytes are held in memory to be written in the folder. */
    private static final long MOST_KEPT = 4 << 20;

    private final Store store;
    private final StoreLock lock;
    private final Journal journal;
    private final NewObjects inserter;
    private final ObjectReader reader;
    private final Map<ObjectId, byte[]> kept = new HashMap<>();
    private long keptBytes;

    private Writing(Store store, StoreLock lock) {
        this.store = store;
        this.lock = lock;
        this.journal = new Journal(gitFolder(store));
        this.inserter = new NewObjects(store.repository(), store.disk());
        this.reader = inserter.newReader();
    }

    static Writing begin(Store store) throws IOException {
        Writing writing = new Writing(store, StoreLock.take(gitFolder(store)));
        try {
            writing.recover();
            return writing;
        } catch (IOException | RuntimeException e) {
            writing.close();
            throw e;
        }
    }

    private static Path gitFolder(Store store) {
        return store.repository().getDirectory().toPath();
    }

    /** Where new objects go; they are forced to disk before anything refers to them. */
    public ObjectInserter inserter() {
        return inserter;
    }

    /** Keeps these bytes as the content of a file to come. */
    public FileAt keep(byte[] bytes) throws IOException {
        ObjectId id = inserter.insert(Constants.OBJ_BLOB, bytes);
        keptBytes += bytes.length;
        if (keptBytes <= MOST_KEPT) {
            kept.put(id, bytes);
        }
        return new FileAt(id);
    }

    /**
     * Makes a version.
     *
     * @param before the newest version now; empty when there is none
     * @param otherParent the second version that this one joins, if it is a join
     * @param changes against {@code before}, by path; empty where the file goes
     * @return the version's id
     * @throws LibraryException when a file was changed by hand, or another program moved the newest version meanwhile;
     *     nothing is changed then
     */
    public ObjectId version(
            Optional<ObjectId> before,
            Optional<ObjectId> otherParent,
            Map<String, Optional<FileAt>> changes,
            Facts facts)
            throws IOException, LibraryException {
        refuseHandEdits(before, changes);
        return make(before, otherParent, changes, facts);
    }

    /**
     * Makes a version of files as they were changed by hand: what lies in the folder at these paths is what the
     * changes were made from.
     */
    public ObjectId takeIn(Optional<ObjectId> before, Map<String, Optional<FileAt>> changes, Facts facts)
            throws IOException, LibraryException {
        return make(before, Optional.empty(), changes, facts);
    }

    private ObjectId make(
            Optional<ObjectId> before,
            Optional<ObjectId> otherParent,
            Map<String, Optional<FileAt>> changes,
            Facts facts)
            throws IOException, LibraryException {
        Optional<ObjectId> oldTree = before.isPresent()
                ? Optional.of(store.version(before.get()).getTree().copy())
                : Optional.empty();
        CommitBuilder commit = new CommitBuilder();
        commit.setTreeId(new TreeEdit(reader, inserter).apply(oldTree, changes));
        List<ObjectId> parents = new ArrayList<>();
        before.ifPresent(parents::add);
        otherParent.ifPresent(parents::add);
        commit.setParentIds(parents);
        commit.setAuthor(facts.inNameOf());
        commit.setCommitter(facts.enteredBy());
        commit.setMessage(facts.reason() + "\n");
        ObjectId id = inserter.insert(commit);
        TreeFiles old = before.isPresent() ? store.files(before.get()) : TreeFiles.NONE;
        store.made(id, old.with(changes));
        advance(before, id, changes, facts, NewestName.of(store, branch(), before));
        return id;
    }

    /**
     * Makes a version that is already stored the newest one.
     *
     * @param changes what it changes against {@code before}, by path
     */
    public void moveTo(Optional<ObjectId> before, ObjectId after, Map<String, Optional<FileAt>> changes, Facts facts)
            throws IOException, LibraryException {
        refuseHandEdits(before, changes);
        inserter.alsoForced(after);
        advance(before, after, changes, facts, Optional.empty());
    }

    /**
     * @param quick moves the name where it is known that one version was made from the other
     */
    private void advance(
            Optional<ObjectId> before,
            ObjectId after,
            Map<String, Optional<FileAt>> changes,
            Facts facts,
            Optional<NewestName> quick)
            throws IOException, LibraryException {
        String branch = branch();
        Following following = new Following(store, changes);
        try {
            List<Together> later = new ArrayList<>(following.beforehand(kept));
            quick.ifPresent(name -> later.add(name.beforehand(after)));
            prepare(new Journal.Note(before, Optional.of(after)), later);
            lockList(following, changes);
            if (!(quick.isPresent() ? quick.get().move() : hasMoved(branch, before, after))) {
                journal.clear();
                throw Refusals.movedOn();
            }
            store.disk().sync(List.of(gitFolder(store).resolve(branch).getParent()));
            settle(branch, before, after, facts, following);
        } finally {
            following.end();
            quick.ifPresent(NewestName::discard);
        }
    }

    private String branch() throws IOException, LibraryException {
        return store.branch().orElseThrow(Refusals::onOldVersion);
    }

    /**
     * All that has to be on disk before a name moves. No lock of what follows is older than the note.
     *
     * @param later what only its bytes are forced of
     */
    private void prepare(Journal.Note note, List<Together> later) throws IOException {
        Together together = new Together(store.disk());
        inserter.into(together);
        journal.into(together, note);
        together.write(later);
    }

    private void lockList(Following following, Map<String, Optional<FileAt>> changes) throws IOException {
        try {
            following.lock(changes);
        } catch (IOException | RuntimeException e) {
            journal.clear();
            throw e;
        }
    }

    private boolean hasMoved(String branch, Optional<ObjectId> before, ObjectId after) throws IOException {
        RefUpdate update = store.repository().updateRef(branch);
        update.setExpectedOldObjectId(before.orElse(ObjectId.zeroId()));
        update.setNewObjectId(after);
        update.disableRefLog();
        RefUpdate.Result result = update.update();
        return result == RefUpdate.Result.NEW || result == RefUpdate.Result.FAST_FORWARD;
    }

    /**
     * Adds a line to the diary that Git keeps of a name (gitformat "reflog"): old and new id, who and when, a tab, what.
     * No version hangs on it, so it is not forced by itself, as JGit would, but with what follows a version.
     */
    private void note(String branch, Optional<ObjectId> before, ObjectId after, Facts facts) throws IOException {
        Path diary = diary(branch);
        boolean isKept = store.repository().getConfig().getBoolean("core", "logAllRefUpdates", true);
        if (isKept || Files.exists(diary)) {
            Files.createDirectories(diary.getParent());
            String line = before.orElse(ObjectId.zeroId()).name() + " " + after.name() + " "
                    + facts.enteredBy().toExternalString() + "\tplatekeep: "
                    + facts.reason().lines().findFirst().orElse("") + "\n";
            Files.writeString(diary, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        }
    }

    private Path diary(String branch) {
        return gitFolder(store).resolve(Constants.LOGS).resolve(branch);
    }

    /** What a line in the diary changes on disk. */
    private List<Path> diaries() throws IOException {
        return store.branch()
                .map(this::diary)
                .map(file -> List.of(file, file.getParent()))
                .orElse(List.of());
    }

    /** The version is made; whatever fails from here on is finished by the next writer. */
    private void settle(String branch, Optional<ObjectId> before, ObjectId after, Facts facts, Following following) {
        try {
            note(branch, before, after, facts);
            following.follow(store.files(after), diaries());
            following.end();
            journal.clear();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "version saved; the files in the folder will follow", e);
        }
    }

    /**
     * Writes a name of a version, or lets it go over from one thing to another.
     *
     * @param ref the name's full path
     * @param before what stood there; empty for nothing
     */
    public void name(String ref, Optional<ObjectId> before, ObjectId after) throws IOException, LibraryException {
        if (!OwnFolder.isName(ref)) {
            throw new OwnFolder.LeadsOut(ref);
        }
        prepare(new Journal.Note(Optional.empty(), Optional.empty()), List.of());
        RefUpdate update = store.repository().updateRef(ref);
        update.setExpectedOldObjectId(before.orElse(ObjectId.zeroId()));
        update.setNewObjectId(after);
        update.setForceUpdate(before.isPresent());
        update.disableRefLog();
        RefUpdate.Result result = update.update();
        journal.clear();
        if (result != RefUpdate.Result.NEW
                && result != RefUpdate.Result.FORCED
                && result != RefUpdate.Result.FAST_FORWARD
                && result != RefUpdate.Result.NO_CHANGE) {
            throw Refusals.movedOn();
        }
        Path git = gitFolder(store);
        store.disk().sync(List.of(git.resolve(ref).getParent(), git.resolve(Constants.R_TAGS)));
    }

    private void refuseHandEdits(Optional<ObjectId> before, Map<String, Optional<FileAt>> changes)
            throws IOException, LibraryException {
        TreeFiles old = before.isPresent() ? store.files(before.get()) : TreeFiles.NONE;
        for (Map.Entry<String, Optional<FileAt>> change : changes.entrySet()) {
            String path = change.getKey();
            if (change.getValue().isPresent() && !FileNames.allowed(path)) {
                throw Refusals.badName(path);
            }
            if (change.getValue().isPresent() && store.workTree().isThroughLink(path)) {
                throw new WorkTree.LinkOnTheWay(path);
            }
            if (!FileNames.allowed(path) || !store.workTree().isTaken(path)) {
                continue;
            }
            Optional<ObjectId> lies = store.workTree().content(path);
            Optional<ObjectId> was = old.at(path).map(FileAt::content);
            if (lies.isEmpty()
                    || !lies.equals(was) && !lies.equals(change.getValue().map(FileAt::content))) {
                throw Refusals.changedByHand(path);
            }
        }
    }

    private void recover() throws IOException {
        Optional<Journal.Note> left = journal.left();
        if (left.isEmpty()) {
            return;
        }
        journal.removeDeadLocks();
        Optional<ObjectId> after = left.get().after();
        if (after.isPresent() && after.equals(store.newest())) {
            finish(left.get().before(), after.get());
        }
        journal.clear();
    }

    /** Lets the files follow a version that was made by a program that was killed; what was edited since stays. */
    private void finish(Optional<ObjectId> before, ObjectId after) throws IOException {
        TreeFiles old = before.isPresent() ? store.files(before.get()) : TreeFiles.NONE;
        TreeFiles now = store.files(after);
        Map<String, Optional<FileAt>> changes = Changes.between(old, now);
        Map<String, Optional<FileAt>> toWrite = new TreeMap<>();
        for (Map.Entry<String, Optional<FileAt>> change : changes.entrySet()) {
            String path = change.getKey();
            if (FileNames.allowed(path)) {
                Optional<ObjectId> lies = store.workTree().content(path);
                if (lies.equals(old.at(path).map(FileAt::content))
                        || !store.workTree().isTaken(path)) {
                    toWrite.put(path, change.getValue());
                }
            }
        }
        Following following = new Following(store, toWrite);
        try {
            following.lock(changes);
            following.follow(now, diaries());
        } finally {
            following.end();
        }
    }

    @Override
    public void close() throws IOException {
        reader.close();
        inserter.close();
        lock.close();
    }
}
