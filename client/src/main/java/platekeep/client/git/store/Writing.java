package platekeep.client.git.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
 * moment leaves either the old state or the new one: its parts and itself are forced to disk; a note says what is
 * coming; the name of the newest version moves (from here on the version is made); the files in the folder and the
 * list of files follow; the note goes. Whoever writes next finishes what a note that was left says.
 */
public final class Writing implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(Writing.class.getName());

    private final Store store;
    private final StoreLock lock;
    private final Journal journal;
    private final WorkIndex index;
    private final ObjectInserter inserter;
    private final ObjectReader reader;
    private final Set<ObjectId> inserted = new LinkedHashSet<>();

    private Writing(Store store, StoreLock lock) {
        this.store = store;
        this.lock = lock;
        this.journal = new Journal(gitFolder(store), store.disk());
        this.index = new WorkIndex(store.repository(), store.workTree(), store.disk());
        this.inserter = new Noting(store.repository().newObjectInserter(), inserted);
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
        return new FileAt(inserter.insert(Constants.OBJ_BLOB, bytes));
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
        advance(before, id, changes, facts);
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
        advance(before, after, changes, facts);
    }

    private void advance(Optional<ObjectId> before, ObjectId after, Map<String, Optional<FileAt>> changes, Facts facts)
            throws IOException, LibraryException {
        String branch = store.branch().orElseThrow(Refusals::onOldVersion);
        flush();
        WorkIndex.Held locked = index.lock(changes);
        try {
            journal.write(new Journal.Note(before, Optional.of(after)));
            move(branch, before, after, facts);
            settle(after, changes, locked);
        } finally {
            locked.unlock();
        }
    }

    private void move(String branch, Optional<ObjectId> before, ObjectId after, Facts facts)
            throws IOException, LibraryException {
        RefUpdate update = store.repository().updateRef(branch);
        update.setExpectedOldObjectId(before.orElse(ObjectId.zeroId()));
        update.setNewObjectId(after);
        update.setRefLogIdent(facts.enteredBy());
        update.setRefLogMessage(
                "platekeep: " + facts.reason().lines().findFirst().orElse(""), false);
        RefUpdate.Result result = update.update();
        if (result != RefUpdate.Result.NEW && result != RefUpdate.Result.FAST_FORWARD) {
            journal.clear();
            throw Refusals.movedOn();
        }
        store.disk().syncFolder(gitFolder(store).resolve(branch).getParent());
    }

    /** The version is made; whatever fails from here on is finished by the next writer. */
    private void settle(ObjectId after, Map<String, Optional<FileAt>> changes, WorkIndex.Held locked) {
        try {
            writeFiles(changes);
            locked.mend(store.files(after));
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
        flush();
        journal.write(new Journal.Note(Optional.empty(), Optional.empty()));
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
        store.disk().syncFolder(gitFolder(store).resolve(ref).getParent());
        store.disk().syncFolder(gitFolder(store).resolve(Constants.R_TAGS));
    }

    private void flush() throws IOException {
        inserter.flush();
        Path objects = gitFolder(store).resolve("objects");
        Set<Path> folders = new LinkedHashSet<>();
        inserted.forEach(id -> folders.add(objects.resolve(id.name().substring(0, 2))));
        for (Path folder : folders) {
            store.disk().syncFolder(folder);
        }
        store.disk().syncFolder(objects);
        inserted.clear();
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

    private void writeFiles(Map<String, Optional<FileAt>> changes) throws IOException {
        Map<String, Optional<FileAt>> sorted = new TreeMap<>(changes);
        for (Map.Entry<String, Optional<FileAt>> change : sorted.entrySet()) {
            if (change.getValue().isEmpty() && FileNames.allowed(change.getKey())) {
                store.workTree().delete(change.getKey());
            }
        }
        for (Map.Entry<String, Optional<FileAt>> change : sorted.entrySet()) {
            Optional<FileAt> file = change.getValue().filter(FileAt::isPlain);
            if (file.isPresent()) {
                store.workTree().write(change.getKey(), store.bytes(file.get().content()));
            }
        }
        store.workTree()
                .sync(sorted.keySet().stream().filter(FileNames::allowed).toList());
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
        WorkIndex.Held locked = index.lock(changes);
        try {
            writeFiles(toWrite);
            locked.mend(now);
        } finally {
            locked.unlock();
        }
    }

    @Override
    public void close() throws IOException {
        reader.close();
        inserter.close();
        lock.close();
    }

    /** Notes which objects it is given, so that their folders can be forced to disk. */
    private static final class Noting extends ObjectInserter.Filter {
        private final ObjectInserter target;
        private final Set<ObjectId> inserted;

        Noting(ObjectInserter target, Set<ObjectId> inserted) {
            this.target = target;
            this.inserted = inserted;
        }

        @Override
        protected ObjectInserter delegate() {
            return target;
        }

        @Override
        public ObjectId insert(int type, byte[] data, int offset, int length) throws IOException {
            ObjectId id = super.insert(type, data, offset, length);
            inserted.add(id);
            return id;
        }
    }
}
