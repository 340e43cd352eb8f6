package platekeep.client.git.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.eclipse.jgit.errors.LargeObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;

/**
 * A folder with files and their versions. Reading takes no lock and sees what was newest when it was asked; writing
 * goes through {@link #write()}. {@link BlindSystem} must have been installed.
 */
public final class Store implements AutoCloseable {
    /** Where the newest version of a new store is noted. */
    public static final String MAIN = Constants.R_HEADS + "main";

    /** The largest file that is read into memory. */
    public static final int LARGEST_FILE = 64 << 20;

    private static final int REMEMBERED = 4;

    private final Map<ObjectId, TreeFiles> lastFiles = new LinkedHashMap<>(8, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<ObjectId, TreeFiles> eldest) {
            return size() > REMEMBERED;
        }
    };

    private final Repository repository;
    private final Path folder;
    private final WorkTree workTree;

    private final Disk disk;

    private Store(Repository repository, Path folder, Disk disk) throws IOException {
        this.repository = repository;
        this.folder = folder;
        this.disk = disk;
        this.workTree = new WorkTree(folder, repository.getDirectory().toPath());
    }

    /** Whether the folder itself (not one above it) is a store. */
    public static boolean isStore(Path folder) {
        return Files.isDirectory(folder.resolve(Constants.DOT_GIT), LinkOption.NOFOLLOW_LINKS)
                && Files.isRegularFile(folder.resolve(Constants.DOT_GIT).resolve(Constants.HEAD));
    }

    /** Opens the store in the folder, which {@link #isStore is one}; what it is set up to elsewhere is ignored. */
    public static Store open(Path folder, Disk disk) throws IOException {
        Path root = folder.toRealPath();
        OwnFolder.refuseLeadingOut(root.resolve(Constants.DOT_GIT));
        Repository repository = new FileRepositoryBuilder()
                .setGitDir(root.resolve(Constants.DOT_GIT).toFile())
                .setWorkTree(root.toFile())
                .setMustExist(true)
                .build();
        return new Store(repository, root, disk);
    }

    /** Makes a store without any version in an existing folder. */
    public static Store create(Path folder, Disk disk) throws IOException {
        Path root = folder.toRealPath();
        Repository repository = new FileRepositoryBuilder()
                .setGitDir(root.resolve(Constants.DOT_GIT).toFile())
                .setWorkTree(root.toFile())
                .build();
        repository.create(false);
        pointHeadAtMain(repository);
        disk.sync(List.of(root));
        return new Store(repository, root, disk);
    }

    /** Lets the newest version of a repository without one be noted under {@link #MAIN}. */
    public static void pointHeadAtMain(Repository repository) throws IOException {
        RefUpdate head = repository.updateRef(Constants.HEAD);
        head.disableRefLog();
        RefUpdate.Result result = head.link(MAIN);
        if (result != RefUpdate.Result.FORCED
                && result != RefUpdate.Result.NEW
                && result != RefUpdate.Result.NO_CHANGE) {
            throw new IOException("the new folder could not be set up: " + result);
        }
    }

    public Path folder() {
        return folder;
    }

    public Repository repository() {
        return repository;
    }

    public WorkTree workTree() {
        return workTree;
    }

    /** The newest version; empty where there is none yet. */
    public Optional<ObjectId> newest() throws IOException {
        return Optional.ofNullable(repository.exactRef(Constants.HEAD)).map(Ref::getObjectId);
    }

    /**
     * The ref under which the newest version is noted; empty when another program has put the folder on an old version
     * by its id.
     */
    Optional<String> branch() throws IOException {
        Ref head = repository.exactRef(Constants.HEAD);
        return head != null && head.isSymbolic()
                ? Optional.of(head.getTarget().getName()).filter(OwnFolder::isName)
                : Optional.empty();
    }

    /** The version with its tree, hands and reason. */
    public RevCommit version(ObjectId id) throws IOException {
        try (RevWalk walk = new RevWalk(repository)) {
            return walk.parseCommit(id);
        }
    }

    /** All files of a version; those of the last few versions asked for are remembered. */
    public TreeFiles files(ObjectId version) throws IOException {
        synchronized (lastFiles) {
            TreeFiles known = lastFiles.get(version);
            if (known != null) {
                return known;
            }
        }
        try (ObjectReader reader = repository.newObjectReader()) {
            TreeFiles files = TreeFiles.of(reader, version(version).getTree());
            synchronized (lastFiles) {
                lastFiles.put(version.copy(), files);
            }
            return files;
        }
    }

    /** One file of a version, at the cost of the folders above it. */
    public Optional<FileAt> file(ObjectId version, String path) throws IOException {
        return first(version, path, 1).at(path);
    }

    /**
     * Files of a version among which are the first ones in a folder and the folders below it, at the cost of no more than
     * them; all files where they are known.
     *
     * @param folder without a slash at the end
     */
    public TreeFiles first(ObjectId version, String folder, int most) throws IOException {
        synchronized (lastFiles) {
            TreeFiles known = lastFiles.get(version);
            if (known != null) {
                return known;
            }
        }
        try (ObjectReader reader = repository.newObjectReader()) {
            return TreeFiles.first(reader, version(version).getTree(), folder, most);
        }
    }

    /** Notes the files of a version that was just made from another one, so that they need not be listed. */
    void made(ObjectId version, TreeFiles files) {
        synchronized (lastFiles) {
            lastFiles.put(version.copy(), files);
        }
    }

    /** The bytes of a file's content. */
    public byte[] bytes(ObjectId content) throws IOException {
        try (ObjectReader reader = repository.newObjectReader()) {
            return bytes(reader, content);
        }
    }

    /** The same for a file of the newest version, which is read in the folder if it lies there as it should be. */
    public byte[] bytes(String path, ObjectId content) throws IOException {
        Optional<byte[]> lying = workTree.readIfIs(path, content, byte[]::new).map(ByteBuffer::array);
        return lying.isPresent() ? lying.get() : bytes(content);
    }

    /** The same for where many are read. */
    public Texts texts() {
        return new Texts(workTree, repository.newObjectReader());
    }

    /** In which order many contents are read soonest, by their numbers. */
    public int[] readingOrder(int count, IntFunction<ObjectId> contents) throws IOException {
        return PackOrder.of(repository.getObjectDatabase(), count, contents);
    }

    /** The bytes of a content with a reader at hand; a content larger than {@link #LARGEST_FILE} is not read. */
    public static byte[] bytes(ObjectReader reader, ObjectId content) throws IOException {
        try {
            return reader.open(content, Constants.OBJ_BLOB).getCachedBytes(LARGEST_FILE);
        } catch (LargeObjectException e) {
            throw new TreeFiles.TooMuch("one file is larger than 64 MB");
        }
    }

    /**
     * Looks at a version that came from elsewhere before anything of it is read: how many files it has, how deep they
     * lie and how large each is that the other version does not have.
     */
    public void refuseTooMuch(ObjectId version, Optional<ObjectId> known) throws IOException {
        TreeFiles there = files(version);
        TreeFiles before = known.isPresent() ? files(known.get()) : TreeFiles.NONE;
        try (ObjectReader reader = repository.newObjectReader()) {
            for (Map.Entry<String, FileAt> file : there.files().entrySet()) {
                boolean isNew =
                        file.getValue().isPlain() && !before.at(file.getKey()).equals(Optional.of(file.getValue()));
                if (isNew && reader.getObjectSize(file.getValue().content(), Constants.OBJ_BLOB) > LARGEST_FILE) {
                    throw new TreeFiles.TooMuch(file.getKey() + " is larger than 64 MB");
                }
            }
        }
    }

    /** Begins writing: takes the lock, and finishes first what a killed program left half done. */
    public Writing write() throws IOException {
        return Writing.begin(this);
    }

    /** Keeps others from noting what they see in a shared copy until it is closed. */
    public StoreLock lookAlone() throws IOException {
        return StoreLock.takeToLook(repository.getDirectory().toPath());
    }

    Disk disk() {
        return disk;
    }

    @Override
    public void close() throws IOException {
        repository.close();
        if (disk.putsOff()) {
            Disk.syncAll(folder);
        }
    }
}
