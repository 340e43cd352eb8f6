package platekeep.client.git.history;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.errors.IncorrectObjectTypeException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevObject;
import org.eclipse.jgit.revwalk.RevTag;
import org.eclipse.jgit.revwalk.RevWalk;
import platekeep.client.git.plates.PlateIdScan;

/**
 * The names that were given to versions of plates: annotated tags, one folder of them for each plate. What lies there
 * and is no name of a version is passed over.
 */
public final class VersionNames {
    private final Repository repository;
    private final String root;

    /**
     * @param root under which the names lie: {@link Constants#R_TAGS} for the library's own
     */
    public VersionNames(Repository repository, String root) {
        this.repository = repository;
        this.root = root;
    }

    /**
     * A name of a version.
     *
     * @param key where it lies below the root: the plate's id, a slash, the slug of the name and the start of the
     *     version's id
     * @param stored what lies there
     * @param version the version that has the name
     * @param text the name as she wrote it
     */
    public record Name(String key, ObjectId stored, ObjectId version, String text) {
        public String plateId() {
            return key.substring(0, key.indexOf('/'));
        }
    }

    /** The key of a name. */
    public static String key(String plateId, String slug, ObjectId version) {
        return plateId + "/" + slug + "-" + version.name().substring(0, 8);
    }

    /** All names of versions of a plate, in order of their keys. */
    public List<Name> of(String plateId) throws IOException {
        return below(plateId + "/");
    }

    /** All names of versions of all plates, in order of their keys. */
    public List<Name> all() throws IOException {
        return below("");
    }

    /** What lies under a key. */
    public Optional<Name> at(String key) throws IOException {
        Ref ref = repository.exactRef(root + key);
        try (RevWalk walk = new RevWalk(repository)) {
            return ref == null ? Optional.empty() : name(ref, walk);
        }
    }

    private List<Name> below(String folder) throws IOException {
        List<Name> names = new ArrayList<>();
        try (RevWalk walk = new RevWalk(repository)) {
            for (Ref ref : repository.getRefDatabase().getRefsByPrefix(root + folder)) {
                name(ref, walk).ifPresent(names::add);
            }
        }
        return names;
    }

    private Optional<Name> name(Ref ref, RevWalk walk) throws IOException {
        String key = ref.getName().substring(root.length());
        int slash = key.indexOf('/');
        if (slash < 0 || !PlateIdScan.isId(key.substring(0, slash)) || ref.getObjectId() == null) {
            return Optional.empty();
        }
        try {
            RevObject stored = walk.parseAny(ref.getObjectId());
            if (stored instanceof RevTag tag && walk.peel(tag) instanceof RevCommit version) {
                walk.parseBody(tag);
                String text = tag.getFullMessage().strip();
                return Optional.of(new Name(key, tag.copy(), version.copy(), text));
            }
            if (stored instanceof RevCommit version) {
                return Optional.of(new Name(key, version.copy(), version.copy(), key.substring(slash + 1)));
            }
            return Optional.empty();
        } catch (MissingObjectException | IncorrectObjectTypeException e) {
            return Optional.empty();
        }
    }
}
