package platekeep.client.git.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;

/**
 * The files as they lie in the folder. Links are never followed: a file reached through one counts as not there, and
 * nothing is written through one.
 */
public final class WorkTree {
    private static final String TEMPORARY = "platekeep-writing-";

    private static final Set<OpenOption> READING = Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);

    private final Path root;
    private final Path gitFolder;

    WorkTree(Path root, Path gitFolder) {
        this.root = root;
        this.gitFolder = gitFolder;
    }

    /** Where a file of this path lies, whether it is there or not. */
    public Path at(String path) throws IOException {
        if (!FileNames.allowed(path)) {
            throw new IOException("a name that cannot be kept on every system: " + path);
        }
        return root.resolve(path);
    }

    /** The attributes of the plain file at a path; empty when there is none, or something that is no plain file. */
    public Optional<BasicFileAttributes> attributes(String path) throws IOException {
        Path file = at(path);
        if (throughLink(file.getParent()) || !Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        return Optional.of(Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS))
                .filter(BasicFileAttributes::isRegularFile);
    }

    /** The bytes of the plain file at a path; empty when there is none. */
    public Optional<byte[]> read(String path) throws IOException {
        return attributes(path).isPresent() ? Optional.of(Files.readAllBytes(at(path))) : Optional.empty();
    }

    /** The id that the file's bytes have; empty when there is no plain file. */
    public Optional<ObjectId> content(String path) throws IOException {
        return read(path).map(WorkTree::contentOf);
    }

    /**
     * The bytes of the file at a path where they are this very content, whoever wrote them: their id says so, so neither
     * the list of files nor any time is asked.
     *
     * @param memory gives an array of at least so many bytes, from whose beginning they will stand
     */
    Optional<ByteBuffer> readIfIs(String path, ObjectId content, IntFunction<byte[]> memory) {
        if (!FileNames.allowed(path)) {
            return Optional.empty();
        }
        Path file = root.resolve(path);
        try {
            BasicFileAttributes lies = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            if (!lies.isRegularFile() || lies.size() > Store.LARGEST_FILE) {
                return Optional.empty();
            }
            int size = (int) lies.size();
            ByteBuffer bytes = ByteBuffer.wrap(memory.apply(size), 0, size);
            try (SeekableByteChannel in = Files.newByteChannel(file, READING)) {
                int more = 0;
                while (bytes.hasRemaining() && more >= 0) {
                    more = in.read(bytes);
                }
            }
            return Optional.of(bytes.flip()).filter(b -> content.equals(plainIdOf(b)));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** As {@link #contentOf}, by the machine's own SHA-1: quick, and good enough where nothing is stored under the id. */
    private static ObjectId plainIdOf(ByteBuffer bytes) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-1");
            digest.update(Constants.encodeASCII("blob " + bytes.limit()));
            digest.update((byte) 0);
            digest.update(bytes.array(), 0, bytes.limit());
            return ObjectId.fromRaw(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-1", e);
        }
    }

    /** The id that these bytes have as the content of a file. */
    public static ObjectId contentOf(byte[] bytes) {
        try (ObjectInserter.Formatter formatter = new ObjectInserter.Formatter()) {
            return formatter.idFor(Constants.OBJ_BLOB, bytes);
        }
    }

    /** Whether anything, of whatever kind, lies at the path. */
    public boolean isTaken(String path) throws IOException {
        return Files.exists(at(path), LinkOption.NOFOLLOW_LINKS);
    }

    /** Whether a link, or anything else that is no folder, lies where one of the folders above the file belongs. */
    public boolean isThroughLink(String path) throws IOException {
        return throughLink(at(path).getParent());
    }

    /**
     * Lets a file be put there, whole or not at all, with others; the {@link #folders} are the caller's.
     *
     * @return where it lies until it gets its name
     */
    Path into(Together together, String path, byte[] bytes) throws IOException {
        Path file = at(path);
        if (isThroughLink(path)) {
            throw new LinkOnTheWay(path);
        }
        Files.createDirectories(file.getParent());
        Path temporary = gitFolder.resolve(TEMPORARY + together.size());
        together.put(file, bytes, temporary);
        return temporary;
    }

    /** Takes a file out, and the folders that are empty without it. */
    void delete(String path) throws IOException {
        Path file = at(path);
        if (throughLink(file.getParent())) {
            return;
        }
        Files.deleteIfExists(file);
        for (Path folder = file.getParent(); !folder.equals(root) && isEmptyFolder(folder); ) {
            Files.delete(folder);
            folder = folder.getParent();
        }
    }

    /** The folders that hold the names of these files, and those above them. */
    Set<Path> folders(Collection<String> paths) throws IOException {
        Set<Path> folders = new LinkedHashSet<>();
        for (String path : paths) {
            for (Path folder = at(path).getParent(); folder.startsWith(root); folder = folder.getParent()) {
                folders.add(folder);
            }
        }
        return folders;
    }

    /** Nothing is written through a link; the message names the file. */
    static final class LinkOnTheWay extends IOException {
        private static final long serialVersionUID = 1L;

        LinkOnTheWay(String path) {
            super("a link, or a file, lies where a folder of " + path + " belongs");
        }
    }

    private boolean throughLink(Path folder) {
        for (Path step = folder; !step.equals(root); step = step.getParent()) {
            if (Files.exists(step, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(step, LinkOption.NOFOLLOW_LINKS)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isEmptyFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (DirectoryStream<Path> content = Files.newDirectoryStream(folder)) {
            return !content.iterator().hasNext();
        }
    }
}
