package platekeep.client.git.history;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;

/**
 * All versions of a library by the plates they changed, so that a plate's history is a look-up. Built once by walking
 * the versions from the oldest (about a quarter of a millisecond each), then extended by what is new.
 *
 * <p>A version that joins two lines counts in a plate's history where both lines had changed the plate, since the join
 * decided what it is now, or where the plate is none of what the lines had. Sorted newest first, the first step of a
 * plate's history is therefore always the plate as it stands.
 */
public final class VersionIndex {
    /** Newest first; among equals by id, so that everybody sees one order. */
    private static final Comparator<Step> NEWEST_FIRST = Comparator.comparingLong(Step::order)
            .reversed()
            .thenComparing(step -> step.version().name());

    private final Repository repository;
    private final IndexFile file;
    private final Map<ObjectId, Step> steps = new HashMap<>();
    private final Map<String, List<Step>> byPlate = new HashMap<>();
    private final Map<ObjectId, String> plateOf = new HashMap<>();
    private ObjectId reachedFrom = ObjectId.zeroId();
    private Set<ObjectId> reached = Set.of();
    private int notKept;
    private boolean wasRead;

    /**
     * @param file where the index is kept between two runs; what it holds is taken over when it is first needed
     */
    public VersionIndex(Repository repository, IndexFile file) {
        this.repository = repository;
        this.file = file;
    }

    /** The versions that changed a plate, among those that led to {@code newest}, newest first. */
    public synchronized List<Step> history(ObjectId newest, String plateId) throws IOException {
        Set<ObjectId> wanted = reach(newest);
        return byPlate.getOrDefault(plateId, List.of()).stream()
                .filter(step -> wanted.contains(step.version()))
                .sorted(NEWEST_FIRST)
                .toList();
    }

    /** All versions that led to {@code newest} and itself, newest first, at most {@code most}. */
    public synchronized List<Step> versions(ObjectId newest, int most) throws IOException {
        include(newest);
        List<Step> out = new ArrayList<>();
        Set<ObjectId> seen = new HashSet<>(Set.of(newest));
        PriorityQueue<Step> queue = new PriorityQueue<>(NEWEST_FIRST);
        queue.add(steps.get(newest));
        while (!queue.isEmpty() && out.size() < most) {
            Step step = queue.remove();
            out.add(step);
            step.parents().stream().filter(seen::add).map(steps::get).forEach(queue::add);
        }
        return out;
    }

    /** The versions that led to {@code here} but not to {@code there}, newest first. */
    public synchronized List<Step> only(ObjectId here, ObjectId there) throws IOException {
        include(here);
        include(there);
        return new Sides(steps::get, NEWEST_FIRST).onlyFirst(here, there);
    }

    /**
     * Whether {@code older} is {@code newer} or one of the versions that led to it. Goes back no further than to where
     * everything is older, since each step's order is greater than its parents'.
     */
    public synchronized boolean ledTo(ObjectId older, ObjectId newer) throws IOException {
        include(newer);
        if (!steps.containsKey(older)) {
            return false;
        }
        long order = steps.get(older).order();
        Set<ObjectId> seen = new HashSet<>(Set.of(newer));
        Deque<ObjectId> open = new ArrayDeque<>(seen);
        while (!open.isEmpty() && !seen.contains(older)) {
            Step step = steps.get(open.pop());
            if (step.order() > order) {
                step.parents().stream().filter(seen::add).forEach(open::push);
            }
        }
        return seen.contains(older);
    }

    /** The ids of all plates that were there at any time among the versions that led to {@code newest}. */
    public synchronized Set<String> plates(ObjectId newest) throws IOException {
        reach(newest);
        return Set.copyOf(byPlate.keySet());
    }

    /**
     * What was done last to a plate among the versions that led to one and itself: the plate as it stands there. Costs a walk
     * back to that version; for many plates of one version its files are cheaper.
     *
     * @return empty where the plate was never there
     */
    public synchronized Optional<Touch> last(ObjectId version, String plateId) throws IOException {
        include(version);
        long order = steps.get(version).order();
        List<Step> before = byPlate.getOrDefault(plateId, List.of()).stream()
                .filter(step -> step.order() <= order)
                .sorted(NEWEST_FIRST)
                .toList();
        for (Step step : before) {
            if (ledTo(step.version(), version)) {
                return step.touch(plateId);
            }
        }
        return Optional.empty();
    }

