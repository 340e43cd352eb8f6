package platekeep.client.look;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.task.Progress;
import platekeep.model.look.LikeWords;
import platekeep.model.look.Looks;
import platekeep.model.look.Mirror;
import platekeep.model.look.Overlay;

/** Looks for plates that are nearly the same, in groups; each of a group is like another one of it. */
final class DoublesHunt implements Hunt {
    /** What is less like is not laid over each other. */
    private static final double LEAST = 0.85;

    /** From this share of their places on that agree, two pictures are near doubles. */
    private static final double AGREE = 0.92;

    /** What is found is told of first when so great a part is compared, then each time when it is twice as much. */
    private static final int FIRST_TOLD = 16;

    /** So many readings are compared with the others before it is told how far that has come. */
    private static final int TOGETHER = 256;

    private static final int SMALL_PART = 8;

    private final List<Library> libraries;
    private final Sights sights;
    private List<Sight> all = List.of();
    private int[] groupOf = {};
    private final Map<Integer, Overlay.Laid> laid = new HashMap<>();

    /** What a plate is to the first of its group, by the two numbers in one. */
    private final Map<Long, Hit> beside = new HashMap<>();

    DoublesHunt(List<Library> libraries, Sights sights) {
        this.libraries = libraries;
        this.sights = sights;
    }

    @Override
    public Finds run(Progress progress, Consumer<Finds> found) throws LibraryException {
        all = sights.now(libraries, progress);
        Looks looks = new Looks(all.stream().map(Sight::signature).toList());
        groupOf = new int[all.size()];
        for (int i = 0; i < groupOf.length; i++) {
            groupOf[i] = i;
        }
        int next = looks.readings() / FIRST_TOLD;
        for (int from = 0; from < looks.readings(); from += TOGETHER) {
            if (progress.cancelled()) {
                throw new CancellationException();
            }
            progress.at(from, looks.readings(), "comparing plates");
            if (from > 0 && from >= next) {
                next = 2 * from;
                found.accept(finds());
            }
            join(looks, from, near(looks, from, Math.min(looks.readings(), from + TOGETHER)));
        }
        return finds();
    }

    /** What looks like each of some readings; each asks for itself, so helpers ask too. */
    private List<List<Looks.Near>> near(Looks looks, int begin, int end) {
        List<Looks.Near>[] near = lists(end - begin);
        try {
            sights.inParts().by(SMALL_PART).each(near.length, done -> {}, (from, to) -> {
                for (int i = from; i < to; i++) {
                    near[i] = looks.after(begin + i, LEAST);
                }
            });
        } catch (IOException e) {
            // nothing is read here, so the thread was asked to stop
            throw new CancellationException();
        }
        return List.of(near);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static List<Looks.Near>[] lists(int count) {
        return new List[count];
    }

    /** Joins the groups of those of which one lies over the other. */
    private void join(Looks looks, int begin, List<List<Looks.Near>> all) {
        for (int i = 0; i < all.size(); i++) {
            int one = looks.owner(begin + i);
            for (Looks.Near near : all.get(i)) {
                if (root(one) != root(near.at())
                        && over(one, near.at(), near.mirror()).isPresent()) {
                    groupOf[root(near.at())] = root(one);
                }
            }
        }
    }

    private int root(int at) {
        int root = at;
        while (groupOf[root] != root) {
            groupOf[root] = groupOf[groupOf[root]];
            root = groupOf[root];
        }
        return root;
    }

    private Optional<Overlay> over(int one, int other, Mirror mirror) {
        return laid(one).over(laid(other), mirror, AGREE);
    }

    private Overlay.Laid laid(int at) {
        return laid.computeIfAbsent(at, i -> Overlay.Laid.of(all.get(i).plate()));
    }

    private Finds finds() {
        Map<Integer, List<Integer>> groups = new HashMap<>();
        for (int i = 0; i < groupOf.length; i++) {
            groups.computeIfAbsent(root(i), r -> new ArrayList<>()).add(i);
        }
        List<List<Integer>> several = groups.values().stream()
                .filter(group -> group.size() > 1)
                .sorted(java.util.Comparator.comparing(
                        group -> all.get(group.get(0)).plate().title()))
                .toList();
        int plates = several.stream().mapToInt(List::size).sum();
        List<Hit> hits = new ArrayList<>();
        for (int g = 0; g < several.size() && hits.size() < Finds.MOST; g++) {
            hits.addAll(hits(several.get(g), g + 1));
        }
        String summary = several.isEmpty()
                ? "No two plates are nearly the same."
                : Counts.of(several.size(), "group") + " of near doubles, " + Counts.of(plates, "plate") + " in them";
        String shown = hits.size() < plates ? "; the first " + hits.size() + " are shown" : "";
        return new Finds(hits, plates, summary + shown);
    }

    /** The first one of a group, then the others with what they are to it. */
    private List<Hit> hits(List<Integer> group, int number) {
        List<Hit> hits = new ArrayList<>();
        Sight first = all.get(group.get(0));
        hits.add(Hit.now(first, first.plate(), Counts.of(group.size(), "plate") + " alike", Mirror.NONE)
                .inGroup(number));
        for (int at : group.subList(1, group.size())) {
            hits.add(beside.computeIfAbsent((long) group.get(0) << Integer.SIZE | at, pair -> hit(group.get(0), at))
                    .inGroup(number));
        }
        return hits;
    }

    private Hit hit(int first, int at) {
        Mirror how = Mirror.NONE;
        Optional<Overlay> best = Optional.empty();
        for (Mirror mirror : Mirror.values()) {
            Optional<Overlay> over = laid(first).over(laid(at), mirror);
            if (over.isPresent()
                    && best.map(b -> b.agreement() < over.get().agreement()).orElse(true)) {
                best = over;
                how = mirror;
            }
        }
        Sight sight = all.get(at);
        return Hit.now(sight, sight.plate(), LikeWords.of(how, 0, best), how);
    }
}
