package platekeep.client.git.partner;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.NullProgressMonitor;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.transport.PushConnection;
import org.eclipse.jgit.transport.RefSpec;
import org.eclipse.jgit.transport.RemoteRefUpdate;
import org.eclipse.jgit.transport.TagOpt;
import org.eclipse.jgit.transport.Transport;
import org.eclipse.jgit.transport.URIish;
import platekeep.client.git.store.FileNames;
import platekeep.client.git.store.OwnFolder;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.StoreLock;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.library.LibraryException;

/**
 * The folder through which two partners exchange versions: versions only, no files lie open in it. What was last seen
 * there is noted in the library beside its own versions and names, which stay as they are.
 */
public final class SharedCopy {
    /** Under this the library notes which version was newest in the shared copy. */
    static final String SEEN = Constants.R_REMOTES + "partner/main";

    /** Under this the library notes which names of versions were in the shared copy. */
    static final String SEEN_NAMES = "refs/platekeep/names/";

    private static final String SECTION = "remote";
    private static final String PARTNER = "partner";

    private final Store store;

    public SharedCopy(Store store) {
        this.store = store;
    }

    /** Where it is; empty when none was chosen. */
    public Optional<Path> folder() {
        return Optional.ofNullable(store.repository().getConfig().getString(SECTION, PARTNER, "url"))
                .map(Path::of);
    }

    Path folderOrRefuse() throws LibraryException {
        Path folder = folder().orElseThrow(Refusals::noneChosen);
        if (!isOne(folder)) {
            throw Refusals.notThere(folder);
        }
        return folder;
    }

    /** Whether the folder is a shared copy, of whatever library. */
    static boolean isOne(Path folder) {
        return Files.isRegularFile(folder.resolve(Constants.HEAD))
                && Files.isDirectory(folder.resolve("objects"))
                && Files.isDirectory(folder.resolve("refs"));
    }

    static boolean isEmptyOrAbsent(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return true;
        }
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (DirectoryStream<Path> content = Files.newDirectoryStream(folder)) {
            return !content.iterator().hasNext();
        }
    }

    /** Makes an empty shared copy. */
    static void make(Path folder) throws IOException {
        Files.createDirectories(folder);
        try (Repository made = builder(folder).build()) {
            made.create(true);
            Store.pointHeadAtMain(made);
        }
    }

    private static FileRepositoryBuilder builder(Path folder) {
        return new FileRepositoryBuilder().setGitDir(folder.toFile()).setBare();
    }

    /** Notes in the library's own settings where the shared copy is. */
    void choose(Path folder) throws IOException {
        StoredConfig config = store.repository().getConfig();
        config.setString(SECTION, PARTNER, "url", folder.toString());
        config.setString(SECTION, PARTNER, "fetch", "+refs/heads/*:" + Constants.R_REMOTES + "partner/*");
        config.save();
    }

    /** The newest version that was seen in the shared copy when it was last looked at. */
    public Optional<ObjectId> seen() throws IOException {
        return Optional.ofNullable(store.repository().exactRef(SEEN)).map(Ref::getObjectId);
    }

    /**
     * Takes over what is new in a shared copy, each part looked through before anything refers to it, and notes what is
     * newest there. One after the other where several look, since two that note at once would each miss something.
     *
     * @return the newest version there; empty while it has none
     */
    Optional<ObjectId> look(Path folder) throws IOException, LibraryException {
        Optional<String> branch = branch(folder);
        if (branch.isEmpty()) {
            return Optional.empty();
        }
        try (StoreLock alone = store.lookAlone()) {
            return look(folder, branch.get());
        }
    }

    private Optional<ObjectId> look(Path folder, String branch) throws IOException {
        Optional<ObjectId> before = seen();
        try (Transport transport = Transport.open(store.repository(), uri(folder))) {
            transport.setCheckFetchedObjects(true);
            transport.setObjectChecker(FileNames.checker());
            transport.setTagOpt(TagOpt.NO_TAGS);
            transport.fetch(
                    NullProgressMonitor.INSTANCE,
                    List.of(
                            new RefSpec("+" + branch + ":" + SEEN),
                            new RefSpec("+" + Constants.R_TAGS + "*:" + SEEN_NAMES + "*")));
        }
        Optional<ObjectId> now = seen();
        if (now.isPresent() && !now.equals(before)) {
            try {
                store.refuseTooMuch(now.get(), before);
            } catch (TreeFiles.TooMuch e) {
                note(before);
                throw e;
            }
        }
        return now;
    }

    /** Puts the note of what was seen back, so that nothing looks at what was refused. */
    private void note(Optional<ObjectId> before) throws IOException {
        RefUpdate update = store.repository().updateRef(SEEN);
        update.setForceUpdate(true);
        if (before.isPresent()) {
            update.setNewObjectId(before.get());
            update.update();
        } else {
            update.delete();
        }
    }

    /** The ref that the shared copy's newest version is under; empty while it has none. */
    private static Optional<String> branch(Path folder) throws IOException {
        OwnFolder.refuseLeadingOut(folder);
        try (Repository shared = builder(folder).setMustExist(true).build()) {
            Ref head = shared.exactRef(Constants.HEAD);
            return Optional.ofNullable(head)
                    .filter(ref -> ref.getObjectId() != null)
                    .map(ref -> ref.getTarget().getName());
        }
    }

    /** The ref that the newest version goes to when it is sent. */
    String branchOf(Path folder) throws IOException {
        return branch(folder).orElse(Store.MAIN);
    }

    private static URIish uri(Path folder) {
        return new URIish().setScheme("file").setPath(folder.toAbsolutePath().toString());
    }

    /**
     * A thing to be sent.
     *
     * @param ref where it goes in the shared copy
     * @param before what is there now; empty for nothing
     */
    record Parcel(String ref, Optional<ObjectId> before, ObjectId after) {}

    /** What is in the shared copy, by ref. */
    static Map<String, ObjectId> refs(Path folder) throws IOException {
        Map<String, ObjectId> refs = new LinkedHashMap<>();
        try (Repository shared = builder(folder).setMustExist(true).build()) {
            for (Ref ref : shared.getRefDatabase().getRefs()) {
                if (ref.getObjectId() != null) {
                    refs.put(ref.getName(), ref.getObjectId());
                }
            }
        }
        return refs;
    }

    /** Sends all of it or nothing. Says whether it went; if not, somebody else sent at the same moment. */
    boolean send(Path folder, Collection<Parcel> parcels) throws IOException {
        Map<String, RemoteRefUpdate> updates = new LinkedHashMap<>();
        for (Parcel parcel : parcels) {
            updates.put(
                    parcel.ref(),
                    new RemoteRefUpdate(
                            store.repository(),
                            parcel.after().name(),
                            parcel.after(),
                            parcel.ref(),
                            parcel.before().isPresent() && parcel.ref().startsWith(Constants.R_TAGS),
                            null,
                            parcel.before().orElse(ObjectId.zeroId())));
        }
        try (Transport transport = Transport.open(store.repository(), uri(folder))) {
            transport.setPushAtomic(true);
            try (PushConnection connection = transport.openPush()) {
                connection.push(NullProgressMonitor.INSTANCE, updates);
            }
        }
        return updates.values().stream()
                .map(RemoteRefUpdate::getStatus)
                .allMatch(status -> status == RemoteRefUpdate.Status.OK || status == RemoteRefUpdate.Status.UP_TO_DATE);
    }
}
