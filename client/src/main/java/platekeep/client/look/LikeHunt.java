package platekeep.client.look;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PastPlate;
import platekeep.client.task.Progress;
import platekeep.model.look.Alike;
import platekeep.model.look.Looks;
import platekeep.model.look.Overlay;
import platekeep.model.look.Signature;
import platekeep.model.plate.Plate;

/** Looks for plates like one. */
final class LikeHunt implements Hunt {
    private static final int MOST = 60;

    private final List<Library> libraries;
    private final Sights sights;
    private final Plate asked;
    private final Options.Times times;

    LikeHunt(List<Library> libraries, Sights sights, Plate asked, Options.Times times) {
        this.libraries = libraries;
        this.sights = sights;
        this.asked = asked;
        this.times = times;
    }

    private record Ranked(Hit hit, double worth) {}

    @Override
    public Finds run(Progress progress, Consumer<Finds> found) throws LibraryException {
        Optional<Signature> signature = Signature.of(asked);
        if (signature.isEmpty()) {
            return new Finds(
                    List.of(), 0, "\"" + asked.title() + "\" has no cables yet, so there is nothing it looks like.");
        }
        List<Ranked> ranked = ranked(sights.now(libraries, progress, soFar -> found.accept(finds(ranked(soFar)))));
        if (times == Options.Times.ONCE_TOO) {
            found.accept(finds(ranked));
            for (Library library : libraries) {
                ranked.addAll(once(library, signature.get(), ranked, progress));
            }
        }
        return finds(ranked);
    }

    private Finds finds(List<Ranked> ranked) {
        List<Hit> hits = ranked.stream()
                .sorted(Comparator.comparingDouble(Ranked::worth).reversed())
                .limit(MOST)
                .map(Ranked::hit)
                .toList();
        String summary =
                hits.isEmpty() ? "Nothing looks like it." : Counts.of(hits.size(), "plate") + ", the likest first";
        return new Finds(hits, hits.size(), summary);
    }

    private List<Ranked> ranked(List<Sight> sights) {
        List<Sight> all = sights.stream()
                .filter(sight -> !sight.plate().id().equals(asked.id()))
                .toList();
        Looks looks = new Looks(all.stream().map(Sight::signature).toList());
        List<Ranked> ranked = new ArrayList<>();
        for (Alike alike : Alike.of(asked, looks, i -> all.get(i).plate(), MOST)) {
            Sight sight = all.get(alike.at());
            ranked.add(new Ranked(Hit.now(sight, sight.plate(), alike.why(), alike.mirror()), alike.likeness()));
        }
        return ranked;
    }

    /** Of each plate the likest version that is no more, where it is liker than what the plate is now. */
    private List<Ranked> once(Library library, Signature signature, List<Ranked> now, Progress progress)
            throws LibraryException {
        List<PastPlate> past = sights.past(library, progress).stream()
                .filter(one -> !one.plateId().equals(asked.id()))
                .toList();
        Map<String, Double> best = new HashMap<>();
        now.stream()
                .filter(r -> r.hit().library() == library)
                .forEach(r -> best.put(r.hit().plate().id(), r.worth()));
        Map<PastPlate, Looks.Near> wanted = new HashMap<>();
        Map<String, PastPlate> chosen = new HashMap<>();
        for (Looks.Near near : new Looks(past.stream().map(sights::signature).toList()).nearest(signature, 3 * MOST)) {
            PastPlate one = past.get(near.at());
            if (near.likeness() >= Math.max(Alike.LEAST, best.getOrDefault(one.plateId(), 0.0) + 0.01)
                    && chosen.putIfAbsent(one.plateId(), one) == null) {
                wanted.put(one, near);
            }
        }
        Overlay.Laid laid = Overlay.Laid.of(asked);
        List<Ranked> ranked = new ArrayList<>();
        new Once(library).hits(List.copyOf(wanted.keySet()), progress, (one, plate) -> {
            Alike alike = Alike.of(wanted.get(one), laid, plate);
            return new Once.Why(alike.why(), alike.mirror(), hit -> ranked.add(new Ranked(hit, alike.likeness())));
        });
        return ranked;
    }
}
