package platekeep.client.look;

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

    private final List<Library> libraries;
    private final Sights sights;
    private List<Sight> all = List.of();
    private int[] groupOf = {};
    private final Map<Integer, Overlay.Laid> laid = new HashMap<>();

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
        for (int reading = 0; reading < looks.readings(); reading++) {
            if (progress.cancelled()) {
                throw new CancellationException();
            }
            if (reading % 50 == 0) {
                progress.at(reading, looks.readings(), "comparing plates");
            }
            if (reading > 0 && reading == next) {
                next *= 2;
                found.accept(finds());
            }
            int one = looks.owner(reading);
            for (Looks.Near near : looks.after(reading, LEAST)) {
                if (root(one) != root(near.at())
                        && over(one, near.at(), near.mirror()).isPresent()) {
                    groupOf[root(near.at())] = root(one);
                }
            }
        }
        return finds();
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
            Mirror how = Mirror.NONE;
            Optional<Overlay> best = Optional.empty();
            for (Mirror mirror : Mirror.values()) {
                Optional<Overlay> over = laid(group.get(0)).over(laid(at), mirror);
                if (over.isPresent()
                        && best.map(b -> b.agreement() < over.get().agreement()).orElse(true)) {
                    best = over;
                    how = mirror;
                }
            }
            Sight sight = all.get(at);
            hits.add(Hit.now(sight, sight.plate(), LikeWords.of(how, 0, best), how)
                    .inGroup(number));
        }
        return hits;
    }
}
