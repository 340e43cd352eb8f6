package platekeep.client.git.partner;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.revwalk.filter.RevFilter;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.library.LibraryException;

/**
 * The files that two versions both came from. As a rule that is one version; where the partners have joined crosswise
 * there are several newest common ones, which are then joined first, over what they came from in turn, in an order
 * that both partners find.
 */
final class CommonBase {
    private final Store store;
    private final TreeJoin join;

    /**
     * @param join with which common versions are joined among themselves
     */
    CommonBase(Store store, TreeJoin join) {
        this.store = store;
        this.join = join;
    }

    /** No files where the two have nothing in common. */
    TreeFiles of(ObjectId one, ObjectId other) throws IOException, LibraryException {
        return joined(newestCommon(Set.of(one.copy()), other));
    }

    private TreeFiles joined(List<ObjectId> versions) throws IOException, LibraryException {
        if (versions.isEmpty()) {
            return TreeFiles.NONE;
        }
        TreeFiles files = store.files(versions.get(0));
        Set<ObjectId> in = new LinkedHashSet<>(Set.of(versions.get(0)));
        for (ObjectId next : versions.subList(1, versions.size())) {
            TreeFiles base = joined(newestCommon(in, next));
            files = join.join(new TreeJoin.Three<>(base, files, store.files(next)))
                    .files();
            in.add(next);
        }
        return files;
    }

    /** The newest versions that led both to one of some and to another, none of which led to another one of them. */
    private List<ObjectId> newestCommon(Set<ObjectId> some, ObjectId other) throws IOException {
        Set<ObjectId> common = new LinkedHashSet<>();
        for (ObjectId one : some) {
            common.addAll(newestCommon(one, other));
        }
        List<ObjectId> newest = new ArrayList<>();
        try (RevWalk walk = new RevWalk(store.repository())) {
            for (ObjectId version : common) {
                boolean ledToAnother = false;
                for (ObjectId later : common) {
                    ledToAnother |= !later.equals(version)
                            && walk.isMergedInto(walk.parseCommit(version), walk.parseCommit(later));
                }
                if (!ledToAnother) {
                    newest.add(version);
                }
            }
        }
        newest.sort(Comparator.naturalOrder());
        return newest;
    }

    private Set<ObjectId> newestCommon(ObjectId one, ObjectId other) throws IOException {
        Set<ObjectId> common = new LinkedHashSet<>();
        try (RevWalk walk = new RevWalk(store.repository())) {
            walk.setRevFilter(RevFilter.MERGE_BASE);
            walk.markStart(walk.parseCommit(one));
            walk.markStart(walk.parseCommit(other));
            for (RevCommit version = walk.next(); version != null; version = walk.next()) {
                common.add(version.copy());
            }
        }
        return common;
    }
}