    /** Whose text a content is; empty where it does not say, or where it never was in a version that was asked for. */
    public synchronized Optional<String> plateOf(ObjectId content) {
        readFile();
        return Optional.ofNullable(plateOf.get(content));
    }

    private Set<ObjectId> reach(ObjectId newest) throws IOException {
        include(newest);
        if (!reachedFrom.equals(newest)) {
            Set<ObjectId> old = reached;
            Set<ObjectId> fresh = new HashSet<>();
            boolean grew = collect(newest, old, fresh);
            if (grew) {
                fresh.addAll(old);
            } else {
                fresh.clear();
                collect(newest, Set.of(), fresh);
            }
            reached = fresh;
            reachedFrom = newest;
        }
        return reached;
    }

    /** Collects what led to a version as far as it is not known; says whether the old newest version was met. */
    private boolean collect(ObjectId newest, Set<ObjectId> known, Set<ObjectId> fresh) {
        boolean met = known.isEmpty();
        Deque<ObjectId> open = new ArrayDeque<>(List.of(newest));
        while (!open.isEmpty()) {
            ObjectId id = open.pop();
            met |= id.equals(reachedFrom);
            if (!known.contains(id) && fresh.add(id)) {
                open.addAll(steps.get(id).parents());
            }
        }
        return met;
    }

    /** Takes in a version and all that led to it, oldest first, as far as they are not known. */
    private void include(ObjectId newest) throws IOException {
        readFile();
        if (steps.containsKey(newest)) {
            return;
        }
        try (RevWalk walk = new RevWalk(repository);
                TouchScan scan = new TouchScan(repository, plateOf)) {
            Deque<RevCommit> open = new ArrayDeque<>(List.of(walk.parseCommit(newest)));
            while (!open.isEmpty()) {
                RevCommit commit = open.peek();
                List<RevCommit> missing = new ArrayList<>();
                for (RevCommit parent : commit.getParents()) {
                    if (!steps.containsKey(parent)) {
                        missing.add(walk.parseCommit(parent));
                    }
                }
                if (missing.isEmpty()) {
                    open.pop();
                    if (!steps.containsKey(commit)) {
                        add(step(commit, walk, scan));
                        notKept++;
                    }
                } else {
                    missing.forEach(open::push);
                }
            }
        }
        if (notKept >= IndexFile.WORTH_KEEPING) {
            file.write(inOrder());
            notKept = 0;
        }
    }

    private void readFile() {
        if (!wasRead) {
            wasRead = true;
            file.read().forEach(this::add);
        }
    }

    private Step step(RevCommit commit, RevWalk walk, TouchScan scan) throws IOException {
        List<ObjectId> parents = new ArrayList<>();
        List<ObjectId> trees = new ArrayList<>();
        long order = commit.getCommitTime();
        for (RevCommit parent : commit.getParents()) {
            parents.add(parent.copy());
            trees.add(walk.parseCommit(parent).getTree().copy());
            order = Math.max(order, steps.get(parent).order() + 1);
        }
        List<Touch> touches = trees.size() < 2
                ? scan.single(trees, commit.getTree())
                : scan.join(trees, commit.getTree(), changedOnBothSides(parents));
        return new Step(commit.copy(), parents, order, touches);
    }

    /** The plates that more than one of the lines changed since they parted. */
    private Set<String> changedOnBothSides(List<ObjectId> parents) {
        Set<String> once = new HashSet<>();
        Set<String> twice = new LinkedHashSet<>();
        for (ObjectId parent : parents) {
            Set<String> here = new HashSet<>();
            for (ObjectId other : parents) {
                if (!other.equals(parent)) {
                    new Sides(steps::get, NEWEST_FIRST)
                            .onlyFirst(parent, other).stream()
                                    .flatMap(step -> step.touches().stream())
                                    .forEach(touch -> here.add(touch.plateId()));
                }
            }
            here.stream().filter(id -> !once.add(id)).forEach(twice::add);
        }
        return twice;
    }

    private void add(Step step) {
        steps.put(step.version(), step);
        for (Touch touch : step.touches()) {
            byPlate.computeIfAbsent(touch.plateId(), id -> new ArrayList<>()).add(step);
            touch.content().ifPresent(content -> plateOf.putIfAbsent(content, touch.plateId()));
        }
    }

    private Collection<Step> inOrder() {
        return steps.values().stream().sorted(NEWEST_FIRST.reversed()).toList();
    }
}
